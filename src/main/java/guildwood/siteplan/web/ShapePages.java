package guildwood.siteplan.web;

import guildwood.bed.Bed;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Tree;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.PlanFrame;
import guildwood.siteplan.PlanShape;
import guildwood.siteplan.ShapeKind;
import guildwood.siteplan.SitePlan;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/** Drawing one bed, path, water, tree or building, and changing it, in number fields or with the pointer. */
public final class ShapePages implements Routes {
  private static final Range BREADTH_M = new Range(0, Tree.CROWN_RADIUS_M.max());

  private final Pages pages;
  private final PlanPages plans;
  private final Keepers keepers;

  /** @param plans the page of the whole plan, which knows where everything is */
  public ShapePages(Pages pages, PlanPages plans) {
    this.pages = pages;
    this.plans = plans;
    this.keepers = plans.keepers();
  }

  @Override
  public void addTo(RoutesConfig routes) {
    for (ShapeKind kind : ShapeKind.values()) {
      String path = "/sites/{id}/plan/" + kind.key();
      routes.get(path + "/new", ctx -> askForNew(ctx, kind), Access.OWNER);
      routes.post(path + "/new", ctx -> keep(ctx, kind, OptionalLong.empty()), Access.OWNER);
      routes.get(path + "/{shape}", ctx -> edit(ctx, kind), Access.OWNER);
      routes.post(path + "/{shape}", ctx -> keep(ctx, kind, OptionalLong.of(Address.number(ctx, "shape"))), Access.OWNER);
      routes.post(path + "/{shape}/remove", ctx -> remove(ctx, kind), Access.OWNER);
      routes.get(path + "/{shape}/remove", ctx -> ctx.redirect(
          address(Address.id(ctx), kind) + "/" + Address.number(ctx, "shape"), HttpStatus.SEE_OTHER), Access.OWNER);
    }
  }

  static String address(long siteId, ShapeKind kind) {
    return "/sites/" + siteId + "/plan/" + kind.key();
  }

  private void askForNew(Context ctx, ShapeKind kind) {
    SitePlan plan = plans.find(ctx);
    Map<String, String> values = new LinkedHashMap<>();
    values.put(LengthFields.UNIT, Units.of(ctx).key());
    long sameKind = plan.shapes().stream().filter(shape -> shape.kind() == kind).count();
    values.put("name", kind == ShapeKind.BED ? "" : pages.messages().say("plan.name-of." + kind.key(), sameKind + 1));
    PointFields.blank(values, leastPoints(kind));
    keepers.of(kind).fill(values, plan, OptionalLong.empty(), Units.of(ctx));
    show(ctx, plan, kind, OptionalLong.empty(), Form.blank(values, pages.messages()));
  }

  private static int leastPoints(ShapeKind kind) {
    return kind == ShapeKind.TREE ? 1 : kind == ShapeKind.PATH ? 2 : 4;
  }

  private void edit(Context ctx, ShapeKind kind) {
    SitePlan plan = plans.find(ctx);
    long id = Address.number(ctx, "shape");
    Units units = Units.of(ctx);
    Map<String, String> values = new LinkedHashMap<>();
    values.put(LengthFields.UNIT, units.key());
    values.put("name", name(plan, kind, id));
    List<GroundPoint> points = plan.find(kind, id).map(PlanShape::points).orElse(List.of());
    PointFields.fill(values, points, units);
    if (points.isEmpty()) {
      PointFields.blank(values, leastPoints(kind));
    }
    keepers.of(kind).fill(values, plan, OptionalLong.of(id), units);
    show(ctx, plan, kind, OptionalLong.of(id), Form.blank(values, pages.messages()));
  }

  /** The name of what is on the plan, or of a bed that is not yet. */
  private static String name(SitePlan plan, ShapeKind kind, long id) {
    Optional<String> ofBed = kind != ShapeKind.BED ? Optional.empty()
        : plan.beds().stream().filter(bed -> bed.id() == id).findFirst().map(Bed::name);
    return ofBed.or(() -> plan.find(kind, id).map(PlanShape::name)).orElseThrow(NotFoundResponse::new);
  }

  private void keep(Context ctx, ShapeKind kind, OptionalLong id) {
    SitePlan plan = plans.find(ctx);
    if (id.isPresent()) {
      name(plan, kind, id.getAsLong());
    }
    Form form = Form.read(ctx, pages.messages());
    String what = form.value("do");
    if (what.startsWith("add:") || what.startsWith("remove:")) {
      show(ctx, plan, kind, id, PointFields.changed(form, what, ctx.formParamMap(), pages.messages()));
      return;
    }
    String name = form.text("name", ShapeKeeper.LONGEST_NAME);
    List<GroundPoint> before = id.isPresent() ? plan.find(kind, id.getAsLong()).map(PlanShape::points).orElse(List.of()) : List.of();
    List<GroundPoint> points = PointFields.read(form, before);
    Optional<ShapeKeeper.Work> work = keepers.of(kind).read(form, plan, id, name, points);
    if (work.isEmpty()) {
      show(ctx, plan, kind, id, form);
      return;
    }
    BooleanSupplier back = work.get().carryOut();
    String key = id.isPresent() ? "done.plan-changed" : "done.plan-added";
    keepers.lastChanges().remember(plan.site().id(), new LastChanges.Change(key, name, back));
    pages.goOn(ctx, "/sites/" + plan.site().id() + "/plan", Finding.of(key, "", name));
  }

  private void remove(Context ctx, ShapeKind kind) {
    SitePlan plan = plans.find(ctx);
    long id = Address.number(ctx, "shape");
    String name = name(plan, kind, id);
    BooleanSupplier back = keepers.of(kind).remove(plan, id).orElseThrow(NotFoundResponse::new);
    keepers.lastChanges().remember(plan.site().id(), new LastChanges.Change("done.plan-removed", name, back));
    pages.goOn(ctx, "/sites/" + plan.site().id() + "/plan", Finding.of("done.plan-removed", "", name));
  }

  private void show(Context ctx, SitePlan plan, ShapeKind kind, OptionalLong id, Form form) {
    boolean feet = LengthFields.isFeet(form);
    Units units = feet ? Units.US : Units.METRIC;
    List<GroundPoint> points = PointFields.readable(form);
    Optional<PlanShape> current = points.isEmpty() ? Optional.empty()
        : Optional.of(new PlanShape(kind, id.orElse(0), form.value("name"), kind == ShapeKind.TREE ? points.subList(0, 1) : points, breadthM(form, kind), true));
    Optional<PlanShape> kept = id.isPresent() ? plan.find(kind, id.getAsLong()) : Optional.empty();
    boolean near = kept.isPresent() && ctx.queryParam("whole") == null;
    PlanFrame frame = near ? PlanFrame.near(kept.get()) : PlanFrame.of(plan);
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("kind", kind.key());
    model.put("isNew", id.isEmpty());
    model.put("isArea", kind.isArea());
    model.put("hasOutline", id.isPresent() && kind == ShapeKind.BED && plan.outlines().containsKey(id.getAsLong()));
    model.put("name", id.isPresent() ? name(plan, kind, id.getAsLong()) : "");
    model.put("action", address(plan.site().id(), kind) + "/" + (id.isPresent() ? Long.toString(id.getAsLong()) : "new"));
    model.put("siteId", plan.site().id());
    model.put("siteName", plan.site().name());
    model.put("pathId", kind == ShapeKind.PATH ? id.orElse(0) : 0L);
    model.put("shapeId", id.orElse(0));
    List<PointFields.Row> rows = PointFields.rows(form);
    model.put("rows", rows);
    // Without the point that could not be read, what is said about the others would mislead.
    boolean allRead = rows.stream().allMatch(row -> row.wrongX().isEmpty() && row.wrongY().isEmpty());
    model.put("pointsWrong", allRead ? form.messageOf("points") : "");
    model.put("plan", PlanView.of(plan, frame, current, units));
    model.put("wholeView", near ? address(plan.site().id(), kind) + "/" + id.getAsLong() + "?whole" : "");
    model.put("measure", kept.map(shape -> plans.measure(shape, units)).orElse(""));
    model.put("unit", feet ? "us" : "metric");
    model.put("unitM", PlanWords.unitM(units));
    model.put("isFeet", feet);
    model.put("more", more(plan, kind, id));
    model.put("walking", kind == ShapeKind.PATH && id.isPresent() ? plans.slope(plan, id.getAsLong(), units) : Optional.empty());
    if (form.isRefused()) {
      pages.refuse(ctx, "siteplan/shape", model);
    } else {
      pages.show(ctx, "siteplan/shape", model);
    }
  }

  /** Width of a path or crown as typed, as far as it can be read. */
  private static double breadthM(Form form, ShapeKind kind) {
    String field = kind == ShapeKind.TREE ? "crown-radius" : "width";
    double metres = LengthFields.of(form).plain(form.value(field), BREADTH_M).orElse(0.0);
    return kind == ShapeKind.TREE ? 2 * metres : kind == ShapeKind.PATH ? metres : 0;
  }

  /** Where everything else about a tree or building is told: seen from a bed whose place is known. */
  private static String more(SitePlan plan, ShapeKind kind, OptionalLong id) {
    boolean nearby = id.isPresent() && (kind == ShapeKind.TREE || kind == ShapeKind.BUILDING);
    return !nearby ? "" : plan.beds().stream().filter(bed -> bed.middle().isPresent()).findFirst()
        .map(bed -> "/beds/" + bed.id() + "/sun/nearby/" + id.getAsLong()).orElse("");
  }
}
