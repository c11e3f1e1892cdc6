package guildwood.site;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.HardinessZone;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import guildwood.species.TraitValue;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the climate of a site as people write it: winter cold, latitude and longitude, frost dates. */
public final class ClimateReader {
  private static final Pattern DEGREES = Pattern.compile("([-+−]?)(\\d{1,3}(?:[.,]\\d{1,8})?)\\s*°?\\s*([NnSsEeWw]?)");
  /** Between the tropics the halves of the year do not tell when frost falls, if it does. */
  private static final double TROPIC_DEGREES = 23.5;

  private ClimateReader() {}

  /**
   * Reads winter cold as a hardiness zone or as degrees with their unit. A zone is its whole band; degrees are
   * a mean over years already and stay the value they are.
   */
  public static Checked<Optional<Condition>> winter(String typed, Basis basis, String field) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return Checked.of(Optional.empty());
    }
    if (text.length() > ConditionReader.LONGEST_END) {
      return Checked.refused(Finding.of("text.too-long", field, ConditionReader.LONGEST_END));
    }
    if (text.chars().anyMatch(Character::isISOControl)) {
      return Checked.refused(Finding.of("text.control-characters", field));
    }
    Checked<Range> range = text.matches("(?:zone\\s*)?\\d{1,3}\\s*[a-b]?") ? zone(text, field) : degrees(text, field);
    return range.map(r -> Optional.of(new Condition(Axis.WINTER_COLD, r, basis, typed.strip())));
  }

  private static Checked<Range> zone(String text, String field) {
    return HardinessZone.read(text)
        .map(zone -> Checked.of(zone.celsius()))
        .orElseGet(() -> Checked.refused(Finding.of("winter.no-zone", field)));
  }

  private static Checked<Range> degrees(String text, String field) {
    if (text.matches("[-+−]?\\d+([.,]\\d+)?\\s*°?")) {
      return Checked.refused(Finding.of("winter.no-unit", field, text.replaceFirst("\\s*°$", "")));
    }
    String bare = text.replaceAll("\\s*°\\s*", "").replaceAll("(?<=\\d)\\s*degrees\\s*(?=[cf])", "");
    if (!bare.matches(".*\\d\\s*[cf]")) {
      return Checked.refused(Finding.of("winter.unreadable", field, text));
    }
    Checked<TraitValue> read = TraitReader.read(Trait.COLDEST_WINTER, bare, field);
    if (read.isRefused()) {
      String code = switch (read.findings().get(0).code()) {
        case "number.out-of-scale" -> "winter.out-of-scale";
        case "range.backwards" -> "winter.backwards";
        default -> "winter.unreadable";
      };
      return Checked.refused(Finding.of(code, field, text));
    }
    return Checked.of(((TraitValue.Span) read.orThrow()).range());
  }

  /** Degrees north; '44.9', '44,9 N' and '-44.9' or '44.9 S' south of the equator. */
  public static Checked<OptionalDouble> latitude(String typed, String field) {
    return degrees(typed, "n", "s", 90, "latitude.unreadable", field);
  }

  /** Degrees east; '13.4', '13,4 E' and '-89.6' or '89.6 W' west of Greenwich. */
  public static Checked<OptionalDouble> longitude(String typed, String field) {
    return degrees(typed, "e", "w", 180, "longitude.unreadable", field);
  }

  private static Checked<OptionalDouble> degrees(
      String typed, String positive, String negative, int most, String unreadable, String field) {
    String text = typed.strip();
    if (text.isEmpty()) {
      return Checked.of(OptionalDouble.empty());
    }
    Matcher matcher = DEGREES.matcher(text);
    boolean readable = text.length() <= ConditionReader.LONGEST_END && matcher.matches()
        && (matcher.group(1).isEmpty() || matcher.group(3).isEmpty());
    String side = readable ? matcher.group(3).toLowerCase(Locale.ROOT) : "";
    if (!readable || !List.of("", positive, negative).contains(side)) {
      return Checked.refused(Finding.of(unreadable, field));
    }
    double degrees = Double.parseDouble(matcher.group(2).replace(',', '.'));
    if (degrees > most) {
      return Checked.refused(Finding.of("number.out-of-scale", field, -most, most));
    }
    boolean below = side.equals(negative) || matcher.group(1).matches("[-−]");
    return Checked.of(OptionalDouble.of(below ? -degrees : degrees));
  }

  /**
   * A day of the year; none where both parts are empty.
   *
   * @param field name before {@code -day} and {@code -month}
   */
  public static Checked<Optional<MonthDay>> date(String day, String month, String field) {
    String dayText = day.strip();
    String monthText = month.strip();
    if (dayText.isEmpty() && monthText.isEmpty()) {
      return Checked.of(Optional.empty());
    }
    if (!dayText.matches("\\d{1,2}")) {
      return Checked.refused(Finding.of(dayText.isEmpty() ? "value.missing" : "date.day", field + "-day"));
    }
    if (!monthText.matches("\\d{1,2}") || Integer.parseInt(monthText) < 1 || Integer.parseInt(monthText) > 12) {
      return Checked.refused(Finding.of(monthText.isEmpty() ? "value.missing" : "date.month", field + "-month"));
    }
    try {
      return Checked.of(Optional.of(MonthDay.of(Integer.parseInt(monthText), Integer.parseInt(dayText))));
    } catch (DateTimeException e) {
      return Checked.refused(Finding.of("date.no-such-day", field + "-day"));
    }
  }

  /**
   * What speaks against two frost dates: outside the tropics the last spring frost comes in the half of the
   * year before the first autumn frost, by the calendar in the north and over the new year in the south.
   */
  public static Optional<Finding> frostOrder(MonthDay spring, MonthDay autumn, double latitudeDegrees, String field) {
    boolean springFirst = spring.isBefore(autumn);
    if (latitudeDegrees > TROPIC_DEGREES && !springFirst) {
      return Optional.of(Finding.of("frost.order-north", field));
    }
    if (latitudeDegrees < -TROPIC_DEGREES && springFirst) {
      return Optional.of(Finding.of("frost.order-south", field));
    }
    return Optional.empty();
  }
}
