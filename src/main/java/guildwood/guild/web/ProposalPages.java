package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Composition;
import guildwood.guild.Evaluator;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Proposal;
import guildwood.guild.SavedGuild;
import guildwood.kernel.Finding;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Composing a guild, watching it, looking at the proposals and taking one. */
public final class ProposalPages implements Routes {
  private final Pages pages;
  private final Desk desk;
  private final Compositions compositions;
  private final Drafts drafts;
  private final CharacterWords characters;
  private final Clock clock;

  public ProposalPages(Pages pages, Desk desk, Compositions compositions, Drafts drafts, Clock clock) {
    this.pages = pages;
    this.desk = desk;
    this.compositions = compositions;
    this.drafts = drafts;
    this.characters = new CharacterWords(pages.messages());
    this.clock = clock;
  }

  /** A proposal in a list: what it scores, how sure that is, and what sets it apart. */
  public record Card(int number, String key, String code, String character, String numbers, String rounded, String bound,
      boolean proven, String species, String plants, String from, String cost, List<String> unmet) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.post("/beds/{bed}/guild/compose", this::compose, Access.OWNER);
    routes.get("/beds/{bed}/guild/proposals/{run}", this::list, Access.OWNER);
    routes.post("/beds/{bed}/guild/proposals/{run}/stop", this::stop, Access.OWNER);
    routes.get("/beds/{bed}/guild/proposals/{run}/{number}", this::look, Access.OWNER);
    routes.post("/beds/{bed}/guild/proposals/{run}/{number}", this::take, Access.OWNER);
    routes.get("/beds/{bed}/guild/proposals/{run}/{number}/replace", this::ask, Access.OWNER);
  }

  private void compose(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    String run = compositions.start(plan, desk.problem(plan));
    ctx.redirect(path(plan, run), HttpStatus.SEE_OTHER);
  }

  private void list(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    Optional<Compositions.Run> found = run(ctx, plan);
    if (found.isEmpty()) {
      return;
    }
    Compositions.Run run = found.get();
    Compositions.State state = run.state();
    Map<String, Object> model = base(run);
    model.put("percent", state.percent());
    model.put("done", state.isDone());
    model.put("failed", state.failed());
    model.put("runPath", path(plan, ctx.pathParam("run")));
    GuildViews views = views(ctx, run);
    model.put("best", state.best().map(g -> names(views, g)).orElse(""));
    model.put("bestPoints", Units.number(state.totalMilli() / 1000.0, 1));
    model.put("cards", state.composition().map(c -> cards(c, views, ctx.pathParam("run"))).orElse(List.of()));
    state.composition().ifPresent(c -> model.put("gaps", views.gaps(gaps(run, c.best()), c.best().guild())));
    model.put("held", names(views, run.held()));
    model.put("compare", state.isDone() ? named(ctx) : List.of());
    model.put("wishCount", run.problem().wishes().size());
    boolean fragment = Pages.wantsFragment(ctx) && !state.isDone();
    boolean asksForGaps = "gaps".equals(ctx.header("HX-Target"));
    if (Pages.wantsFragment(ctx) && state.isDone() && !asksForGaps) {
      ctx.header("HX-Refresh", "true");
    }
    pages.show(ctx, fragment ? "guild/proposals :: progress" : "guild/proposals", model);
  }

  /** What can be set side by side: all proposals, the saved guild, the draft. */
  private List<WishPages.Choice> named(Context ctx) {
    return new NamedGuilds(pages.messages(), desk, drafts, compositions).choices(ctx, Optional.of(ctx.pathParam("run")));
  }

  private List<Card> cards(Composition composition, GuildViews views, String run) {
    List<Card> cards = new ArrayList<>();
    for (Proposal proposal : composition.proposals()) {
      cards.add(card(run, cards.size() + 1, proposal, composition, views));
    }
    return cards;
  }

  private Card card(String run, int number, Proposal proposal, Composition composition, GuildViews views) {
    GuildView view = views.view(proposal.evaluation());
    return new Card(number, run + "." + number, GuildCode.of(proposal.guild()), characters.name(proposal),
        characters.numbers(proposal, composition.proposals()), view.rounded(), bound(proposal), proposal.provenBest(), names(views, proposal.guild()), view.plants(), view.from(), view.cost(),
        proposal.score().unmetWishes().stream().map(views.words()::wish).toList());
  }

  private String bound(Proposal proposal) {
    return proposal.provenBest()
        ? pages.messages().say("proposal.proven")
        : pages.messages().say("proposal.bound", Units.number(proposal.mostBelowBestMilli() / 1000.0, 2),
            Units.number(proposal.upperBoundMilli() / 1000.0, 2));
  }

  private static String names(GuildViews views, Guild guild) {
    return String.join(", ", guild.counts().entrySet().stream()
        .map(e -> e.getValue() + " × " + views.words().name(e.getKey())).toList());
  }

  private void stop(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    run(ctx, plan).ifPresent(run -> {
      run.cancel();
      ctx.redirect(path(plan, ctx.pathParam("run")), HttpStatus.SEE_OTHER);
    });
  }

  private void look(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    run(ctx, plan).ifPresent(run -> look(ctx, plan, run));
  }

  private void look(Context ctx, BedPlan plan, Compositions.Run run) {
    Proposal proposal = proposal(ctx, run);
    GuildViews views = views(ctx, run);
    Map<String, Object> model = base(run);
    model.put("number", Desk.idOf(ctx.pathParam("number")));
    model.put("runPath", path(plan, ctx.pathParam("run")));
    model.put("guild", views.view(proposal.evaluation()));
    model.put("character", characters.name(proposal));
    model.put("characterNumbers", characters.numbers(proposal, run.state().composition().orElseThrow().proposals()));
    model.put("key", ctx.pathParam("run") + "." + model.get("number"));
    model.put("code", GuildCode.of(proposal.guild()));
    model.put("bound", bound(proposal));
    model.put("gaps", views.gaps(gaps(run, proposal), proposal.guild()));
    pages.show(ctx, "guild/proposal", model);
  }

  /** Those of the best come with it, unless it was stopped before. */
  private KnownGaps.Answer gaps(Compositions.Run run, Proposal proposal) {
    Composition composition = run.state().composition().orElseThrow();
    return proposal.equals(composition.best()) && !composition.cancelled() ? KnownGaps.Answer.known(composition.gaps())
        : compositions.gaps(run.problem(), proposal.guild());
  }

  private void take(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    run(ctx, plan).ifPresent(run -> take(ctx, plan, proposal(ctx, run)));
  }

  /** Saves at once where nothing is lost; otherwise asks first, and again where another guild was saved meanwhile. */
  private void take(Context ctx, BedPlan plan, Proposal proposal) {
    Optional<SavedGuild> saved = desk.guilds().saved(plan.bed().id());
    boolean replaces = saved.filter(s -> !s.guild().equals(proposal.guild())).isPresent();
    String agreed = Form.read(ctx, pages.messages()).value("replace");
    if (replaces && !agreed.equals(GuildCode.of(saved.orElseThrow().guild()))) {
      ctx.redirect(ctx.path() + "/replace", HttpStatus.SEE_OTHER);
      return;
    }
    String name = pages.messages().say("guild.name-of", plan.bed().name());
    String kept = saved.map(SavedGuild::name).orElse(name);
    desk.guilds().save(plan.bed().id(), kept, proposal.guild(), clock.instant());
    // A draft that was begun goes on from here; one step back is what it was.
    drafts.find(ctx, plan.bed().id()).ifPresent(draft ->
        drafts.keep(ctx, plan.bed().id(), draft.then(draft.now().with(proposal.guild()))));
    pages.goOn(ctx, "/beds/" + plan.bed().id() + "/guild", Finding.of("done.guild-saved", "", kept));
  }

  /** Shows what saving a proposal would replace. */
  private void ask(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    Optional<SavedGuild> saved = desk.guilds().saved(plan.bed().id());
    run(ctx, plan).ifPresent(run -> {
      Proposal proposal = proposal(ctx, run);
      String path = path(plan, ctx.pathParam("run")) + "/" + ctx.pathParam("number");
      if (saved.isEmpty()) {
        ctx.redirect(path, HttpStatus.SEE_OTHER);
        return;
      }
      GuildViews views = views(ctx, run);
      Map<String, Object> model = base(run);
      model.put("number", Desk.idOf(ctx.pathParam("number")));
      model.put("character", characters.name(proposal));
      model.put("saved", saved.get());
      model.put("before", views.view(new Evaluator(run.problem()).evaluate(saved.get().guild())));
      model.put("now", views.view(proposal.evaluation()));
      model.put("changes", views.words().changes(saved.get().guild(), proposal.guild()));
      model.put("replace", GuildCode.of(saved.get().guild()));
      model.put("code", GuildCode.of(proposal.guild()));
      model.put("proposalPath", path);
      pages.show(ctx, "guild/replace", model);
    });
  }

  /** The composition the address names; where it is no longer kept, leads back to the guild and says so. */
  private Optional<Compositions.Run> run(Context ctx, BedPlan plan) {
    Optional<Compositions.Run> run = compositions.find(ctx.pathParam("run"), plan.bed().id());
    if (run.isEmpty()) {
      pages.goOn(ctx, "/beds/" + plan.bed().id() + "/guild", Finding.of("done.proposals-gone", ""));
    }
    return run;
  }

  private static Proposal proposal(Context ctx, Compositions.Run run) {
    List<Proposal> proposals = run.state().composition().map(Composition::proposals).orElse(List.of());
    long number = Desk.idOf(ctx.pathParam("number"));
    if (number < 1 || number > proposals.size()) {
      throw new NotFoundResponse();
    }
    return proposals.get((int) number - 1);
  }

  private GuildViews views(Context ctx, Compositions.Run run) {
    GuildProblem problem = run.problem();
    return new GuildViews(pages.messages(), Units.of(ctx), run.plan(), problem);
  }

  private static Map<String, Object> base(Compositions.Run run) {
    Map<String, Object> model = new HashMap<>();
    model.put("bed", run.plan().bed());
    model.put("site", run.plan().site());
    return model;
  }

  private static String path(BedPlan plan, String run) {
    return "/beds/" + plan.bed().id() + "/guild/proposals/" + run;
  }
}
