package guildwood.guild.search;

import java.util.Arrays;
import java.util.Comparator;

/**
 * The most that the tally can come to with what is left: no more than the items that may be chosen can add, and no
 * more than each cap and the budget by itself let them, fractions of items allowed. Prices show as much in the end,
 * but slowly where a goal is far out of reach.
 */
final class TallyReach {
  private final Selection s;
  private final Remainder left;
  private Integer[] adding;

  TallyReach(Selection selection, Remainder left) {
    s = selection;
    this.left = left;
  }

  long most() {
    long fixed = 0;
    for (int i = 0; i < s.items; i++) {
      fixed += left.isIn(i) ? s.adds[i] * left.low[i] : 0;
    }
    adding = adding();
    long most = byNumber();
    for (int r = 0; r < s.caps.length; r++) {
      most = Math.min(most, under(left.room[r], r));
    }
    return fixed + (s.budget < Long.MAX_VALUE / 8 ? Math.min(most, under(left.budgetRoom, -1)) : most);
  }

  /** Items that can still add something. */
  private Integer[] adding() {
    Integer[] found = new Integer[s.items];
    int size = 0;
    for (int i = 0; i < s.items; i++) {
      if (s.adds[i] > 0 && left.isIn(i)) {
        found[size++] = i;
      }
    }
    for (int o = 0; o < left.opens; o++) {
      if (s.adds[left.open[o]] > 0) {
        found[size++] = left.open[o];
      }
    }
    return Arrays.copyOf(found, size);
  }

  /** How many more of an item there can be than are accounted for. */
  private long more(int i) {
    return left.high[i] - (left.isIn(i) ? left.low[i] : 0);
  }

  /** All that items already in can add, and the open ones that add most, as many as may be chosen. */
  private long byNumber() {
    long sum = 0;
    long[] open = new long[adding.length];
    int size = 0;
    for (int i : adding) {
      if (left.isIn(i)) {
        sum += s.adds[i] * more(i);
      } else {
        open[size++] = s.adds[i] * more(i);
      }
    }
    Arrays.sort(open, 0, size);
    for (int k = 0; k < Math.min(left.picksLeft, size); k++) {
      sum += open[size - 1 - k];
    }
    return sum;
  }

  /** The most under one cap, or under the budget for -1: those first that add most for what they take. */
  private long under(long room, int cap) {
    Integer[] order = adding.clone();
    Arrays.sort(order, Comparator.<Integer>comparingDouble(i -> -(double) s.adds[i] / takes(i, cap)).thenComparing(i -> i));
    long sum = 0;
    double rest = room;
    for (int i : order) {
      long free = cap < 0 ? Math.min(more(i), Math.max(0, s.free[i] - (left.isIn(i) ? left.low[i] : 0))) : 0;
      double paid = Math.min(more(i) - free, takes(i, cap) == 0 ? Long.MAX_VALUE : rest / takes(i, cap));
      rest -= paid * takes(i, cap);
      // Rounded up: a hair too much is a valid bound, a hair too little is none.
      sum += s.adds[i] * free + (long) StrictMath.ceil(s.adds[i] * paid + 1e-6);
    }
    return sum;
  }

  private long takes(int i, int cap) {
    return cap < 0 ? s.price[i] : s.source.get(i).uses()[cap];
  }
}
