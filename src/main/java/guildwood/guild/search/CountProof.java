package guildwood.guild.search;

import java.util.Arrays;

/**
 * The best counts of a fixed set of items, exactly: depth first over the counts, largest loss first, cut off
 * by a Lagrangian bound over the caps and the budget.
 */
final class CountProof {
  private static final int STEPS = 60;
  private static final int MOST_NODES = 30_000;

  private final Selection s;
  private final double[] price;
  private final double[] bestPrice;
  private final long[] room;
  private long budget;

  private int[] set;
  private int size;
  private int[] low;
  private int[] high;
  private int[] order;
  private double[] freeEach;
  private double[] paidEach;
  private int[] peak;
  private double[] spare;
  private int[] at;
  private long bestValue;
  private int[] bestCounts;
  private double roof;
  private int nodes;

  /** False where the last call gave up before it was certain. */
  boolean certain;

  /** No counts of the last set are worth more than this; only of use where it was not certain. */
  double most;

  CountProof(Selection selection) {
    s = selection;
    price = new double[s.caps.length + 1];
    bestPrice = new double[s.caps.length + 1];
    room = new long[s.caps.length];
  }

  /**
   * The best counts that are worth more than {@code goal} in all, aims included.
   *
   * @return null where there are none (if {@link #certain})
   */
  Choice better(int[] items, int[] fewest, long goal) {
    begin(items, fewest);
    certain = true;
    long fixed = s.base + aims();
    long floor = goal - fixed;
    if (!roomForFewest()) {
      return null;
    }
    highest();
    roof = bound(floor);
    most = fixed + roof;
    if (StrictMath.floor(roof + Bound.SLACK) <= floor) {
      return null;
    }
    bestValue = floor;
    bestCounts = null;
    nodes = 0;
    prepare();
    search(0, 0, 0);
    if (bestCounts == null) {
      return null;
    }
    int[] counts = new int[s.items];
    for (int p = 0; p < size; p++) {
      counts[set[p]] = bestCounts[p];
    }
    return new Choice(counts, fixed + bestValue);
  }

  private void begin(int[] items, int[] fewest) {
    set = items;
    size = items.length;
    low = fewest;
    high = new int[size];
    order = new int[size];
    freeEach = new double[size];
    paidEach = new double[size];
    peak = new int[size];
    spare = new double[size + 1];
    at = new int[size];
  }

  private long aims() {
    int[] units = new int[s.earned.length];
    long bonus = 0;
    for (int i : set) {
      bonus += s.bonus[i];
      for (int k = 0; k < s.aimAt[i].length; k++) {
        units[s.aimAt[i][k]] += s.aimUnits[i][k];
      }
    }
    return bonus + s.aimsValue(units);
  }

  private boolean roomForFewest() {
    System.arraycopy(s.caps, 0, room, 0, room.length);
    budget = s.budget;
    for (int p = 0; p < size; p++) {
      take(p, low[p]);
    }
    for (long left : room) {
      if (left < 0) {
        return false;
      }
    }
    return budget >= 0;
  }

  private void take(int p, int count) {
    int i = set[p];
    for (int k = 0; k < s.useAt[i].length; k++) {
      room[s.useAt[i][k]] -= s.use[i][k] * count;
    }
  }

  private void highest() {
    for (int p = 0; p < size; p++) {
      budget -= cost(p, low[p]);
    }
    for (int p = 0; p < size; p++) {
      long more = s.most[set[p]] - low[p];
      high[p] = low[p] + (int) Math.max(0, Math.min(more, goes(p, low[p])));
    }
  }

  private long cost(int p, int count) {
    return (long) s.price[set[p]] * Math.max(0, count - s.free[set[p]]);
  }

  /** How many more of an item fit into what is left. */
  private long goes(int p, int count) {
    int i = set[p];
    long more = Integer.MAX_VALUE;
    for (int k = 0; k < s.useAt[i].length; k++) {
      more = Math.min(more, room[s.useAt[i][k]] / s.use[i][k]);
    }
    if (s.price[i] > 0) {
      more = Math.min(more, Math.max(0, s.free[i] - count) + budget / s.price[i]);
    }
    return more;
  }

  /** Subgradient steps on the prices of what is left beyond the fewest of each. */
  private double bound(long goal) {
    Arrays.fill(price, 0);
    double best = Double.POSITIVE_INFINITY;
    double length = 1.5;
    double[] slope = new double[price.length];
    for (int step = 0; step < STEPS; step++) {
      double value = evaluate(price, slope);
      if (value < best) {
        best = value;
        System.arraycopy(price, 0, bestPrice, 0, price.length);
      } else {
        length *= 0.85;
      }
      double norm = 0;
      for (int r = 0; r < slope.length; r++) {
        slope[r] = price[r] <= 0 && slope[r] > 0 ? 0 : slope[r];
        norm += slope[r] * slope[r];
      }
      if (norm < 1e-12 || StrictMath.floor(best + Bound.SLACK) <= goal) {
        break;
      }
      double by = length * Math.max(0.5, value - goal) / norm;
      for (int r = 0; r < slope.length; r++) {
        price[r] = Math.max(0, price[r] - by * slope[r]);
      }
    }
    evaluate(bestPrice, slope);
    return best;
  }

  private double evaluate(double[] prices, double[] slope) {
    double total = 0;
    for (int r = 0; r < room.length; r++) {
      total += room[r] > 0 ? prices[r] : 0;
      slope[r] = room[r] > 0 ? 1 : 0;
    }
    int last = room.length;
    total += budget > 0 ? prices[last] : 0;
    slope[last] = budget > 0 ? 1 : 0;
    for (int p = 0; p < size; p++) {
      total += evaluate(p, prices, slope);
    }
    return total;
  }

  private double evaluate(int p, double[] prices, double[] slope) {
    int i = set[p];
    double each = s.each[i];
    for (int k = 0; k < s.useAt[i].length; k++) {
      int r = s.useAt[i][k];
      each -= room[r] > 0 ? prices[r] * s.use[i][k] / room[r] : 0;
    }
    double paid = each - (s.each[i] - s.eachPaid[i]) - (budget > 0 ? prices[room.length] * s.price[i] / budget : 0);
    freeEach[p] = each;
    paidEach[p] = paid;
    int free = Math.max(low[p], Math.min(high[p], s.free[i]));
    peak[p] = each <= 0 ? low[p] : paid <= 0 ? free : high[p];
    for (int k = 0; k < s.useAt[i].length; k++) {
      int r = s.useAt[i][k];
      slope[r] -= room[r] > 0 ? (double) s.use[i][k] * (peak[p] - low[p]) / room[r] : 0;
    }
    slope[room.length] -= budget > 0 ? (double) (cost(p, peak[p]) - cost(p, low[p])) / budget : 0;
    return s.countValue(i, low[p]) + reduced(p, peak[p]);
  }

  /** Worth at these prices of the counts beyond the fewest. */
  private double reduced(int p, int count) {
    int freeLeft = Math.max(0, s.free[set[p]] - low[p]);
    int more = count - low[p];
    int paid = Math.max(0, more - freeLeft);
    return freeEach[p] * (more - paid) + paidEach[p] * paid;
  }

  /** Items whose worth changes fastest with the count come first: their counts are all but decided. */
  private void prepare() {
    double[] steep = new double[size];
    for (int p = 0; p < size; p++) {
      steep[p] = high[p] == low[p] ? Double.MAX_VALUE
          : Math.min(Math.abs(freeEach[p]), Math.abs(paidEach[p])) * 1e3 + s.grain(set[p]);
    }
    for (int p = 0; p < size; p++) {
      int to = p;
      while (to > 0 && steep[order[to - 1]] < steep[p]) {
        order[to] = order[to - 1];
        to--;
      }
      order[to] = p;
    }
  }

  /**
   * @param lost what the counts so far lose against the best ones at these prices
   * @param value of the counts so far
   */
  private void search(int depth, double lost, long value) {
    if (++nodes > MOST_NODES) {
      certain = false;
      return;
    }
    if (depth == size) {
      if (value > bestValue) {
        bestValue = value;
        bestCounts = at.clone();
      }
      return;
    }
    int p = order[depth];
    int most = (int) Math.min(high[p], low[p] + goes(p, low[p]));
    if (depth == size - 1) {
      last(p, most, value);
      return;
    }
    int start = Math.min(peak[p], most);
    for (int count = start; count >= low[p] && alive(lost, p, count); count--) {
      descend(depth, p, count, lost, value);
    }
    for (int count = start + 1; count <= most && alive(lost, p, count); count++) {
      descend(depth, p, count, lost, value);
    }
  }

  private boolean alive(double lost, int p, int count) {
    double loss = lost + reduced(p, peak[p]) - reduced(p, count);
    return certain && StrictMath.floor(roof - loss + Bound.SLACK) > bestValue;
  }

  private void descend(int depth, int p, int count, double lost, long value) {
    take(p, count - low[p]);
    long spent = cost(p, count) - cost(p, low[p]);
    budget -= spent;
    at[p] = count;
    search(depth + 1, lost + reduced(p, peak[p]) - reduced(p, count), value + s.countValue(set[p], count));
    budget += spent;
    take(p, low[p] - count);
  }

  /** The last item takes as many as fit, as long as each is worth something. */
  private void last(int p, int most, long value) {
    int i = set[p];
    int count = s.eachPaid[i] > 0 ? most
        : s.each[i] > 0 ? Math.max(low[p], Math.min(most, s.free[i])) : low[p];
    long sum = value + s.countValue(i, count);
    if (sum > bestValue) {
      at[p] = count;
      bestValue = sum;
      bestCounts = at.clone();
    }
  }
}
