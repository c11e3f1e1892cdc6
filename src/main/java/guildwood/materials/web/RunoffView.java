package guildwood.materials.web;

import guildwood.materials.web.RunoffForm.Question;
import guildwood.site.water.Basin;
import guildwood.site.water.CurveNumber;
import guildwood.site.water.Incline;
import guildwood.site.water.SoilGroup;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The answer of the runoff page in words.
 *
 * @param basin what a basin holds; empty where none was asked for
 * @param peak the most that comes at one moment; empty where nobody asked
 * @param warnings what speaks against digging here
 */
public record RunoffView(String rain, String area, String number, String retention, String loss, String depth, String volume,
    String rainVolume, boolean runs, List<String> basin, String peak, List<String> warnings) {
  /** Slopes should be less than 10 percent: Rain Garden Handbook, page 13, where not to locate a rain garden. */
  private static final double STEEP_PERCENT = 10;
  /** Soaking away within a day keeps mosquitoes from breeding: Chester-Ridley-Crum Watersheds Association. */
  private static final double LONG_HOURS = 24;
  private static final double GALLON_M3 = 0.003785411784;
  private static final double CUBIC_FOOT_M3 = 0.3048 * 0.3048 * 0.3048;
  private static final double MM_IN_INCH = 25.4;

  static RunoffView of(Question question, Units units, Messages messages) {
    CurveNumber number = question.runoff().number();
    double volume = question.runoff().volumeM3();
    return new RunoffView(rain(question.runoff().rainMm(), units), units.area(question.runoff().areaM2()), Units.number(number.value(), 1),
        rain(number.retentionMm(), units), rain(number.initialLossMm(), units), rain(number.runoffMm(question.runoff().rainMm()), units),
        water(volume, units), water(question.runoff().rainM3(), units), volume > 0,
        question.basin().map(b -> basin(b, question, units, messages)).orElse(List.of()), peak(question, units, messages),
        warnings(question, messages));
  }

  private static List<String> basin(Basin basin, Question question, Units units, Messages messages) {
    String holds = messages.say("runoff.basin.holds", water(basin.holdsM3(), units), units.length(basin.topM()));
    OptionalDouble share = question.runoff().heldShare(basin);
    String held = share.isEmpty() ? messages.say("runoff.basin.nothing-runs")
        : share.getAsDouble() >= 1 ? messages.say("runoff.basin.all", water(question.runoff().volumeM3(), units))
        : messages.say("runoff.basin.part", Units.number(100 * share.getAsDouble(), 0),
            water(question.runoff().heldM3(basin), units), water(question.runoff().volumeM3() - question.runoff().heldM3(basin), units));
    return List.of(holds, held, empties(basin, question, messages));
  }

  private static String empties(Basin basin, Question question, Messages messages) {
    if (question.soakMmPerHour().isPresent()) {
      return messages.say("runoff.basin.empties", hours(basin.hoursToEmpty(question.soakMmPerHour().getAsDouble()).orElseThrow()));
    }
    SoilGroup soil = question.soil();
    Optional<String> slowest = text(basin.hoursToEmpty(soil.slowestMmPerHour()));
    Optional<String> fastest = soil.fastestMmPerHour().isEmpty() ? Optional.empty()
        : text(basin.hoursToEmpty(soil.fastestMmPerHour().getAsDouble()));
    if (fastest.isEmpty()) {
      return messages.say("runoff.basin.empties-within", slowest.orElseThrow());
    }
    return slowest.isEmpty() ? messages.say("runoff.basin.empties-beyond", fastest.get())
        : messages.say("runoff.basin.empties-between", fastest.get(), slowest.get());
  }

  private static String peak(Question question, Units units, Messages messages) {
    return question.peak().map(peak -> peak.m3PerSecond(question.runoff().areaM2()))
        .map(flow -> messages.say("runoff.peak.answer." + units.key(),
            threeFigures(units == Units.METRIC ? flow * 1000 : flow / CUBIC_FOOT_M3))).orElse("");
  }

  private static List<String> warnings(Question question, Messages messages) {
    List<String> warnings = new ArrayList<>();
    question.slopePercent().ifPresent(percent -> {
      if (percent >= STEEP_PERCENT) {
        warnings.add(messages.say("runoff.warn.steep", Units.number(percent, 1), Units.number(Incline.ofPercent(percent).degrees(), 1)));
      }
    });
    question.basin().ifPresent(basin -> {
      double rate = question.soakMmPerHour().orElse(question.soil().slowestMmPerHour());
      OptionalDouble hours = basin.hoursToEmpty(rate);
      if (hours.isEmpty() || hours.getAsDouble() > LONG_HOURS) {
        warnings.add(messages.say("runoff.warn.slow"));
      }
      if (question.runoff().volumeM3() > basin.holdsM3()) {
        warnings.add(messages.say("runoff.warn.overflow"));
      }
    });
    return warnings;
  }

  private static Optional<String> text(OptionalDouble hours) {
    return hours.isPresent() ? Optional.of(hours(hours.getAsDouble())) : Optional.empty();
  }

  private static String hours(double hours) {
    return Units.number(hours, hours < 10 ? 1 : 0);
  }

  /** A depth of rain such as {@code 25 mm} or {@code 1 in}. */
  static String rain(double mm, Units units) {
    return units == Units.METRIC ? Units.number(mm, mm < 10 ? 2 : 1) + " mm" : Units.number(mm / MM_IN_INCH, 2) + " in";
  }

  /** A volume of water such as {@code 2.61 m³}, {@code 610 litres} or {@code 690 US gallons (92.2 cu ft)}; three figures are plenty. */
  static String water(double cubicMetres, Units units) {
    if (units == Units.METRIC) {
      return cubicMetres < 1 ? threeFigures(cubicMetres * 1000) + " litres" : threeFigures(cubicMetres) + " m³";
    }
    return threeFigures(cubicMetres / GALLON_M3) + " US gallons (" + threeFigures(cubicMetres / CUBIC_FOOT_M3) + " cu ft)";
  }

  private static String threeFigures(double value) {
    return new BigDecimal(value).round(new MathContext(3, RoundingMode.HALF_UP)).stripTrailingZeros().toPlainString();
  }
}
