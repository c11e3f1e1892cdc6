package guildwood.guild.search;

import java.util.Arrays;

/**
 * The open items worth most together under the limits on number and groups. One pass that exchanges the
 * weakest is exact here: the limits form a laminar matroid.
 */
final class Picking {
  private final Selection s;
  private final Remainder left;

  /** What every open item is worth at the prices of the moment. */
  final double[] worth;

  /** The first {@link #picks} entries are the picked items, in falling order of worth. */
  final int[] picked;

  int picks;
  private final int[] inGroup;

  Picking(Selection selection, Remainder left) {
    s = selection;
    this.left = left;
    worth = new double[s.items];
    picked = new int[s.items];
    inGroup = new int[s.groupRoom.length];
  }

  void pick() {
    picks = 0;
    Arrays.fill(inGroup, 0);
    for (int o = 0; o < left.opens; o++) {
      int i = left.open[o];
      if (worth[i] > 0) {
        offer(i);
      }
    }
  }

  private void offer(int i) {
    int g = s.group[i];
    if (isFull(g)) {
      int weakest = weakestOf(g);
      if (better(i, picked[weakest])) {
        System.arraycopy(picked, weakest + 1, picked, weakest, picks - weakest - 1);
        picks--;
        insert(i);
      }
    } else if (picks < left.picksLeft) {
      insert(i);
      count(g, 1);
    } else if (picks > 0 && better(i, picked[picks - 1])) {
      count(s.group[picked[picks - 1]], -1);
      picks--;
      insert(i);
      count(g, 1);
    }
  }

  private boolean isFull(int g) {
    return g >= 0 && inGroup[g] > 0 && inGroup[g] >= left.groupLeft[g];
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

  private void insert(int i) {
    int at = picks;
    while (at > 0 && better(i, picked[at - 1])) {
      picked[at] = picked[at - 1];
      at--;
    }
    picked[at] = i;
    picks++;
  }

  /** Where an item stands among the picked; -1 where it is not one. */
  int position(int item) {
    for (int p = 0; p < picks; p++) {
      if (picked[p] == item) {
        return p;
      }
    }
    return -1;
  }

  /** What the whole loses where an open item that is not picked is forced in. */
  double lossIn(int i) {
    int g = s.group[i];
    double leaving = isFull(g) ? worth[picked[weakestOf(g)]]
        : picks >= left.picksLeft && picks > 0 ? worth[picked[picks - 1]] : 0;
    return leaving - worth[i];
  }

  /**
   * What the whole loses at least where a picked item is forced out.
   *
   * @param bestOutside of {@link #bestOutside()}
   */
  double lossOut(int position, double bestOutside) {
    return worth[picked[position]] - Math.max(0, bestOutside);
  }

  /** The largest worth among open items that are not picked; 0 where none is worth anything. */
  double bestOutside() {
    boolean[] isPicked = new boolean[s.items];
    for (int p = 0; p < picks; p++) {
      isPicked[picked[p]] = true;
    }
    double best = 0;
    for (int o = 0; o < left.opens; o++) {
      best = isPicked[left.open[o]] ? best : Math.max(best, worth[left.open[o]]);
    }
    return best;
  }
}
