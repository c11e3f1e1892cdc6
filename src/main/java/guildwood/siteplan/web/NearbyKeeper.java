package guildwood.siteplan.web;

import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.bed.sun.Nearby.Body;
import guildwood.bed.sun.Nearby.Height;
import guildwood.bed.sun.Surroundings;
import guildwood.bed.sun.Walls;
import guildwood.kernel.Finding;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Tree;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.PlanPoints;
import guildwood.siteplan.ShapeKind;
import guildwood.siteplan.SitePlan;
import guildwood.web.Form;
import guildwood.web.Units;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * Trees and buildings: those of the site, with which the sun is reckoned. One that is moved on the plan is from then on
 * told from the site's own point, not from the middle of a bed.
 */
record NearbyKeeper(Surroundings surroundings, ShapeKind kind) implements ShapeKeeper {
  private static final GroundPoint ORIGIN = new GroundPoint(0, 0);

  @Override
  public void fill(Map<String, String> values, SitePlan plan, OptionalLong id, Units units) {
    find(id).ifPresent(nearby -> {
      LengthFields.put(values, "height", nearby.height().metres(), units);
      if (nearby.body() instanceof Crown crown) {
        LengthFields.put(values, "crown-radius", crown.radiusM(), units);
        LengthFields.put(values, "crown-base", crown.baseM(), units);
        values.put("evergreen", crown.evergreen() ? "yes" : "");
      }
    });
  }

  private Optional<Nearby> find(OptionalLong id) {
    return id.isPresent() ? surroundings.find(id.getAsLong()) : Optional.empty();
  }

  @Override
  public Optional<Work> read(Form form, SitePlan plan, OptionalLong id, String name, List<GroundPoint> points) {
    Optional<Nearby> before = find(id);
    LengthFields lengths = LengthFields.of(form);
    Optional<Double> heightM = lengths.required("height", Obstacle.HEIGHT_M, before.map(nearby -> nearby.height().metres()));
    Optional<Placed> placed = kind == ShapeKind.TREE ? tree(form, lengths, plan, before, points, heightM) : building(form, plan, before, points);
    if (id.isEmpty() && plan.nearby().size() >= Nearby.MOST_ON_A_SITE) {
      form.refuse(Finding.of("nearby.too-many", "", Nearby.MOST_ON_A_SITE));
    }
    if (form.isRefused()) {
      return Optional.empty();
    }
    // A height that was paced and is not retold stays a paced one.
    Height height = before.map(Nearby::height).filter(old -> old.metres() == heightM.orElseThrow()).orElseGet(() -> Height.told(heightM.orElseThrow()));
    Placed where = placed.orElseThrow();
    Nearby after = new Nearby(id.orElse(0), plan.site().id(), where.fromBed(), name, where.at(), height, where.body());
    return Optional.of(() -> keep(after, before));
  }

  private BooleanSupplier keep(Nearby after, Optional<Nearby> before) {
    if (before.isEmpty()) {
      long added = surroundings.add(after).orElseThrow(NotFoundResponse::new);
      return () -> surroundings.remove(added);
    }
    surroundings.change(after.id(), now -> after).orElseThrow(NotFoundResponse::new);
    return () -> surroundings.change(after.id(), now -> before.get()).isPresent();
  }

  /** Where it stands, told from where, and what it is. */
  private record Placed(OptionalLong fromBed, GroundPoint at, Body body) {}

  private static Optional<Placed> tree(
      Form form, LengthFields lengths, SitePlan plan, Optional<Nearby> before, List<GroundPoint> points, Optional<Double> heightM) {
    Optional<Crown> old = before.map(nearby -> (Crown) nearby.body());
    Optional<Double> radius = lengths.required("crown-radius", Tree.CROWN_RADIUS_M, old.map(Crown::radiusM));
    Optional<Double> base = lengths.required("crown-base", Tree.CROWN_BASE_M, old.map(Crown::baseM));
    if (base.isPresent() && heightM.isPresent() && base.get() >= heightM.get()) {
      form.refuse(Finding.of("nearby.crown-base", "crown-base",
          PlanWords.length(heightM.get(), LengthFields.isFeet(form) ? Units.US : Units.METRIC)));
    }
    if (points.size() != 1) {
      form.refuse(Finding.of("plan.one-point", "points", points.size()));
    }
    if (form.isRefused()) {
      return Optional.empty();
    }
    Crown crown = new Crown(base.orElseThrow(), radius.orElseThrow(), old.map(Crown::lightInLeaf).orElse(Crown.USUAL_LIGHT_IN_LEAF),
        old.map(Crown::lightBare).orElse(Crown.USUAL_LIGHT_BARE), form.ticked("evergreen"));
    return Optional.of(unmoved(plan, before, points).map(nearby -> new Placed(nearby.fromBed(), nearby.at(), crown))
        .orElseGet(() -> new Placed(OptionalLong.empty(), points.get(0), crown)));
  }

  private static Optional<Placed> building(Form form, SitePlan plan, Optional<Nearby> before, List<GroundPoint> points) {
    Optional<Placed> unmoved = unmoved(plan, before, points).map(nearby -> new Placed(nearby.fromBed(), nearby.at(), nearby.body()));
    return unmoved.or(() -> form.take(PlanPoints.outline(points, "points"))
        .map(outline -> new Placed(OptionalLong.empty(), ORIGIN, new Walls(new Walls.Corners(outline)))));
  }

  private static Optional<Nearby> unmoved(SitePlan plan, Optional<Nearby> before, List<GroundPoint> points) {
    return before.filter(nearby -> plan.shape(nearby).filter(shape -> shape.points().equals(points)).isPresent());
  }

  @Override
  public Optional<BooleanSupplier> remove(SitePlan plan, long id) {
    return surroundings.find(id).filter(nearby -> surroundings.remove(id)).map(nearby -> () -> surroundings.add(nearby).isPresent());
  }
}
