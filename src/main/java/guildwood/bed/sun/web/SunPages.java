package guildwood.bed.sun.web;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.bed.sun.BedSun;
import guildwood.bed.sun.CellSize;
import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.bed.sun.SunOffer;
import guildwood.bed.sun.SunReadings;
import guildwood.bed.sun.SunScenes;
import guildwood.bed.sun.SunScenes.BedScene;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.Condition;
import guildwood.site.LengthReader;
import guildwood.site.sun.Building;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.ScenePlan;
import guildwood.site.sun.SunMap;
import guildwood.site.web.LengthFields;
import guildwood.species.ClassWords;
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
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sun on a bed: its map, its months, what blocks it, and taking it over as the bed's light. */
public final class SunPages implements Routes {
  private static final Range CELL_M = new Range(0.01, 1_000);
  private static final int LIMITS = 10;

  private final Pages pages;
  private final SunScenes scenes;
  private final Beds beds;
  private final SunReadings readings = new SunReadings();

  public SunPages(Pages pages, SunScenes scenes, Beds beds) {
    this.pages = pages;
    this.scenes = scenes;
    this.beds = beds;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{id}/sun", this::show, Access.OWNER);
    routes.get("/beds/{id}/sun/map.svg", this::map, Access.OWNER);
    routes.get("/beds/{id}/sun/plan.svg", this::plan, Access.OWNER);
    routes.post("/beds/{id}/sun/use", this::use, Access.OWNER);
    // A refused take-over is shown under this address; whoever loads it anew gets the page.
    routes.get("/beds/{id}/sun/use", ctx -> ctx.redirect("/beds/" + Address.id(ctx) + "/sun", HttpStatus.SEE_OTHER), Access.OWNER);
  }

  private BedScene scene(Context ctx) {
    return scenes.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  /** The sun with the usual cells. */
  private Optional<BedSun> usual(BedScene scene) {
    return scene.scene().map(known ->
        readings.of(known, scene.bed().ground(), scene.outline(), CellSize.usualM(scene.bed().ground(), known.obstacles().size())));
  }

  private void show(Context ctx) {
    BedScene scene = scene(ctx);
    Form form = Form.blank(Map.of(
        "cell", Optional.ofNullable(ctx.queryParam("cell")).orElse(""),
        LengthFields.UNIT, Optional.ofNullable(ctx.queryParam(LengthFields.UNIT)).orElse(Units.of(ctx).key())), pages.messages());
    Optional<Double> cellM = form.value("cell").isBlank() ? Optional.empty() : cell(form, scene);
    Optional<BedSun> sun = cellM.isPresent() ? scene.scene().map(known -> readings.of(known, scene.bed().ground(), scene.outline(), cellM.get())) : usual(scene);
    show(ctx, scene, sun, form, "");
  }

  /** The size of cells asked for; absent where it is refused. */
  private Optional<Double> cell(Form form, BedScene scene) {
    return LengthFields.of(form).required("cell", CELL_M).flatMap(metres -> {
      Checked<Double> checked = CellSize.check(scene.bed().ground(), scene.around().placed().size(), metres, "cell");
      checked.findings().forEach(f -> form.refuse(inUnits(f, LengthFields.isFeet(form))));
      return checked.value();
    });
  }

  /** The last value of a finding about cells is a length in metres; it is told rounded to the safe side. */
  private static Finding inUnits(Finding finding, boolean feet) {
    List<String> args = new java.util.ArrayList<>(finding.args());
    double metres = Double.parseDouble(args.remove(args.size() - 1));
    double number = metres / (feet ? LengthReader.FOOT_M : 1) * 100;
    double safe = (finding.code().equals("sun.cells-too-wide") ? Math.floor(number + 1e-6) : Math.ceil(number - 1e-6)) / 100;
    args.add(Units.number(safe, 2) + (feet ? " ft" : " m"));
    return new Finding(finding.code(), finding.field(), args);
  }

  private void show(Context ctx, BedScene scene, Optional<BedSun> sun, Form form, String refusal) {
    Units units = Units.of(ctx);
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("bedId", scene.bed().id());
    model.put("bedName", scene.bed().name());
    model.put("siteId", scene.site().id());
    model.put("siteName", scene.site().name());
    model.put("known", sun.isPresent());
    sun.ifPresent(s -> {
      model.put("sun", SunView.of(scene, s, units, pages.messages()));
      model.put("offer", OfferView.of(scene, usual(scene).orElseThrow(), units, pages.messages()));
      model.put("map", "/beds/" + scene.bed().id() + "/sun/map.svg" + (form.isRefused() || form.value("cell").isBlank() ? ""
          : "?cell=" + s.grid().cellM()));
    });
    model.put("season", pages.messages().say("sun.season." + scene.season().known().key(), SunWords.season(scene.season().days())));
    model.put("rows", BlockerRow.all(scene, sun, units, pages.messages()));
    model.put("anyTree", scene.around().placed().stream().anyMatch(p -> p.nearby().body() instanceof Crown));
    model.put("open", scene.isOpen());
    int onPlan = ScenePlan.shown(scene.outline(), scene.around().obstacles()).size();
    model.put("onPlan", onPlan);
    model.put("planText", planText(scene));
    model.put("beyondPlan", scene.around().obstacles().size() - onPlan);
    model.put("covered", covered(scene));
    model.put("unplaced", String.join(", ", scene.around().unplaced().stream().map(Nearby::name).toList()));
    model.put("sizeKnown", scene.bed().size().isPresent());
    model.put("longitudeKnown", scene.site().longitudeDegrees().isPresent());
    model.put("isFeet", LengthFields.isFeet(form));
    model.put("year", Integer.toString(scene.year()));
    model.put("scheme", ClassWords.LIGHT_SCHEME);
    model.put("limits", java.util.stream.IntStream.rangeClosed(1, LIMITS).mapToObj(i -> pages.messages().say("sun.limit." + i)).toList());
    model.put("refusal", refusal);
    if (form.isRefused() || !refusal.isEmpty()) {
      pages.refuse(ctx, "sun/sun", model);
    } else {
      pages.show(ctx, "sun/sun", model);
    }
  }

  /** Names of buildings that stand over the middle of the bed, which can hardly be meant. */
  private static String covered(BedScene scene) {
    return String.join(", ", scene.around().obstacles().stream()
        .filter(o -> o instanceof Building building && building.footprint().holds(0, 0)).map(o -> o.label()).toList());
  }

  private void map(Context ctx) {
    BedScene scene = scene(ctx);
    String cell = ctx.queryParam("cell");
    Optional<BedSun> sun = cell == null ? usual(scene) : withCells(scene, cell);
    BedSun drawn = sun.orElseThrow(NotFoundResponse::new);
    SunWords words = new SunWords(pages.messages().say("sun.map.title", scene.bed().name()),
        SunView.description(scene, drawn, pages.messages()), Units.of(ctx), pages.messages());
    ctx.contentType("image/svg+xml; charset=utf-8");
    ctx.result(SunMap.draw(drawn.grid(), drawn.hours(), Optional.of(drawn.outline()), words, "sun"));
  }

  /** Where everything stands; it needs no latitude. */
  private void plan(Context ctx) {
    BedScene scene = scene(ctx);
    SunWords words = new SunWords(pages.messages().say("sun.plan.title", scene.bed().name()), planText(scene), Units.of(ctx), pages.messages());
    ctx.contentType("image/svg+xml; charset=utf-8");
    ctx.result(ScenePlan.draw(scene.outline(), scene.bed().name(), scene.around().obstacles(), words, "plan"));
  }

  private String planText(BedScene scene) {
    List<Obstacle> shown = ScenePlan.shown(scene.outline(), scene.around().obstacles());
    return pages.messages().say("sun.plan.text", scene.bed().name(), String.join(", ", shown.stream().map(Obstacle::label).toList()));
  }

  private Optional<BedSun> withCells(BedScene scene, String metres) {
    if (!metres.matches("\\d{1,4}\\.\\d{1,18}")) {
      return Optional.empty();
    }
    return CellSize.check(scene.bed().ground(), scene.around().placed().size(), Double.parseDouble(metres), "cell").value()
        .flatMap(cellM -> scene.scene().map(known -> readings.of(known, scene.bed().ground(), scene.outline(), cellM)));
  }

  private void use(Context ctx) {
    BedScene scene = scene(ctx);
    Optional<BedSun> sun = usual(scene);
    Form form = Form.blank(Map.of(LengthFields.UNIT, Units.of(ctx).key()), pages.messages());
    if (sun.isEmpty()) {
      show(ctx, scene, sun, form, pages.messages().say("sun.no-latitude"));
      return;
    }
    Condition offer = SunOffer.of(sun.get());
    // What is measured meanwhile still outranks the reckoning: it is looked at again in the change itself.
    Bed after = beds.change(scene.bed().id(), now -> SunOffer.isOutranked(now) ? now : now.withCondition(offer)).orElseThrow(NotFoundResponse::new);
    if (SunOffer.isOutranked(after)) {
      show(ctx, scene(ctx), sun, form, pages.messages().say("sun.outranked"));
      return;
    }
    pages.goOn(ctx, "/beds/" + scene.bed().id(), Finding.of("done.sun-used", "", SunWords.hours(offer.range().min(), offer.range().max())));
  }
}
