package guildwood.siteplan.web;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.FoundShape;
import guildwood.siteplan.LocalPlane;
import guildwood.siteplan.PlanFile;
import guildwood.siteplan.ShapeKind;
import guildwood.siteplan.SitePlan;
import guildwood.siteplan.exchange.GeoJsonReader;
import guildwood.siteplan.exchange.GeoJsonWriter;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Tokens;
import guildwood.web.Units;
import guildwood.web.Upload;
import guildwood.web.Uploads;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/** A plan out as GeoJSON, and in from it: first a look at what would be added, then adding it. */
public final class GeoPages implements Routes {
  private static final List<String> POLYGONS =
      List.of("none", ShapeKind.BED.key(), ShapeKind.WATER.key(), ShapeKind.BUILDING.key());
  private static final int MOST_PENDING = 16;

  private final Pages pages;
  private final PlanPages plans;
  private final Uploads uploads;
  private final Map<String, Pending> pending = new LinkedHashMap<>();

  /** What somebody looks at and may add. */
  private record Pending(long siteId, List<FoundShape> shapes) {}

  public GeoPages(Pages pages, PlanPages plans, Uploads uploads) {
    this.pages = pages;
    this.plans = plans;
    this.uploads = uploads;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/plan.geojson", this::send, Access.OWNER);
    routes.get("/sites/{id}/plan/import", ctx -> ask(ctx, plans.find(ctx), blank()), Access.OWNER);
    uploads.post(routes, "/sites/{id}/plan/import", GeoJsonReader.MOST_BYTES, this::look, Access.OWNER);
    routes.post("/sites/{id}/plan/import/add", this::add, Access.OWNER);
  }

  private static Optional<LocalPlane> plane(SitePlan plan) {
    return PlanPages.isPlaceKnown(plan)
        ? Optional.of(new LocalPlane(plan.site().latitudeDegrees().getAsDouble(), plan.site().longitudeDegrees().getAsDouble())) : Optional.empty();
  }

  /** Without a place there are no degrees to write; the plan's page says what to do. */
  private void send(Context ctx) {
    SitePlan plan = plans.find(ctx);
    Optional<LocalPlane> plane = plane(plan);
    if (plane.isEmpty()) {
      plans.refuse(ctx, plan, List.of(Finding.of("geo.no-place", "")));
      return;
    }
    ctx.contentType("application/geo+json");
    ctx.header("Content-Disposition", "attachment; filename=\"site-plan.geojson\"");
    ctx.result(GeoJsonWriter.write(plan, plane.get()));
  }

  private Form blank() {
    return Form.blank(Map.of("polygons", "none"), pages.messages());
  }

  private void ask(Context ctx, SitePlan plan, Form form) {
    if (plane(plan).isEmpty()) {
      plans.refuse(ctx, plan, List.of(Finding.of("geo.no-place", "")));
      return;
    }
    Map<String, Object> model = model(plan, form);
    model.put("polygons", POLYGONS);
    model.put("fileWrong", form.messageOf("file"));
    if (form.isRefused()) {
      pages.refuse(ctx, "siteplan/import", model);
    } else {
      pages.show(ctx, "siteplan/import", model);
    }
  }

  private static Map<String, Object> model(SitePlan plan, Form form) {
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("siteId", plan.site().id());
    model.put("siteName", plan.site().name());
    return model;
  }

  private void look(Context ctx) {
    SitePlan plan = plans.find(ctx);
    Upload upload = Upload.of(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<LocalPlane> plane = plane(plan);
    Checked<PlanFile> file = upload.file().isRefused() || plane.isEmpty() ? Checked.refused(upload.file().isRefused() ? upload.file().findings()
            : List.of(Finding.of("geo.no-place", "")))
        : GeoJsonReader.read(upload.file().orThrow().path(), plane.get(), ShapeKind.ofKey(form.value("polygons")));
    Optional<PlanFile> read = form.take(file);
    if (read.isEmpty()) {
      ask(ctx, plan, form);
      return;
    }
    show(ctx, plan, read.get(), form);
  }

  /** A shape that would be added. */
  record Line(int feature, String name, String kind, int points, boolean twin) {}

  /** A feature that would not. */
  record Refused(int feature, String name, String why) {}

  private void show(Context ctx, SitePlan plan, PlanFile file, Form form) {
    List<Line> lines = new ArrayList<>();
    List<Refused> refused = new ArrayList<>();
    List<FoundShape> good = new ArrayList<>();
    file.leftOut().forEach(left -> refused.add(new Refused(left.feature(), left.name(), pages.messages().say(left.why()))));
    for (FoundShape shape : file.found()) {
      Form fields = fields(shape);
      if (work(plan, shape, fields).isPresent()) {
        good.add(shape);
        lines.add(new Line(shape.feature(), name(shape), pages.messages().say("plan.kind." + shape.kind().key()), shape.points().size(), isTwin(plan, shape)));
      } else {
        Finding why = fields.findings().get(0);
        refused.add(new Refused(shape.feature(), name(shape), why(why)));
      }
    }
    Map<String, Object> model = model(plan, form);
    model.put("lines", lines);
    model.put("refused", refused.stream().sorted(Comparator.comparingInt(Refused::feature)).toList());
    model.put("anyTwin", lines.stream().anyMatch(Line::twin));
    model.put("token", good.isEmpty() ? "" : remember(new Pending(plan.site().id(), good)));
    pages.show(ctx, "siteplan/import-look", model);
  }

  /** A field that is missing is named: here nobody sees the form. */
  private String why(Finding finding) {
    String said = pages.messages().say(finding);
    String key = "plan.import.field." + finding.field();
    return pages.messages().has(key) ? pages.messages().say(key) + ": " + said : said;
  }

  private synchronized String remember(Pending shapes) {
    String token = Tokens.fresh();
    pending.put(token, shapes);
    if (pending.size() > MOST_PENDING) {
      pending.remove(pending.keySet().iterator().next());
    }
    return token;
  }

  private synchronized Optional<Pending> take(String token) {
    return Optional.ofNullable(pending.remove(token));
  }

  private String name(FoundShape shape) {
    return shape.name().isEmpty() ? pages.messages().say("plan.name-of." + shape.kind().key(), shape.feature()) : shape.name();
  }

  private boolean isTwin(SitePlan plan, FoundShape shape) {
    boolean onPlan = plan.shapes().stream().anyMatch(other -> other.kind() == shape.kind() && other.name().equals(name(shape)));
    return onPlan || shape.kind() == ShapeKind.BED && plan.beds().stream().anyMatch(bed -> bed.name().equals(name(shape)));
  }

  private Form fields(FoundShape shape) {
    Map<String, String> values = new LinkedHashMap<>(shape.fields());
    values.put(LengthFields.UNIT, Units.METRIC.key());
    values.put("name", name(shape));
    if (shape.kind() == ShapeKind.PATH) {
      values.putIfAbsent("width", Units.number(PathKeeper.USUAL_WIDTH_M, 2));
    }
    return Form.blank(values, pages.messages());
  }

  /** The same looking at it as when it is drawn by hand. */
  private Optional<ShapeKeeper.Work> work(SitePlan plan, FoundShape shape, Form fields) {
    String name = fields.text("name", ShapeKeeper.LONGEST_NAME);
    return plans.keepers().of(shape.kind()).read(fields, plan, OptionalLong.empty(), name, shape.points());
  }

  private void add(Context ctx) {
    SitePlan plan = plans.find(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<Pending> looked = take(form.value("token")).filter(p -> p.siteId() == plan.site().id());
    if (looked.isEmpty()) {
      Form again = blank();
      again.refuse(Finding.of("geo.gone", ""));
      ask(ctx, plan, again);
      return;
    }
    List<BooleanSupplier> back = new ArrayList<>();
    for (FoundShape shape : looked.get().shapes()) {
      if (!(form.ticked("leave-twins") && isTwin(plan, shape))) {
        // Looked at once more, against the plan as it has become: it may be full by now.
        work(plans.find(ctx), shape, fields(shape)).ifPresent(work -> back.add(0, work.carryOut()));
      }
    }
    if (!back.isEmpty()) {
      plans.keepers().lastChanges().remember(plan.site().id(), new LastChanges.Change("done.plan-added",
          pages.messages().say("plan.import.things", back.size()), () -> back.stream().map(BooleanSupplier::getAsBoolean).reduce(true, Boolean::logicalAnd)));
    }
    pages.goOn(ctx, "/sites/" + plan.site().id() + "/plan", Finding.of("done.plan-imported", "", back.size()));
  }
}
