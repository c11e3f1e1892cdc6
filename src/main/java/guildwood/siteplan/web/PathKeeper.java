package guildwood.siteplan.web;

import guildwood.kernel.Finding;
import guildwood.site.sun.GroundPoint;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.PlanPath.EndHeights;
import guildwood.siteplan.PlanPoints;
import guildwood.siteplan.PlanRecords;
import guildwood.siteplan.SitePlan;
import guildwood.web.Form;
import guildwood.web.Units;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/** Paths: width, depth of what is laid on them, heights of their ends. */
record PathKeeper(PlanRecords records) implements ShapeKeeper {
  /** Two people pass each other, or a barrow gets through; our own choice to begin with, no source. */
  static final double USUAL_WIDTH_M = 1.2;

  @Override
  public void fill(Map<String, String> values, SitePlan plan, OptionalLong id, Units units) {
    Optional<PlanPath> path = find(id);
    LengthFields.put(values, "width", path.map(PlanPath::widthM).orElse(USUAL_WIDTH_M), units);
    LengthFields.put(values, "depth", path.map(PlanPath::depthM).orElse(0.0), units);
    path.flatMap(PlanPath::heights).ifPresent(ends -> {
      LengthFields.put(values, "start-height", ends.startM(), units);
      LengthFields.put(values, "end-height", ends.endM(), units);
    });
  }

  private Optional<PlanPath> find(OptionalLong id) {
    return id.isPresent() ? records.findPath(id.getAsLong()) : Optional.empty();
  }

  @Override
  public Optional<Work> read(Form form, SitePlan plan, OptionalLong id, String name, List<GroundPoint> points) {
    Optional<PlanPath> before = find(id);
    LengthFields lengths = LengthFields.of(form);
    Optional<List<GroundPoint>> line = form.take(PlanPoints.line(points, "points"));
    Optional<Double> width = lengths.required("width", PlanPath.WIDTH_M, before.map(PlanPath::widthM));
    Optional<Double> depth = lengths.optional("depth", PlanPath.DEPTH_M, before.map(PlanPath::depthM));
    Optional<EndHeights> heights = heights(form, lengths, before.flatMap(PlanPath::heights));
    if (id.isEmpty() && plan.paths().size() >= PlanRecords.MOST_ON_A_SITE) {
      form.refuse(Finding.of("plan.too-many", "", PlanRecords.MOST_ON_A_SITE));
    }
    if (form.isRefused()) {
      return Optional.empty();
    }
    PlanPath path = new PlanPath(id.orElse(0), plan.site().id(), name, line.orElseThrow(), width.orElseThrow(), depth.orElse(0.0), heights);
    return Optional.of(() -> keep(path, before));
  }

  private BooleanSupplier keep(PlanPath path, Optional<PlanPath> before) {
    if (before.isEmpty()) {
      long added = records.add(path).orElseThrow(NotFoundResponse::new);
      return () -> records.removePath(added);
    }
    if (!records.change(path)) {
      throw new NotFoundResponse();
    }
    return () -> records.change(before.get());
  }

  /** Both ends or neither. */
  private static Optional<EndHeights> heights(Form form, LengthFields lengths, Optional<EndHeights> before) {
    if (!form.ticked("start-height") && !form.ticked("end-height")) {
      return Optional.empty();
    }
    Optional<Double> start = lengths.required("start-height", EndHeights.HEIGHT_M, before.map(EndHeights::startM));
    Optional<Double> end = lengths.required("end-height", EndHeights.HEIGHT_M, before.map(EndHeights::endM));
    return start.flatMap(from -> end.map(to -> new EndHeights(from, to)));
  }

  @Override
  public Optional<BooleanSupplier> remove(SitePlan plan, long id) {
    return records.findPath(id).filter(path -> records.removePath(id)).map(path -> () -> records.add(path).isPresent());
  }
}
