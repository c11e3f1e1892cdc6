package guildwood.guild;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Every guild that keeps the rules, one after the other: slow, simple, and written apart from the search, so
 * that the two can be held against each other. Rules that only get worse with more plants prune the tree;
 * the rest is asked of the evaluator's own parts at every leaf.
 */
final class Enumeration {
  private final GuildProblem problem;
  private final Evaluator evaluator;
  private final List<Candidate> free = new ArrayList<>();
  private final Guild base;
  private final List<RuleBreach> unavoidable;
  long guilds;

  Guild best;
  long bestRank = Long.MIN_VALUE;

  Enumeration(GuildProblem problem) {
    this.problem = problem;
    evaluator = new Evaluator(problem);
    Map<String, Integer> fixed = new TreeMap<>(problem.standing());
    fixed.putAll(problem.rules().pinned());
    base = Guild.of(fixed);
    unavoidable = evaluator.evaluate(base).breaches();
    for (Candidate candidate : problem.candidates()) {
      // No more of a standing plant beside a pinned enemy, although the quarrel is there already.
      boolean quarrels = base.species().stream().filter(id -> !id.equals(candidate.speciesId()))
          .anyMatch(id -> !problem.find(id).orElseThrow().manners().conflictsWith(candidate.manners()).isEmpty());
      if (!quarrels && !problem.rules().pinned().containsKey(candidate.speciesId())
          && evaluator.exclusions(candidate.speciesId()).isEmpty()) {
        free.add(candidate);
      }
    }
  }

  Enumeration run() {
    extend(0, new TreeMap<>(base.counts()));
    return this;
  }

  private void extend(int index, SortedMap<String, Integer> counts) {
    if (index == free.size()) {
      judge(Guild.of(counts));
      return;
    }
    extend(index + 1, counts);
    String id = free.get(index).speciesId();
    int standing = problem.standing(id);
    for (int count = standing + 1; ; count++) {
      counts.put(id, count);
      if (!extendable(counts)) {
        break;
      }
      extend(index + 1, counts);
    }
    if (standing == 0) {
      counts.remove(id);
    } else {
      counts.put(id, standing);
    }
  }

  private static final List<GuildRule> GROWING = List.of(GuildRule.NOT_IN_STOCK, GuildRule.NOT_TO_BE_HAD, GuildRule.TOO_MANY_SPECIES,
      GuildRule.TOO_MANY_PLANTS, GuildRule.OVER_BUDGET, GuildRule.LAYER_FULL, GuildRule.NO_LIGHT_LEFT,
      GuildRule.ENEMIES, GuildRule.GENUS_LIMIT);

  private boolean extendable(SortedMap<String, Integer> counts) {
    return breaches(Guild.of(counts)).stream().noneMatch(b -> GROWING.contains(b.rule()));
  }

  /** Breaches that more is to blame for than standing and pinned plants. */
  private List<RuleBreach> breaches(Guild guild) {
    List<Member> members = new ArrayList<>();
    guild.counts().forEach((id, count) ->
        members.add(new Member(problem.find(id).orElseThrow(), count, problem.standing(id))));
    return new RuleCheck(problem).breaches(guild, members).stream().filter(b -> !unavoidable.contains(b)).toList();
  }

  private void judge(Guild guild) {
    guilds++;
    if (breaches(guild).isEmpty()) {
      long rank = evaluator.score(guild).rank();
      if (rank > bestRank) {
        bestRank = rank;
        best = guild;
      }
    }
  }
}
