package guildwood.guild.search;

/**
 * Gives counts to a set of items: the fewest of each, then more in the order in which they make most of
 * what is scarce. Quick and never breaks a cap, but not always the best; {@link CountProof} is exact.
 */
final class Filling {
  /** No partner, or the fewest of each already break a cap. */
  static final long IMPOSSIBLE = Selection.NOTHING;

  private final Selection s;
  private final double[] pays;
  private final double[] paysTally;
  private final long[] room;
  private long budget;
  private final int[] units;
  private final int[] order;

  /** The counts of the last set, by position in the set. */
  final int[] counts;

  /** After an impossible set: the cap that is short, or -1 for the budget, where no partner is at fault. */
  int shortCap;

  /** After an impossible set: the position of the item without a partner, otherwise -1. */
  int orphan;

  /** What the last set adds to the tally. */
  long tallied;

  /** Musts unmet by the last set. */
  int unmet;

  Filling(Selection selection) {
    s = selection;
    pays = new double[s.items];
    paysTally = new double[s.items];
    room = new long[s.caps.length];
    units = new int[s.earned.length];
    counts = new int[s.items];
    order = new int[s.items];
    guidedBy(null);
  }

  /** Sets the order in which items are filled up: by value for what they take at these prices. */
  void guidedBy(Prices prices) {
    for (int i = 0; i < s.items; i++) {
      double cost = 1e-9;
      for (int k = 0; k < s.useAt[i].length; k++) {
        int r = s.useAt[i][k];
        cost += (prices == null ? 1 : prices.cap[r] + 1) * s.use[i][k] / Math.max(1, s.caps[r]);
      }
      if (prices != null && s.budget > 0) {
        cost += prices.budget * s.price[i] / s.budget;
      }
      pays[i] = Math.max(s.one[i][0], 0) / cost;
      paysTally[i] = Math.max(s.one[i][0] + s.tally.perOne() * s.adds[i], 0) / cost;
    }
  }

  /** The value of a set with the counts it is given, or {@link #IMPOSSIBLE}. */
  long fill(int[] set, int size) {
    return fill(set, size, s.most);
  }

  /** The same with no more of an item than {@code limit}, as far as the fewest allow. */
  long fill(int[] set, int size, int[] limit) {
    if (!fewest(set, size)) {
      return IMPOSSIBLE;
    }
    if (s.tally.isOpen()) {
      order(set, size, paysTally);
      for (int stretch = 0; stretch < 3; stretch++) {
        for (int o = 0; o < size; o++) {
          towardsGoal(set, order[o], limit, stretch);
        }
      }
    }
    order(set, size, pays);
    for (int stretch = 0; stretch < 3; stretch++) {
      for (int o = 0; o < size; o++) {
        more(set, order[o], limit, stretch);
      }
    }
    return value(set, size);
  }

  private void order(int[] set, int size, double[] by) {
    for (int p = 0; p < size; p++) {
      int at = p;
      while (at > 0 && by[set[order[at - 1]]] < by[set[p]]) {
        order[at] = order[at - 1];
        at--;
      }
      order[at] = p;
    }
  }

  private boolean fewest(int[] set, int size) {
    System.arraycopy(s.caps, 0, room, 0, room.length);
    budget = s.budget;
    tallied = 0;
    orphan = -1;
    for (int p = 0; p < size; p++) {
      int i = set[p];
      int count = s.fewest[i];
      if (s.source.get(i).needsPartner() && !hasPartner(set, size, i)) {
        count = s.source.get(i).fewestAlone();
        if (count == Item.NEVER || count > s.most[i]) {
          orphan = p;
          return false;
        }
      }
      counts[p] = count;
      take(i, count);
      budget -= (long) s.price[i] * Math.max(0, count - s.free[i]);
    }
    shortCap = -1;
    for (int r = 0; r < room.length; r++) {
      if (room[r] < 0) {
        shortCap = r;
        return false;
      }
    }
    return budget >= 0;
  }

  private boolean hasPartner(int[] set, int size, int i) {
    for (int partner : s.source.get(i).partners()) {
      for (int p = 0; p < size; p++) {
        if (set[p] == partner) {
          return true;
        }
      }
    }
    return false;
  }

  private void take(int i, int count) {
    tallied += s.adds[i] * count;
    for (int k = 0; k < s.useAt[i].length; k++) {
      room[s.useAt[i][k]] -= s.use[i][k] * count;
    }
  }

  /** Adds as many of an item as fit and are worth something, no further than a stretch of its value goes. */
  private void more(int[] set, int p, int[] limit, int stretch) {
    int i = set[p];
    add(i, p, Math.min(Math.min(s.stretchEnd(i, stretch), s.wanted[i]), Math.min(s.most[i], limit[i])) - (long) counts[p]);
  }

  /** The same for what the tally still lacks. */
  private void towardsGoal(int[] set, int p, int[] limit, int stretch) {
    int i = set[p];
    if (s.addsWorth(i, stretch)) {
      long most = Math.min(s.stretchEnd(i, stretch), Math.min(s.most[i], limit[i])) - (long) counts[p];
      add(i, p, Math.min(s.addsUp(i, tallied), most));
    }
  }

  private void add(int i, int p, long atMost) {
    long more = atMost;
    if (s.price[i] > 0 && more > 0) {
      more = Math.min(more, Math.max(0, s.free[i] - counts[p]) + budget / s.price[i]);
    }
    for (int k = 0; k < s.useAt[i].length && more > 0; k++) {
      more = Math.min(more, room[s.useAt[i][k]] / s.use[i][k]);
    }
    if (more > 0) {
      int then = counts[p] + (int) more;
      budget -= (long) s.price[i] * (Math.max(0, then - s.free[i]) - Math.max(0, counts[p] - s.free[i]));
      counts[p] = then;
      take(i, (int) more);
    }
  }

  private long value(int[] set, int size) {
    java.util.Arrays.fill(units, 0);
    long value = s.base;
    for (int p = 0; p < size; p++) {
      int i = set[p];
      value += s.bonus[i] + s.countValue(i, counts[p]);
      for (int k = 0; k < s.aimAt[i].length; k++) {
        units[s.aimAt[i][k]] += s.aimUnits[i][k];
      }
    }
    unmet = 0;
    for (int w = 0; w < units.length; w++) {
      unmet += s.must[w] && units[w] == 0 ? 1 : 0;
    }
    unmet += s.tally.must() && tallied < s.tally.missing() ? 1 : 0;
    return value + s.aimsValue(units) + s.tally.value(tallied);
  }
}
