package guildwood.guild.web;

import guildwood.guild.Draft;
import guildwood.guild.DraftHistory;
import guildwood.guild.Evaluation;
import guildwood.guild.Evaluator;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Rules;
import guildwood.kernel.Finding;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Units;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Working on a guild by hand: every step is judged at once, can be taken back, and is kept aside until it is
 * saved or discarded. Each step is a form of its own and leads back to the page, so that nothing depends on
 * scripts and no reload repeats a step.
 */
public final class DraftPages implements Routes {
  private final Pages pages;
  private final Desk desk;
  private final Drafts drafts;
  private final Compositions compositions;
  private final Clock clock;

  public DraftPages(Pages pages, Desk desk, Drafts drafts, Compositions compositions, Clock clock) {
    this.pages = pages;
    this.desk = desk;
    this.drafts = drafts;
    this.compositions = compositions;
    this.clock = clock;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{bed}/guild/edit", this::edit, Access.OWNER);
    routes.post("/beds/{bed}/guild/edit", this::change, Access.OWNER);
    routes.get("/beds/{bed}/guild/edit/gaps", this::gaps, Access.OWNER);
    routes.post("/beds/{bed}/guild/draft", this::take, Access.OWNER);
  }

  private void edit(Context ctx) {
    show(ctx, bench(ctx), Optional.empty());
  }

  private void change(Context ctx) {
    Bench bench = bench(ctx);
    Form form = Form.read(ctx, pages.messages());
    String asked = form.value("do");
    switch (asked) {
      case "undo" -> goOn(ctx, bench.at(bench.history().back()));
      case "redo" -> goOn(ctx, bench.at(bench.history().forward()));
      case "discard" -> {
        drafts.keep(ctx, bench.bedId(), bench.then(bench.start()).history());
        pages.goOn(ctx, path(bench, "/guild"), Finding.of("done.draft-discarded", ""));
      }
      default -> step(ctx, bench, form, asked);
    }
  }

  /** A step that starts from what was typed. */
  private void step(Context ctx, Bench bench, Form form, String asked) {
    Draft typed = DraftForm.read(form, bench);
    if (form.isRefused()) {
      // The part that is swapped in must arrive as an ordinary answer, or it is not shown.
      ctx.status(Pages.wantsFragment(ctx) ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT);
      show(ctx, bench.then(typed), Optional.of(form));
      return;
    }
    Bench next = bench.then(decided(asked, typed, bench));
    switch (asked) {
      case "save" -> save(ctx, next);
      case "fill" -> {
        drafts.keep(ctx, next.bedId(), next.history());
        String run = compositions.start(next.plan(), next.filling(), next.draft().guild());
        ctx.redirect(path(next, "/guild/proposals/" + run), HttpStatus.SEE_OTHER);
      }
      default -> goOn(ctx, next);
    }
  }

  /** What a button beside one species decides about it; plants that stand cannot be decided away. */
  private static Draft decided(String asked, Draft draft, Bench bench) {
    String id = asked.substring(asked.indexOf(':') + 1);
    if (asked.startsWith("never:") && bench.base().find(id).isPresent() && bench.base().standing(id) == 0) {
      return draft.banning(id);
    }
    boolean bound = bench.rules().banned().contains(id) || bench.rules().pinned().containsKey(id);
    return asked.startsWith("free:") && bound ? draft.freeing(id) : draft;
  }

  private void save(Context ctx, Bench bench) {
    Rules rules = bench.rules();
    if (!rules.equals(bench.kept().rules())) {
      desk.guilds().keep(bench.bedId(), bench.wishes(), rules);
    }
    desk.guilds().save(bench.bedId(), bench.draft().name(), bench.draft().guild(), clock.instant());
    drafts.forget(ctx, bench.bedId());
    pages.goOn(ctx, path(bench, "/guild"), Finding.of("done.guild-saved", "", bench.draft().name()));
  }

  /** Takes a guild another page has worked out into the draft. */
  private void take(Context ctx) {
    Form form = Form.read(ctx, pages.messages());
    Bench next = Bench.take(ctx, desk, drafts, pages.messages(), GuildCode.read(form.value("guild")), form.value("free"));
    pages.goOn(ctx, path(next, "/guild/edit"), Finding.of("done.draft-taken", ""));
  }

  private void gaps(Context ctx) {
    Bench bench = bench(ctx);
    GuildProblem problem = bench.problem();
    Guild guild = bench.draft().guild();
    GuildViews views = new GuildViews(pages.messages(), Units.of(ctx), bench.plan(), problem);
    Map<String, Object> model = base(bench);
    model.put("guild", views.view(new Evaluator(problem).evaluate(guild)));
    model.put("gaps", views.gaps(compositions.gaps(problem, guild), guild));
    pages.show(ctx, "guild/draft-gaps", model);
  }

  private Bench bench(Context ctx) {
    return Bench.of(ctx, desk, drafts, pages.messages());
  }

  private void goOn(Context ctx, Bench next) {
    drafts.keep(ctx, next.bedId(), next.history());
    if (Pages.wantsFragment(ctx)) {
      show(ctx, next, Optional.empty());
    } else {
      ctx.redirect(path(next, "/guild/edit"), HttpStatus.SEE_OTHER);
    }
  }

  private void show(Context ctx, Bench bench, Optional<Form> refused) {
    GuildProblem problem = bench.problem();
    GuildViews views = new GuildViews(pages.messages(), Units.of(ctx), bench.plan(), problem);
    Evaluation now = new Evaluator(problem).evaluate(bench.draft().guild());
    Map<String, Object> model = base(bench);
    model.put("form", refused.orElseGet(() -> Form.blank(DraftForm.fill(bench), pages.messages())));
    model.put("guild", views.view(now));
    model.put("choices", WishPages.choices(bench.kept()));
    Optional<Guild> saved = bench.saved().map(s -> s.guild());
    model.put("hasBefore", saved.isPresent());
    model.put("differences", saved.map(g -> views.differences(new Evaluator(problem).score(g), now.score())).orElse(List.of()));
    model.put("changes", saved.map(g -> views.words().changes(g, bench.draft().guild())).orElse(List.of()));
    model.put("unsaved", bench.isUnsaved());
    DraftHistory history = bench.history();
    model.put("canUndo", history.canGoBack());
    model.put("canRedo", history.canGoForward());
    model.put("banned", choices(bench, bench.rules().banned()));
    Set<String> missing = new TreeSet<>(bench.rules().pinned().keySet());
    missing.removeAll(bench.draft().guild().species());
    model.put("missing", choices(bench, missing));
    pages.show(ctx, Pages.wantsFragment(ctx) ? "guild/edit :: draft" : "guild/edit", model);
  }

  private static List<WishPages.Choice> choices(Bench bench, Set<String> ids) {
    return ids.stream().flatMap(id -> bench.kept().library().find(id).stream())
        .map(s -> new WishPages.Choice(s.id(), s.name())).toList();
  }

  private static Map<String, Object> base(Bench bench) {
    Map<String, Object> model = new HashMap<>();
    model.put("bed", bench.kept().bed());
    model.put("site", bench.kept().site());
    return model;
  }

  private static String path(Bench bench, String under) {
    return "/beds/" + bench.bedId() + under;
  }
}
