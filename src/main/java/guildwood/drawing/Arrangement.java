package guildwood.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Where the plants of a guild stand.
 *
 * @param kinds the species, layer by layer from the top, then by name
 * @param spots one for every plant, in the order of the kinds, then by number
 */
public record Arrangement(BedGround ground, List<PlantKind> kinds, List<Spot> spots) {
  public static final Comparator<PlantKind> IN_ORDER = Comparator.comparing(PlantKind::layer).thenComparing(PlantKind::name)
      .thenComparing(PlantKind::speciesId);

  public Arrangement {
    kinds = kinds.stream().sorted(IN_ORDER).toList();
    Map<String, Integer> order = new java.util.HashMap<>();
    kinds.forEach(k -> order.put(k.speciesId(), order.size()));
    spots = spots.stream().sorted(Comparator.comparing((Spot s) -> order.get(s.speciesId())).thenComparing(Spot::number)).toList();
    int plants = kinds.stream().mapToInt(PlantKind::plants).sum();
    if (spots.size() != plants || spots.stream().map(Spot::id).distinct().count() != plants) {
      throw new IllegalArgumentException(spots.size() + " spots for " + plants + " plants");
    }
  }

  public PlantKind kind(Spot spot) {
    return byId().get(spot.speciesId());
  }

  public Optional<Spot> find(String id) {
    return spots.stream().filter(s -> s.id().equals(id)).findFirst();
  }

  /** The same with other spots in the place of some. */
  public Arrangement with(List<Spot> changed) {
    Map<String, Spot> byId = changed.stream().collect(Collectors.toMap(Spot::id, Function.identity()));
    return new Arrangement(ground, kinds, spots.stream().map(s -> byId.getOrDefault(s.id(), s)).toList());
  }

  Map<String, PlantKind> byId() {
    return kinds.stream().collect(Collectors.toMap(PlantKind::speciesId, Function.identity()));
  }

  /** Whether a plant stood there before the guild was planned. */
  public boolean isStanding(Spot spot) {
    return spot.number() <= kind(spot).standing();
  }

  /** The standing plants of which nobody has told yet where they stand. */
  public List<Spot> untold() {
    return spots.stream().filter(s -> isStanding(s) && !s.locked()).toList();
  }
}
