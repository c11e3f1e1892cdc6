package guildwood.bed.web;

import guildwood.bed.Bed;
import guildwood.bed.Beds;
import guildwood.bed.Beds.Belongings;
import guildwood.bed.sun.Surroundings;
import guildwood.kernel.Finding;
import guildwood.site.PhClass;
import guildwood.site.Site;
import guildwood.site.Sites;
import guildwood.site.survey.SurveyStore;
import guildwood.species.ClassWords;
import guildwood.web.Access;
import guildwood.web.Address;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;

/** Looking at sites with their beds, and removing a site with all that belongs to it. */
public final class SitePages implements Routes {
  private final Pages pages;
  private final Sites sites;
  private final Beds beds;
  private final Surroundings surroundings;
  private final SurveyStore surveys;
  private final LongFunction<List<Finding>> otherLosses;

  /** @param otherLosses what later features keep about a site and lose with it, a sentence each */
  public SitePages(Pages pages, Sites sites, Beds beds, Surroundings surroundings, SurveyStore surveys,
      LongFunction<List<Finding>> otherLosses) {
    this.pages = pages;
    this.sites = sites;
    this.beds = beds;
    this.surroundings = surroundings;
    this.surveys = surveys;
    this.otherLosses = otherLosses;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/sites", this::list, Access.OWNER);
    routes.get("/sites/{id}", this::show, Access.OWNER);
    routes.get("/sites/{id}/remove", this::askToRemove, Access.OWNER);
    routes.post("/sites/{id}/remove", this::remove, Access.OWNER);
  }

  private void list(Context ctx) {
    pages.show(ctx, "bed/sites", Map.of("grounds", GroundView.all(sites, beds, Units.of(ctx), pages.messages())));
  }

  private void show(Context ctx) {
    pages.show(ctx, "bed/site", Map.of("ground", ground(ctx), "lightScheme", ClassWords.LIGHT_SCHEME, "phScheme", PhClass.SCHEME));
  }

  private void askToRemove(Context ctx) {
    GroundView ground = ground(ctx);
    Belongings belongings = beds.ofSite(ground.site().id()).stream().map(Bed::id).map(beds::belongings)
        .reduce(new Belongings(0, 0, 0), Belongings::plus);
    int plants = ground.beds().stream().mapToInt(BedView::plants).sum();
    List<String> losses = new ArrayList<>(Losses.inWords(belongings, plants, surroundings.ofSite(ground.site().id()).size(),
        surveys.ofSite(ground.site().id()).size(), pages.messages()));
    otherLosses.apply(ground.site().id()).forEach(loss -> losses.add(pages.messages().say(loss)));
    pages.show(ctx, "bed/site-remove", Map.of("ground", ground, "losses", losses));
  }

  private void remove(Context ctx) {
    Site site = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    if (!sites.remove(site.id())) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, "/sites", Finding.of("done.site-removed", "", site.name()));
  }

  private GroundView ground(Context ctx) {
    Site site = sites.find(Address.id(ctx)).orElseThrow(NotFoundResponse::new);
    return GroundView.of(site, beds.ofSite(site.id()), Units.of(ctx), pages.messages());
  }
}
