package guildwood.bed.web;

import guildwood.bed.Beds;
import guildwood.site.Sites;
import guildwood.species.SpeciesLibrary;
import guildwood.web.Access;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** The first page: the owner's ground, and the next step for every bed. */
public final class HomePages implements Routes {
  private final Pages pages;
  private final Sites sites;
  private final Beds beds;
  private final Supplier<SpeciesLibrary> library;

  public HomePages(Pages pages, Sites sites, Beds beds, Supplier<SpeciesLibrary> library) {
    this.pages = pages;
    this.sites = sites;
    this.beds = beds;
    this.library = library;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/", this::show, Access.OWNER);
  }

  private void show(Context ctx) {
    List<GroundView> grounds = GroundView.all(sites, beds, Units.of(ctx), pages.messages());
    pages.show(ctx, "bed/home", Map.of(
        "grounds", grounds,
        "species", library.get().species().size(),
        "anyBed", grounds.stream().anyMatch(g -> !g.beds().isEmpty())));
  }
}
