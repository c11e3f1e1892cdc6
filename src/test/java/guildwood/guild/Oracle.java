package guildwood.guild;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The best guild by an exact solver from outside (OR-Tools CP-SAT), modelled from the rules as they are
 * written down, not from the composer's arithmetic.
 */
final class Oracle {
  static {
    Loader.loadNativeLibraries();
  }

  private final GuildProblem problem;
  private final PointScale scale;
  private final Rules rules;
  private final CpModel model = new CpModel();
  private final List<Candidate> free = new ArrayList<>();
  private final List<Member> base = new ArrayList<>();
  private final List<BoolVar> in = new ArrayList<>();
  private final List<IntVar> added = new ArrayList<>();
  private final List<IntVar> bought = new ArrayList<>();
  private final LinearExprBuilder objective = LinearExpr.newBuilder();

  /** What the solver says: the best rank, a bound on it, and whether the two meet. */
  record Answer(long best, long bound, boolean proven) {}

  Oracle(GuildProblem problem) {
    this.problem = problem;
    this.scale = PointScale.of(problem);
    this.rules = problem.rules();
  }

  Answer solve(double seconds) {
    problem.baseGuild().counts().forEach((id, count) ->
        base.add(new Member(problem.find(id).orElseThrow(), count, problem.standing(id))));
    variables();
    room();
    totals();
    genera();
    quarrels();
    partners();
    wishes();
    objective.add(new Scoring(problem).score(base).earnedMilli());
    for (int i = 0; i < free.size(); i++) {
      int each = scale.fitMilliOf(free.get(i), free.get(i).stature().orElseThrow().crownDm2());
      int full = Math.max(0, scale.enough(free.get(i).stature().orElseThrow().crownDm2())
          - problem.standing(free.get(i).speciesId()));
      IntVar beyond = model.newIntVar(0, Rules.MOST_PLANTS, "beyond enough " + free.get(i).speciesId());
      model.addGreaterOrEqual(LinearExpr.newBuilder().add(beyond).addTerm(added.get(i), -1).build(), -full);
      objective.addTerm(beyond, PointScale.beyond(each) - each);
      objective.addTerm(added.get(i), each);
      objective.addTerm(bought.get(i), -scale.perPlantMilli());
    }
    model.maximize(objective.build());
    CpSolver solver = new CpSolver();
    solver.getParameters().setMaxTimeInSeconds(seconds).setNumWorkers(1).setLinearizationLevel(2).setRandomSeed(1);
    CpSolverStatus status = solver.solve(model);
    if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
      throw new IllegalStateException("the solver says " + status);
    }
    return new Answer(Math.round(solver.objectiveValue()), (long) Math.floor(solver.bestObjectiveBound() + 1e-6),
        status == CpSolverStatus.OPTIMAL);
  }

  private void variables() {
    Evaluator evaluator = new Evaluator(problem);
    for (Candidate candidate : problem.candidates()) {
      boolean harms = base.stream().anyMatch(m -> !m.id().equals(candidate.speciesId())
          && !m.candidate().manners().conflictsWith(candidate.manners()).isEmpty());
      if (!harms && !rules.pinned().containsKey(candidate.speciesId())
          && evaluator.exclusions(candidate.speciesId()).isEmpty()) {
        free.add(candidate);
      }
    }
    for (Candidate candidate : free) {
      int stock = candidate.supply().free();
      int most = Math.min(rules.maxPlants(), problem.areaDm2() / candidate.stature().orElseThrow().crownDm2());
      most = Math.min(most, rules.plantsFrom().most(candidate.supply()));
      BoolVar chosen = model.newBoolVar("in " + candidate.speciesId());
      IntVar count = model.newIntVar(0, most, "added " + candidate.speciesId());
      IntVar paid = model.newIntVar(0, most, "bought " + candidate.speciesId());
      int fewest = Math.max(1,
          new Eligibility(problem).fewest(candidate) - problem.standing(candidate.speciesId()));
      model.addGreaterOrEqual(count, fewest).onlyEnforceIf(chosen);
      model.addEquality(count, 0).onlyEnforceIf(chosen.not());
      model.addLessOrEqual(count, LinearExpr.term(chosen, most));
      model.addGreaterOrEqual(LinearExpr.newBuilder().add(paid).addTerm(count, -1).build(), -stock);
      in.add(chosen);
      added.add(count);
      bought.add(paid);
    }
  }

  private void room() {
    for (Layer layer : Layer.values()) {
      LayerUse use = LayerUse.of(layer, base);
      LinearExprBuilder crowns = LinearExpr.newBuilder();
      LinearExprBuilder light = LinearExpr.newBuilder();
      for (int i = 0; i < free.size(); i++) {
        Stature stature = free.get(i).stature().orElseThrow();
        crowns.addTerm(added.get(i), stature.layer() == layer ? stature.crownDm2() : 0);
        light.addTerm(added.get(i), LayerUse.lightPerPlantCm2(free.get(i), layer));
      }
      model.addLessOrEqual(crowns.build(), Math.max(0, problem.roomDm2(layer) - use.crownDm2()));
      model.addLessOrEqual(light.build(), Math.max(0, 100L * problem.areaDm2() - use.lightCm2()));
    }
  }

  private void totals() {
    long there = base.stream().filter(m -> m.added() > 0).count();
    model.addLessOrEqual(LinearExpr.sum(in.toArray(new LinearArgument[0])), Math.max(0, rules.maxSpecies() - there));
    int plants = base.stream().mapToInt(Member::added).sum();
    model.addLessOrEqual(LinearExpr.sum(added.toArray(new LinearArgument[0])), Math.max(0, rules.maxPlants() - plants));
    if (rules.budgetCents().isPresent()) {
      long spent = base.stream().mapToLong(m -> m.costCents(rules)).sum();
      LinearExprBuilder cost = LinearExpr.newBuilder();
      for (int i = 0; i < free.size(); i++) {
        cost.addTerm(bought.get(i), free.get(i).supply().priceCents().orElse(rules.priceIfUnknownCents()));
      }
      model.addLessOrEqual(cost.build(), Math.max(0, rules.budgetCents().getAsInt() - spent));
    }
  }

  private void genera() {
    Map<String, LinearExprBuilder> newOnes = new HashMap<>();
    for (int i = 0; i < free.size(); i++) {
      if (problem.standing(free.get(i).speciesId()) == 0) {
        newOnes.computeIfAbsent(free.get(i).kinship().genus(), g -> LinearExpr.newBuilder()).add(in.get(i));
      }
    }
    newOnes.forEach((genus, count) -> {
      long there = base.stream().filter(m -> m.candidate().kinship().genus().equals(genus)).count();
      model.addLessOrEqual(count.build(), Math.max(0, rules.maxSpeciesPerGenus() - there));
    });
  }

  private void quarrels() {
    for (int i = 0; i < free.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (!free.get(i).manners().conflictsWith(free.get(j).manners()).isEmpty()) {
          model.addBoolOr(new Literal[] {in.get(i).not(), in.get(j).not()});
        }
      }
    }
  }

  private void partners() {
    for (int i = 0; i < free.size(); i++) {
      Candidate candidate = free.get(i);
      boolean served = base.stream().anyMatch(m -> RuleCheck.arePartners(candidate, m.candidate()));
      if (!candidate.manners().partner().isNeeded() || candidate.manners().partnerNear() || served) {
        continue;
      }
      List<Literal> ways = new ArrayList<>();
      ways.add(in.get(i).not());
      for (int j = 0; j < free.size(); j++) {
        if (RuleCheck.arePartners(candidate, free.get(j))) {
          ways.add(in.get(j));
        }
      }
      if (!candidate.kinship().cultivar()) {
        BoolVar two = model.newBoolVar("two of " + candidate.speciesId());
        model.addGreaterOrEqual(added.get(i), 2 - problem.standing(candidate.speciesId())).onlyEnforceIf(two);
        ways.add(two);
      }
      model.addBoolOr(ways);
    }
  }

  private void wishes() {
    for (int w = 0; w < problem.wishes().size(); w++) {
      Wish wish = problem.wishes().get(w);
      if (wish.kind() == WishKind.GROUND) {
        ground(wish, scale.wishMilli()[w]);
        continue;
      }
      int there = base.stream().mapToInt(m -> m.candidate().units(wish)).sum();
      LinearExprBuilder units = LinearExpr.newBuilder();
      LinearExprBuilder providers = LinearExpr.newBuilder();
      for (int i = 0; i < free.size(); i++) {
        boolean counts = free.get(i).provides(wish) && problem.standing(free.get(i).speciesId()) == 0;
        units.addTerm(in.get(i), counts ? free.get(i).units(wish) : 0);
        providers.addTerm(in.get(i), counts ? 1 : 0);
      }
      for (int unit = there + 1; unit <= PointScale.MOST_UNITS; unit++) {
        BoolVar step = model.newBoolVar("wish " + w + " unit " + unit);
        units.addTerm(step, -1);
        objective.addTerm(step, scale.earned(w, unit) - scale.earned(w, unit - 1));
      }
      model.addGreaterOrEqual(units.build(), 0);
      if (wish.must() && there == 0) {
        BoolVar unmet = model.newBoolVar("unmet " + w);
        model.addGreaterOrEqual(providers.add(unmet).build(), 1);
        objective.addTerm(unmet, -ScoreBreakdown.MUST_RANK);
      }
    }
  }

  /**
   * Whole thousandths for the share of the wished ground that lies under covering crowns: as many as
   * {@code earned * goal <= possible * covered} lets there be, and no more than all.
   */
  private void ground(Wish wish, int possibleMilli) {
    long goal = GroundCover.goal(problem, wish);
    long there = GroundCover.of(base);
    LinearExprBuilder covered = LinearExpr.newBuilder().add(there);
    for (int i = 0; i < free.size(); i++) {
      covered.addTerm(added.get(i), GroundCover.each(free.get(i)));
    }
    IntVar earned = model.newIntVar(0, possibleMilli, "earned by the ground");
    LinearExprBuilder slack = LinearExpr.newBuilder().addTerm(earned, -goal);
    slack.add(there * possibleMilli);
    for (int i = 0; i < free.size(); i++) {
      slack.addTerm(added.get(i), GroundCover.each(free.get(i)) * possibleMilli);
    }
    model.addGreaterOrEqual(slack.build(), 0);
    objective.add(earned);
    objective.add(-GroundCover.earned(problem, wish, possibleMilli, there));
    if (wish.must() && there < goal) {
      BoolVar unmet = model.newBoolVar("too little ground");
      model.addGreaterOrEqual(covered.addTerm(unmet, goal).build(), goal);
      objective.addTerm(unmet, -ScoreBreakdown.MUST_RANK);
    }
  }
}
