package guildwood.workplan.web;

import guildwood.web.Access;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where the plants of a site's guilds come from: there, on hand, raised, bought. */
public final class PlantsPages implements Routes {
  private final Pages pages;
  private final WorkDesk desk;

  public PlantsPages(Pages pages, WorkDesk desk) {
    this.pages = pages;
    this.desk = desk;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites/{id}/plants", this::show, Access.OWNER);
  }

  private void show(Context ctx) {
    SiteAtWork site = desk.atWork(ctx);
    WorkWords words = new WorkWords(pages.messages(), Units.of(ctx));
    List<PlantView> plants = site.jobs().stream().map(job -> PlantView.of(job, site, words, pages.messages())).toList();
    Map<String, Object> model = new HashMap<>();
    model.put("site", site.site());
    model.put("bed", site.bed().orElse(null));
    model.put("at", site);
    model.put("plants", plants);
    pages.show(ctx, "workplan/plants", model);
  }
}
