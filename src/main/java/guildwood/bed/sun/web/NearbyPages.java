package guildwood.bed.sun.web;

import guildwood.bed.sun.AroundBed;
import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.bed.sun.SunScenes;
import guildwood.bed.sun.SunScenes.BedScene;
import guildwood.bed.sun.Surroundings;
import guildwood.kernel.Finding;
import guildwood.site.sun.GroundPoint;
import guildwood.site.web.LengthFields;
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
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Recording the trees and buildings around a bed, changing and removing them. */
public final class NearbyPages implements Routes {
  private final Pages pages;
  private final SunScenes scenes;
  private final Surroundings surroundings;

  public NearbyPages(Pages pages, SunScenes scenes, Surroundings surroundings) {
    this.pages = pages;
    this.scenes = scenes;
    this.surroundings = surroundings;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{id}/sun/trees/new", ctx -> askForNew(ctx, true), Access.OWNER);
    routes.post("/beds/{id}/sun/trees/new", ctx -> add(ctx, true), Access.OWNER);
    routes.get("/beds/{id}/sun/buildings/new", ctx -> askForNew(ctx, false), Access.OWNER);
    routes.post("/beds/{id}/sun/buildings/new", ctx -> add(ctx, false), Access.OWNER);
    routes.get("/beds/{id}/sun/nearby/{nearby}", this::edit, Access.OWNER);
    routes.post("/beds/{id}/sun/nearby/{nearby}", this::change, Access.OWNER);
    routes.post("/beds/{id}/sun/nearby/{nearby}/remove", this::remove, Access.OWNER);
    // Whoever loads the address of a refused removal anew gets the form.
    routes.get("/beds/{id}/sun/nearby/{nearby}/remove", ctx -> ctx.redirect(
        "/beds/" + Address.id(ctx) + "/sun/nearby/" + Address.number(ctx, "nearby"), HttpStatus.SEE_OTHER), Access.OWNER);
  }

  private BedScene scene(Context ctx) {
    return scenes.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private AroundBed.Placed placed(Context ctx, BedScene scene) {
    return scene.around().find(Address.number(ctx, "nearby")).orElseThrow(NotFoundResponse::new);
  }

  private void askForNew(Context ctx, boolean tree) {
    BedScene scene = scene(ctx);
    long sameKind = surroundings.ofSite(scene.site().id()).stream().filter(n -> n.body() instanceof Crown == tree).count();
    String name = pages.messages().say(tree ? "nearby.tree.n" : "nearby.building.n", sameKind + 1);
    Form form = Form.blank(NearbyForm.blank(tree, name, Pace.of(ctx), Units.of(ctx)), pages.messages());
    show(ctx, scene, tree, form, Optional.empty());
  }

  private void add(Context ctx, boolean tree) {
    BedScene scene = scene(ctx);
    Form form = Form.read(ctx, pages.messages());
    NearbyForm fields = new NearbyForm(form, tree, Optional.empty(), Pace.of(ctx));
    if (asksToReckon(form)) {
      reckon(ctx, scene, tree, form, fields, Optional.empty());
      return;
    }
    Optional<NearbyForm.Placed> read = fields.read();
    if (surroundings.ofSite(scene.site().id()).size() >= Nearby.MOST_ON_A_SITE) {
      form.refuse(Finding.of("nearby.too-many", "", Nearby.MOST_ON_A_SITE));
    }
    if (form.isRefused()) {
      show(ctx, scene, tree, form, Optional.empty());
      return;
    }
    NearbyForm.Placed placed = read.orElseThrow();
    surroundings.add(new Nearby(0, scene.site().id(), OptionalLong.of(scene.bed().id()), placed.name(), placed.at(), placed.height(), placed.body()))
        .orElseThrow(NotFoundResponse::new);
    Pace.remember(ctx, fields.paceM());
    pages.goOn(ctx, "/beds/" + scene.bed().id() + "/sun", Finding.of("done.nearby-added", "", placed.name()));
  }

  private void edit(Context ctx) {
    BedScene scene = scene(ctx);
    AroundBed.Placed placed = placed(ctx, scene);
    Form form = Form.blank(NearbyForm.filled(fieldsOf(placed), Pace.of(ctx), Units.of(ctx)), pages.messages());
    show(ctx, scene, placed.nearby().body() instanceof Crown, form, Optional.of(placed.nearby()));
  }

  private static NearbyForm.Placed fieldsOf(AroundBed.Placed placed) {
    Nearby nearby = placed.nearby();
    return new NearbyForm.Placed(nearby.name(), placed.at(), nearby.height(), nearby.body());
  }

  private void change(Context ctx) {
    BedScene scene = scene(ctx);
    AroundBed.Placed before = placed(ctx, scene);
    boolean tree = before.nearby().body() instanceof Crown;
    Form form = Form.read(ctx, pages.messages());
    NearbyForm fields = new NearbyForm(form, tree, Optional.of(fieldsOf(before)), Pace.of(ctx));
    if (asksToReckon(form)) {
      reckon(ctx, scene, tree, form, fields, Optional.of(before.nearby()));
      return;
    }
    Optional<NearbyForm.Placed> read = fields.read();
    if (read.isEmpty()) {
      show(ctx, scene, tree, form, Optional.of(before.nearby()));
      return;
    }
    NearbyForm.Placed after = read.get();
    // Kept as seen from where it was measured, whichever bed's page it was changed on.
    GroundPoint at = new GroundPoint(after.at().xM() - before.origin().xM(), after.at().yM() - before.origin().yM());
    surroundings.change(before.nearby().id(), now ->
        new Nearby(now.id(), now.siteId(), now.fromBed(), after.name(), at, after.height(), after.body())).orElseThrow(NotFoundResponse::new);
    Pace.remember(ctx, fields.paceM());
    pages.goOn(ctx, "/beds/" + scene.bed().id() + "/sun", Finding.of("done.nearby-changed", "", after.name()));
  }

  private void remove(Context ctx) {
    BedScene scene = scene(ctx);
    Nearby nearby = placed(ctx, scene).nearby();
    if (!surroundings.remove(nearby.id())) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, "/beds/" + scene.bed().id() + "/sun", Finding.of("done.nearby-removed", "", nearby.name()));
  }

  private static boolean asksToReckon(Form form) {
    return form.value("do").equals("reckon");
  }

  /** Works out height and place and shows them, without keeping anything. */
  private void reckon(Context ctx, BedScene scene, boolean tree, Form form, NearbyForm fields, Optional<Nearby> before) {
    Map<String, Object> model = model(ctx, scene, tree, form, before);
    NearbyForm.Reckoned reckoned = fields.reckon();
    Units units = LengthFields.isFeet(form) ? Units.US : Units.METRIC;
    model.put("reckonedHeight", reckoned.height().map(h -> height(h, units)).orElse(""));
    model.put("reckonedPlace", reckoned.at().map(at -> pages.messages().say("nearby.place-is",
        SunWords.east(at, units), SunWords.north(at, units), SunWords.whereabouts(at, units))).orElse(""));
    model.put("reckoned", true);
    if (Pages.wantsFragment(ctx)) {
      pages.show(ctx, "sun/nearby :: reckoned", model);
    } else if (form.isRefused()) {
      pages.refuse(ctx, "sun/nearby", model);
    } else {
      pages.show(ctx, "sun/nearby", model);
    }
  }

  private String height(Nearby.Height height, Units units) {
    String metres = SunWords.metres(height.metres(), units);
    return height.paced().map(p -> pages.messages().say("nearby.height-paced", SunWords.metres(p.distanceM(), units),
            Units.number(p.angleDegrees(), 1), SunWords.metres(p.eyeHeightM(), units), metres))
        .orElseGet(() -> pages.messages().say("nearby.height-is", metres));
  }

  private Map<String, Object> model(Context ctx, BedScene scene, boolean tree, Form form, Optional<Nearby> before) {
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("isNew", before.isEmpty());
    model.put("isTree", tree);
    model.put("name", before.map(Nearby::name).orElse(""));
    model.put("action", before.map(n -> "/beds/" + scene.bed().id() + "/sun/nearby/" + n.id())
        .orElse("/beds/" + scene.bed().id() + (tree ? "/sun/trees/new" : "/sun/buildings/new")));
    model.put("bedId", scene.bed().id());
    model.put("bedName", scene.bed().name());
    model.put("siteId", scene.site().id());
    model.put("siteName", scene.site().name());
    model.put("isFeet", LengthFields.isFeet(form));
    model.put("measuredTo", GroundPlanFields.MEASURED_TO);
    model.put("cornersOpen", form.ticked("corners"));
    model.put("surveyedOpen", form.ticked("east") || form.ticked("north"));
    model.put("reckoned", false);
    model.put("reckonedHeight", "");
    model.put("reckonedPlace", "");
    return model;
  }

  private void show(Context ctx, BedScene scene, boolean tree, Form form, Optional<Nearby> before) {
    Map<String, Object> model = model(ctx, scene, tree, form, before);
    if (form.isRefused()) {
      pages.refuse(ctx, "sun/nearby", model);
    } else {
      pages.show(ctx, "sun/nearby", model);
    }
  }
}
