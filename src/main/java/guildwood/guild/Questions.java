package guildwood.guild;

import guildwood.fit.AxisFit;
import guildwood.fit.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Answers about one problem: the gaps of any guild, and why a species is not in it. */
public final class Questions {
  /** How many species a reason names. */
  private static final int NAMED = 5;

  /** How many providers are tried in the guild one by one; more are told apart by their fit alone. */
  private static final int TRIED = 200;

  private final GuildProblem problem;
  private final long seed;
  private final Evaluator evaluator;
  private final Eligibility eligibility;
  /** Built when first needed. */
  private Providers providers;

  /** The same with the index of providers already built; worth it for very large libraries and many questions. */
  public Questions(GuildProblem problem, long seed, Providers providers) {
    this(problem, seed);
    this.providers = providers;
  }

  public Questions(GuildProblem problem, long seed) {
    this.problem = problem;
    this.seed = seed;
    this.evaluator = new Evaluator(problem);
    this.eligibility = new Eligibility(problem);
  }

  /** Every wish the guild leaves unmet, with the reason and what would close it, in the order of the wishes. */
  public List<Gap> gaps(Guild guild) {
    ScoreBreakdown score = evaluator.score(guild);
    List<Gap> gaps = new ArrayList<>();
    for (Wish wish : score.unmetWishes()) {
      Gap.Reason reason = reason(wish, guild);
      gaps.add(new Gap(wish, reason, new Closers(problem, seed, guild, score, wish).closing(reason)));
    }
    return gaps;
  }

  /** Why a guild does not meet a wish. */
  public Gap.Reason reason(Wish wish, Guild guild) {
    Headcount count = headcount(wish);
    if (count.providers() == 0) {
      return new Gap.Reason.NobodyInLibrary();
    }
    if (count.suited() == 0) {
      return new Gap.Reason.FailsOnSite(
          providers().all(wish).stream().map(Questions::miss).sorted(NEAREST).limit(NAMED).toList(), count.providers());
    }
    if (count.allowed() == 0) {
      return excluded(providers().suited(wish));
    }
    List<Candidate> allowed = providers().allowed(wish);
    return wish.kind() == WishKind.GROUND ? groundShort(allowed, guild) : shutOut(allowed, wish, guild);
  }

  /** How many species of the library would meet one of the problem's wishes. */
  public Headcount headcount(Wish wish) {
    return providers().count(wish);
  }

  private Providers providers() {
    if (providers == null) {
      providers = Providers.of(problem);
    }
    return providers;
  }

  static final Comparator<Gap.SiteMiss> NEAREST = Comparator.comparingInt(Gap.SiteMiss::failingAxes)
      .thenComparing(Comparator.comparingInt(Gap.SiteMiss::fitPermille).reversed())
      .thenComparingDouble(m -> Math.abs(m.shortfall()) / (m.axis().highest() - m.axis().lowest()))
      .thenComparing(Gap.SiteMiss::speciesId);

  private static Gap.SiteMiss miss(Candidate candidate) {
    List<AxisFit> failing = candidate.fit().failing();
    AxisFit worst = failing.stream().min(Comparator.comparingDouble(AxisFit::value)).orElseThrow();
    return new Gap.SiteMiss(candidate.speciesId(), worst.axis(), (int) Math.round(1000 * worst.value()),
        worst.shortfall(), failing.size());
  }

  private Gap.Reason excluded(List<Candidate> suited) {
    List<RuleBreach> rules = suited.stream().map(eligibility::exclusions)
        .sorted(Comparator.<List<RuleBreach>>comparingInt(List::size).thenComparing(r -> r.get(0).rule()))
        .limit(NAMED).flatMap(List::stream).toList();
    return new Gap.Reason.ExcludedByRules(rules, suited.size());
  }

  private Gap.Reason shutOut(List<Candidate> allowed, Wish wish, Guild guild) {
    ScoreBreakdown now = evaluator.score(guild);
    Swap swap = new Swap(problem, guild);
    String best = null;
    int bestChange = Integer.MIN_VALUE;
    long bestRank = Long.MIN_VALUE;
    for (Candidate candidate : likeliest(allowed, wish)) {
      Optional<Guild> with = swap.with(candidate.speciesId());
      if (with.isPresent()) {
        ScoreBreakdown score = evaluator.score(with.get());
        if (score.rank() > bestRank) {
          best = candidate.speciesId();
          bestRank = score.rank();
          bestChange = score.totalMilli() - now.totalMilli();
        }
      }
    }
    return best == null ? noRoom(allowed) : new Gap.Reason.CouldComeIn(best, bestChange);
  }

  private static List<Candidate> likeliest(List<Candidate> allowed, Wish wish) {
    return allowed.stream()
        .sorted(Comparator.<Candidate>comparingInt(c -> -c.units(wish)).thenComparingInt(c -> -c.fitPermille()))
        .limit(TRIED).toList();
  }

  private Gap.Reason noRoom(List<Candidate> allowed) {
    String easiest = null;
    List<RuleBreach> fewest = List.of();
    for (Candidate candidate : allowed.stream().limit(TRIED).toList()) {
      List<RuleBreach> obstacles = obstacles(candidate);
      if (easiest == null || obstacles.size() < fewest.size()) {
        easiest = candidate.speciesId();
        fewest = obstacles;
      }
    }
    return new Gap.Reason.NoRoom(easiest, fewest);
  }

  /** Of those who may come in, the one of which one more, or the first few, would break least. */
  private Gap.Reason groundShort(List<Candidate> allowed, Guild guild) {
    List<RuleBreach> before = evaluator.evaluate(guild).breaches();
    String easiest = null;
    List<RuleBreach> fewest = List.of();
    for (Candidate candidate : likeliest(allowed)) {
      int count = Math.max(eligibility.fewest(candidate), guild.count(candidate.speciesId()) + 1);
      List<RuleBreach> obstacles = after(guild, candidate, count, before);
      if (easiest == null || obstacles.size() < fewest.size()) {
        easiest = candidate.speciesId();
        fewest = obstacles;
      }
    }
    int covered = evaluator.evaluate(guild).numbers().groundPermille();
    return new Gap.Reason.GroundShort(covered, easiest, fewest);
  }

  /** Those that cover most with one plant first. */
  private static List<Candidate> likeliest(List<Candidate> covering) {
    return covering.stream().sorted(Comparator.comparingLong(GroundCover::each).reversed()).limit(TRIED).toList();
  }

  /** What a species breaks beside standing and pinned plants alone, beyond what they break without it. */
  private List<RuleBreach> obstacles(Candidate candidate) {
    Guild base = problem.baseGuild();
    List<RuleBreach> before = evaluator.evaluate(base).breaches();
    int count = Math.max(eligibility.fewest(candidate),
        problem.standing(candidate.speciesId()) + 1);
    List<RuleBreach> alone = after(base, candidate, count, before);
    boolean wantsTwo = alone.stream().anyMatch(b -> b.rule() == GuildRule.PARTNER_MISSING) && count < 2;
    return wantsTwo && !candidate.kinship().cultivar() ? after(base, candidate, 2, before) : alone;
  }

  private List<RuleBreach> after(Guild base, Candidate candidate, int count, List<RuleBreach> before) {
    return evaluator.evaluate(base.with(candidate.speciesId(), count)).breaches().stream()
        .filter(b -> !before.contains(b)).toList();
  }

  /** Why a species is not in the guild: which rules keep it out, or what it would cost or bring. */
  public WhyNot whyNot(Guild guild, String speciesId) {
    Optional<Candidate> candidate = problem.find(speciesId);
    if (guild.has(speciesId)) {
      return new WhyNot(speciesId, WhyNot.Outcome.ALREADY_IN, List.of(), List.of(), Optional.of(guild), 0);
    }
    List<RuleBreach> exclusions = evaluator.exclusions(speciesId);
    if (candidate.isEmpty() || !exclusions.isEmpty()) {
      return new WhyNot(speciesId, WhyNot.Outcome.EXCLUDED, exclusions, List.of(), Optional.empty(), 0);
    }
    Optional<Guild> with = new Swap(problem, guild).with(speciesId);
    if (with.isEmpty()) {
      return new WhyNot(speciesId, WhyNot.Outcome.NO_ROOM, List.of(), obstacles(candidate.get()), Optional.empty(), 0);
    }
    int change = evaluator.score(with.get()).totalMilli() - evaluator.score(guild).totalMilli();
    WhyNot.Outcome outcome = change < 0 ? WhyNot.Outcome.WOULD_COST
        : change > 0 ? WhyNot.Outcome.WOULD_GAIN : WhyNot.Outcome.NO_DIFFERENCE;
    return new WhyNot(speciesId, outcome, List.of(), List.of(), with, change);
  }
}
