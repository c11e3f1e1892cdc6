package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Evaluator;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.SavedGuild;
import guildwood.guild.Wish;
import guildwood.kernel.Finding;
import guildwood.web.Access;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The guild of a bed: looking at it, and forgetting it. */
public final class GuildPages implements Routes {
  private final Pages pages;
  private final Desk desk;
  private final Drafts drafts;
  private final Compositions compositions;

  public GuildPages(Pages pages, Desk desk, Drafts drafts, Compositions compositions) {
    this.pages = pages;
    this.desk = desk;
    this.drafts = drafts;
    this.compositions = compositions;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{bed}/guild", this::show, Access.OWNER);
    routes.post("/beds/{bed}/guild/remove", this::remove, Access.OWNER);
  }

  private void show(Context ctx) {
    Bench bench = Bench.of(ctx, desk, drafts, pages.messages());
    BedPlan plan = bench.kept();
    Optional<SavedGuild> saved = bench.saved();
    Map<String, Object> model = base(plan);
    GuildWords words = new GuildWords(pages.messages(), plan.library(), Units.of(ctx));
    model.put("musts", plan.wishes().stream().filter(Wish::must).map(words::wish).toList());
    model.put("nices", plan.wishes().stream().filter(w -> !w.must()).map(words::wish).toList());
    model.put("saved", saved.orElse(null));
    model.put("unsaved", bench.isUnsaved());
    if (saved.isPresent()) {
      GuildProblem problem = bench.base();
      Guild guild = saved.get().guild();
      GuildViews views = new GuildViews(pages.messages(), Units.of(ctx), plan, problem);
      model.put("guild", views.view(new Evaluator(problem).evaluate(guild)));
      model.put("gaps", views.gaps(compositions.gaps(problem, guild), guild));
    }
    pages.show(ctx, "guild/guild", model);
  }

  private void remove(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    if (!desk.guilds().remove(plan.bed().id())) {
      throw new NotFoundResponse();
    }
    pages.goOn(ctx, "/beds/" + plan.bed().id() + "/guild", Finding.of("done.guild-removed", ""));
  }

  private static Map<String, Object> base(BedPlan plan) {
    Map<String, Object> model = new HashMap<>();
    model.put("bed", plan.bed());
    model.put("site", plan.site());
    return model;
  }
}
