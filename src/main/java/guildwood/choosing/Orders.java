package guildwood.choosing;

import guildwood.species.Species;
import guildwood.species.Trait;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;

/** The library sorted once by everything it can be listed by, as lists of positions. */
final class Orders {
  private final Map<Order, int[]> positions = new EnumMap<>(Order.class);

  Orders(List<Species> species) {
    Comparator<Integer> byId = Comparator.comparing(i -> species.get(i).id());
    Comparator<Integer> byName = by(species, s -> Folding.fold(s.name())).thenComparing(byId);
    positions.put(Order.NAME, sorted(species.size(), byName));
    positions.put(Order.SCIENTIFIC_NAME,
        sorted(species.size(), by(species, s -> Folding.fold(s.scientificName())).thenComparing(byId)));
    // An empty family sorts last.
    positions.put(Order.FAMILY, sorted(species.size(),
        by(species, s -> s.family().isEmpty() ? "\uffff" : Folding.fold(s.family())).thenComparing(byName)));
    double[] heights = species.stream().map(s -> s.middle(Trait.HEIGHT)).mapToDouble(h -> h.orElse(Double.NaN)).toArray();
    positions.put(Order.SHORTEST_FIRST, sorted(species.size(), byHeight(heights, 1).thenComparing(byName)));
    positions.put(Order.TALLEST_FIRST, sorted(species.size(), byHeight(heights, -1).thenComparing(byName)));
  }

  int[] by(Order order) {
    return positions.get(order);
  }

  static int[] sorted(int size, Comparator<Integer> comparator) {
    Integer[] positions = IntStream.range(0, size).boxed().toArray(Integer[]::new);
    Arrays.parallelSort(positions, comparator);
    return Arrays.stream(positions).mapToInt(i -> i).toArray();
  }

  private static Comparator<Integer> by(List<Species> species, Function<Species, String> text) {
    String[] keys = species.stream().map(text).toArray(String[]::new);
    return Comparator.comparing(i -> keys[i]);
  }

  /** Those of unknown height come last either way. */
  private static Comparator<Integer> byHeight(double[] heights, int direction) {
    return (a, b) -> {
      OptionalDouble one = known(heights[a]);
      OptionalDouble other = known(heights[b]);
      if (one.isEmpty() || other.isEmpty()) {
        return Boolean.compare(one.isEmpty(), other.isEmpty());
      }
      return direction * Double.compare(one.getAsDouble(), other.getAsDouble());
    };
  }

  private static OptionalDouble known(double height) {
    return Double.isNaN(height) ? OptionalDouble.empty() : OptionalDouble.of(height);
  }
}
