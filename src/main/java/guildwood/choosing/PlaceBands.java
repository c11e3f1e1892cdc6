package guildwood.choosing;

import guildwood.kernel.Range;
import guildwood.site.PhClass;
import guildwood.species.ClassWords;
import guildwood.species.HardinessZone;
import guildwood.species.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The classes by which places and sizes can be asked for where no bed is chosen, with their numbers.
 *
 * <p>Heights are bands of our own. Light and moisture classes are those of {@link ClassWords}, soil
 * reaction those of {@link PhClass} without the extremes in which no garden is made.
 */
public final class PlaceBands {
  /** A class counts as borne where at least this share of it lies within what is tolerated. Ours. */
  static final double BORNE_SHARE = 0.5;

  private static final Map<String, Range> HEIGHTS = bands(
      "under-30cm", 0, 0.3, "30cm-1m", 0.3, 1, "1m-2m", 1, 2, "2m-4m", 2, 4, "4m-8m", 4, 8, "8m-15m", 8, 15,
      "over-15m", 15, 1000);

  private static final Map<String, Range> REACTIONS =
      reactions(PhClass.VERY_STRONGLY_ACID, PhClass.MODERATELY_ALKALINE);
  private static final Map<String, Range> LIGHTS = words(Unit.SUN_HOURS, "full sun", "part shade", "full shade");
  private static final Map<String, Range> MOISTURES =
      words(Unit.MOISTURE_CLASS, "very dry", "dry", "moist", "wet", "waterlogged");
  private static final Map<String, Range> WINTERS = zones();

  private PlaceBands() {}

  /** Height bands in metres; the upper end belongs to the next band. */
  public static Range height(String option) {
    return HEIGHTS.get(option);
  }

  /** A pH class with its published ends. */
  public static Range reaction(String option) {
    return REACTIONS.get(option);
  }

  /** Hours of direct sun a day. */
  public static Range light(String option) {
    return LIGHTS.get(option);
  }

  static Range moisture(String option) {
    return MOISTURES.get(option);
  }

  /** The band of a half zone, degrees C; what survives it survives its lower edge. */
  public static Range winter(String option) {
    return WINTERS.get(option);
  }

  static List<String> heights() {
    return List.copyOf(HEIGHTS.keySet());
  }

  static List<String> reactions() {
    return List.copyOf(REACTIONS.keySet());
  }

  static List<String> lights() {
    return List.copyOf(LIGHTS.keySet());
  }

  static List<String> moistures() {
    return List.copyOf(MOISTURES.keySet());
  }

  static List<String> winters() {
    return List.copyOf(WINTERS.keySet());
  }

  private static Map<String, Range> bands(Object... nameLowHigh) {
    Map<String, Range> bands = new LinkedHashMap<>();
    for (int i = 0; i < nameLowHigh.length; i += 3) {
      double low = ((Number) nameLowHigh[i + 1]).doubleValue();
      double high = ((Number) nameLowHigh[i + 2]).doubleValue();
      bands.put((String) nameLowHigh[i], new Range(low, high));
    }
    return bands;
  }

  private static Map<String, Range> reactions(PhClass first, PhClass last) {
    Map<String, Range> ranges = new LinkedHashMap<>();
    for (PhClass named : PhClass.values()) {
      if (named.compareTo(first) >= 0 && named.compareTo(last) <= 0) {
        ranges.put(named.word().replace(' ', '-'), named.range());
      }
    }
    return ranges;
  }

  private static Map<String, Range> words(Unit unit, String... words) {
    Map<String, Range> ranges = new LinkedHashMap<>();
    for (String word : words) {
      ranges.put(word.replace(' ', '-'), ClassWords.range(unit, word).orElseThrow());
    }
    return ranges;
  }

  /** Half zones 1a to 10b: beyond them nobody needs to ask what survives. */
  private static Map<String, Range> zones() {
    List<HardinessZone> zones = new ArrayList<>();
    for (int number = 1; number <= 10; number++) {
      zones.add(new HardinessZone(number, 'a'));
      zones.add(new HardinessZone(number, 'b'));
    }
    Map<String, Range> ranges = new LinkedHashMap<>();
    zones.forEach(zone -> ranges.put(zone.toString(), zone.celsius()));
    return ranges;
  }
}
