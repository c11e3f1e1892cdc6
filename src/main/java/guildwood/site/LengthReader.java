package guildwood.site;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads lengths on the ground: a number in the visitor's unit, one with a unit of its own, or a count of paces. */
public final class LengthReader {
  /** Metres in the international foot. */
  public static final double FOOT_M = 0.3048;

  private static final Pattern LENGTH = Pattern.compile("([-+−]?\\d{1,9}(?:[.,]\\d{1,9})?)\\s*([a-z'’\"”]*)");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile("([-+−]?)(\\d{1,6})\\s*(?:ft|feet|foot|'|’)\\s*(\\d{1,2}(?:[.,]\\d{1,3})?)\\s*(?:in|inch|inches|\"|”|'')?");
  private static final Pattern COMMA = Pattern.compile("[-+−]?[1-9]\\d{0,2},\\d{3}(?!\\d)");
  private static final int LONGEST = 40;

  private final double bareM;
  private final Scale scale;
  private final OptionalDouble paceM;

  /** What a number without a unit means, and the units in which limits are told. */
  public enum Scale {
    METRES_OR_FEET(1, FOOT_M, "length.out-of-scale"),
    CENTIMETRES_OR_INCHES(0.01, FOOT_M / 12, "length.out-of-scale-cm"),
    MILLIMETRES_OR_INCHES(0.001, FOOT_M / 12, "length.out-of-scale-mm");

    private final double metricM;
    private final double usM;
    private final String outOfScale;

    Scale(double metricM, double usM, String outOfScale) {
      this.metricM = metricM;
      this.usM = usM;
      this.outOfScale = outOfScale;
    }

    /** The unit of a number without one, metres. */
    public double unitM(boolean us) {
      return us ? usM : metricM;
    }
  }

  /**
   * A reader for one visitor.
   *
   * @param feet whether a number without a unit is in feet rather than metres
   * @param paceM length of one of the visitor's paces; without it paces cannot be read
   */
  public LengthReader(boolean feet, OptionalDouble paceM) {
    this(Scale.METRES_OR_FEET, feet, paceM);
  }

  /** A reader of lengths on another scale than that of the ground: depths of mulch, rain. */
  public LengthReader(Scale scale, boolean us) {
    this(scale, us, OptionalDouble.empty());
  }

  private LengthReader(Scale scale, boolean us, OptionalDouble paceM) {
    this.scale = scale;
    this.bareM = scale.unitM(us);
    this.paceM = paceM;
  }

  /** Reads a length that must be there, in metres. */
  public Checked<Double> read(String typed, Range withinM, String field) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return Checked.refused(Finding.of("value.missing", field));
    }
    Optional<Double> metres = text.length() > LONGEST ? Optional.empty() : metres(text);
    if (metres.isEmpty()) {
      return Checked.refused(Finding.of("length.unreadable", field));
    }
    // A comma before exactly three digits may part thousands or decimals; a wrong guess is a thousandfold error.
    Matcher comma = COMMA.matcher(text);
    if (comma.lookingAt()) {
      String number = comma.group();
      return Checked.refused(Finding.of("area.comma", field, number.replace(",", ""), number.replace(',', '.')));
    }
    return withinM.contains(metres.get()) ? Checked.of(metres.get()) : Checked.refused(outOfScale(withinM, field));
  }

  private Optional<Double> metres(String text) {
    Matcher both = FEET_AND_INCHES.matcher(text);
    if (both.matches()) {
      double metres = (number(both.group(2)) + number(both.group(3)) / 12) * FOOT_M;
      return Optional.of(both.group(1).matches("[-−]") ? -metres : metres);
    }
    Matcher one = LENGTH.matcher(text);
    if (!one.matches()) {
      return Optional.empty();
    }
    double number = number(one.group(1));
    return switch (one.group(2)) {
      case "" -> Optional.of(number * bareM);
      case "m", "metre", "metres", "meter", "meters" -> Optional.of(number);
      case "cm" -> Optional.of(number / 100);
      case "mm" -> Optional.of(number / 1000);
      case "ft", "feet", "foot", "'", "’" -> Optional.of(number * FOOT_M);
      case "in", "inch", "inches", "\"", "”" -> Optional.of(number * FOOT_M / 12);
      case "p", "pace", "paces" -> paceM.isPresent() ? Optional.of(number * paceM.getAsDouble()) : Optional.empty();
      default -> Optional.empty();
    };
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace('−', '-').replace(',', '.'));
  }

  private Finding outOfScale(Range metres, String field) {
    double metric = scale.unitM(false);
    double us = scale.unitM(true);
    return Finding.of(scale.outOfScale, field,
        plain(metres.min() / metric), plain(metres.max() / metric), plain(metres.min() / us), plain(metres.max() / us));
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
  }
}
