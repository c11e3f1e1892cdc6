package guildwood.drawing;

import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Tree;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Arranges a guild in its bed, layer by layer from the top down, so that what stands above is known when places are
 * sought below. The same bed, guild, kept spots and seed give the same arrangement. A layer of more than 2,000 plants
 * keeps within the same budget of steps: then fewer places are tried for each.
 */
public final class Arranger {
  private final BedGround ground;
  private final ArrangingRules rules;
  private final Plot plot;

  public Arranger(BedGround ground, ArrangingRules rules) {
    this.ground = ground;
    this.rules = rules;
    plot = new Plot(ground, rules);
  }

  /**
   * An arrangement of all plants.
   *
   * @param kept spots that stay as they are, wherever that is; those of plants that are not in the guild are let go
   */
  public Arrangement arrange(List<PlantKind> kinds, List<Spot> kept, long seed) {
    Map<Layer, List<PlantKind>> layers = kinds.stream().sorted(Arrangement.IN_ORDER).collect(
        Collectors.groupingBy(PlantKind::layer, java.util.TreeMap::new, Collectors.toList()));
    Map<String, Spot> fixed = kept.stream().collect(Collectors.toMap(Spot::id, Function.identity()));
    double tallest = kinds.stream().mapToDouble(PlantKind::heightM).max().orElse(1);
    Canopy canopy = new Canopy(plot);
    for (Tree tree : ground.trees()) {
      canopy.add(tree.foot().xM(), tree.foot().yM(), tree.crownRadiusM(), tree.heightM(), 1 - tree.letsThrough(true), true);
    }
    List<Spot> spots = new ArrayList<>();
    layers.forEach((layer, ofLayer) -> {
      Crowd crowd = new Crowd(plot, ofLayer, kept);
      new LayerPlacing(plot, crowd, new Places(plot, rules, canopy, tallest), seed + layer.ordinal()).place();
      for (int i = 0; i < crowd.size; i++) {
        PlantKind kind = crowd.kind(i);
        if (layer.compareTo(Layer.CLIMBER) <= 0) {
          canopy.add(crowd.x[i], crowd.y[i], kind.crownM() / 2, kind.heightM(), kind.shadePercent() / 100.0, layer != Layer.CLIMBER);
        }
        Spot spot = new Spot(kind.speciesId(), crowd.number[i], toMillimetre(crowd.x[i], crowd.y[i]), false);
        spots.add(fixed.getOrDefault(spot.id(), spot));
      }
    });
    return new Arrangement(ground, kinds, spots);
  }

  /** What is kept and what is drawn are the same. */
  private static GroundPoint toMillimetre(double x, double y) {
    return new GroundPoint(Math.round(x * 1000) / 1000.0, Math.round(y * 1000) / 1000.0);
  }
}
