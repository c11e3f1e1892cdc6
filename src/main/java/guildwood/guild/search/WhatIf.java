package guildwood.guild.search;

import java.util.Optional;

/**
 * What happens to a choice when one more item must be in it: it joins, and nobody, one or two others leave
 * for it, whichever is best. The others keep their counts as far as there is room.
 */
public final class WhatIf {
  private final Selection s;
  private final Filling filling;

  public WhatIf(Selection selection) {
    s = selection;
    filling = new Filling(s);
  }

  /** The best choice with the item in it; empty where nothing of the kind is allowed. */
  public Optional<Choice> with(int item, int[] counts) {
    int[] limit = counts.clone();
    limit[item] = s.most[item];
    int[] stay = new int[s.items];
    int size = 0;
    for (int i = 0; i < s.items; i++) {
      if (counts[i] > 0 && i != item && !s.enemies(i, item)) {
        stay[size++] = i;
      }
    }
    Choice best = null;
    for (int first = -1; first < size; first++) {
      for (int second = first < 0 ? -1 : first; second < size; second++) {
        if (first < 0 && second >= 0) {
          break;
        }
        best = better(best, attempt(item, stay, size, first, second, limit));
      }
    }
    return Optional.ofNullable(best);
  }

  private static Choice better(Choice one, Choice other) {
    return one == null || other != null && other.value() > one.value() ? other : one;
  }

  private Choice attempt(int item, int[] stay, int size, int first, int second, int[] limit) {
    int[] set = new int[size + 1];
    int count = 0;
    for (int p = 0; p < size; p++) {
      if (p != first && p != second) {
        set[count++] = stay[p];
      }
    }
    set[count++] = item;
    if (count > s.mostItems || groupTooLarge(set, count)) {
      return null;
    }
    long value = filling.fill(set, count, limit);
    if (value == Filling.IMPOSSIBLE) {
      return null;
    }
    int[] counts = new int[s.items];
    for (int p = 0; p < count; p++) {
      counts[set[p]] = filling.counts[p];
    }
    return new Choice(counts, value);
  }

  private boolean groupTooLarge(int[] set, int count) {
    int[] ofGroup = new int[s.groupRoom.length];
    for (int p = 0; p < count; p++) {
      int g = s.group[set[p]];
      if (g >= 0 && ++ofGroup[g] > s.groupRoom[g]) {
        return true;
      }
    }
    return false;
  }
}
