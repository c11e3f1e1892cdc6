package guildwood.guild.search;

/**
 * The Lagrangian bound: caps, budget, aims, musts and the tally are bought at prices instead of being kept; how many
 * items, how many of a group, and the range of every count stay exact. One evaluation is linear in the
 * number of items. The answer is never below the value of any allowed choice that agrees with what is fixed.
 */
final class Bound {
  /** Rounding errors of one evaluation stay far below this; values are whole, so nothing is lost. */
  static final double SLACK = 1e-3;

  private final Selection s;
  private final int[] countAt;
  private final double[] scale;
  private final double budgetScale;
  private final double tallyScale;

  /** What is fixed and what is left. */
  final Remainder left;

  /** What the last evaluation picked among the open items. */
  final Picking picking;

  /** The last evaluation. */
  double value;

  /** How the bound changes with every price, at the last evaluation. */
  final Prices slope;

  Bound(Selection selection) {
    s = selection;
    left = new Remainder(s);
    picking = new Picking(s, left);
    countAt = new int[s.items];
    slope = new Prices(s.caps.length, s.earned.length);
    scale = new double[s.caps.length];
    for (int r = 0; r < scale.length; r++) {
      scale[r] = s.caps[r] > 0 ? 1.0 / s.caps[r] : 0;
    }
    budgetScale = s.budget > 0 ? 1.0 / s.budget : 0;
    tallyScale = s.tally.isOpen() ? 1.0 / s.tally.missing() : 0;
  }

  /** The bound at these prices. */
  double at(Prices prices) {
    double total = s.base + prices.budget;
    slope.budget = 1;
    for (int r = 0; r < s.caps.length; r++) {
      total += prices.cap[r];
      slope.cap[r] = 1;
    }
    for (int w = 0; w < s.earned.length; w++) {
      total += aim(w, prices);
    }
    total += tally(prices.tally);
    for (int i = 0; i < s.items; i++) {
      if (left.isIn(i)) {
        total += s.bonus[i] + countWorth(i, prices);
        use(i);
      }
    }
    for (int o = 0; o < left.opens; o++) {
      picking.worth[left.open[o]] = openWorth(left.open[o], prices);
    }
    picking.pick();
    for (int p = 0; p < picking.picks; p++) {
      total += picking.worth[picking.picked[p]];
      use(picking.picked[p]);
      provide(picking.picked[p]);
    }
    value = total;
    return total;
  }

  /** The most that an aim's earning can exceed the price of the units it is told to have, and its must. */
  private double aim(int w, Prices prices) {
    int wanted = 0;
    double best = s.earned(w, left.unitsIn[w]);
    for (int more = 1; more <= left.reachable[w] && left.unitsIn[w] + more < s.earned[w].length; more++) {
      double next = s.earned(w, left.unitsIn[w] + more) - prices.aim[w] * more;
      if (next > best) {
        best = next;
        wanted = more;
      }
    }
    slope.aim[w] = -wanted;
    slope.must[w] = 0;
    if (left.lacks(w)) {
      boolean hopeless = left.reachable[w] == 0;
      best -= hopeless ? Selection.MUST_MILLI : Math.min(prices.must[w], Selection.MUST_MILLI);
      slope.must[w] = hopeless ? 0 : -1;
    }
    return best;
  }

  /** The most that the tally's earning can exceed the price of what it is told to reach. */
  private double tally(double price) {
    slope.tally = 0;
    if (!s.tally.isOpen()) {
      return 0;
    }
    long missing = s.tally.missing();
    byte decided = left.fixed.tally;
    double best = Double.NEGATIVE_INFINITY;
    if (decided != Fixing.OUT && left.tallyReach >= missing) {
      best = s.tally.earned(missing) - price;
      slope.tally = -1;
    }
    if (decided != Fixing.IN) {
      long most = Math.min(left.tallyReach, missing - 1);
      double lacking = s.tally.must() ? Selection.MUST_MILLI : 0;
      double nothing = -lacking;
      double shortOfGoal = s.tally.line(most) - price * most / missing - lacking;
      if (Math.max(nothing, shortOfGoal) > best) {
        best = Math.max(nothing, shortOfGoal);
        slope.tally = nothing >= shortOfGoal ? 0 : -(double) most / missing;
      }
    }
    return best;
  }

  private double openWorth(int i, Prices prices) {
    double sum = s.bonus[i] + countWorth(i, prices);
    for (int k = 0; k < s.aimAt[i].length; k++) {
      int w = s.aimAt[i][k];
      sum += prices.aim[w] * s.aimUnits[i][k];
      if (left.lacks(w)) {
        sum += Math.min(prices.must[w], Selection.MUST_MILLI);
      }
    }
    return sum;
  }

  /** What the best count at these prices is worth: an end of the range, or of what is free or enough. */
  private double countWorth(int i, Prices prices) {
    double cost = 0;
    for (int k = 0; k < s.useAt[i].length; k++) {
      int r = s.useAt[i][k];
      cost += prices.cap[r] * scale[r] * s.use[i][k];
    }
    cost -= prices.tally * tallyScale * s.adds[i];
    double paid = prices.budget * budgetScale * s.price[i];
    int low = left.low[i];
    int high = left.high[i];
    // One more is worth less and less, so the best count is where it stops being worth anything.
    int count = low;
    if (s.one[i][0] > cost) {
      count = Math.max(low, Math.min(high, s.firstEnd[i]));
      double second = s.firstEnd[i] < s.free[i] ? cost : cost + paid;
      if (s.one[i][1] > second) {
        count = Math.max(low, Math.min(high, s.secondEnd[i]));
        count = s.one[i][2] > cost + paid ? high : count;
      }
    }
    countAt[i] = count;
    return s.countValue(i, count) - cost * count - paid * Math.max(0, count - s.free[i]);
  }

  private void use(int i) {
    for (int k = 0; k < s.useAt[i].length; k++) {
      int r = s.useAt[i][k];
      slope.cap[r] -= scale[r] * s.use[i][k] * countAt[i];
    }
    slope.tally += tallyScale * s.adds[i] * countAt[i];
    slope.budget -= budgetScale * s.price[i] * Math.max(0, countAt[i] - s.free[i]);
  }

  private void provide(int i) {
    for (int k = 0; k < s.aimAt[i].length; k++) {
      int w = s.aimAt[i][k];
      slope.aim[w] += s.aimUnits[i][k];
      slope.must[w] += left.lacks(w) ? 1 : 0;
    }
  }
}
