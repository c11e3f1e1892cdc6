package guildwood.guild.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Improves a set of items by small changes, some of them for the worse while the temperature is high
 * (Kirkpatrick, Gelatt and Vecchi 1983). Items the bound's prices speak for are tried most. Every state
 * keeps every rule, so it can be stopped at any time.
 */
final class Annealing {
  /** Value a step may lose at first and at last, thousandths, to be taken about every third time. */
  private static final double HOT_MILLI = 1_500;

  private static final double COLD_MILLI = 25;

  /** In place of what an unmet must takes off, so that the walk can pass through sets without it. */
  private static final long MUST_WHILE_WALKING = 30_000;

  /** What each species too few apart from an earlier choice takes off while walking. */
  private static final long TOO_NEAR = 4_000;

  private static final int MOST_GOOD = 40;

  /** How far below the best a set may be and still win with exact counts. */
  private static final long NEAR_MILLI = 800;

  private final Selection s;
  private final Filling filling;
  private final Dice dice;
  private final int[] favourites;
  private final int core;
  private final int[][] providers;

  private int[] set;
  private int size;
  private int[] next;
  private int nextSize;
  private int newest;

  private List<int[]> apartFrom = List.of();
  private int apart;

  /** The best choice seen that is far enough from the given ones; null before there is one. */
  Choice best;

  /** Good sets seen, the best first: with exact counts another than the first may win. */
  private final TreeMap<Long, int[]> good = new TreeMap<>(Comparator.reverseOrder());

  /**
   * @param favourites all items, those the prices speak for first
   * @param core how many of them are tried most
   */
  Annealing(Selection selection, Filling filling, long seed, int[] favourites, int core) {
    s = selection;
    this.filling = filling;
    dice = new Dice(seed);
    this.favourites = favourites;
    this.core = Math.min(core, favourites.length);
    set = new int[s.items];
    next = new int[s.items];
    providers = new int[s.earned.length][];
    for (int w = 0; w < providers.length; w++) {
      providers[w] = s.must[w] ? providersOf(w) : new int[0];
    }
  }

  private int[] providersOf(int aim) {
    int[] found = new int[s.items];
    int count = 0;
    for (int i : favourites) {
      if (s.source.get(i).units()[aim] > 0) {
        found[count++] = i;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** Keeps the walk at least so many items apart from each of these sets. */
  void keepApart(List<int[]> sets, int items) {
    apartFrom = sets;
    apart = items;
  }

  /** Walks from a choice that breaks no rule. */
  void run(int[] start, int moves, Walk walk) {
    System.arraycopy(start, 0, set, 0, start.length);
    size = start.length;
    long value = filling.fill(set, size);
    if (value == Filling.IMPOSSIBLE) {
      throw new IllegalArgumentException("no rule-keeping start: " + Arrays.toString(start));
    }
    keep(set, size, value);
    long now = walking(value, set, size);
    double cooling = StrictMath.pow(COLD_MILLI / HOT_MILLI, 1.0 / Math.max(1, moves));
    double heat = HOT_MILLI;
    int unmet = filling.unmet;
    for (int move = 0; move < moves && favourites.length > 0; move++, heat *= cooling) {
      if (move % 1024 == 0 && !walk.goesOn(move, best)) {
        return;
      }
      if (!propose(unmet)) {
        continue;
      }
      long then = repaired();
      if (then == Filling.IMPOSSIBLE) {
        continue;
      }
      int unmetThen = filling.unmet;
      keep(next, nextSize, then);
      long soft = walking(then, next, nextSize);
      if (soft >= now || dice.unit() < StrictMath.exp((soft - now) / heat)) {
        int[] old = set;
        set = next;
        next = old;
        size = nextSize;
        now = soft;
        unmet = unmetThen;
      }
    }
  }

  /** Good sets, each in order of its items, the best first. */
  List<int[]> good() {
    return good.values().stream().map(set -> Arrays.stream(set).sorted().toArray()).toList();
  }

  private long walking(long value, int[] items, int count) {
    long soft = value + filling.unmet * (Selection.MUST_MILLI - MUST_WHILE_WALKING);
    return soft - TOO_NEAR * tooNear(items, count);
  }

  private int tooNear(int[] items, int count) {
    int missing = 0;
    for (int[] other : apartFrom) {
      int common = 0;
      for (int p = 0; p < count; p++) {
        common += Arrays.binarySearch(other, items[p]) >= 0 ? 1 : 0;
      }
      missing += Math.max(0, apart - (count + other.length - 2 * common));
    }
    return missing;
  }

  private void keep(int[] items, int count, long value) {
    if (best != null && value <= best.value() - NEAR_MILLI) {
      return;
    }
    if (tooNear(items, count) > 0) {
      return;
    }
    // Sets of one value are nearly always one set met again, so the value may stand for it.
    if (good.putIfAbsent(value, Arrays.copyOf(items, count)) == null && good.size() > MOST_GOOD) {
      good.pollLastEntry();
    }
    if (best == null || value > best.value()) {
      int[] counts = new int[s.items];
      for (int p = 0; p < count; p++) {
        counts[items[p]] = filling.counts[p];
      }
      best = new Choice(counts, value);
    }
  }

  /** Copies the set into {@link #next} and changes it: one out, or one in with what must leave for it. */
  private boolean propose(int unmet) {
    System.arraycopy(set, 0, next, 0, size);
    nextSize = size;
    newest = -1;
    if (size > 0 && dice.unit() < 0.15) {
      drop(dice.below(size));
      return true;
    }
    int item = draw(unmet);
    if (at(item) >= 0) {
      return false;
    }
    if (size > 0 && dice.unit() < 0.5) {
      drop(dice.below(nextSize));
    }
    join(item);
    newest = item;
    if (s.source.get(item).needsPartner() && s.source.get(item).partners().length > 0 && dice.unit() < 0.7) {
      int[] partners = s.source.get(item).partners();
      int partner = partners[dice.below(partners.length)];
      if (at(partner) < 0) {
        join(partner);
      }
    }
    return at(item) >= 0;
  }

  private int draw(int unmet) {
    if (unmet > 0 && dice.unit() < 0.4) {
      int item = providerOfSomeUnmet();
      if (item >= 0) {
        return item;
      }
    }
    if (dice.unit() < 0.06) {
      return favourites[dice.below(favourites.length)];
    }
    double u = dice.unit();
    return favourites[(int) (core * u * u)];
  }

  private int providerOfSomeUnmet() {
    int start = dice.below(providers.length);
    for (int k = 0; k < providers.length; k++) {
      int w = (start + k) % providers.length;
      if (s.must[w] && providers[w].length > 0 && !provided(w)) {
        double u = dice.unit();
        return providers[w][(int) (providers[w].length * u * u)];
      }
    }
    return -1;
  }

  private boolean provided(int w) {
    for (int p = 0; p < size; p++) {
      if (s.source.get(set[p]).units()[w] > 0) {
        return true;
      }
    }
    return false;
  }

  private int at(int item) {
    for (int p = 0; p < nextSize; p++) {
      if (next[p] == item) {
        return p;
      }
    }
    return -1;
  }

  private void drop(int position) {
    next[position] = next[--nextSize];
  }

  /** Puts an item in; its enemies, one of a full group, and one too many leave. */
  private void join(int item) {
    int ofGroup = 0;
    for (int p = nextSize - 1; p >= 0; p--) {
      if (s.enemies(next[p], item)) {
        drop(p);
      }
    }
    int g = s.group[item];
    for (int p = 0; p < nextSize && g >= 0; p++) {
      ofGroup += s.group[next[p]] == g ? 1 : 0;
    }
    if (g >= 0 && ofGroup >= s.groupRoom[g]) {
      dropOneOfGroup(g, dice.below(Math.max(1, ofGroup)));
    }
    if (nextSize >= s.mostItems && nextSize > 0) {
      drop(dice.below(nextSize));
    }
    boolean roomLeft = nextSize < s.mostItems && (g < 0 || s.groupRoom[g] > 0);
    if (roomLeft) {
      next[nextSize++] = item;
    }
  }

  private void dropOneOfGroup(int g, int which) {
    int seen = 0;
    for (int p = 0; p < nextSize; p++) {
      if (s.group[next[p]] == g && seen++ == which) {
        drop(p);
        return;
      }
    }
  }

  /** Fills the next set; where it breaks a cap or somebody lacks a partner, others leave until it does not. */
  private long repaired() {
    for (int tries = 0; tries <= 4; tries++) {
      long value = filling.fill(next, nextSize);
      if (value != Filling.IMPOSSIBLE) {
        return value;
      }
      int leaving = filling.orphan >= 0 ? filling.orphan : someoneUsing(filling.shortCap);
      if (leaving < 0 || next[leaving] == newest) {
        return Filling.IMPOSSIBLE;
      }
      drop(leaving);
    }
    return Filling.IMPOSSIBLE;
  }

  private int someoneUsing(int cap) {
    if (nextSize == 0) {
      return -1;
    }
    int start = dice.below(nextSize);
    for (int k = 0; k < nextSize; k++) {
      int p = (start + k) % nextSize;
      int i = next[p];
      boolean uses = cap < 0 ? s.price[i] > 0 : s.source.get(i).uses()[cap] > 0;
      if (uses && i != newest) {
        return p;
      }
    }
    return -1;
  }

  /** Asked every now and then whether to go on. */
  interface Walk {
    boolean goesOn(int move, Choice best);
  }
}
