package guildwood.siteplan.web;

import guildwood.bed.Bed;
import guildwood.kernel.Finding;
import guildwood.site.sun.GroundPoint;
import guildwood.site.web.LengthFields;
import guildwood.siteplan.LocalPlane;
import guildwood.siteplan.Paper;
import guildwood.siteplan.PathSlope;
import guildwood.siteplan.PlanDesk;
import guildwood.siteplan.PlanFrame;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.PlanPoints;
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
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The plan of a site: the drawing, the list of all that is on it, the paper, and taking back the last change. */
public final class PlanPages implements Routes {
  private final Pages pages;
  private final PlanDesk desk;
  private final Keepers keepers;

  public PlanPages(Pages pages, PlanDesk desk) {
    this.pages = pages;
    this.desk = desk;
    this.keepers = new Keepers(desk, new LastChanges());
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/plan", ctx -> show(ctx, find(ctx), Form.blank(paper(find(ctx), Units.of(ctx)), pages.messages())), Access.OWNER);
    routes.post("/sites/{id}/plan/paper", this::keepPaper, Access.OWNER);
    routes.get("/sites/{id}/plan/paper", this::backToPlan, Access.OWNER);
    routes.post("/sites/{id}/plan/undo", this::undo, Access.OWNER);
    routes.get("/sites/{id}/plan/undo", this::backToPlan, Access.OWNER);
  }

  Keepers keepers() {
    return keepers;
  }

  PlanDesk desk() {
    return desk;
  }

  SitePlan find(Context ctx) {
    return desk.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private void backToPlan(Context ctx) {
    ctx.redirect("/sites/" + Address.id(ctx) + "/plan", HttpStatus.SEE_OTHER);
  }

  private static Map<String, String> paper(SitePlan plan, Units units) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put(LengthFields.UNIT, units.key());
    Paper paper = plan.paper().orElse(Paper.USUAL);
    LengthFields.put(values, "paper-width", paper.widthM(), units);
    LengthFields.put(values, "paper-depth", paper.depthM(), units);
    LengthFields.put(values, "paper-east", paper.middle().xM(), units);
    LengthFields.put(values, "paper-north", paper.middle().yM(), units);
    return values;
  }

  private void keepPaper(Context ctx) {
    SitePlan plan = find(ctx);
    Form form = Form.read(ctx, pages.messages());
    LengthFields lengths = LengthFields.of(form);
    Optional<Double> width = lengths.required("paper-width", Paper.SIDE_M);
    Optional<Double> depth = lengths.required("paper-depth", Paper.SIDE_M);
    Optional<Double> east = lengths.required("paper-east", PlanPoints.REACH_M);
    Optional<Double> north = lengths.required("paper-north", PlanPoints.REACH_M);
    if (form.isRefused()) {
      show(ctx, plan, form);
      return;
    }
    Paper paper = new Paper(new GroundPoint(east.orElseThrow(), north.orElseThrow()), width.orElseThrow(), depth.orElseThrow());
    if (!desk.sheets().keep(plan.site().id(), paper)) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, "/sites/" + plan.site().id() + "/plan", Finding.of("done.plan-paper", ""));
  }

  private void undo(Context ctx) {
    SitePlan plan = find(ctx);
    Optional<LastChanges.Change> change = keepers.lastChanges().take(plan.site().id());
    boolean back = change.filter(c -> c.back().getAsBoolean()).isPresent();
    pages.goOn(ctx, "/sites/" + plan.site().id() + "/plan",
        Finding.of(back ? "done.plan-undone" : "done.plan-not-undone", "", change.map(LastChanges.Change::name).orElse("")));
  }

  /**
   * A shape in the list.
   *
   * @param number under which it may stand on the drawing
   * @param notes what else there is to say
   */
  record Line(int number, String name, String link, String kind, String area, String length, List<String> notes, List<String> warnings) {}

  void show(Context ctx, SitePlan plan, Form form) {
    Units units = Units.of(ctx);
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("isFeet", LengthFields.isFeet(form));
    model.put("siteId", plan.site().id());
    model.put("siteName", plan.site().name());
    model.put("plan", PlanView.of(plan, PlanFrame.of(plan), Optional.empty(), units));
    model.put("planText", text(plan));
    model.put("lines", lines(plan, units));
    model.put("totals", totals(plan, units));
    model.put("unplacedBeds", plan.untraced().stream().filter(bed -> bed.middle().isEmpty()).toList());
    model.put("unplaced", plan.nearby().stream().filter(each -> plan.origin(each).isEmpty()).map(each -> each.name()).collect(Collectors.joining(", ")));
    model.put("kinds", Stream.of(ShapeKind.values()).map(ShapeKind::key).toList());
    model.put("hasPicture", plan.picture().isPresent());
    model.put("placeKnown", isPlaceKnown(plan));
    model.put("lastChange", keepers.lastChanges().of(plan.site().id()).map(c -> pages.messages().say(c.what(), c.name())).orElse(""));
    model.put("fileWrong", form.messageOf("file"));
    if (form.isRefused()) {
      pages.refuse(ctx, "siteplan/plan", model);
    } else {
      pages.show(ctx, "siteplan/plan", model);
    }
  }

  /** A plan page again, with what was wrong with a file that was sent. */
  void refuse(Context ctx, SitePlan plan, List<Finding> findings) {
    Form form = Form.blank(paper(plan, Units.of(ctx)), pages.messages());
    findings.forEach(form::refuse);
    show(ctx, plan, form);
  }

  static boolean isPlaceKnown(SitePlan plan) {
    return plan.site().latitudeDegrees().isPresent() && plan.site().longitudeDegrees().isPresent()
        && LocalPlane.LATITUDE_DEGREES.contains(plan.site().latitudeDegrees().getAsDouble());
  }

  private String text(SitePlan plan) {
    List<PlanShape> shapes = plan.shapes();
    return shapes.isEmpty() ? pages.messages().say("plan.text-empty")
        : pages.messages().say("plan.text", shapes.stream().map(PlanShape::name).collect(Collectors.joining(", ")));
  }

  private List<Line> lines(SitePlan plan, Units units) {
    List<Line> lines = new ArrayList<>();
    List<PlanShape> shapes = plan.shapes();
    for (int i = 0; i < shapes.size(); i++) {
      PlanShape shape = shapes.get(i);
      List<String> notes = new ArrayList<>();
      List<String> warnings = new ArrayList<>();
      if (!shape.traced()) {
        notes.add(pages.messages().say("plan.only-rectangle"));
      }
      if (shape.kind() == ShapeKind.PATH) {
        notes.add(pages.messages().say("plan.width-of", PlanWords.length(shape.breadthM(), units)));
        slope(plan, shape.id(), units).ifPresent(slope -> {
          notes.add(slope.said());
          warnings.addAll(slope.warnings());
        });
      }
      lines.add(new Line(i + 1, shape.name(), ShapePages.address(plan.site().id(), shape.kind()) + "/" + shape.id(),
          pages.messages().say("plan.kind." + shape.kind().key()), PlanWords.area(shape.areaM2(), units),
          shape.kind() == ShapeKind.PATH ? PlanWords.length(shape.lengthM(), units) : "", notes, warnings));
    }
    return lines;
  }

  private List<String> totals(SitePlan plan, Units units) {
    double bedsM2 = plan.beds().stream().mapToDouble(Bed::areaM2).sum();
    double pathsM = plan.paths().stream().mapToDouble(PlanPath::lengthM).sum();
    List<String> totals = new ArrayList<>();
    if (!plan.beds().isEmpty()) {
      totals.add(pages.messages().say("plan.total-beds", plan.beds().size(), PlanWords.area(bedsM2, units)));
    }
    if (!plan.paths().isEmpty()) {
      totals.add(pages.messages().say("plan.total-paths", plan.paths().size(), PlanWords.length(pathsM, units)));
    }
    return totals;
  }

  /** Area and length of a shape in words. */
  String measure(PlanShape shape, Units units) {
    return switch (shape.kind()) {
      case PATH -> pages.messages().say("plan.measure.path", PlanWords.length(shape.lengthM(), units), PlanWords.area(shape.areaM2(), units));
      case TREE -> "";
      default -> pages.messages().say("plan.measure.area", PlanWords.area(shape.areaM2(), units), PlanWords.length(shape.lengthM(), units));
    };
  }

  /** The slope of a path in words, and what is above the limits. */
  record SlopeWords(String said, List<String> warnings) {}

  Optional<SlopeWords> slope(SitePlan plan, long pathId, Units units) {
    return plan.paths().stream().filter(path -> path.id() == pathId).findFirst().flatMap(PathSlope::of).map(slope -> {
      String percent = Units.number(slope.percent(), 1);
      List<String> warnings = slope.warnings().stream().map(warning -> switch (warning) {
        case HARD_TO_WALK -> slope.walkableM() == 0 ? pages.messages().say("plan.slope.too-steep", percent)
            : pages.messages().say("plan.slope.too-long", percent, PlanWords.whole(slope.walkableM(), units), PlanWords.length(slope.lengthM(), units));
        case WASHES_OUT -> pages.messages().say("plan.slope.washes-out", percent);
      }).toList();
      return new SlopeWords(pages.messages().say("plan.slope", percent, Units.number(slope.degrees(), 1), PlanWords.length(slope.riseM(), units)), warnings);
    });
  }
}
