package guildwood.guild.search;

import java.util.Arrays;

/** A quick first choice: again and again the item that adds most, as long as one adds anything. */
final class Greedy {
  /** In place of what an unmet must takes off; only the order matters here. */
  private static final int MUST_MILLI = 30_000;

  private final Selection s;
  private final Filling filling;

  Greedy(Selection selection, Filling filling) {
    s = selection;
    this.filling = filling;
  }

  Choice choose() {
    int[] set = new int[s.items];
    int size = 0;
    boolean[] tried = new boolean[s.items];
    int[] units = new int[s.earned.length];
    long value = filling.fill(set, 0);
    long tallied = 0;
    while (size < s.mostItems) {
      int item = promising(tried, units, tallied);
      if (item < 0) {
        break;
      }
      tried[item] = true;
      if (!goesWith(item, set, size)) {
        continue;
      }
      set[size] = item;
      long then = filling.fill(set, size + 1);
      if (then > value) {
        value = then;
        tallied = filling.tallied;
        size++;
        for (int k = 0; k < s.aimAt[item].length; k++) {
          units[s.aimAt[item][k]] += s.aimUnits[item][k];
        }
      }
    }
    filling.fill(set, size);
    int[] counts = new int[s.items];
    for (int p = 0; p < size; p++) {
      counts[set[p]] = filling.counts[p];
    }
    return new Choice(counts, value);
  }

  private int promising(boolean[] tried, int[] units, long tallied) {
    int chosen = -1;
    long most = 0;
    for (int i = 0; i < s.items; i++) {
      if (!tried[i]) {
        long gain = gain(i, units, tallied);
        if (gain > most) {
          most = gain;
          chosen = i;
        }
      }
    }
    return chosen;
  }

  private long gain(int i, int[] units, long tallied) {
    int count = Math.max(s.fewest[i], Math.min(s.most[i], s.wanted[i]));
    if (s.adds[i] > 0) {
      count = (int) Math.max(count, Math.min(s.most[i], s.addsUp(i, tallied)));
    }
    long gain = s.bonus[i] + s.countValue(i, count) + towardsGoal(tallied, s.adds[i] * count);
    for (int k = 0; k < s.aimAt[i].length; k++) {
      int w = s.aimAt[i][k];
      gain += s.earned(w, units[w] + s.aimUnits[i][k]) - s.earned(w, units[w]);
      gain += s.must[w] && units[w] == 0 ? MUST_MILLI : 0;
    }
    return gain;
  }

  private long towardsGoal(long tallied, long more) {
    long gain = s.tally.earned(tallied + more) - s.tally.earned(tallied);
    long closer = Math.min(s.tally.missing(), tallied + more) - Math.min(s.tally.missing(), tallied);
    return gain + (s.tally.must() && closer > 0 ? MUST_MILLI * closer / s.tally.missing() : 0);
  }

  private boolean goesWith(int item, int[] set, int size) {
    int ofGroup = 0;
    for (int other : Arrays.copyOf(set, size)) {
      if (s.enemies(item, other)) {
        return false;
      }
      ofGroup += s.group[item] >= 0 && s.group[other] == s.group[item] ? 1 : 0;
    }
    return s.group[item] < 0 || ofGroup < s.groupRoom[s.group[item]];
  }
}
