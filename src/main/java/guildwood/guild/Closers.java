package guildwood.guild;

import guildwood.fit.AxisFit;
import guildwood.fit.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Finds the single smallest changes that close a gap, and solves the bed again with each. */
final class Closers {
  private static final int MOST_TRIED = 8;
  /** What a change must bring beyond changing nothing to be worth a line: a tenth of a point. */
  private static final int WORTH_MILLI = 100;

  private static final double[] LARGER = {1.1, 1.25, 1.5, 2};

  /** How much larger limits are tried until one lets enough ground be covered. */
  private static final double[] MORE = {1.1, 1.25, 1.5, 2, 3, 5};

  private final GuildProblem problem;
  private final long seed;
  private final Guild guild;
  private final ScoreBreakdown now;
  private final Wish wish;
  private final Eligibility eligibility;

  Closers(GuildProblem problem, long seed, Guild guild, ScoreBreakdown now, Wish wish) {
    this.problem = problem;
    this.seed = seed;
    this.guild = guild;
    this.now = now;
    this.wish = wish;
    this.eligibility = new Eligibility(problem);
  }

  /** The changes that close the gap, the one that brings most points first. */
  List<Closer> closing(Gap.Reason reason) {
    if (reason instanceof Gap.Reason.NobodyInLibrary) {
      return List.of();
    }
    List<Closer> closers = new ArrayList<>();
    Map<Object, Change> changes = new LinkedHashMap<>();
    if (reason instanceof Gap.Reason.CouldComeIn open) {
      solved(new Change.Insist(wish)).ifPresent(closers::add);
      putIn(open.speciesId()).ifPresent(closers::add);
    }
    if (reason instanceof Gap.Reason.GroundShort) {
      solved(new Change.Insist(wish)).ifPresent(closers::add);
      moreOfOne().ifPresent(closers::add);
    }
    if (closers.size() == 2 && closers.get(0).guild().equals(closers.get(1).guild())) {
      closers.remove(0);
    }
    // Whatever else is changed must bring clearly more than insisting on the wish with nothing changed.
    int least = closers.stream().mapToInt(c -> c.totalMilli() + WORTH_MILLI).max().orElse(Integer.MIN_VALUE);
    shutOutByOneThing(changes);
    if (reason instanceof Gap.Reason.CouldComeIn || reason instanceof Gap.Reason.NoRoom) {
      limits(changes);
    }
    if (reason instanceof Gap.Reason.GroundShort) {
      moreAndMore().stream().filter(c -> c.totalMilli() >= least).forEach(closers::add);
    }
    changes.values().stream().limit(MOST_TRIED)
        .forEach(change -> solved(change).filter(c -> c.totalMilli() >= least).ifPresent(closers::add));
    enlarged(reason).ifPresent(closers::add);
    closers.sort(Comparator.comparingInt(Closer::gainMilli).reversed());
    return closers;
  }

  /** The best of the species that could come in, and who leaves for it: a swap and no more. */
  private Optional<Closer> putIn(String speciesId) {
    Optional<Guild> with = new Swap(problem, guild).with(speciesId);
    return with.map(g -> {
      ScoreBreakdown score = new Evaluator(problem).score(g);
      return new Closer(new Change.PutIn(speciesId, g.count(speciesId)), g, score.totalMilli(),
          score.totalMilli() - now.totalMilli());
    });
  }

  /** So many more of one species, with nothing else changed, that the wished share is covered. */
  private Optional<Closer> moreOfOne() {
    Evaluator evaluator = new Evaluator(problem);
    List<RuleBreach> before = evaluator.evaluate(guild).breaches();
    return problem.candidates().stream().filter(c -> c.provides(wish) && eligibility.isEligible(c))
        .flatMap(c -> withEnough(c).stream())
        .filter(c -> before.containsAll(evaluator.evaluate(c.guild()).breaches()))
        .max(Comparator.comparingInt(Closer::totalMilli));
  }

  private Optional<Closer> withEnough(Candidate candidate) {
    String id = candidate.speciesId();
    long lacks = GroundCover.goal(problem, wish) - covered();
    long each = GroundCover.each(candidate);
    long count = Math.max(eligibility.fewest(candidate), guild.count(id) + (lacks + each - 1) / each);
    if (count > Rules.MOST_PLANTS || problem.rules().pinned().containsKey(id)) {
      return Optional.empty();
    }
    Guild more = guild.with(id, (int) count);
    int total = new Evaluator(problem).score(more).totalMilli();
    return Optional.of(new Closer(new Change.PutIn(id, (int) count), more, total, total - now.totalMilli()));
  }

  private long covered() {
    return guild.counts().entrySet().stream().mapToLong(e ->
        problem.find(e.getKey()).map(c -> GroundCover.each(c) * e.getValue()).orElse(0L)).sum();
  }

  /** Of plants and of money, the first of several larger limits with which the wished share can be covered. */
  private List<Closer> moreAndMore() {
    Rules rules = problem.rules();
    List<Closer> closers = new ArrayList<>();
    List<Change> plants = new ArrayList<>();
    List<Change> money = new ArrayList<>();
    for (double times : MORE) {
      int most = (int) Math.min(Rules.MOST_PLANTS, Math.max(rules.maxPlants() + 2, Math.ceil(rules.maxPlants() * times)));
      plants.add(new Change.EaseRule(GuildRule.TOO_MANY_PLANTS, Integer.toString(most), rules.withMaxPlants(most)));
      rules.budgetCents().ifPresent(budget -> {
        int cents = (int) Math.min(Rules.MOST_CENTS, Math.ceil(Math.max(budget, 100) * times / 100) * 100);
        money.add(new Change.EaseRule(GuildRule.OVER_BUDGET, Integer.toString(cents), rules.withBudgetCents(OptionalInt.of(cents))));
      });
    }
    first(plants).ifPresent(closers::add);
    first(money).ifPresent(closers::add);
    if (rules.maxSpecies() < Rules.MOST_SPECIES) {
      int species = rules.maxSpecies() + 1;
      solved(new Change.EaseRule(GuildRule.TOO_MANY_SPECIES, Integer.toString(species), rules.withMaxSpecies(species)))
          .ifPresent(closers::add);
    }
    return closers;
  }

  private Optional<Closer> first(List<Change> rising) {
    return rising.stream().flatMap(change -> solved(change).stream()).findFirst();
  }

  /** Rules and conditions that alone keep out a species that would meet the wish. */
  private void shutOutByOneThing(Map<Object, Change> changes) {
    List<Candidate> providers = problem.candidates().stream()
        .filter(c -> c.provides(wish) && !guild.has(c.speciesId()))
        .sorted(Comparator.comparingInt((Candidate c) -> -c.units(wish)).thenComparingInt(c -> -c.fitPermille()))
        .toList();
    List<Change.MoveCondition> moves = new ArrayList<>();
    for (Candidate candidate : providers) {
      List<RuleBreach> reasons = eligibility.exclusions(candidate);
      if (reasons.size() == 1) {
        Easing.of(problem.rules(), reasons.get(0)).ifPresent(c -> changes.putIfAbsent(c.rule() + c.detail(), c));
        move(candidate).ifPresent(moves::add);
      }
    }
    // Of several moves on one axis in one direction, the two shortest are worth showing.
    moves.sort(Comparator.comparingDouble(m -> Math.abs(m.by())));
    for (Change.MoveCondition move : moves) {
      String way = move.axis() + (move.by() > 0 ? " up" : " down");
      Object first = changes.putIfAbsent(way, move);
      if (first != null && !first.equals(move)) {
        changes.putIfAbsent(way + " further", move);
      }
    }
  }

  /** Moving the one condition the species misses; empty where nobody can change it. */
  private Optional<Change.MoveCondition> move(Candidate candidate) {
    double threshold = problem.rules().allowBorderline() ? Verdict.BORDERLINE_FROM : Verdict.FITS_FROM;
    Optional<AxisFit> missed = candidate.fit().limiting().filter(l -> l.value() < threshold);
    return missed.flatMap(axis -> ConditionMove.to(axis.axis(), axis.bed(), axis.tolerance(), threshold)
        .map(to -> new Change.MoveCondition(axis.axis(), axis.bed(), to)));
  }

  /** The limits of the whole guild, each eased by what one more species needs. */
  private void limits(Map<Object, Change> changes) {
    Rules rules = problem.rules();
    if (rules.maxSpecies() < Rules.MOST_SPECIES) {
      ease(changes, GuildRule.TOO_MANY_SPECIES, rules.maxSpecies() + 1, rules.withMaxSpecies(rules.maxSpecies() + 1));
    }
    int plants = Math.min(Rules.MOST_PLANTS, rules.maxPlants() + Math.max(2, rules.maxPlants() / 10));
    ease(changes, GuildRule.TOO_MANY_PLANTS, plants, rules.withMaxPlants(plants));
    if (rules.budgetCents().isPresent()) {
      int cents = (int) Math.min(Rules.MOST_CENTS, moreMoney(rules.budgetCents().getAsInt()));
      ease(changes, GuildRule.OVER_BUDGET, cents, rules.withBudgetCents(OptionalInt.of(cents)));
    }
    if (rules.maxSpeciesPerGenus() < Rules.MOST_SPECIES) {
      int species = rules.maxSpeciesPerGenus() + 1;
      ease(changes, GuildRule.GENUS_LIMIT, species, rules.withMaxSpeciesPerGenus(species));
    }
  }

  /** A quarter more, or what the cheapest provider costs on top, in whole units of money. */
  private long moreMoney(int budget) {
    long cheapest = problem.candidates().stream().filter(c -> c.provides(wish) && eligibility.isEligible(c))
        .mapToLong(c -> new Member(c, Math.max(eligibility.fewest(c), problem.standing(c.speciesId()) + 1),
            problem.standing(c.speciesId())).costCents(problem.rules()))
        .min().orElse(0);
    return (Math.max(budget / 4 * 5L, budget + cheapest) + 99) / 100 * 100;
  }

  private static void ease(Map<Object, Change> changes, GuildRule rule, int to, Rules rules) {
    changes.put(rule, new Change.EaseRule(rule, Integer.toString(to), rules));
  }

  /** The smallest larger bed that has room; only where room is what is short. */
  private Optional<Closer> enlarged(Gap.Reason reason) {
    boolean tooLarge = reason instanceof Gap.Reason.ExcludedByRules excluded
        && excluded.rules().stream().anyMatch(b -> b.rule() == GuildRule.LARGER_THAN_BED);
    if (!(reason instanceof Gap.Reason.NoRoom) && !tooLarge) {
      return Optional.empty();
    }
    for (double times : LARGER) {
      double area = Math.round(problem.areaM2() * times * 10) / 10.0;
      Optional<Closer> closer = area > guildwood.bed.Bed.LARGEST_AREA_M2 ? Optional.empty()
          : solved(new Change.Enlarge(problem.areaM2(), area));
      if (closer.isPresent()) {
        return closer;
      }
    }
    return Optional.empty();
  }

  /** The best guild after the change that meets the wish and no fewer musts; empty where there is none. */
  private Optional<Closer> solved(Change change) {
    GuildProblem changed = change.applyTo(problem);
    GuildProblem insisting = changed.withWishes(changed.wishes().stream()
        .map(w -> w.asksSameAs(wish) ? w.asMust() : w).toList());
    Guild best = new Composer(Effort.QUICK).draft(insisting, seed, 1, Progress.UNWATCHED).proposals().get(0).guild();
    Evaluator evaluator = new Evaluator(changed);
    ScoreBreakdown score = evaluator.score(best);
    boolean meets = score.unmetWishes().stream().noneMatch(w -> w.asksSameAs(wish));
    boolean keepsMusts = score.unmetMusts().size() <= now.unmetMusts().size();
    return meets && keepsMusts
        ? Optional.of(new Closer(change, best, score.totalMilli(), score.totalMilli() - now.totalMilli()))
        : Optional.empty();
  }
}
