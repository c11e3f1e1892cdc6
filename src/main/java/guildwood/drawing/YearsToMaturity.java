package guildwood.drawing;

import guildwood.kernel.Range;
import guildwood.species.Layer;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How many years a plant of a layer takes from planting until it is nearly grown, slow, medium and fast. The usual
 * numbers are rules of thumb of ours, no publication; the owner can set others.
 */
public record YearsToMaturity(Map<Layer, List<Integer>> byLayer) {
  public static final Range YEARS = new Range(1, 80);

  public static final YearsToMaturity USUAL = new YearsToMaturity(Map.of(
      Layer.TALL_TREE, List.of(40, 28, 18),
      Layer.SMALL_TREE, List.of(20, 14, 9),
      Layer.SHRUB, List.of(10, 7, 4),
      Layer.CLIMBER, List.of(6, 4, 3),
      Layer.HERB, List.of(4, 3, 2),
      Layer.GROUND_COVER, List.of(4, 3, 2),
      Layer.ROOT, List.of(3, 2, 1)));

  public YearsToMaturity {
    byLayer = Collections.unmodifiableMap(new EnumMap<>(byLayer));
    byLayer.forEach((layer, years) -> {
      if (years.size() != GrowthRate.values().length || !years.stream().allMatch(y -> YEARS.contains(y))) {
        throw new IllegalArgumentException(layer + " grown after " + years + " years");
      }
    });
    if (byLayer.size() != Layer.values().length) {
      throw new IllegalArgumentException("a layer is missing among " + byLayer.keySet());
    }
  }

  public int of(Layer layer, GrowthRate rate) {
    return byLayer.get(layer).get(rate.ordinal());
  }
}
