package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.web.Access;
import guildwood.web.Messages;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Two guilds of one bed side by side: two proposals, or one of them and the saved guild or the draft. */
public final class ComparePages implements Routes {
  private final Pages pages;
  private final Desk desk;
  private final Compositions compositions;
  private final NamedGuilds named;

  public ComparePages(Pages pages, Desk desk, Drafts drafts, Compositions compositions) {
    this.pages = pages;
    this.desk = desk;
    this.compositions = compositions;
    this.named = new NamedGuilds(pages.messages(), desk, drafts, compositions);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{bed}/guild/compare", this::show, Access.OWNER);
  }

  private void show(Context ctx) {
    String oneKey = Objects.requireNonNullElse(ctx.queryParam("one"), "");
    String otherKey = Objects.requireNonNullElse(ctx.queryParam("other"), "");
    BedPlan now = desk.plan(ctx);
    if (ctx.queryParam("one") == null && ctx.queryParam("other") == null) {
      choose(ctx, now);
      return;
    }
    if (named.isGone(ctx, oneKey) || named.isGone(ctx, otherKey)) {
      NamedGuilds.saySo(ctx, pages);
      return;
    }
    NamedGuild one = named.find(ctx, oneKey);
    NamedGuild other = named.find(ctx, otherKey);
    // A proposal is judged by what was asked when it was composed, and so is what stands beside it.
    NamedGuild judge = one.run().isPresent() || other.run().isEmpty() ? one : other;
    Messages messages = pages.messages();
    GuildViews views = new GuildViews(messages, Units.of(ctx), judge.plan(), judge.problem());
    Map<String, Object> model = new HashMap<>();
    model.put("bed", now.bed());
    model.put("site", now.site());
    model.put("same", one.key().equals(other.key()));
    model.put("view", new Comparison(messages, views, judge.problem(), one, other).view());
    Optional<String> run = judge.run().map(r -> judge.key().substring(0, judge.key().indexOf('.')));
    model.put("runPath", run.map(key -> "/beds/" + now.bed().id() + "/guild/proposals/" + key).orElse(""));
    model.put("choices", named.choices(ctx, run));
    model.put("judgedBefore", judge.run().isPresent() && !askedTheSame(judge.plan(), now));
    pages.show(ctx, "guild/compare", model);
  }

  /** Asks which two, where the address names none. */
  private void choose(Context ctx, BedPlan plan) {
    Map<String, Object> model = new HashMap<>();
    model.put("bed", plan.bed());
    model.put("site", plan.site());
    model.put("choices", named.choices(ctx, compositions.latest(plan.bed().id())));
    pages.show(ctx, "guild/compare-choose", model);
  }

  private static boolean askedTheSame(BedPlan then, BedPlan now) {
    return then.wishes().equals(now.wishes()) && then.conditions().equals(now.conditions())
        && then.bed().areaM2() == now.bed().areaM2()
        && then.rules().withBanned(java.util.Set.of()).withPinned(Map.of())
            .equals(now.rules().withBanned(java.util.Set.of()).withPinned(Map.of()));
  }
}
