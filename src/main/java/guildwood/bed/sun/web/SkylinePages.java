package guildwood.bed.sun.web;

import guildwood.bed.sun.Skyline;
import guildwood.bed.sun.SunScenes;
import guildwood.bed.sun.SunScenes.BedScene;
import guildwood.bed.sun.Surroundings;
import guildwood.kernel.Finding;
import guildwood.site.sun.HorizonPoint;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Telling how high the skyline stands in eight directions, for the whole site or for one bed. */
public final class SkylinePages implements Routes {
  private static final String SITE = "site";
  private static final String BED = "bed";

  private final Pages pages;
  private final SunScenes scenes;
  private final Surroundings surroundings;

  public SkylinePages(Pages pages, SunScenes scenes, Surroundings surroundings) {
    this.pages = pages;
    this.scenes = scenes;
    this.surroundings = surroundings;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{id}/sun/horizon", this::ask, Access.OWNER);
    routes.post("/beds/{id}/sun/horizon", this::keep, Access.OWNER);
  }

  private BedScene scene(Context ctx) {
    return scenes.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
  }

  private void ask(Context ctx) {
    BedScene scene = scene(ctx);
    Map<String, String> values = new HashMap<>(Map.of("scope", scene.ownSkyline() ? BED : SITE));
    for (int i = 0; i < Skyline.DIRECTIONS.size(); i++) {
      double degrees = scene.skyline().degrees().get(i);
      values.put(Skyline.DIRECTIONS.get(i), degrees == 0 ? "" : Units.number(degrees, 4));
    }
    show(ctx, scene, Form.blank(values, pages.messages()));
  }

  private void keep(Context ctx) {
    BedScene scene = scene(ctx);
    Form form = Form.read(ctx, pages.messages());
    List<Double> degrees = Skyline.DIRECTIONS.stream()
        .map(direction -> form.number(direction, HorizonPoint.ELEVATION_DEGREES.min(), HorizonPoint.ELEVATION_DEGREES.max()).orElse(0)).toList();
    if (!List.of(SITE, BED).contains(form.value("scope"))) {
      form.refuse(Finding.of("value.missing", "scope"));
    }
    if (form.isRefused()) {
      show(ctx, scene, form);
      return;
    }
    Skyline skyline = new Skyline(degrees);
    boolean kept = form.value("scope").equals(SITE)
        ? surroundings.keepForSite(scene.site().id(), scene.bed().id(), skyline)
        : surroundings.keepForBed(scene.bed().id(), skyline);
    if (!kept) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, "/beds/" + scene.bed().id() + "/sun", Finding.of("done.skyline-kept", ""));
  }

  private void show(Context ctx, BedScene scene, Form form) {
    Map<String, Object> model = new HashMap<>();
    model.put("form", form);
    model.put("directions", Skyline.DIRECTIONS);
    model.put("scopes", List.of(SITE, BED));
    model.put("bedId", scene.bed().id());
    model.put("bedName", scene.bed().name());
    model.put("siteId", scene.site().id());
    model.put("siteName", scene.site().name());
    if (form.isRefused()) {
      pages.refuse(ctx, "sun/skyline", model);
    } else {
      pages.show(ctx, "sun/skyline", model);
    }
  }
}
