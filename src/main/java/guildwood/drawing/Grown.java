package guildwood.drawing;

import guildwood.site.GroundShapes;
import guildwood.species.Layer;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;

/**
 * An arrangement after so many years: every plant's body, and the ground that crowns cover. Cover counts ground under
 * several crowns once, and only ground of the bed.
 *
 * @param bodies by spot, in the order of the arrangement
 */
public record Grown(Arrangement arrangement, int year, Map<Spot, GrownPlant> bodies) {
  /** From so many plants on their crowns are joined with fewer corners each. */
  private static final int MANY = 250;

  public Grown {
    bodies = Collections.unmodifiableMap(new LinkedHashMap<>(bodies));
  }

  public static Grown of(Arrangement arrangement, int year, YearsToMaturity maturity) {
    Map<Spot, GrownPlant> bodies = new LinkedHashMap<>();
    Map<String, PlantKind> kinds = arrangement.byId();
    for (Spot spot : arrangement.spots()) {
      PlantKind kind = kinds.get(spot.speciesId());
      bodies.put(spot, GrownPlant.of(kind, spot.number() <= kind.standing(), year, maturity));
    }
    return new Grown(arrangement, year, bodies);
  }

  /** Ground under the crowns of a species, overlaps counted once; it may reach beyond the bed. */
  Geometry patch(PlantKind kind) {
    return Shapes.union(bodies.entrySet().stream().filter(e -> e.getKey().speciesId().equals(kind.speciesId()))
        .map(e -> crown(e.getKey(), e.getValue())).toList());
  }

  private Geometry crown(Spot spot, GrownPlant body) {
    return bodies.size() > MANY ? Shapes.roughCircle(spot.at().xM(), spot.at().yM(), body.radiusM())
        : Shapes.circle(spot.at().xM(), spot.at().yM(), body.radiusM());
  }

  /** Share of the bed under the crowns of each layer that is in the guild, and under any crown at all. */
  public Cover cover() {
    Geometry bed = GroundShapes.polygon(arrangement.ground().outline());
    Map<Layer, Geometry> layers = new EnumMap<>(Layer.class);
    for (PlantKind kind : arrangement.kinds()) {
      layers.merge(kind.layer(), patch(kind).intersection(bed), (a, b) -> Shapes.union(List.of(a, b)));
    }
    Map<Layer, Double> shares = new EnumMap<>(Layer.class);
    layers.forEach((layer, ground) -> shares.put(layer, ground.getArea() / bed.getArea()));
    return new Cover(shares, Shapes.union(layers.values()).getArea() / bed.getArea(), bed.getArea());
  }

  /**
   * How much of a bed lies under crowns.
   *
   * @param byLayer shares of the bed, 0 to 1
   * @param any share under a crown of any layer
   */
  public record Cover(Map<Layer, Double> byLayer, double any, double bedM2) {
    public Cover {
      byLayer = Collections.unmodifiableMap(new EnumMap<>(byLayer));
    }

    /** Ground under no crown yet, m2. */
    public double openM2() {
      return Math.max(0, 1 - any) * bedM2;
    }
  }
}
