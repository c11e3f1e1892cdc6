package guildwood.guild.search;

import java.util.Arrays;

/**
 * Looks for prices that make the bound tight, by subgradient steps of the length named after Polyak, with
 * the last direction mixed in. On the way it averages the picks, which tells how undecided each item is.
 */
final class Descent {
  private static final double KEPT_DIRECTION = 0.6;
  private static final double NEW_IN_AVERAGE = 0.12;

  private final Selection s;
  private final Bound bound;
  private final Prices prices;
  private final Prices direction;

  /** The prices of the best bound, and that bound. */
  final Prices best;

  double bestValue;

  /** How often each item was picked lately, 0 to 1. */
  final double[] share;

  Descent(Selection selection, Bound bound) {
    s = selection;
    this.bound = bound;
    prices = new Prices(s.caps.length, s.earned.length);
    direction = new Prices(s.caps.length, s.earned.length);
    best = new Prices(s.caps.length, s.earned.length);
    share = new double[s.items];
  }

  /** Prices to start from: an aim's unit and the tally at half of what they earn, caps for a little. */
  Prices firstPrices() {
    Prices first = new Prices(s.caps.length, s.earned.length);
    Arrays.fill(first.cap, 200);
    for (int w = 0; w < first.aim.length; w++) {
      first.aim[w] = s.earned(w, 1) / 2.0;
      first.must[w] = s.must[w] ? 3_000 : 0;
    }
    first.tally = s.tally.earned(s.tally.missing()) / 2.0 + (s.tally.isOpen() && s.tally.must() ? 3_000 : 0);
    return first;
  }

  /**
   * Takes up to so many steps from these prices, and stops once the bound shows that nothing beats the goal.
   *
   * @param goal value of the best choice known
   * @param stride length of the first steps, 2 for far, less for near
   */
  void run(Prices start, int steps, long goal, double stride) {
    prices.take(start);
    zero(direction);
    bestValue = Double.POSITIVE_INFINITY;
    Arrays.fill(share, 0);
    double length = stride;
    int sinceBetter = 0;
    int patience = Math.max(3, steps / 25);
    for (int step = 0; step < steps; step++) {
      double value = bound.at(prices);
      average(step);
      if (value < bestValue - 1e-9) {
        sinceBetter = value < bestValue - 0.02 * (bestValue - goal) ? 0 : sinceBetter + 1;
        bestValue = value;
        best.take(prices);
      } else {
        sinceBetter++;
      }
      if (settled(goal)) {
        return;
      }
      if (sinceBetter >= patience) {
        length *= 0.7;
        sinceBetter = 0;
      }
      turn();
      double norm = squareOf(direction);
      if (norm < 1e-12) {
        return;
      }
      move(length * (value - goal) / norm);
    }
  }

  /** Whether the bound shows that no choice is better than the goal: values are whole. */
  boolean settled(long goal) {
    return StrictMath.floor(bestValue + Bound.SLACK) <= goal;
  }

  private void average(int step) {
    double weight = step == 0 ? 1 : NEW_IN_AVERAGE;
    for (int o = 0; o < bound.left.opens; o++) {
      share[bound.left.open[o]] *= 1 - weight;
    }
    for (int p = 0; p < bound.picking.picks; p++) {
      share[bound.picking.picked[p]] += weight;
    }
  }

  private static void zero(Prices which) {
    Arrays.fill(which.cap, 0);
    Arrays.fill(which.aim, 0);
    Arrays.fill(which.must, 0);
    which.budget = 0;
    which.tally = 0;
  }

  private void turn() {
    mix(direction.cap, bound.slope.cap, prices.cap);
    mix(direction.aim, bound.slope.aim, prices.aim);
    mix(direction.must, bound.slope.must, prices.must);
    direction.budget = mixed(direction.budget, bound.slope.budget, prices.budget);
    direction.tally = mixed(direction.tally, bound.slope.tally, prices.tally);
  }

  /** A price at 0 cannot fall; leaving that part out of the direction lengthens the useful step. */
  private static void mix(double[] kept, double[] slope, double[] at) {
    for (int k = 0; k < kept.length; k++) {
      kept[k] = mixed(kept[k], slope[k], at[k]);
    }
  }

  private static double mixed(double kept, double slope, double price) {
    double mixed = KEPT_DIRECTION * kept + slope;
    return price <= 0 && mixed > 0 ? 0 : mixed;
  }

  private static double squareOf(Prices which) {
    double sum = which.budget * which.budget + which.tally * which.tally;
    for (double part : which.cap) {
      sum += part * part;
    }
    for (double part : which.aim) {
      sum += part * part;
    }
    for (double part : which.must) {
      sum += part * part;
    }
    return sum;
  }

  private void move(double by) {
    shift(prices.cap, direction.cap, by, Double.MAX_VALUE);
    shift(prices.aim, direction.aim, by, Double.MAX_VALUE);
    shift(prices.must, direction.must, by, Selection.MUST_MILLI);
    prices.budget = Math.max(0, prices.budget - by * direction.budget);
    prices.tally = Math.max(0, prices.tally - by * direction.tally);
  }

  private static void shift(double[] price, double[] direction, double by, double most) {
    for (int k = 0; k < price.length; k++) {
      price[k] = Math.min(most, Math.max(0, price[k] - by * direction[k]));
    }
  }
}
