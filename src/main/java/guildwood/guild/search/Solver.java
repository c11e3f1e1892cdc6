package guildwood.guild.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Solves a {@link Selection}: greedy start, bound, annealing guided by the bound's prices, exact counts, and
 * exact completion while it pays. The same selection, seed and effort give the same answer.
 */
public final class Solver {
  private static final int MOST_NARROWINGS = 4;
  private static final int NARROWING_STEPS = 150;
  private static final int MORE_WALKS = 6;

  /** Items left after narrowing for which the given number of branches is meant; more items, fewer branches. */
  private static final int USUAL_CORE = 60;

  private final Selection s;
  private final long seed;
  private final int boundSteps;
  private final int moves;
  private final int nodes;

  private final Filling filling;
  private final Bound bound;
  private final Descent descent;
  private int[] favourites;
  private int core;

  public Solver(Selection selection, long seed, int boundSteps, int moves, int nodes) {
    s = SharedCaps.addedTo(selection);
    this.seed = seed;
    this.boundSteps = boundSteps;
    this.moves = moves;
    this.nodes = nodes;
    filling = new Filling(s);
    bound = new Bound(s);
    descent = new Descent(s, bound);
  }

  /**
   * What was found.
   *
   * @param roof no allowed choice is worth more
   * @param proven whether {@code best} reaches the roof
   */
  public record Solved(Choice best, long roof, boolean proven) {}

  /** Hears of the work as it goes and may end it. */
  public interface Listener {
    /**
     * @param percent of the work done
     * @return false to end it
     */
    boolean goesOn(int percent, Choice best);
  }

  /** The best choice to be found, with its proof as far as it goes. */
  public Solved solve(Listener listener) {
    Choice best = new Greedy(s, filling).choose();
    boolean goesOn = listener.goesOn(2, best);
    best = price(best);
    if (descent.settled(best.value())) {
      return new Solved(best, best.value(), true);
    }
    double limit = descent.bestValue;
    if (goesOn && listener.goesOn(10, best)) {
      best = walk(best, moves, seed, (move, found) -> listener.goesOn(10 + (int) (40L * move / moves), found));
      goesOn = listener.goesOn(50, best);
    } else {
      goesOn = false;
    }
    if (goesOn && nodes > 0) {
      return complete(best, limit, listener);
    }
    long roof = Math.max(best.value(), (long) StrictMath.floor(limit + Bound.SLACK));
    return new Solved(best, roof, roof == best.value());
  }

  /** Finds prices for the whole selection, and with them the order in which the walk prefers items. */
  private Choice price(Choice start) {
    bound.left.settle(Fixing.nothing(s));
    descent.run(descent.firstPrices(), boundSteps, start.value(), 1.2);
    bound.at(descent.best);
    filling.guidedBy(descent.best);
    double[] worth = new double[s.items];
    Arrays.fill(worth, Double.NEGATIVE_INFINITY);
    for (int o = 0; o < bound.left.opens; o++) {
      worth[bound.left.open[o]] = bound.picking.worth[bound.left.open[o]];
    }
    favourites = IntStream.range(0, s.items).filter(i -> worth[i] > Double.NEGATIVE_INFINITY).boxed()
        .sorted(Comparator.<Integer>comparingDouble(i -> -worth[i]).thenComparing(i -> i))
        .mapToInt(i -> i).toArray();
    core = 6 * Math.max(1, Math.min(s.mostItems, 20)) + 20;
    return start;
  }

  /** A walk, and the exact counts of the good sets it came by. */
  private Choice walk(Choice start, int steps, long walkSeed, Annealing.Walk watch) {
    Annealing annealing = new Annealing(s, filling, walkSeed, favourites, core);
    annealing.run(start.set(), steps, watch);
    Choice best = annealing.best.value() >= start.value() ? annealing.best : start;
    CountProof proof = new CountProof(s);
    for (int[] set : annealing.good()) {
      int[] fewest = s.fewestOf(set);
      Choice better = fewest == null ? null : proof.better(set, fewest, best.value());
      best = better == null ? best : better;
    }
    return best;
  }

  /** The same items with the best counts. */
  private Choice counted(Choice choice) {
    int[] set = choice.set();
    int[] fewest = s.fewestOf(set);
    Choice better = fewest == null ? null : new CountProof(s).better(set, fewest, choice.value());
    return better == null ? choice : better;
  }

  /** Narrows the selection down as long as that pays, then settles who is in and who is out. */
  private Solved complete(Choice best, double limit, Listener listener) {
    Selection core = s;
    Bound coreBound = bound;
    Descent coreDescent = descent;
    Reduced reduced = Reduced.of(core, coreBound, coreDescent, best);
    Reduced whole = reduced;
    double roof = limit;
    for (int round = 0; round < MOST_NARROWINGS && reduced.selection().items < 0.9 * core.items; round++) {
      core = reduced.selection();
      Choice inner = whole.into(best);
      coreBound = new Bound(core);
      if (!coreBound.left.settle(Fixing.nothing(core))) {
        break;
      }
      Descent next = new Descent(core, coreBound);
      next.run(coreDescent.best, NARROWING_STEPS, best.value(), 0.8);
      coreDescent = next;
      roof = Math.min(roof, next.bestValue);
      if (next.settled(best.value())) {
        return new Solved(best, best.value(), true);
      }
      reduced = Reduced.of(core, coreBound, coreDescent, inner);
      whole = whole.then(reduced);
    }
    Reduced kept = whole;
    int affordable = (int) Math.max(1, (long) nodes * USUAL_CORE / Math.max(USUAL_CORE, kept.selection().items));
    Completion completion = new Completion(kept.selection(), kept.into(best));
    completion.run(coreDescent.best, roof, affordable, (looked, found) ->
        listener.goesOn(50 + (int) (40L * looked / affordable), kept.outOf(found)));
    Choice found = kept.outOf(completion.best);
    return completion.proven ? new Solved(found, completion.roof, true) : again(found, completion.roof, listener);
  }

  /** Where the proof did not come through there may be something better left: a few more walks look for it. */
  private Solved again(Choice best, long roof, Listener listener) {
    Choice found = best;
    for (int walk = 1; walk <= MORE_WALKS && found.value() < roof && listener.goesOn(90, found); walk++) {
      Choice from = walk % 2 == 0 ? found : new Greedy(s, filling).choose();
      Choice other = walk(from, moves, seed + 7_919L * walk, (move, now) -> true);
      found = other.value() > found.value() ? other : found;
    }
    return new Solved(found, roof, found.value() == roof);
  }

  /**
   * Another good choice, at least so many items apart from each given one, found while leaning towards a
   * theme; valued without the leaning.
   *
   * @param keepsCounts whether the theme's counts stay; otherwise they are filled up as without it
   */
  public Optional<Choice> another(
      List<Choice> others, int apart, Selection leaning, boolean keepsCounts, int steps, long walkSeed) {
    Selection inclined = SharedCaps.addedTo(leaning);
    Filling leaningFilling = new Filling(inclined);
    leaningFilling.guidedBy(descent.best);
    Annealing annealing = new Annealing(inclined, leaningFilling, walkSeed, favourites, core);
    List<int[]> sets = new ArrayList<>();
    others.forEach(o -> sets.add(o.set()));
    annealing.keepApart(sets, apart);
    annealing.run(others.get(0).set(), steps, (move, found) -> true);
    if (annealing.best == null) {
      return Optional.empty();
    }
    int[] counts = annealing.best.counts();
    Choice found = new Choice(counts, s.value(counts));
    return Optional.of(keepsCounts ? found : counted(found));
  }
}
