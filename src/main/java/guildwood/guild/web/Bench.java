package guildwood.guild.web;

import guildwood.guild.BedPlan;
import guildwood.guild.Draft;
import guildwood.guild.DraftHistory;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Rules;
import guildwood.guild.SavedGuild;
import guildwood.guild.Wish;
import guildwood.web.Messages;
import io.javalin.http.Context;
import java.util.Optional;

/**
 * The draft of a bed with all that judges it.
 *
 * @param kept the plan as it is kept
 * @param base the problem of the kept plan
 */
record Bench(BedPlan kept, GuildProblem base, Optional<SavedGuild> saved, DraftHistory history) {

  /** The draft that was begun, or one that starts from the saved guild, or from what stands in the bed. */
  static Bench of(Context ctx, Desk desk, Drafts drafts, Messages messages) {
    BedPlan plan = desk.plan(ctx);
    GuildProblem base = desk.problem(plan);
    Optional<SavedGuild> saved = desk.guilds().saved(plan.bed().id());
    String name = saved.map(SavedGuild::name).orElseGet(() -> messages.say("guild.name-of", plan.bed().name()));
    DraftHistory begun = drafts.find(ctx, plan.bed().id())
        .orElseGet(() -> DraftHistory.startingWith(start(name, saved, base)));
    return new Bench(plan, base, saved, new DraftHistory(begun.past(), begun.now().fitting(base), begun.future()));
  }

  private static Draft start(String name, Optional<SavedGuild> saved, GuildProblem base) {
    return Draft.of(name, saved.map(SavedGuild::guild).orElseGet(base::standingGuild));
  }

  /** The saved guild, or what stands there, without any decision of a draft. */
  Draft start() {
    return start(draft().name(), saved, base);
  }

  /**
   * With a guild that was worked out elsewhere in place of the draft's; kept, and one step back is what was before.
   *
   * @param free a species whose ban is lifted with it; may be empty
   */
  static Bench take(Context ctx, Desk desk, Drafts drafts, Messages messages, Guild guild, String free) {
    Bench bench = of(ctx, desk, drafts, messages);
    Draft taken = bench.draft().with(guild);
    Bench next = bench.then(bench.kept().rules().banned().contains(free) ? taken.freeing(free) : taken);
    drafts.keep(ctx, next.bedId(), next.history());
    return next;
  }

  Draft draft() {
    return history.now();
  }

  Bench then(Draft next) {
    return at(history.then(next.fitting(base)));
  }

  Bench at(DraftHistory other) {
    return new Bench(kept, base, saved, new DraftHistory(other.past(), other.now().fitting(base), other.future()));
  }

  Rules rules() {
    return draft().rulesOver(kept.rules());
  }

  /** The plan with what the draft decides about single species. */
  BedPlan plan() {
    return new BedPlan(kept.bed(), kept.site(), kept.library(), kept.wishes(), rules(), kept.near());
  }

  GuildProblem problem() {
    return base.withRules(rules());
  }

  /** The problem of filling up the rest: all that is in the draft stays as it is. */
  GuildProblem filling() {
    Draft held = draft();
    for (String id : draft().guild().species()) {
      held = held.keeping(id);
    }
    return base.withRules(held.rulesOver(kept.rules()));
  }

  /** Whether anything would be lost if the draft were forgotten. */
  boolean isUnsaved() {
    boolean sameGuild = saved.isPresent() ? saved.get().guild().equals(draft().guild())
        : draft().guild().equals(base.standingGuild());
    Rules rules = rules();
    return !sameGuild || !rules.banned().equals(kept.rules().banned())
        || !rules.pinned().keySet().equals(kept.rules().pinned().keySet());
  }

  boolean isKept(String speciesId) {
    return rules().pinned().containsKey(speciesId);
  }

  long bedId() {
    return kept.bed().id();
  }

  java.util.List<Wish> wishes() {
    return kept.wishes();
  }
}
