package guildwood.siteplan.web;

import guildwood.kernel.Finding;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.PlanPoints;
import guildwood.siteplan.PlanRecords;
import guildwood.siteplan.SitePlan;
import guildwood.siteplan.Water;
import guildwood.web.Form;
import guildwood.web.Units;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/** Ponds, ditches and other water. */
record WaterKeeper(PlanRecords records) implements ShapeKeeper {
  @Override
  public void fill(Map<String, String> values, SitePlan plan, OptionalLong id, Units units) {}

  @Override
  public Optional<Work> read(Form form, SitePlan plan, OptionalLong id, String name, List<GroundPoint> points) {
    Optional<Footprint> outline = form.take(PlanPoints.outline(points, "points"));
    if (id.isEmpty() && plan.waters().size() >= PlanRecords.MOST_ON_A_SITE) {
      form.refuse(Finding.of("plan.too-many", "", PlanRecords.MOST_ON_A_SITE));
    }
    if (form.isRefused()) {
      return Optional.empty();
    }
    Water water = new Water(id.orElse(0), plan.site().id(), name, outline.orElseThrow());
    return Optional.of(() -> keep(water, id.isPresent() ? records.findWater(water.id()) : Optional.empty()));
  }

  private BooleanSupplier keep(Water water, Optional<Water> before) {
    if (before.isEmpty()) {
      long added = records.add(water).orElseThrow(NotFoundResponse::new);
      return () -> records.removeWater(added);
    }
    if (!records.change(water)) {
      throw new NotFoundResponse();
    }
    return () -> records.change(before.get());
  }

  @Override
  public Optional<BooleanSupplier> remove(SitePlan plan, long id) {
    return records.findWater(id).filter(water -> records.removeWater(id)).map(water -> () -> records.add(water).isPresent());
  }
}
