package guildwood.guild.search;

import java.util.Arrays;

/** What is left to choose and to use once some items are fixed: who is still open, and how much room there is. */
final class Remainder {
  private final Selection s;

  /** What is fixed: items in, items out, the rest open. */
  Fixing fixed;

  /** The first {@link #opens} entries are the open items. */
  final int[] open;

  int opens;

  /** The lowest and the highest count still possible of items that are in or open. */
  final int[] low;

  final int[] high;

  /** What every cap has left beyond the fewest of the items that are in; likewise the budget. */
  final long[] room;

  long budgetRoom;

  /** Units the items that are in give every aim, and the most that open ones can add. */
  final int[] unitsIn;

  final int[] reachable;

  /** The most that the tally can come to. */
  long tallyReach;

  /** How many more items may be chosen, in all and of every group. */
  int picksLeft;

  final int[] groupLeft;

  private final TallyReach reachOfTally;

  Remainder(Selection selection) {
    s = selection;
    reachOfTally = new TallyReach(s, this);
    open = new int[s.items];
    low = new int[s.items];
    high = new int[s.items];
    room = new long[s.caps.length];
    unitsIn = new int[s.earned.length];
    reachable = new int[s.earned.length];
    groupLeft = new int[s.groupRoom.length];
  }

  /**
   * Takes up what is fixed and marks as out what no longer goes beside it.
   *
   * @return false where nothing allowed agrees with it
   */
  boolean settle(Fixing fixing) {
    fixed = fixing;
    boolean again = true;
    while (again) {
      if (!pairUp()) {
        return false;
      }
      account();
      if (isOverdrawn() || hasEnemiesIn()) {
        return false;
      }
      again = ruleOut();
    }
    reach();
    return fixing.tally != Fixing.IN || tallyReach >= s.tally.missing();
  }

  boolean isIn(int i) {
    return fixed.state[i] == Fixing.IN;
  }

  /** Whether a must still lacks a provider. */
  boolean lacks(int aim) {
    return s.must[aim] && unitsIn[aim] == 0;
  }

  /**
   * Sets the lowest counts: who needs a partner and can have none any more must come in such numbers that
   * it needs none. False where that cannot be for one that is in.
   */
  private boolean pairUp() {
    for (int i = 0; i < s.items; i++) {
      low[i] = s.fewest[i];
      Item item = s.source.get(i);
      if (item.needsPartner() && fixed.state[i] != Fixing.OUT && !hasPartnerLeft(item)) {
        low[i] = item.fewestAlone();
        if (low[i] > s.most[i] && isIn(i)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean hasPartnerLeft(Item item) {
    for (int partner : item.partners()) {
      if (fixed.state[partner] != Fixing.OUT) {
        return true;
      }
    }
    return false;
  }

  /** Takes off what the items that are in use at least. */
  private void account() {
    System.arraycopy(s.caps, 0, room, 0, room.length);
    System.arraycopy(s.groupRoom, 0, groupLeft, 0, groupLeft.length);
    Arrays.fill(unitsIn, 0);
    budgetRoom = s.budget;
    picksLeft = s.mostItems;
    for (int i = 0; i < s.items; i++) {
      if (isIn(i)) {
        account(i, low[i]);
      }
    }
  }

  private void account(int i, int count) {
    for (int k = 0; k < s.useAt[i].length; k++) {
      room[s.useAt[i][k]] -= s.use[i][k] * count;
    }
    budgetRoom -= (long) s.price[i] * Math.max(0, count - s.free[i]);
    picksLeft--;
    if (s.group[i] >= 0) {
      groupLeft[s.group[i]]--;
    }
    for (int k = 0; k < s.aimAt[i].length; k++) {
      unitsIn[s.aimAt[i][k]] += s.aimUnits[i][k];
    }
  }

  private boolean isOverdrawn() {
    boolean overdrawn = budgetRoom < 0 || picksLeft < 0;
    for (long left : room) {
      overdrawn |= left < 0;
    }
    for (int left : groupLeft) {
      overdrawn |= left < 0;
    }
    return overdrawn;
  }

  private boolean hasEnemiesIn() {
    for (int i = 0; i < s.items; i++) {
      for (int j = i + 1; j < s.items && isIn(i); j++) {
        if (isIn(j) && s.enemies(i, j)) {
          return true;
        }
      }
    }
    return false;
  }

  /** True where somebody was ruled out whom another may have wanted for a partner. */
  private boolean ruleOut() {
    opens = 0;
    boolean missed = false;
    long gives = 0;
    long suffers = 0;
    for (int i = 0; i < s.items; i++) {
      if (isIn(i)) {
        gives |= s.gives[i];
        suffers |= s.suffers[i];
      }
    }
    for (int i = 0; i < s.items; i++) {
      if (isIn(i)) {
        high[i] = (int) Math.min(s.most[i], low[i] + spare(i, low[i]));
      } else if (fixed.state[i] == Fixing.OPEN) {
        high[i] = (int) Math.min(s.most[i], spare(i, 0));
        boolean fits = high[i] >= low[i] && picksLeft > 0
            && (s.group[i] < 0 || groupLeft[s.group[i]] > 0)
            && (s.gives[i] & suffers) == 0 && (s.suffers[i] & gives) == 0;
        if (fits) {
          open[opens++] = i;
        } else {
          fixed.state[i] = Fixing.OUT;
          missed |= s.source.get(i).partners().length > 0;
        }
      }
    }
    return missed;
  }

  /** How many more of an item the room left would take beyond a count that is accounted for. */
  private long spare(int i, int count) {
    long spare = Integer.MAX_VALUE;
    for (int k = 0; k < s.useAt[i].length; k++) {
      spare = Math.min(spare, room[s.useAt[i][k]] / s.use[i][k]);
    }
    if (s.price[i] > 0) {
      spare = Math.min(spare, Math.max(0, s.free[i] - count) + budgetRoom / s.price[i]);
    }
    return spare;
  }

  /** Units every aim can still get at most: those of the largest open providers that may be picked. */
  private void reach() {
    tallyReach = s.tally.isOpen() ? reachOfTally.most() : 0;
    int[] whole = new int[reachable.length];
    int[] half = new int[reachable.length];
    for (int o = 0; o < opens; o++) {
      int i = open[o];
      for (int k = 0; k < s.aimAt[i].length; k++) {
        if (s.aimUnits[i][k] >= 2) {
          whole[s.aimAt[i][k]]++;
        } else {
          half[s.aimAt[i][k]]++;
        }
      }
    }
    for (int w = 0; w < reachable.length; w++) {
      int wholes = Math.min(whole[w], picksLeft);
      reachable[w] = 2 * wholes + Math.min(half[w], picksLeft - wholes);
    }
  }
}
