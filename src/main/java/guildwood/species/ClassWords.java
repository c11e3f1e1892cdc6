package guildwood.species;

import guildwood.kernel.Range;
import java.util.Map;
import java.util.Optional;

/**
 * Class words and the numbers they stand for, in one table.
 *
 * <p>Light: no single national definition exists. The words are read as hours of direct sun a day:
 * full sun from 6, part shade 3 to 6, full shade below 3, near the usage of several US extension services
 * (Colorado State University Extension: full sun at least 6 h, light shade 3-5 h; common practice
 * otherwise). USDA's shade tolerance classes are read as the hours below which a plant of the class no
 * longer thrives; that reading is ours and has no publication.
 *
 * <p>Moisture and fertility classes are ours: five steps of moisture and three of fertility.
 */
public final class ClassWords {
  /** Name of the light scheme, shown wherever a light class is shown. */
  public static final String LIGHT_SCHEME = "full sun from 6 h, part shade 3-6 h, full shade under 3 h";

  private static final double MOST_SUN = 16;

  private static final Map<String, Range> LIGHT = Map.of(
      "full sun", new Range(6, MOST_SUN),
      "part shade", new Range(3, 6),
      "full shade", new Range(0, 3),
      "shade-intolerant", new Range(5, MOST_SUN),
      "shade-intermediate", new Range(3, MOST_SUN),
      "shade-tolerant", new Range(0.5, MOST_SUN));

  private static final Map<String, Range> MOISTURE = Map.of(
      "very dry", Range.of(1),
      "dry", Range.of(2),
      "moist", Range.of(3),
      "wet", Range.of(4),
      "waterlogged", Range.of(5));

  private static final Map<String, Range> FERTILITY = Map.of(
      "poor", Range.of(1),
      "medium", Range.of(2),
      "rich", Range.of(3));

  private static final Map<String, Range> TEXTURE = Map.of(
      "coarse", Range.of(1),
      "medium", Range.of(2),
      "fine", Range.of(3));

  private ClassWords() {}

  /** The numbers a word stands for on a unit's scale. */
  public static Optional<Range> range(Unit unit, String word) {
    Map<String, Range> table = switch (unit) {
      case SUN_HOURS -> LIGHT;
      case MOISTURE_CLASS -> MOISTURE;
      case FERTILITY_CLASS -> FERTILITY;
      default -> Map.of();
    };
    return Optional.ofNullable(table.get(word));
  }

  /** A range on a unit's scale in class words, such as 'moist to wet'; empty where the scale has no words for it. */
  public static Optional<String> inWords(Unit unit, Range range) {
    Optional<String> low = unit == Unit.SUN_HOURS ? Optional.of(lightFrom(range.min())) : wordAt(unit, range.min());
    Optional<String> high = unit == Unit.SUN_HOURS ? Optional.of(lightUpTo(range.max())) : wordAt(unit, range.max());
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(low.equals(high) || range.width() == 0 ? low.get() : low.get() + " to " + high.get());
  }

  private static String lightFrom(double hours) {
    return hours >= 6 ? "full sun" : hours >= 3 ? "part shade" : "full shade";
  }

  private static String lightUpTo(double hours) {
    return hours > 6 ? "full sun" : hours > 3 ? "part shade" : "full shade";
  }

  private static Optional<String> wordAt(Unit unit, double value) {
    Map<String, Range> table = unit == Unit.MOISTURE_CLASS ? MOISTURE : unit == Unit.FERTILITY_CLASS ? FERTILITY : Map.of();
    return table.entrySet().stream().filter(e -> e.getValue().min() == value).map(Map.Entry::getKey).findFirst();
  }

  /** Soil texture words as numbers 1 to 3. */
  public static Optional<Range> texture(String word) {
    return Optional.ofNullable(TEXTURE.get(word));
  }
}
