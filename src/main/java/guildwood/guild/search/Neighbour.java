package guildwood.guild.search;

import java.util.Arrays;

/**
 * A set of items close to another: one out, or one in with what must leave for it. Items the prices speak
 * for are tried most. What comes out keeps every rule.
 */
final class Neighbour {
  private static final double ONE_OUT = 0.15;
  private static final double ONE_FOR_ONE = 0.5;
  private static final double WITH_PARTNER = 0.7;
  private static final double FOR_A_MUST = 0.4;
  private static final double ANYBODY = 0.06;
  private static final int MOST_REPAIRS = 4;

  private final Selection s;
  private final Filling filling;
  private final Dice dice;
  private final int[] favourites;
  private final int core;

  /** By must, who meets it, in the order of the favourites; the last row is for the tally where that is a must. */
  private final int[][] providers;

  int[] set;
  int size;
  private int newest;

  Neighbour(Selection selection, Filling filling, Dice dice, int[] favourites, int core) {
    s = selection;
    this.filling = filling;
    this.dice = dice;
    this.favourites = favourites;
    this.core = Math.min(core, favourites.length);
    set = new int[s.items];
    boolean hasGoal = s.tally.isOpen() && s.tally.must();
    providers = new int[s.earned.length + (hasGoal ? 1 : 0)][];
    if (hasGoal) {
      providers[s.earned.length] = Arrays.stream(favourites).filter(i -> s.adds[i] > 0).toArray();
    }
    for (int w = 0; w < s.earned.length; w++) {
      int aim = w;
      providers[w] = s.must[w]
          ? Arrays.stream(favourites).filter(i -> s.source.get(i).units()[aim] > 0).toArray() : new int[0];
    }
  }

  /**
   * Becomes a neighbour of a set.
   *
   * @param mustsUnmet whether it leaves a must unmet; then its providers are tried more
   * @return false where the throw gave nothing new
   */
  boolean of(int[] items, int count, boolean mustsUnmet) {
    System.arraycopy(items, 0, set, 0, count);
    size = count;
    newest = -1;
    if (size > 0 && dice.unit() < ONE_OUT) {
      drop(dice.below(size));
      return true;
    }
    int item = draw(mustsUnmet);
    if (at(item) >= 0) {
      return false;
    }
    if (size > 0 && dice.unit() < ONE_FOR_ONE) {
      drop(dice.below(size));
    }
    join(item);
    newest = item;
    int[] partners = s.source.get(item).partners();
    if (s.source.get(item).needsPartner() && partners.length > 0 && dice.unit() < WITH_PARTNER) {
      int partner = partners[dice.below(partners.length)];
      if (at(partner) < 0) {
        join(partner);
      }
    }
    return at(item) >= 0;
  }

  private int draw(boolean mustsUnmet) {
    if (mustsUnmet && dice.unit() < FOR_A_MUST) {
      int item = providerOfSomeUnmet();
      if (item >= 0) {
        return item;
      }
    }
    if (dice.unit() < ANYBODY) {
      return favourites[dice.below(favourites.length)];
    }
    double u = dice.unit();
    return favourites[(int) (core * u * u)];
  }

  private int providerOfSomeUnmet() {
    int start = dice.below(providers.length);
    for (int k = 0; k < providers.length; k++) {
      int w = (start + k) % providers.length;
      if (providers[w].length > 0 && !isProvided(w)) {
        double u = dice.unit();
        return providers[w][(int) (providers[w].length * u * u)];
      }
    }
    return -1;
  }

  private boolean isProvided(int aim) {
    if (aim == s.earned.length) {
      return canReachGoal();
    }
    for (int p = 0; p < size; p++) {
      if (s.source.get(set[p]).units()[aim] > 0) {
        return true;
      }
    }
    return false;
  }

  private boolean canReachGoal() {
    long can = 0;
    for (int p = 0; p < size; p++) {
      can += s.adds[set[p]] * s.most[set[p]];
    }
    return can >= s.tally.missing();
  }

  private int at(int item) {
    for (int p = 0; p < size; p++) {
      if (set[p] == item) {
        return p;
      }
    }
    return -1;
  }

  private void drop(int position) {
    set[position] = set[--size];
  }

  /** Puts an item in; its enemies, one of a full group, and one too many leave. */
  private void join(int item) {
    for (int p = size - 1; p >= 0; p--) {
      if (s.enemies(set[p], item)) {
        drop(p);
      }
    }
    int g = s.group[item];
    int ofGroup = 0;
    for (int p = 0; p < size && g >= 0; p++) {
      ofGroup += s.group[set[p]] == g ? 1 : 0;
    }
    if (g >= 0 && ofGroup >= s.groupRoom[g]) {
      dropOneOfGroup(g, dice.below(Math.max(1, ofGroup)));
    }
    if (size >= s.mostItems && size > 0) {
      drop(dice.below(size));
    }
    if (size < s.mostItems && (g < 0 || s.groupRoom[g] > 0)) {
      set[size++] = item;
    }
  }

  private void dropOneOfGroup(int g, int which) {
    int seen = 0;
    for (int p = 0; p < size; p++) {
      if (s.group[set[p]] == g && seen++ == which) {
        drop(p);
        return;
      }
    }
  }

  /** Fills the set; where it breaks a cap or somebody lacks a partner, others leave until it does not. */
  long filled() {
    for (int repairs = 0; repairs <= MOST_REPAIRS; repairs++) {
      long value = filling.fill(set, size);
      if (value != Filling.IMPOSSIBLE) {
        return value;
      }
      int leaving = filling.orphan >= 0 ? filling.orphan : someoneUsing(filling.shortCap);
      if (leaving < 0 || set[leaving] == newest) {
        return Filling.IMPOSSIBLE;
      }
      drop(leaving);
    }
    return Filling.IMPOSSIBLE;
  }

  private int someoneUsing(int cap) {
    int start = dice.below(Math.max(1, size));
    for (int k = 0; k < size; k++) {
      int p = (start + k) % size;
      int i = set[p];
      boolean uses = cap < 0 ? s.price[i] > 0 : s.source.get(i).uses()[cap] > 0;
      if (uses && i != newest) {
        return p;
      }
    }
    return -1;
  }
}
