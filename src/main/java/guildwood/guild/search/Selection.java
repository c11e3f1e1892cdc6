package guildwood.guild.search;

import java.util.ArrayList;
import java.util.List;

/**
 * The problem: choose items and counts so that no cap is broken and the value is highest. The value is a
 * base, what the aims earn (concave in the units chosen), what the tally of the counts earns (in proportion, up
 * to its goal), and so much for every count; every unmet must takes {@link #MUST_MILLI} off, which is more than
 * everything else can earn together.
 *
 * <p>Values are whole thousandths, so two values are equal or at least one apart.
 */
public final class Selection {
  /** What an unmet must takes off. */
  public static final long MUST_MILLI = 1_000_000;

  /** More than any choice is worth. */
  static final long NOTHING = Long.MIN_VALUE / 4;

  final List<Item> source;
  final int items;
  final long base;
  final int mostItems;
  final long[] caps;
  final long budget;
  final int[] groupRoom;
  /** By aim and additional units; the last entry holds for all larger ones. */
  final int[][] earned;

  final boolean[] must;
  final Tally tally;

  /** By item, what each one adds to the tally; 0 where nothing is missing there. */
  final long[] adds;

  final int[] fewest;
  final int[] most;
  final int[] free;
  final int[] price;

  /** By item, the counts up to which the first and the second of three values of one more hold. */
  final int[] firstEnd;

  final int[] secondEnd;

  /** By item, the value of one more in each of the three stretches; it never rises. */
  final int[][] one;

  /** By item, up to which count one more is still worth something. */
  final int[] wanted;
  final int[] group;
  /** Value of choosing an item at all, aims and tally aside; 0 but where a theme leans towards it. */
  final int[] bonus;

  final long[] gives;
  final long[] suffers;
  /** The caps an item uses, and how much of each. */
  final int[][] useAt;

  final long[][] use;
  /** The aims an item counts towards, and how much. */
  final int[][] aimAt;

  final int[][] aimUnits;

  /**
   * @param base value before anything is chosen
   * @param mostItems how many items may be chosen
   * @param caps by cap, not negative
   * @param budget for the price of what is not free
   * @param groupRoom how many of each group may be chosen
   * @param earned what each aim earns in addition, by units; starts at 0, never falls, and its steps never grow
   * @param must which aims must get at least one unit
   * @param tally what the counts add up to
   */
  public Selection(List<Item> source, long base, int mostItems, long[] caps, long budget, int[] groupRoom,
      int[][] earned, boolean[] must, Tally tally) {
    this.source = List.copyOf(source);
    this.items = source.size();
    this.base = base;
    this.mostItems = mostItems;
    this.caps = caps.clone();
    this.budget = budget;
    this.groupRoom = groupRoom.clone();
    this.earned = earned.clone();
    this.must = must.clone();
    this.tally = tally;
    this.adds = source.stream().mapToLong(item -> tally.isOpen() ? item.adds() : 0).toArray();
    this.fewest = source.stream().mapToInt(Item::fewest).toArray();
    this.free = source.stream().mapToInt(Item::free).toArray();
    this.price = source.stream().mapToInt(Item::price).toArray();
    this.group = source.stream().mapToInt(Item::group).toArray();
    this.bonus = new int[items];
    this.gives = source.stream().mapToLong(Item::gives).toArray();
    this.suffers = source.stream().mapToLong(Item::suffers).toArray();
    this.useAt = new int[items][];
    this.use = new long[items][];
    this.aimAt = new int[items][];
    this.aimUnits = new int[items][];
    for (int i = 0; i < items; i++) {
      sparse(i, source.get(i));
    }
    this.most = new int[items];
    this.firstEnd = new int[items];
    this.secondEnd = new int[items];
    this.one = new int[items][];
    this.wanted = new int[items];
    for (int i = 0; i < items; i++) {
      most[i] = mostThatFits(i, source.get(i).most());
      stretches(i, source.get(i));
    }
  }

  /**
   * The same problem leaning towards a theme: a bonus for choosing an item, and so much less for each one
   * that is had. Caps and rules stay.
   */
  public Selection leaning(int[] bonuses, int lessEachMilli, int[] lessEachPaidMilli) {
    List<Item> leaning = new ArrayList<>();
    for (int i = 0; i < items; i++) {
      Item item = source.get(i);
      leaning.add(item.worth(item.eachMilli() - lessEachMilli, item.beyondMilli() - lessEachMilli,
          item.lessPaidMilli() + lessEachPaidMilli[i]));
    }
    Selection other = with(leaning, caps);
    System.arraycopy(bonuses, 0, other.bonus, 0, items);
    return other;
  }

  /** The same with other items and caps; a bonus is lost. */
  Selection with(List<Item> others, long[] otherCaps) {
    return new Selection(others, base, mostItems, otherCaps, budget, groupRoom, earned, must, tally);
  }

  private void sparse(int i, Item item) {
    List<Integer> rows = new ArrayList<>();
    for (int r = 0; r < caps.length; r++) {
      if (item.uses()[r] > 0) {
        rows.add(r);
      }
    }
    useAt[i] = rows.stream().mapToInt(r -> r).toArray();
    use[i] = rows.stream().mapToLong(r -> item.uses()[r]).toArray();
    List<Integer> aims = new ArrayList<>();
    for (int w = 0; w < earned.length; w++) {
      if (item.units()[w] > 0 && (must[w] || earned[w].length > 1)) {
        aims.add(w);
      }
    }
    aimAt[i] = aims.stream().mapToInt(w -> w).toArray();
    aimUnits[i] = aims.stream().mapToInt(w -> item.units()[w]).toArray();
  }

  /** Whichever of free and enough ends first ends the first stretch, the other the second. */
  private void stretches(int i, Item item) {
    firstEnd[i] = Math.min(item.free(), item.enough());
    secondEnd[i] = Math.max(item.free(), item.enough());
    int middle = item.enough() < item.free() ? item.beyondMilli() : item.eachMilli() - item.lessPaidMilli();
    one[i] = new int[] {item.eachMilli(), middle, item.beyondMilli() - item.lessPaidMilli()};
    wanted[i] = one[i][2] > 0 ? Integer.MAX_VALUE : one[i][1] > 0 ? secondEnd[i] : one[i][0] > 0 ? firstEnd[i] : 0;
  }

  private int mostThatFits(int i, int wanted) {
    long fits = wanted;
    for (int k = 0; k < useAt[i].length; k++) {
      fits = Math.min(fits, caps[useAt[i][k]] / use[i][k]);
    }
    if (price[i] > 0) {
      fits = Math.min(fits, free[i] + budget / price[i]);
    }
    return (int) fits;
  }

  /** What an aim earns with so many additional units. */
  int earned(int aim, int units) {
    int[] table = earned[aim];
    return table[Math.min(units, table.length - 1)];
  }

  /** The largest share of any cap that one of an item takes. */
  double grain(int i) {
    double grain = 0;
    for (int k = 0; k < useAt[i].length; k++) {
      grain = Math.max(grain, (double) use[i][k] / Math.max(1, caps[useAt[i][k]]));
    }
    return grain;
  }

  /** The fewest of every item of a set, given who else is in it; null where one lacks a partner no count makes up for. */
  int[] fewestOf(int[] set) {
    int[] counts = new int[items];
    for (int i : set) {
      counts[i] = 1;
    }
    int[] fewestOfSet = new int[set.length];
    for (int p = 0; p < set.length; p++) {
      fewestOfSet[p] = fewestBeside(set[p], counts);
      if (fewestOfSet[p] > most[set[p]]) {
        return null;
      }
    }
    return fewestOfSet;
  }

  boolean enemies(int i, int j) {
    return (gives[i] & suffers[j]) != 0 || (suffers[i] & gives[j]) != 0;
  }

  /** Whether one more of an item within a stretch of its value is worth something, the tally not yet full. */
  boolean addsWorth(int i, int stretch) {
    return adds[i] > 0 && (tally.must() || one[i][stretch] + tally.perOne() * adds[i] > 0);
  }

  /** How many of an item bring the tally to its goal. */
  long addsUp(int i, long tallied) {
    return (Math.max(0, tally.missing() - tallied) + adds[i] - 1) / adds[i];
  }

  /** Up to which count a stretch of an item's value goes. */
  int stretchEnd(int i, int stretch) {
    return stretch == 0 ? firstEnd[i] : stretch == 1 ? secondEnd[i] : Integer.MAX_VALUE;
  }

  /** Value of one item's count, aims and tally aside. */
  long countValue(int i, int count) {
    int first = Math.min(count, firstEnd[i]);
    int second = Math.min(count, secondEnd[i]) - first;
    return (long) one[i][0] * first + (long) one[i][1] * second + (long) one[i][2] * (count - first - second);
  }

  /** The value of a choice; does not look at the caps. */
  public long value(int[] counts) {
    int[] units = new int[earned.length];
    long value = base;
    long tallied = 0;
    for (int i = 0; i < items; i++) {
      if (counts[i] > 0) {
        tallied += adds[i] * counts[i];
        value += bonus[i] + countValue(i, counts[i]);
        for (int k = 0; k < aimAt[i].length; k++) {
          units[aimAt[i][k]] += aimUnits[i][k];
        }
      }
    }
    return value + aimsValue(units) + tally.value(tallied);
  }

  long aimsValue(int[] units) {
    long value = 0;
    for (int w = 0; w < earned.length; w++) {
      value += earned(w, units[w]) - (must[w] && units[w] == 0 ? MUST_MILLI : 0);
    }
    return value;
  }

  /** Whether a choice breaks nothing. */
  public boolean allows(int[] counts) {
    long[] used = new long[caps.length];
    int[] ofGroup = new int[groupRoom.length];
    long cost = 0;
    int chosen = 0;
    for (int i = 0; i < items; i++) {
      if (counts[i] == 0) {
        continue;
      }
      chosen++;
      cost += (long) price[i] * Math.max(0, counts[i] - free[i]);
      if (group[i] >= 0) {
        ofGroup[group[i]]++;
      }
      for (int k = 0; k < useAt[i].length; k++) {
        used[useAt[i][k]] += use[i][k] * counts[i];
      }
      if (counts[i] < fewestBeside(i, counts) || counts[i] > most[i] || hasEnemy(i, counts)) {
        return false;
      }
    }
    return chosen <= mostItems && cost <= budget && within(used, caps) && within(ofGroup, groupRoom);
  }

  private boolean hasEnemy(int i, int[] counts) {
    for (int j = 0; j < items; j++) {
      if (j != i && counts[j] > 0 && enemies(i, j)) {
        return true;
      }
    }
    return false;
  }

  private int fewestBeside(int i, int[] counts) {
    Item item = source.get(i);
    if (item.needsPartner()) {
      for (int partner : item.partners()) {
        if (counts[partner] > 0) {
          return item.fewest();
        }
      }
      return item.fewestAlone();
    }
    return item.fewest();
  }

  private static boolean within(long[] used, long[] room) {
    for (int r = 0; r < used.length; r++) {
      if (used[r] > room[r]) {
        return false;
      }
    }
    return true;
  }

  private static boolean within(int[] used, int[] room) {
    for (int g = 0; g < used.length; g++) {
      if (used[g] > room[g]) {
        return false;
      }
    }
    return true;
  }
}
