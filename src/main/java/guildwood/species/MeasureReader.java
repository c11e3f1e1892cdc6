package guildwood.species;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.kernel.Temperature;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads numbers with units, ranges of them, and class words into a range in a trait's unit. Lengths and
 * temperatures need their unit written: 30 could be feet or metres, -30 either thermometer.
 */
final class MeasureReader {
  private static final String TO = "\\s*(?:\\.\\.|\\bto\\b|–|(?<=[0-9a-z'\"°]|[0-9a-z'\"°] )-)\\s*";
  private static final Pattern ENDS = Pattern.compile("(.+?)" + TO + "(.+)");
  private static final Pattern NUMBER = Pattern.compile("([-−+]?\\d{1,6}(?:[.,]\\d{1,25})?)\\s*([a-z°'\"]*)");
  private static final Pattern ZONES =
      Pattern.compile("zones?\\s*(\\d{1,2}\\s*[ab]?)(?:" + TO + "(?:zones?\\s*)?(\\d{1,2}\\s*[ab]?))?");

  private MeasureReader() {}

  /** Reads lower-case text; parts joined by semicolons make the smallest range that holds them all. */
  static Checked<Range> read(Unit unit, String text, String field) {
    Range hull = null;
    for (String part : text.split(";")) {
      if (part.isBlank()) {
        continue;
      }
      Checked<Range> read = part(unit, part.strip(), field);
      if (read.isRefused()) {
        return read;
      }
      hull = hull == null ? read.orThrow() : hull.hull(read.orThrow());
    }
    return hull == null ? Checked.refused(Finding.of("number.unreadable", field, text)) : Checked.of(hull);
  }

  private static Checked<Range> part(Unit unit, String text, String field) {
    if (unit == Unit.CELSIUS && text.startsWith("zone")) {
      return zones(text, field);
    }
    Optional<Range> word = ClassWords.range(unit, text);
    if (word.isPresent()) {
      return Checked.of(word.get());
    }
    Matcher ends = ENDS.matcher(text);
    return ends.matches() ? ends(unit, ends.group(1), ends.group(2), field) : end(unit, text, "", field);
  }

  private static Checked<Range> ends(Unit unit, String first, String last, String field) {
    // 'full sun to part shade' names two classes in whatever order; two numbers must run upwards.
    if (ClassWords.range(unit, first).isPresent() && ClassWords.range(unit, last).isPresent()) {
      return Checked.of(ClassWords.range(unit, first).get().hull(ClassWords.range(unit, last).get()));
    }
    Checked<Range> low = end(unit, first, unitOf(last), field);
    Checked<Range> high = end(unit, last, "", field);
    if (low.isRefused() || high.isRefused()) {
      return low.isRefused() ? low : high;
    }
    return TraitReader.span(low.orThrow().min(), high.orThrow().max(), unit, field);
  }

  private static Checked<Range> end(Unit unit, String text, String unitIfNone, String field) {
    Optional<Range> word = ClassWords.range(unit, text);
    if (word.isPresent()) {
      return Checked.of(word.get());
    }
    Matcher matcher = NUMBER.matcher(text.strip());
    if (!matcher.matches()) {
      return Checked.refused(Finding.of("number.unreadable", field, text));
    }
    double number = Double.parseDouble(matcher.group(1).replace('−', '-').replace(',', '.'));
    String written = matcher.group(2).isEmpty() ? unitIfNone : matcher.group(2);
    Optional<Double> converted = convert(unit, number, written);
    if (converted.isEmpty()) {
      return Checked.refused(written.isEmpty()
          ? Finding.of("number.unit-missing", field, unitsOf(unit))
          : Finding.of("number.unit-unknown", field, written, unitsOf(unit)));
    }
    return TraitReader.span(converted.get(), converted.get(), unit, field);
  }

  /** 'Hardy to zone 5', 'zones 5 to 8': the coldest named zone is borne down to its lower edge. */
  private static Checked<Range> zones(String text, String field) {
    Matcher matcher = ZONES.matcher(text);
    if (!matcher.matches()) {
      return Checked.refused(Finding.of("zone.unreadable", field, text));
    }
    Optional<HardinessZone> first = HardinessZone.read(matcher.group(1));
    Optional<HardinessZone> last = HardinessZone.read(matcher.group(2) == null ? matcher.group(1) : matcher.group(2));
    if (first.isEmpty() || last.isEmpty()) {
      return Checked.refused(Finding.of("zone.unreadable", field, text));
    }
    return Checked.of(Range.of(Math.min(first.get().celsius().min(), last.get().celsius().min())));
  }

  private static String unitOf(String text) {
    Matcher matcher = NUMBER.matcher(text.strip());
    return matcher.matches() ? matcher.group(2) : "";
  }

  private static String unitsOf(Unit unit) {
    return switch (unit) {
      case METRES -> "m, cm, mm, ft, in";
      case CELSIUS -> "C, F, zone";
      case SUN_HOURS -> "h";
      case DAYS -> "days";
      default -> "–";
    };
  }

  private static Optional<Double> convert(Unit unit, double number, String written) {
    return switch (unit) {
      case METRES -> switch (written) {
        case "m" -> Optional.of(number);
        case "cm" -> Optional.of(number / 100);
        case "mm" -> Optional.of(number / 1000);
        case "ft", "'" -> Optional.of(number * 0.3048);
        case "in", "\"" -> Optional.of(number * 0.0254);
        default -> Optional.empty();
      };
      case CELSIUS -> switch (written) {
        case "c", "°c" -> Optional.of(number);
        case "f", "°f" -> Optional.of(Temperature.toCelsius(number));
        default -> Optional.empty();
      };
      case SUN_HOURS -> written.matches("|h|hours") ? Optional.of(number) : Optional.empty();
      case DAYS -> written.matches("|d|days") ? Optional.of(number) : Optional.empty();
      default -> written.isEmpty() ? Optional.of(number) : Optional.empty();
    };
  }
}
