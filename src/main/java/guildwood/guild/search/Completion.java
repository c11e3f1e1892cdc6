package guildwood.guild.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Branch and bound on who is in and who is out, most promising branch first, with the Lagrangian bound at
 * every branch and exact counts at every leaf. Ends with the best choice proven, or with the highest bound
 * of what is left once its branches are used up.
 */
final class Completion {
  private static final int STEPS_AT_ROOT = 60;
  private static final int STEPS = 14;

  private final Selection s;
  private final Bound bound;
  private final Descent descent;
  private final Filling filling;
  private final CountProof counts;
  private final PriorityQueue<Branch> queue =
      new PriorityQueue<>(Comparator.comparingDouble(Branch::limit).reversed().thenComparingLong(Branch::number));
  private long made;

  /** The best choice known. */
  Choice best;

  /** No allowed choice is worth more. */
  long roof;

  boolean proven;
  int looked;

  /** @param fresh whether the prices were made for something else, so that finding good ones takes longer */
  private record Branch(double limit, long number, Fixing fixing, Prices prices, boolean fresh) {}

  Completion(Selection selection, Choice start) {
    s = selection;
    bound = new Bound(s);
    descent = new Descent(s, bound);
    filling = new Filling(s);
    counts = new CountProof(s);
    best = start;
  }

  /**
   * @param prices to start from
   * @param limit a bound already known
   * @param nodes how many branches to look at
   */
  void run(Prices prices, double limit, int nodes, Watch watch) {
    add(limit, Fixing.nothing(s), prices);
    double left = Double.NEGATIVE_INFINITY;
    while (!queue.isEmpty() && whole(queue.peek().limit) > best.value()) {
      if (looked >= nodes || looked % 256 == 0 && !watch.goesOn(looked, best)) {
        break;
      }
      Branch branch = queue.poll();
      left = Math.max(left, look(branch, looked++ == 0 || branch.fresh ? STEPS_AT_ROOT : STEPS));
    }
    long open = queue.isEmpty() ? best.value() : whole(queue.peek().limit);
    roof = Math.max(best.value(), Math.max(open, whole(left)));
    proven = roof == best.value();
  }

  private static long whole(double limit) {
    return limit == Double.NEGATIVE_INFINITY ? Long.MIN_VALUE : (long) StrictMath.floor(limit + Bound.SLACK);
  }

  private void add(double limit, Fixing fixing, Prices prices) {
    queue.add(new Branch(limit, made++, fixing, prices, false));
  }

  /** Looks at one branch; the answer bounds what was given up inside it, minus infinity where nothing was. */
  private double look(Branch branch, int steps) {
    Fixing fixing = branch.fixing;
    if (!bound.left.settle(fixing)) {
      return Double.NEGATIVE_INFINITY;
    }
    if (bound.left.opens == 0) {
      descent.run(branch.prices, steps, best.value(), 0.8);
      return descent.settled(best.value()) ? Double.NEGATIVE_INFINITY : leaf(fixing, branch.limit);
    }
    descent.run(branch.prices, steps, best.value(), 0.8);
    tryPicked(fixing);
    if (descent.settled(best.value())) {
      return Double.NEGATIVE_INFINITY;
    }
    bound.at(descent.best);
    double limit = Math.min(branch.limit, descent.bestValue);
    boolean changed = fix(fixing);
    if (changed) {
      add(limit, fixing, descent.best.copy());
    } else {
      split(fixing, limit);
    }
    return Double.NEGATIVE_INFINITY;
  }

  private double leaf(Fixing fixing, double limit) {
    int[] set = inSet(fixing, false);
    int[] fewest = s.fewestOf(set);
    if (fewest == null) {
      return Double.NEGATIVE_INFINITY;
    }
    Choice better = counts.better(set, fewest, best.value());
    if (better != null) {
      best = better;
    }
    return counts.certain ? Double.NEGATIVE_INFINITY : Math.min(limit, counts.most);
  }

  private int[] inSet(Fixing fixing, boolean withPicked) {
    List<Integer> set = new ArrayList<>();
    for (int i = 0; i < s.items; i++) {
      if (fixing.state[i] == Fixing.IN) {
        set.add(i);
      }
    }
    for (int p = 0; withPicked && p < bound.picking.picks; p++) {
      set.add(bound.picking.picked[p]);
    }
    return set.stream().mapToInt(i -> i).toArray();
  }

  /** Makes an allowed choice of what the bound picked, leaving out what does not go together. */
  private void tryPicked(Fixing fixing) {
    int[] all = inSet(fixing, true);
    int[] set = new int[all.length];
    int size = 0;
    for (int item : all) {
      boolean fits = true;
      for (int p = 0; p < size; p++) {
        fits &= !s.enemies(set[p], item);
      }
      if (fits) {
        set[size++] = item;
        if (filling.fill(set, size) == Filling.IMPOSSIBLE && filling.orphan < 0) {
          size--;
        }
      }
    }
    long value = filling.fill(set, size);
    if (value > best.value()) {
      int[] found = new int[s.items];
      for (int p = 0; p < size; p++) {
        found[set[p]] = filling.counts[p];
      }
      best = new Choice(found, value);
    }
  }

  /** Puts in or out what the bound decides by itself; true where anything came in. */
  private boolean fix(Fixing fixing) {
    double spare = bound.value - best.value() - 1 + 2 * Bound.SLACK;
    double outside = bound.picking.bestOutside();
    boolean cameIn = false;
    boolean[] picked = new boolean[s.items];
    for (int p = 0; p < bound.picking.picks; p++) {
      picked[bound.picking.picked[p]] = true;
    }
    for (int o = 0; o < bound.left.opens; o++) {
      int i = bound.left.open[o];
      if (!picked[i] && bound.picking.lossIn(i) > spare) {
        fixing.state[i] = Fixing.OUT;
      }
    }
    for (int p = 0; p < bound.picking.picks; p++) {
      if (bound.picking.lossOut(p, outside) > spare) {
        fixing.state[bound.picking.picked[p]] = Fixing.IN;
        cameIn = true;
      }
    }
    return cameIn;
  }

  private void split(Fixing fixing, double limit) {
    Prices prices = descent.best.copy();
    if (s.tally.isOpen() && s.tally.must() && fixing.tally == Fixing.OPEN) {
      queue.add(new Branch(limit, made++, fixing.withTally(Fixing.IN), prices, true));
      queue.add(new Branch(limit, made++, fixing.withTally(Fixing.OUT), prices.copy(), true));
      return;
    }
    int item = best.value() < 0 ? hardestMust(fixing) : -1;
    item = item >= 0 ? item : quarreller(fixing);
    item = item >= 0 ? item : partnerOfLoner(fixing);
    item = item >= 0 ? item : mostUndecided(fixing);
    if (item < 0) {
      // Nothing open is worth anything at these prices, yet the bound is not met: leave them out one by one.
      item = firstOpen(fixing);
    }
    if (item < 0) {
      add(limit, fixing, prices);
      return;
    }
    int position = bound.picking.position(item);
    double in = position < 0 ? bound.value - Math.max(0, bound.picking.lossIn(item)) : limit;
    double out = position < 0 ? limit : bound.value - Math.max(0, bound.picking.lossOut(position, bound.picking.bestOutside()));
    add(Math.min(limit, in), fixing.with(item, Fixing.IN), prices);
    add(Math.min(limit, out), fixing.with(item, Fixing.OUT), prices);
  }

  private int firstOpen(Fixing fixing) {
    for (int i = 0; i < s.items; i++) {
      if (fixing.state[i] == Fixing.OPEN) {
        return i;
      }
    }
    return -1;
  }

  private int mostUndecided(Fixing fixing) {
    int chosen = -1;
    double most = -1;
    for (int o = 0; o < bound.left.opens; o++) {
      int i = bound.left.open[o];
      if (fixing.state[i] != Fixing.OPEN) {
        continue;
      }
      double undecided = Math.min(descent.share[i], 1 - descent.share[i]);
      boolean isPicked = bound.picking.position(i) >= 0;
      double score = undecided + (isPicked ? 0.01 + 1e-7 * bound.picking.worth[i] : 0);
      if (score > most && (isPicked || undecided > 0.02)) {
        most = score;
        chosen = i;
      }
    }
    return chosen;
  }

  /**
   * While no choice is known that meets every must: the worthiest provider of the must with fewest of them.
   * Prices alone settle slowly whether musts go together at all; deciding their providers does it at once.
   */
  private int hardestMust(Fixing fixing) {
    int chosen = -1;
    int fewest = Integer.MAX_VALUE;
    for (int w = 0; w < s.earned.length; w++) {
      if (!bound.left.lacks(w)) {
        continue;
      }
      int providers = 0;
      int worthiest = -1;
      for (int o = 0; o < bound.left.opens; o++) {
        int i = bound.left.open[o];
        if (fixing.state[i] == Fixing.OPEN && s.source.get(i).units()[w] > 0) {
          providers++;
          worthiest = worthiest < 0 || bound.picking.worth[i] > bound.picking.worth[worthiest] ? i : worthiest;
        }
      }
      if (providers > 0 && providers < fewest) {
        fewest = providers;
        chosen = worthiest;
      }
    }
    return chosen;
  }

  /** The worthiest open partner of an item that is in and has none yet. */
  private int partnerOfLoner(Fixing fixing) {
    for (int i = 0; i < s.items; i++) {
      Item item = s.source.get(i);
      if (fixing.state[i] != Fixing.IN || !item.needsPartner() || item.fewestAlone() <= item.fewest()) {
        continue;
      }
      int worthiest = -1;
      boolean served = false;
      for (int partner : item.partners()) {
        served |= fixing.state[partner] == Fixing.IN;
        if (fixing.state[partner] == Fixing.OPEN
            && (worthiest < 0 || bound.picking.worth[partner] > bound.picking.worth[worthiest])) {
          worthiest = partner;
        }
      }
      if (!served && worthiest >= 0) {
        return worthiest;
      }
    }
    return -1;
  }

  /** The worthiest picked item that has an enemy among the picked; once it is in, its enemies are out. */
  private int quarreller(Fixing fixing) {
    for (int p = 0; p < bound.picking.picks; p++) {
      int i = bound.picking.picked[p];
      for (int q = 0; q < bound.picking.picks && fixing.state[i] == Fixing.OPEN; q++) {
        if (p != q && s.enemies(i, bound.picking.picked[q])) {
          return i;
        }
      }
    }
    return -1;
  }

  /** Asked every now and then whether to go on. */
  interface Watch {
    boolean goesOn(int looked, Choice best);
  }
}
