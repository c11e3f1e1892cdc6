package guildwood.guild.search;

import java.util.Arrays;

/**
 * The best counts of a fixed set of items, exactly: branch and bound over the counts with a linear program
 * at every branch, whose prices are evaluated once more by themselves, so that its rounding errors can make
 * the bound loose but never wrong.
 */
final class CountProof {
  private static final int MOST_NODES = 3_000;
  private static final int STRETCHES = 3;

  /** What one towards a goal that must be reached is worth in the program: more than anything else can be. */
  private static final double GOAL_FIRST = 1e5;

  /** Stands for a budget without limit, so that numbers stay small enough to be exact. */
  private static final double MUCH_MONEY = 1e12;

  private final Selection s;
  private int[] set;
  private int size;
  private long fixed;
  private long[] room;
  private long budget;
  private long bestValue;
  private int[] bestCounts;
  private int nodes;
  private Goal goalOf;

  /** False where the last call gave up before it was certain. */
  boolean certain;

  /** No counts of the last set are worth more than this; only of use where it was not certain. */
  double most;

  /** What a search takes for granted about the tally; the two ends of a must are looked at one after the other. */
  private enum Goal {
    /** Nothing: it earns what it earns, or there is none. */
    OPEN,
    REACHED,
    GIVEN_UP
  }

  CountProof(Selection selection) {
    s = selection;
  }

  /**
   * The best counts that are worth more than {@code goal} in all, aims included.
   *
   * @return null where there are none (if {@link #certain})
   */
  Choice better(int[] items, int[] fewest, long goal) {
    set = items;
    size = items.length;
    certain = true;
    fixed = s.base + aims();
    bestValue = goal - fixed;
    bestCounts = null;
    most = Double.NEGATIVE_INFINITY;
    int[] high = new int[size];
    for (int p = 0; p < size; p++) {
      high[p] = s.most[set[p]];
    }
    if (s.tally.isOpen() && s.tally.must()) {
      search(Goal.REACHED, fewest, high);
      search(Goal.GIVEN_UP, fewest, high);
    } else {
      search(Goal.OPEN, fewest, high);
    }
    most = Math.max(most, fixed + bestValue);
    if (bestCounts == null) {
      return null;
    }
    int[] counts = new int[s.items];
    for (int p = 0; p < size; p++) {
      counts[set[p]] = bestCounts[p];
    }
    return new Choice(counts, fixed + bestValue);
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

  private void search(Goal goal, int[] low, int[] high) {
    goalOf = goal;
    nodes = 0;
    search(low, high);
  }

  private void search(int[] low, int[] highest) {
    if (!reserve(low)) {
      return;
    }
    int[] high = new int[size];
    for (int p = 0; p < size; p++) {
      high[p] = (int) Math.min(highest[p], low[p] + goes(p, low[p]));
      if (high[p] < low[p]) {
        return;
      }
    }
    LinearProgram program = program(low, high);
    program.solve();
    double roof = roof(low, high, program.price);
    if (StrictMath.floor(roof + Bound.SLACK) <= bestValue) {
      return;
    }
    if (++nodes > MOST_NODES) {
      certain = false;
      most = Math.max(most, fixed + roof);
      return;
    }
    int[] counts = new int[size];
    int split = mostBroken(low, program, counts);
    keep(counts.clone(), high);
    if (split < 0 && StrictMath.floor(roof + Bound.SLACK) > bestValue) {
      // Whole already, yet short of the roof: rounding in the program. Split what is widest.
      split = widest(low, high);
    }
    if (split >= 0) {
      halves(low, high, split, Math.max(low[split], Math.min(high[split] - 1, counts[split])));
    }
  }

  /** Rounds the program's counts down into {@code counts}; the position of the one furthest from whole, -1 where all are. */
  private int mostBroken(int[] low, LinearProgram program, int[] counts) {
    int split = -1;
    double half = 1e-6;
    for (int p = 0; p < size; p++) {
      double count = low[p];
      for (int stretch = 0; stretch < STRETCHES; stretch++) {
        count += program.value[stretch * size + p];
      }
      counts[p] = (int) StrictMath.floor(count + 1e-6);
      double off = Math.abs(count - StrictMath.rint(count));
      if (off > half) {
        half = off;
        split = p;
      }
    }
    return split;
  }

  /** Looks at the counts above and below a split one after the other. */
  private void halves(int[] low, int[] high, int split, int at) {
    int[] raised = low.clone();
    raised[split] = at + 1;
    search(raised, high);
    int[] lowered = high.clone();
    lowered[split] = at;
    search(low, lowered);
  }

  private static int widest(int[] low, int[] high) {
    int widest = -1;
    for (int p = 0; p < low.length; p++) {
      if (high[p] > low[p] && (widest < 0 || high[p] - low[p] > high[widest] - low[widest])) {
        widest = p;
      }
    }
    return widest;
  }

  /** Takes the least counts out of the caps; false where they do not fit. */
  private boolean reserve(int[] low) {
    room = s.caps.clone();
    budget = s.budget;
    boolean fits = true;
    for (int p = 0; p < size; p++) {
      int i = set[p];
      for (int k = 0; k < s.useAt[i].length; k++) {
        room[s.useAt[i][k]] -= s.use[i][k] * low[p];
        fits &= room[s.useAt[i][k]] >= 0;
      }
      budget -= cost(p, low[p]);
    }
    return fits && budget >= 0;
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

  /**
   * Variables: by stretch of its value, how many more of every item lie in it; last, how much of the tally counts,
   * which is no more than there is of it.
   */
  private LinearProgram program(int[] low, int[] high) {
    int tally = STRETCHES * size;
    double[] gain = new double[tally + 1];
    double[] upper = new double[tally + 1];
    double[][] uses = new double[room.length + 2][tally + 1];
    double[] caps = new double[room.length + 2];
    gain[tally] = goalOf == Goal.REACHED ? GOAL_FIRST : s.tally.perOne();
    upper[tally] = mostTallied();
    uses[room.length + 1][tally] = 1;
    caps[room.length + 1] = tallied(low);
    for (int r = 0; r < room.length; r++) {
      caps[r] = room[r];
    }
    caps[room.length] = Math.min(budget, MUCH_MONEY);
    for (int p = 0; p < size; p++) {
      int i = set[p];
      for (int stretch = 0; stretch < STRETCHES; stretch++) {
        int v = stretch * size + p;
        gain[v] = s.one[i][stretch];
        upper[v] = within(i, stretch, low[p], high[p]);
        for (int k = 0; k < s.useAt[i].length; k++) {
          uses[s.useAt[i][k]][v] = s.use[i][k];
        }
        uses[room.length][v] = isPaid(i, stretch) ? s.price[i] : 0;
        uses[room.length + 1][v] = -s.adds[i];
      }
    }
    return new LinearProgram(gain, uses, caps, upper);
  }

  private long tallied(int[] counts) {
    long sum = 0;
    for (int p = 0; p < size; p++) {
      sum += s.adds[set[p]] * counts[p];
    }
    return sum;
  }

  private long mostTallied() {
    return goalOf == Goal.GIVEN_UP ? s.tally.missing() - 1 : s.tally.missing();
  }

  /** The most that the tally's earning can exceed this price for each one of it. */
  private double tallyRoof(double price) {
    long most = mostTallied();
    double full = s.tally.line(most) - price * most;
    return switch (goalOf) {
      case OPEN -> Math.max(0, full);
      case REACHED -> full;
      case GIVEN_UP -> Math.max(0, full) - Selection.MUST_MILLI;
    };
  }

  /** How many of the counts above low and up to high lie in a stretch. */
  private int within(int i, int stretch, int low, int high) {
    int from = stretch == 0 ? 0 : s.stretchEnd(i, stretch - 1);
    return Math.max(0, Math.min(high, s.stretchEnd(i, stretch)) - Math.max(low, from));
  }

  private boolean isPaid(int i, int stretch) {
    return stretch == 2 || stretch == 1 && s.firstEnd[i] == s.free[i];
  }

  /** The Lagrangian bound at these prices: valid whatever they are, as long as none is negative. */
  private double roof(int[] low, int[] high, double[] price) {
    double goalPrice = price[room.length + 1];
    double total = price[room.length] * Math.min(budget, MUCH_MONEY) + tallyRoof(goalPrice) + goalPrice * tallied(low);
    for (int r = 0; r < room.length; r++) {
      total += price[r] * room[r];
    }
    for (int p = 0; p < size; p++) {
      int i = set[p];
      double cost = 0;
      for (int k = 0; k < s.useAt[i].length; k++) {
        cost += price[s.useAt[i][k]] * s.use[i][k];
      }
      cost -= goalPrice * s.adds[i];
      total += s.countValue(i, low[p]);
      for (int stretch = 0; stretch < STRETCHES; stretch++) {
        double paid = isPaid(i, stretch) ? price[room.length] * s.price[i] : 0;
        total += Math.max(0, s.one[i][stretch] - cost - paid) * within(i, stretch, low[p], high[p]);
      }
    }
    return total;
  }

  /** Takes whole counts that fit, filled up with what still goes, as the best so far where they are. */
  private void keep(int[] counts, int[] high) {
    long[] roomBefore = room;
    long budgetBefore = budget;
    if (reserve(counts)) {
      for (int p = 0; p < size && s.tally.isOpen(); p++) {
        if (s.addsWorth(set[p], stretchOf(set[p], counts[p]))) {
          add(counts, p, (int) Math.min(high[p] - counts[p], s.addsUp(set[p], tallied(counts))));
        }
      }
      for (int p = 0; p < size; p++) {
        add(counts, p, Math.min(high[p], s.wanted[set[p]]) - counts[p]);
      }
      long value = s.tally.value(tallied(counts));
      for (int p = 0; p < size; p++) {
        value += s.countValue(set[p], counts[p]);
      }
      if (value > bestValue) {
        bestValue = value;
        bestCounts = counts.clone();
      }
    }
    room = roomBefore;
    budget = budgetBefore;
  }

  /** Adds as many of an item as still go, no more than these. */
  private void add(int[] counts, int p, int atMost) {
    int i = set[p];
    int add = (int) Math.max(0, Math.min(goes(p, counts[p]), atMost));
    budget -= cost(p, counts[p] + add) - cost(p, counts[p]);
    counts[p] += add;
    for (int k = 0; k < s.useAt[i].length; k++) {
      room[s.useAt[i][k]] -= s.use[i][k] * add;
    }
  }

  private int stretchOf(int i, int count) {
    return count < s.firstEnd[i] ? 0 : count < s.secondEnd[i] ? 1 : 2;
  }

  @Override
  public String toString() {
    return Arrays.toString(set) + " worth " + bestValue + " after " + nodes;
  }
}
