package guildwood.siteplan.web;

import guildwood.bed.Bed;
import guildwood.bed.BedOutline;
import guildwood.bed.Beds;
import guildwood.bed.Beds.Belongings;
import guildwood.bed.Outlines;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.PlanPoints;
import guildwood.siteplan.SitePlan;
import guildwood.web.Form;
import guildwood.web.Units;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/** Beds are laid out, or given an outline, by tracing them. Off the plan goes only the outline. */
record BedKeeper(Beds beds, Outlines outlines) implements ShapeKeeper {
  @Override
  public void fill(Map<String, String> values, SitePlan plan, OptionalLong id, Units units) {}

  @Override
  public Optional<Work> read(Form form, SitePlan plan, OptionalLong id, String name, List<GroundPoint> points) {
    Optional<BedOutline> outline = form.take(PlanPoints.outline(points, "points"))
        .flatMap(corners -> form.take(BedOutline.of(corners, "points")));
    if (form.isRefused()) {
      return Optional.empty();
    }
    return Optional.of(() -> id.isPresent() ? trace(id.getAsLong(), name, outline.orElseThrow())
        : add(plan.site().id(), name, outline.orElseThrow()));
  }

  private BooleanSupplier add(long siteId, String name, BedOutline outline) {
    Bed bed = outline.applyTo(new Bed(0, siteId, name, outline.areaM2(), Map.of(), List.of(), ""));
    long id = beds.add(bed).orElseThrow(NotFoundResponse::new);
    outlines.keep(id, outline);
    // What has got plants or wishes meanwhile is more than a line on the plan, and stays.
    return () -> beds.find(id).filter(now -> now.standing().isEmpty() && beds.belongings(id).equals(new Belongings(0, 0, 0))).isPresent()
        && beds.remove(id);
  }

  private BooleanSupplier trace(long id, String name, BedOutline outline) {
    Bed before = beds.find(id).orElseThrow(NotFoundResponse::new);
    Optional<Footprint> traced = outlines.ofBed(id);
    rename(id, name);
    if (!outlines.keep(id, outline)) {
      throw new NotFoundResponse();
    }
    return () -> back(before, traced);
  }

  private boolean back(Bed before, Optional<Footprint> traced) {
    rename(before.id(), before.name());
    return traced.map(corners -> outlines.keep(before.id(), BedOutline.of(corners, "").orThrow())).orElseGet(() -> outlines.restore(before));
  }

  private void rename(long id, String name) {
    beds.change(id, now -> new Bed(now.id(), now.siteId(), name, now.areaM2(), now.size(), now.middle(), now.conditions(), now.standing(), now.note()));
  }

  @Override
  public Optional<BooleanSupplier> remove(SitePlan plan, long id) {
    Optional<BedOutline> before = outlines.ofBed(id).map(corners -> BedOutline.of(corners, "").orThrow());
    return before.filter(outline -> outlines.remove(id)).map(outline -> () -> outlines.keep(id, outline));
  }
}
