package guildwood.site;

import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.ClassWords;
import guildwood.species.HardinessZone;
import guildwood.species.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the conditions of a place are called: words that can be typed, and words shown beside numbers. */
public final class NamedClasses {
  private static final List<String> LIGHT = List.of("full shade", "part shade", "full sun");
  private static final List<String> MOISTURE = List.of("very dry", "dry", "moist", "wet", "waterlogged");
  private static final List<String> FERTILITY = List.of("poor", "medium", "rich");
  private static final List<String> TEXTURE = List.of("coarse", "medium", "fine");

  /**
   * The twelve texture classes of the USDA triangle in the three groups in which the species' own texture is
   * kept. The grouping is that of an NRCS team, known to us second-hand only.
   */
  private static final Map<String, List<String>> SOILS = Map.of(
      "coarse", List.of("sand", "loamy sand"),
      "medium", List.of("sandy loam", "loam", "silt loam", "silt", "sandy clay loam", "clay loam", "silty clay loam"),
      "fine", List.of("sandy clay", "silty clay", "clay"));

  private NamedClasses() {}

  /** The words that can be typed for a place on an axis, from low to high; empty where the axis has numbers only. */
  public static List<String> of(Axis axis) {
    return switch (axis) {
      case LIGHT -> LIGHT;
      case MOISTURE -> MOISTURE;
      case REACTION -> Arrays.stream(PhClass.values()).map(PhClass::word).toList();
      case FERTILITY -> FERTILITY;
      case TEXTURE -> TEXTURE.stream().flatMap(group -> Stream.concat(Stream.of(group), SOILS.get(group).stream())).toList();
      case WINTER_COLD, SEASON -> List.of();
    };
  }

  /** Whether the numbers of an axis are the classes themselves. */
  public static boolean countsClasses(Axis axis) {
    return axis == Axis.MOISTURE || axis == Axis.FERTILITY || axis == Axis.TEXTURE;
  }

  /** What a word stands for; empty where the axis does not know it for places. */
  public static Optional<Range> range(Axis axis, String word) {
    if (!of(axis).contains(word)) {
      return Optional.empty();
    }
    return switch (axis) {
      case LIGHT -> ClassWords.range(Unit.SUN_HOURS, word);
      case MOISTURE -> ClassWords.range(Unit.MOISTURE_CLASS, word);
      case FERTILITY -> ClassWords.range(Unit.FERTILITY_CLASS, word);
      case TEXTURE -> ClassWords.texture(groupOf(word));
      case REACTION -> Arrays.stream(PhClass.values()).filter(c -> c.word().equals(word)).findFirst().map(PhClass::range);
      case WINTER_COLD, SEASON -> Optional.empty();
    };
  }

  private static String groupOf(String soil) {
    return TEXTURE.stream().filter(group -> SOILS.get(group).contains(soil)).findFirst().orElse(soil);
  }

  /** The class or classes a range lies in, in words; empty where the axis has none. */
  public static String describe(Axis axis, Range range) {
    return switch (axis) {
      case LIGHT -> joined(light(range.min()), light(belowEnd(range, 0)));
      case REACTION -> joined(reaction(range.min()), reaction(range.max()));
      case MOISTURE -> joined(step(MOISTURE, range.min()), step(MOISTURE, range.max()));
      case FERTILITY -> joined(step(FERTILITY, range.min()), step(FERTILITY, range.max()));
      case TEXTURE -> joined(step(TEXTURE, range.min()), step(TEXTURE, range.max()));
      case WINTER_COLD -> zones(range);
      case SEASON -> "";
    };
  }

  private static String light(double hours) {
    return LIGHT.stream().filter(word -> {
      Range range = ClassWords.range(Unit.SUN_HOURS, word).orElseThrow();
      return hours >= range.min() && hours < range.max();
    }).findFirst().orElse(LIGHT.get(LIGHT.size() - 1));
  }

  private static String reaction(double ph) {
    return PhClass.of(ph).map(PhClass::word).orElse("below the classes");
  }

  private static String step(List<String> words, double step) {
    return words.get((int) Math.round(step) - 1);
  }

  private static String zones(Range celsius) {
    Optional<HardinessZone> cold = HardinessZone.ofCelsius(celsius.min());
    // A zone's upper edge belongs to the next one; a hundredth of a degree is less than any map resolves.
    Optional<HardinessZone> mild = HardinessZone.ofCelsius(belowEnd(celsius, 0.01));
    if (cold.isEmpty() || mild.isEmpty()) {
      return "";
    }
    HardinessZone low = cold.get();
    HardinessZone high = mild.get();
    boolean wholeZone = low.number() == high.number() && low.half() == 'a' && high.half() == 'b';
    return "zone " + (wholeZone ? Integer.toString(low.number()) : joined(low.toString(), high.toString()));
  }

  /** The last value before the upper end, so that a class that begins there does not count. */
  private static double belowEnd(Range range, double step) {
    return range.width() == 0 ? range.max() : Math.min(Math.nextDown(range.max()), range.max() - step);
  }

  private static String joined(String low, String high) {
    return low.equals(high) ? low : low + " to " + high;
  }
}
