package guildwood.guild.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Improves a set of items by small changes, some of them for the worse while the temperature is high
 * (simulated annealing). Items the bound's prices speak for are tried most. Every state
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

  private static final int BETWEEN_QUESTIONS = 1_024;
  private static final int MOST_GOOD = 40;

  /** How far below the best a set may be and still win with exact counts. */
  private static final long NEAR_MILLI = 800;

  private final Selection s;
  private final Filling filling;
  private final Dice dice;
  private final Neighbour next;
  private final boolean canMove;
  private int[] set;
  private int size;

  private List<int[]> apartFrom = List.of();
  private int apart;

  /** The best choice seen that is far enough from the given ones; null before there is one. */
  Choice best;

  /** Good sets seen, the best first: with exact counts another than the first may win. */
  private final TreeMap<Long, int[]> good = new TreeMap<>(Comparator.reverseOrder());

  /**
   * @param favourites the items that may be tried, those the prices speak for first
   * @param core how many of them are tried most
   */
  Annealing(Selection selection, Filling filling, long seed, int[] favourites, int core) {
    s = selection;
    this.filling = filling;
    dice = new Dice(seed);
    next = new Neighbour(s, filling, dice, favourites, core);
    set = new int[s.items];
    canMove = favourites.length > 0;
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
    boolean mustsUnmet = filling.unmet > 0;
    double cooling = StrictMath.pow(COLD_MILLI / HOT_MILLI, 1.0 / Math.max(1, moves));
    double heat = HOT_MILLI;
    for (int move = 0; move < moves && canMove; move++, heat *= cooling) {
      if (move % BETWEEN_QUESTIONS == 0 && !walk.goesOn(move, best)) {
        return;
      }
      long then = next.of(set, size, mustsUnmet) ? next.filled() : Filling.IMPOSSIBLE;
      if (then == Filling.IMPOSSIBLE) {
        continue;
      }
      boolean unmetThen = filling.unmet > 0;
      keep(next.set, next.size, then);
      long soft = walking(then, next.set, next.size);
      if (soft >= now || dice.unit() < StrictMath.exp((soft - now) / heat)) {
        int[] old = set;
        set = next.set;
        next.set = old;
        size = next.size;
        now = soft;
        mustsUnmet = unmetThen;
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

  /** Asked every now and then whether to go on. */
  interface Walk {
    boolean goesOn(int move, Choice best);
  }
}
