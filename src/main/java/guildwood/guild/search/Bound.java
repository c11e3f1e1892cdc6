package guildwood.guild.search;

import java.util.Arrays;

/**
 * The Lagrangian bound: caps, budget, aims and musts are bought at prices instead of being kept; how many
 * items, how many of a group, and the range of every count stay exact. One evaluation is linear in the
 * number of items. The answer is never below the value of any allowed choice that agrees with what is fixed.
 */
final class Bound {
  /** Rounding errors of one evaluation stay far below this; values are whole, so nothing is lost. */
  static final double SLACK = 1e-3;

  private final Selection s;

  /** What is fixed: items in, items out, the rest open. */
  private Fixing fixed;

  // The open items, and the counts still possible for open and fixed ones.
  final int[] open;
  int opens;
  final int[] high;
  final long[] room;
  long budgetRoom;
  final int[] unitsIn;
  int picksLeft;
  final int[] groupLeft;

  // The answer of the last evaluation.
  double value;
  final double[] worth;
  final int[] countAt;
  final int[] picked;
  int picks;
  final Prices slope;
  private final int[] unitsWanted;
  private final int[] reachable;
  private final int[] inGroup;
  private final double[] scale;
  private final double budgetScale;

  Bound(Selection selection) {
    s = selection;
    open = new int[s.items];
    high = new int[s.items];
    room = new long[s.caps.length];
    unitsIn = new int[s.earned.length];
    groupLeft = new int[s.groupRoom.length];
    worth = new double[s.items];
    countAt = new int[s.items];
    picked = new int[s.items];
    slope = new Prices(s.caps.length, s.earned.length);
    unitsWanted = new int[s.earned.length];
    reachable = new int[s.earned.length];
    inGroup = new int[s.groupRoom.length];
    scale = new double[s.caps.length];
    for (int r = 0; r < scale.length; r++) {
      scale[r] = s.caps[r] > 0 ? 1.0 / s.caps[r] : 0;
    }
    budgetScale = s.budget > 0 ? 1.0 / s.budget : 0;
  }

  /**
   * Takes up what is fixed and marks as out what no longer goes beside it.
   *
   * @return false where nothing allowed agrees with it
   */
  boolean settle(Fixing fixing) {
    fixed = fixing;
    if (!account() || enemiesIn()) {
      return false;
    }
    ruleOut();
    reach();
    return true;
  }

  /** Adds up what the items that are in use at least. */
  private boolean account() {
    System.arraycopy(s.caps, 0, room, 0, room.length);
    budgetRoom = s.budget;
    picksLeft = s.mostItems;
    System.arraycopy(s.groupRoom, 0, groupLeft, 0, groupLeft.length);
    Arrays.fill(unitsIn, 0);
    for (int i = 0; i < s.items; i++) {
      if (fixed.state[i] != Fixing.IN) {
        continue;
      }
      int low = s.fewest[i];
      for (int k = 0; k < s.useAt[i].length; k++) {
        room[s.useAt[i][k]] -= s.use[i][k] * low;
      }
      budgetRoom -= (long) s.price[i] * Math.max(0, low - s.free[i]);
      picksLeft--;
      if (s.group[i] >= 0) {
        groupLeft[s.group[i]]--;
      }
      for (int k = 0; k < s.aimAt[i].length; k++) {
        unitsIn[s.aimAt[i][k]] += s.aimUnits[i][k];
      }
    }
    return allNotNegative();
  }

  private boolean allNotNegative() {
    boolean good = budgetRoom >= 0 && picksLeft >= 0;
    for (long left : room) {
      good &= left >= 0;
    }
    for (int left : groupLeft) {
      good &= left >= 0;
    }
    return good;
  }

  private boolean enemiesIn() {
    for (int i = 0; i < s.items; i++) {
      for (int j = i + 1; j < s.items && fixed.state[i] == Fixing.IN; j++) {
        if (fixed.state[j] == Fixing.IN && s.enemies(i, j)) {
          return true;
        }
      }
    }
    return false;
  }

  private void ruleOut() {
    opens = 0;
    long gives = 0;
    long suffers = 0;
    for (int i = 0; i < s.items; i++) {
      if (fixed.state[i] == Fixing.IN) {
        gives |= s.gives[i];
        suffers |= s.suffers[i];
      }
    }
    for (int i = 0; i < s.items; i++) {
      if (fixed.state[i] == Fixing.IN) {
        high[i] = (int) Math.min(s.most[i], s.fewest[i] + spare(i, s.fewest[i]));
      } else if (fixed.state[i] == Fixing.OPEN) {
        high[i] = (int) Math.min(s.most[i], spare(i, 0));
        boolean fits = high[i] >= s.fewest[i] && picksLeft > 0
            && (s.group[i] < 0 || groupLeft[s.group[i]] > 0)
            && (s.gives[i] & suffers) == 0 && (s.suffers[i] & gives) == 0;
        if (fits) {
          open[opens++] = i;
        } else {
          fixed.state[i] = Fixing.OUT;
        }
      }
    }
  }

  /** How many more of an item the room left would take. */
  private long spare(int i, int low) {
    long spare = Integer.MAX_VALUE;
    for (int k = 0; k < s.useAt[i].length; k++) {
      spare = Math.min(spare, room[s.useAt[i][k]] / s.use[i][k]);
    }
    if (s.price[i] > 0) {
      spare = Math.min(spare, Math.max(0, s.free[i] - low) + budgetRoom / s.price[i]);
    }
    return spare;
  }

  /** Units every aim can still get at most: those of the largest open providers that may be picked. */
  private void reach() {
    Arrays.fill(reachable, 0);
    int[] twos = new int[reachable.length];
    int[] ones = new int[reachable.length];
    for (int o = 0; o < opens; o++) {
      int i = open[o];
      for (int k = 0; k < s.aimAt[i].length; k++) {
        if (s.aimUnits[i][k] >= 2) {
          twos[s.aimAt[i][k]]++;
        } else {
          ones[s.aimAt[i][k]]++;
        }
      }
    }
    for (int w = 0; w < reachable.length; w++) {
      int wholes = Math.min(twos[w], picksLeft);
      reachable[w] = 2 * wholes + Math.min(ones[w], picksLeft - wholes);
    }
  }

  /** Evaluates the bound at these prices; {@link #value} and {@link #slope} hold the answer. */
  double at(Prices prices) {
    double total = s.base;
    for (int r = 0; r < s.caps.length; r++) {
      total += prices.cap[r];
      slope.cap[r] = 1;
    }
    total += prices.budget;
    slope.budget = 1;
    total += aims(prices);
    for (int i = 0; i < s.items; i++) {
      if (fixed.state[i] == Fixing.IN) {
        total += s.bonus[i] + countWorth(i, s.fewest[i], prices);
        use(i);
      }
    }
    for (int o = 0; o < opens; o++) {
      openWorth(open[o], prices);
    }
    pick();
    for (int p = 0; p < picks; p++) {
      total += worth[picked[p]];
      use(picked[p]);
      spend(picked[p]);
    }
    value = total;
    return total;
  }

  /** The most that every aim's own earning can exceed the price of the units it is told to have. */
  private double aims(Prices prices) {
    double total = 0;
    for (int w = 0; w < s.earned.length; w++) {
      int wanted = 0;
      double best = s.earned(w, unitsIn[w]);
      double next = best;
      for (int more = 1; more <= reachable[w] && unitsIn[w] + more < s.earned[w].length; more++) {
        next = s.earned(w, unitsIn[w] + more) - prices.aim[w] * more;
        if (next > best) {
          best = next;
          wanted = more;
        }
      }
      total += best;
      unitsWanted[w] = wanted;
      slope.aim[w] = -wanted;
      slope.must[w] = 0;
      if (s.must[w] && unitsIn[w] == 0) {
        boolean hopeless = reachable[w] == 0;
        total -= hopeless ? Selection.MUST_MILLI : Math.min(prices.must[w], Selection.MUST_MILLI);
        slope.must[w] = hopeless ? 0 : -1;
      }
    }
    return total;
  }

  private void openWorth(int i, Prices prices) {
    double sum = s.bonus[i] + countWorth(i, s.fewest[i], prices);
    for (int k = 0; k < s.aimAt[i].length; k++) {
      int w = s.aimAt[i][k];
      sum += prices.aim[w] * s.aimUnits[i][k];
      if (s.must[w] && unitsIn[w] == 0) {
        sum += Math.min(prices.must[w], Selection.MUST_MILLI);
      }
    }
    worth[i] = sum;
  }

  /** The best count at these prices and what it is worth: the ends of the range or the end of what is free. */
  private double countWorth(int i, int low, Prices prices) {
    double freeEach = s.each[i];
    for (int k = 0; k < s.useAt[i].length; k++) {
      int r = s.useAt[i][k];
      freeEach -= prices.cap[r] * scale[r] * s.use[i][k];
    }
    double paidEach = freeEach - (s.each[i] - s.eachPaid[i]) - prices.budget * budgetScale * s.price[i];
    int count = freeEach <= 0 ? low : paidEach <= 0 ? Math.max(low, Math.min(high[i], s.free[i])) : high[i];
    countAt[i] = count;
    int paid = Math.max(0, count - s.free[i]);
    return freeEach * (count - paid) + paidEach * paid;
  }

  private void use(int i) {
    for (int k = 0; k < s.useAt[i].length; k++) {
      int r = s.useAt[i][k];
      slope.cap[r] -= scale[r] * s.use[i][k] * countAt[i];
    }
    slope.budget -= budgetScale * s.price[i] * Math.max(0, countAt[i] - s.free[i]);
  }

  private void spend(int i) {
    for (int k = 0; k < s.aimAt[i].length; k++) {
      int w = s.aimAt[i][k];
      slope.aim[w] += s.aimUnits[i][k];
      if (s.must[w] && unitsIn[w] == 0) {
        slope.must[w] += 1;
      }
    }
  }

  /** The best set of open items under the limits on number and groups: exchange on the weakest, exact on this structure. */
  private void pick() {
    picks = 0;
    Arrays.fill(inGroup, 0);
    for (int o = 0; o < opens; o++) {
      int i = open[o];
      if (!(worth[i] > 0)) {
        continue;
      }
      int g = s.group[i];
      if (g >= 0 && inGroup[g] >= groupLeft[g]) {
        int weakest = weakestOf(g);
        if (better(i, picked[weakest])) {
          takeOut(weakest);
          insert(i);
        }
      } else if (picks < picksLeft) {
        insert(i);
        count(g, 1);
      } else if (picks > 0 && better(i, picked[picks - 1])) {
        count(s.group[picked[picks - 1]], -1);
        picks--;
        insert(i);
        count(g, 1);
      }
    }
  }

  private void count(int g, int by) {
    if (g >= 0) {
      inGroup[g] += by;
    }
  }

  private boolean better(int i, int j) {
    return worth[i] > worth[j] || worth[i] == worth[j] && i < j;
  }

  private int weakestOf(int g) {
    int p = picks - 1;
    while (s.group[picked[p]] != g) {
      p--;
    }
    return p;
  }

  private void takeOut(int at) {
    System.arraycopy(picked, at + 1, picked, at, picks - at - 1);
    picks--;
  }

  /** Keeps the picked ones in falling order of worth. */
  private void insert(int i) {
    int at = picks;
    while (at > 0 && better(i, picked[at - 1])) {
      picked[at] = picked[at - 1];
      at--;
    }
    picked[at] = i;
    picks++;
  }

  /** What the bound falls by where an open item that is not picked is forced in. */
  double lossIn(int i) {
    int g = s.group[i];
    double leaving = 0;
    if (g >= 0 && inGroup[g] >= groupLeft[g] && inGroup[g] > 0) {
      leaving = worth[picked[weakestOf(g)]];
    } else if (picks >= picksLeft && picks > 0) {
      leaving = worth[picked[picks - 1]];
    }
    return leaving - worth[i];
  }

  /**
   * What the bound falls by at least where a picked item is forced out: the best open item that could
   * take its place comes in.
   */
  double lossOut(int p, double bestOutside) {
    return worth[picked[p]] - Math.max(0, bestOutside);
  }

  /** The largest worth among open items that are not picked. */
  double bestOutside() {
    double best = 0;
    boolean[] isPicked = new boolean[s.items];
    for (int p = 0; p < picks; p++) {
      isPicked[picked[p]] = true;
    }
    for (int o = 0; o < opens; o++) {
      if (!isPicked[open[o]]) {
        best = Math.max(best, worth[open[o]]);
      }
    }
    return best;
  }
}
