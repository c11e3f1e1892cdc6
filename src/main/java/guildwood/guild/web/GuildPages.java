package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Evaluation;
import guildwood.guild.Evaluator;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Questions;
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
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** The guild of a bed: looking at it, changing it by hand with the score computed anew, saving it. */
public final class GuildPages implements Routes {
  private static final int MOST_OF_ONE = 2000;

  private final Pages pages;
  private final Desk desk;
  private final Clock clock;

  public GuildPages(Pages pages, Desk desk, Clock clock) {
    this.pages = pages;
    this.desk = desk;
    this.clock = clock;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/beds/{bed}/guild", this::show, Access.OWNER);
    routes.post("/beds/{bed}/guild/remove", this::remove, Access.OWNER);
    routes.get("/beds/{bed}/guild/edit", this::edit, Access.OWNER);
    routes.post("/beds/{bed}/guild/edit", this::change, Access.OWNER);
  }

  private void show(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    Optional<SavedGuild> saved = desk.guilds().saved(plan.bed().id());
    Map<String, Object> model = base(plan);
    GuildWords words = new GuildWords(pages.messages(), plan.library(), Units.of(ctx));
    model.put("musts", plan.wishes().stream().filter(guildwood.guild.Wish::must).map(words::wish).toList());
    model.put("nices", plan.wishes().stream().filter(w -> !w.must()).map(words::wish).toList());
    model.put("saved", saved.orElse(null));
    if (saved.isPresent()) {
      GuildProblem problem = desk.problem(plan);
      GuildViews views = new GuildViews(pages.messages(), Units.of(ctx), plan, problem);
      Evaluation evaluation = new Evaluator(problem).evaluate(saved.get().guild());
      model.put("guild", views.view(evaluation));
      model.put("gaps", views.gaps(new Questions(problem, 1).gaps(saved.get().guild())));
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

  private void edit(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    GuildProblem problem = desk.problem(plan);
    Optional<SavedGuild> saved = desk.guilds().saved(plan.bed().id());
    Guild guild = saved.map(SavedGuild::guild).orElseGet(problem::standingGuild);
    Map<String, String> values = new LinkedHashMap<>();
    values.put("name", saved.map(SavedGuild::name).orElseGet(() -> pages.messages().say("guild.name-of", plan.bed().name())));
    guild.counts().forEach((id, count) -> values.put("count." + id, Integer.toString(count)));
    pages.show(ctx, "guild/edit", editModel(ctx, plan, problem, guild, Form.blank(values, pages.messages())));
  }

  /** Computes the draft anew, with a species more where one was chosen, or saves it. */
  private void change(Context ctx) {
    BedPlan plan = desk.plan(ctx);
    GuildProblem problem = desk.problem(plan);
    Form form = Form.read(ctx, pages.messages());
    String name = form.text("name", SavedGuild.LONGEST_NAME);
    Guild guild = guild(form, problem);
    if (form.value("do").equals("save") && !form.isRefused()) {
      desk.guilds().save(plan.bed().id(), name, guild, clock.instant());
      pages.goOn(ctx, "/beds/" + plan.bed().id() + "/guild", Finding.of("done.guild-saved", "", name));
      return;
    }
    if (form.isRefused()) {
      // The part that is swapped in must arrive as an ordinary answer, or it is not shown.
      ctx.status(Pages.wantsFragment(ctx) ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT);
    }
    pages.show(ctx, Pages.wantsFragment(ctx) ? "guild/edit :: draft" : "guild/edit",
        editModel(ctx, plan, problem, guild, form));
  }

  /**
   * The draft that was typed. What cannot be read or be is refused beside its field; that species then counts
   * as one plant, or as those that stand, and one to add stays out.
   */
  private static Guild guild(Form form, GuildProblem problem) {
    Guild guild = problem.standingGuild();
    for (String id : form.names("count.")) {
      if (problem.find(id).isPresent()) {
        guild = guild.with(id, count(form, "count." + id, problem.standing(id)));
      }
    }
    String added = form.value("add");
    OptionalInt plants = form.wholeNumber("addCount", 1, MOST_OF_ONE);
    if (!added.isEmpty() && problem.find(added).isEmpty()) {
      form.refuse(Finding.of("item.unknown", "add", added));
    } else if (!added.isEmpty() && !guild.has(added) && form.messageOf("addCount").isEmpty()) {
      guild = guild.with(added, plants.orElse(1));
    }
    return guild;
  }

  private static int count(Form form, String field, int standing) {
    OptionalInt count = form.wholeNumber(field, 0, Math.max(MOST_OF_ONE, standing));
    if (form.value(field).isBlank()) {
      form.refuse(Finding.of("value.missing", field));
    } else if (count.isPresent() && count.getAsInt() < standing) {
      form.refuse(Finding.of("below-standing", field, standing));
    }
    return Math.max(count.orElse(1), standing);
  }

  private Map<String, Object> editModel(Context ctx, BedPlan plan, GuildProblem problem, Guild guild, Form form) {
    GuildViews views = new GuildViews(pages.messages(), Units.of(ctx), plan, problem);
    Evaluation now = new Evaluator(problem).evaluate(guild);
    Map<String, Object> model = base(plan);
    model.put("form", form);
    model.put("guild", views.view(now));
    model.put("choices", WishPages.choices(plan));
    Optional<Evaluation> before = desk.guilds().saved(plan.bed().id())
        .map(s -> new Evaluator(problem).evaluate(s.guild()));
    model.put("differences", before.map(b -> views.differences(b.score(), now.score())).orElse(List.of()));
    model.put("hasBefore", before.isPresent());
    return model;
  }

  private static Map<String, Object> base(BedPlan plan) {
    Map<String, Object> model = new HashMap<>();
    model.put("bed", plan.bed());
    model.put("site", plan.site());
    return model;
  }
}
