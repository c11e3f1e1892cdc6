package guildwood.drawing.web;

import guildwood.drawing.Drawings;
import guildwood.drawing.DrawnBed;
import guildwood.drawing.PlantKind;
import guildwood.drawing.Sheet;
import guildwood.drawing.Spot;
import guildwood.guild.BedPlan;
import guildwood.guild.SavedGuild;
import guildwood.guild.web.Desk;
import guildwood.kernel.Finding;
import guildwood.site.sun.GroundPoint;
import guildwood.site.web.LengthFields;
import guildwood.web.Access;
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

/** The drawing of a bed: looking at it year by year, moving plants, arranging them anew, its settings. */
public final class DrawingPages implements Routes {
  /** Where there are more plants, the table of places shows one species at a time. */
  private static final int MOST_ROWS = 80;

  private final Pages pages;
  private final Desk desk;
  private final Drawings drawings;

  public DrawingPages(Pages pages, Desk desk, Drawings drawings) {
    this.pages = pages;
    this.desk = desk;
    this.drawings = drawings;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{bed}/drawing", this::show, Access.OWNER);
    routes.get("/beds/{bed}/drawing.svg", this::picture, Access.OWNER);
    routes.get("/beds/{bed}/drawing/sheet", this::sheet, Access.OWNER);
    routes.post("/beds/{bed}/drawing/move", this::move, Access.OWNER);
    routes.post("/beds/{bed}/drawing/nudge", this::nudge, Access.OWNER);
    routes.post("/beds/{bed}/drawing/places", this::places, Access.OWNER);
    routes.post("/beds/{bed}/drawing/arrange", this::arrange, Access.OWNER);
    routes.post("/beds/{bed}/drawing/settings", this::settings, Access.OWNER);
    // A refused form is shown under these addresses; whoever loads one anew gets the page.
    for (String form : List.of("move", "nudge", "places", "arrange", "settings")) {
      routes.get("/beds/{bed}/drawing/" + form, ctx -> ctx.redirect("/beds/" + desk.plan(ctx).bed().id() + "/drawing", HttpStatus.SEE_OTHER), Access.OWNER);
    }
  }

  private Optional<DrawnBed> find(BedPlan plan) {
    return desk.guilds().saved(plan.bed().id()).map(SavedGuild::guild)
        .flatMap(guild -> drawings.of(plan.bed().id(), guild, desk.problem(plan), plan.library()));
  }

  private DrawnBed drawn(Context ctx) {
    return find(desk.plan(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private void show(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    Optional<DrawnBed> drawn = find(plan);
    if (drawn.isEmpty()) {
      pages.show(ctx, "drawing/none", Map.of("bed", plan.bed(), "site", plan.site(), "saved", desk.guilds().saved(plan.bed().id()).isPresent()));
      return;
    }
    Form asked = Form.blank(Map.of("year", Optional.ofNullable(ctx.queryParam("year")).orElse("")), pages.messages());
    int last = drawn.get().untilGrown();
    int year = asked.wholeNumber("year", 0, 200).stream().map(y -> Math.min(y, last)).findFirst().orElse(last);
    answer(ctx, drawn.get(), year, asked, nothingTyped(ctx), SpotForm.filled(drawn.get(), Units.of(ctx), pages.messages()),
        SettingsForm.filled(drawn.get().settings(), Units.of(ctx), pages.messages()));
  }

  private Form nothingTyped(Context ctx) {
    Units units = Units.of(ctx);
    Map<String, String> values = new HashMap<>(Map.of("spot", Optional.ofNullable(ctx.queryParam("spot")).orElse(""), LengthFields.UNIT, units.key()));
    values.put("step", units == Units.US ? "0.5" : "0.1");
    return Form.blank(values, pages.messages());
  }

  /** The page, or its part that depends on the year and the places. */
  private void answer(Context ctx, DrawnBed drawn, int year, Form asked, Form nudge, Form places, Form settings) {
    Units units = Units.of(ctx);
    Map<String, Object> model = new HashMap<>();
    model.put("bed", drawn.scene().bed());
    model.put("site", drawn.scene().site());
    model.put("last", drawn.untilGrown());
    model.put("yearForm", asked);
    model.put("view", DrawingView.of(drawings, drawn, year, units, pages.messages()));
    model.put("nudge", nudge);
    model.put("plants", drawn.arrangement().spots().stream()
        .map(s -> new Choice(s.id(), DrawingText.plant(drawn.arrangement().kind(s), s) + (s.locked() ? " " + pages.messages().say("drawing.locked") : ""))).toList());
    model.put("untold", String.join(", ", drawn.arrangement().untold().stream().map(s -> DrawingText.plant(drawn.arrangement().kind(s), s)).toList()));
    boolean part = Pages.wantsFragment(ctx);
    if (!part) {
      whole(ctx, model, drawn, places, settings);
    }
    boolean refused = asked.isRefused() || nudge.isRefused() || places.isRefused() || settings.isRefused();
    String template = part ? "drawing/drawing :: plan" : "drawing/drawing";
    if (refused) {
      pages.refuse(ctx, template, model);
    } else {
      pages.show(ctx, template, model);
    }
  }

  /** @param label as a list of choices shows it */
  record Choice(String id, String label) {}

  private void whole(Context ctx, Map<String, Object> model, DrawnBed drawn, Form places, Form settings) {
    boolean many = drawn.arrangement().spots().size() > MOST_ROWS;
    String species = Optional.ofNullable(ctx.queryParam("species")).or(() -> Optional.ofNullable(ctx.formParam("species"))).orElse("");
    List<PlantKind> kinds = drawn.arrangement().kinds();
    String shown = !many ? "" : kinds.stream().map(PlantKind::speciesId).filter(species::equals).findFirst().orElse(kinds.get(0).speciesId());
    model.put("table", DrawingView.table(drawings, drawn, Units.of(ctx), pages.messages()));
    model.put("fillers", drawn.fillers());
    model.put("places", places);
    model.put("species", shown);
    model.put("kinds", many ? kinds.stream().map(k -> new Choice(k.speciesId(), k.name())).toList() : List.of());
    model.put("rows", SpotForm.rows(drawn, shown, pages.messages()));
    model.put("settings", settings);
    model.put("layers", SettingsForm.Row.all(pages.messages()));
    model.put("isFeet", Units.of(ctx) == Units.US);
  }

  private int year(Context ctx, DrawnBed drawn) {
    String asked = Optional.ofNullable(ctx.formParam("year")).or(() -> Optional.ofNullable(ctx.queryParam("year"))).orElse("");
    return asked.matches("\\d{1,3}") ? Math.min(drawn.untilGrown(), Integer.parseInt(asked)) : drawn.untilGrown();
  }

  private void picture(Context ctx) {
    DrawnBed drawn = drawn(ctx);
    int year = year(ctx, drawn);
    ctx.contentType("image/svg+xml; charset=utf-8");
    if (ctx.queryParam("download") != null) {
      ctx.header("Content-Disposition", "attachment; filename=\"bed-" + drawn.scene().bed().id() + "-year-" + year + ".svg\"");
    }
    ctx.result(DrawnPicture.svg(drawn, year, Sheet.of(drawn.arrangement(), isLarge(ctx)), Units.of(ctx), pages.messages()));
  }

  /** The drawing alone, in its own size, for the printer. */
  private void sheet(Context ctx) {
    DrawnBed drawn = drawn(ctx);
    int year = year(ctx, drawn);
    boolean large = isLarge(ctx);
    Sheet sheet = Sheet.of(drawn.arrangement(), large);
    Sheet other = Sheet.of(drawn.arrangement(), !large);
    DrawingView view = DrawingView.of(drawings, drawn, year, Units.of(ctx), pages.messages());
    Map<String, Object> model = new HashMap<>(Map.of("view", view, "bed", drawn.scene().bed(), "paper", sheet.paper().key(),
        "source", view.source() + (large ? "&paper=large" : ""), "scale", DrawnPicture.scale(sheet, pages.messages())));
    model.put("otherPaper", large ? "small" : "large");
    model.put("otherScale", DrawnPicture.scale(other, pages.messages()));
    pages.show(ctx, "drawing/sheet", model);
  }

  private static boolean isLarge(Context ctx) {
    return "large".equals(ctx.queryParam("paper"));
  }

  /** A plant dragged on the drawing: metres east and north of the bed's middle. */
  private void move(Context ctx) {
    DrawnBed drawn = drawn(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<Spot> spot = drawn.arrangement().find(form.value("spot"));
    var east = form.number("east", -2_000, 2_000);
    var north = form.number("north", -2_000, 2_000);
    if (spot.isEmpty() || east.isEmpty() || north.isEmpty()) {
      form.refuse(Finding.of("drawing.no-such-move", "spot"));
      refuse(ctx, drawn, form);
      return;
    }
    moved(ctx, drawn, form, spot.get(), new GroundPoint(east.getAsDouble(), north.getAsDouble()));
  }

  private void nudge(Context ctx) {
    DrawnBed drawn = drawn(ctx);
    Form form = Form.read(ctx, pages.messages());
    Optional<Spot> spot = drawn.arrangement().find(form.value("spot"));
    if (spot.isEmpty()) {
      form.refuse(Finding.of("drawing.no-such-plant", "spot"));
      refuse(ctx, drawn, form);
    } else if (form.value("way").equals("lock")) {
      done(ctx, drawn, form, spot.get().locked(!spot.get().locked()));
    } else {
      Optional<Double> step = LengthFields.of(form).required("step", SpotForm.STEP_M);
      if (step.isEmpty()) {
        refuse(ctx, drawn, form);
      } else {
        moved(ctx, drawn, form, spot.get(), stepped(spot.get().at(), form.value("way"), step.get()));
      }
    }
  }

  private static GroundPoint stepped(GroundPoint at, String way, double step) {
    return switch (way) {
      case "north" -> new GroundPoint(at.xM(), at.yM() + step);
      case "south" -> new GroundPoint(at.xM(), at.yM() - step);
      case "east" -> new GroundPoint(at.xM() + step, at.yM());
      case "west" -> new GroundPoint(at.xM() - step, at.yM());
      default -> throw new NotFoundResponse();
    };
  }

  private void moved(Context ctx, DrawnBed drawn, Form form, Spot spot, GroundPoint to) {
    GroundPoint whole = new GroundPoint(Math.round(to.xM() * 1000) / 1000.0, Math.round(to.yM() * 1000) / 1000.0);
    Optional<GroundPoint> inside = SpotForm.inside(form, drawn, "spot", whole);
    if (inside.isEmpty()) {
      refuse(ctx, drawn, form);
    } else {
      done(ctx, drawn, form, spot.at(inside.get()).locked(true));
    }
  }

  private void done(Context ctx, DrawnBed drawn, Form form, Spot spot) {
    kept(drawings.keep(drawn, List.of(spot)));
    if (Pages.wantsFragment(ctx)) {
      DrawnBed now = drawn(ctx);
      answer(ctx, now, year(ctx, now), Form.blank(Map.of(), pages.messages()), form, form, form);
    } else {
      pages.goOn(ctx, "/beds/" + drawn.scene().bed().id() + "/drawing?year=" + year(ctx, drawn) + "&spot=" + spot.id() + "#plants", Finding.of("done.plant-moved", ""));
    }
  }

  private void refuse(Context ctx, DrawnBed drawn, Form form) {
    answer(ctx, drawn, year(ctx, drawn), Form.blank(Map.of(), pages.messages()), form, SpotForm.filled(drawn, Units.of(ctx), pages.messages()),
        SettingsForm.filled(drawn.settings(), Units.of(ctx), pages.messages()));
  }

  private void places(Context ctx) {
    DrawnBed drawn = drawn(ctx);
    Form form = Form.read(ctx, pages.messages());
    List<Spot> spots = SpotForm.read(form, drawn);
    if (form.isRefused()) {
      answer(ctx, drawn, year(ctx, drawn), Form.blank(Map.of(), pages.messages()), nothingTyped(ctx), form,
          SettingsForm.filled(drawn.settings(), Units.of(ctx), pages.messages()));
      return;
    }
    kept(drawings.keep(drawn, spots));
    pages.goOn(ctx, back(ctx, drawn), Finding.of("done.places-kept", ""));
  }

  private void arrange(Context ctx) {
    DrawnBed drawn = drawn(ctx);
    boolean all = "all".equals(ctx.formParam("what"));
    kept(drawings.arrangeAnew(drawn, all));
    pages.goOn(ctx, back(ctx, drawn), Finding.of("done.arranged", ""));
  }

  private void settings(Context ctx) {
    DrawnBed drawn = drawn(ctx);
    Form form = Form.read(ctx, pages.messages());
    var settings = SettingsForm.read(form, drawn.settings());
    if (settings.isEmpty()) {
      answer(ctx, drawn, year(ctx, drawn), Form.blank(Map.of(), pages.messages()), nothingTyped(ctx), SpotForm.filled(drawn, Units.of(ctx), pages.messages()), form);
      return;
    }
    kept(drawings.spots().keep(drawn.scene().bed().id(), drawn.arrangement().spots(), settings.get()));
    pages.goOn(ctx, back(ctx, drawn), Finding.of("done.drawing-settings", ""));
  }

  private String back(Context ctx, DrawnBed drawn) {
    String species = Optional.ofNullable(ctx.formParam("species")).filter(s -> s.matches("[a-z0-9-]{1,120}")).map(s -> "&species=" + s).orElse("");
    return "/beds/" + drawn.scene().bed().id() + "/drawing?year=" + year(ctx, drawn) + species;
  }

  private static void kept(boolean kept) {
    if (!kept) {
      throw new NotFoundResponse();
    }
  }
}
