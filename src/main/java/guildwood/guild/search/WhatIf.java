package guildwood.guild.search;

import java.util.Arrays;
import java.util.Optional;

/**
 * What happens to a choice when one more item must be in it: it joins, with a partner where it needs one,
 * and nobody, one or two others leave for it, whichever is best; where two are not enough, as many as must.
 * The others keep their counts as far as there is room.
 */
public final class WhatIf {
  private static final int NOBODY = -1;

  private final Selection s;
  private final Filling filling;

  public WhatIf(Selection selection) {
    s = selection;
    filling = new Filling(s);
  }

  /** The best choice with the item in it; empty where nothing of the kind is allowed. */
  public Optional<Choice> with(int item, int[] counts) {
    Choice best = with(new int[] {item}, counts);
    for (int partner : s.source.get(item).needsPartner() ? s.source.get(item).partners() : new int[0]) {
      if (counts[partner] == 0 && !s.enemies(item, partner)) {
        best = better(best, with(new int[] {item, partner}, counts));
      }
    }
    return Optional.ofNullable(best);
  }

  private Choice with(int[] joining, int[] counts) {
    int[] limit = counts.clone();
    for (int item : joining) {
      limit[item] = s.most[item];
    }
    int[] stay = staying(joining, counts);
    Choice best = attempt(joining, stay, NOBODY, NOBODY, limit);
    for (int first = 0; first < stay.length; first++) {
      for (int second = first; second < stay.length; second++) {
        best = better(best, attempt(joining, stay, first, second, limit));
      }
    }
    return best == null ? rebuilt(joining, stay, limit) : best;
  }

  /** Those chosen already that can stand beside the ones that join. */
  private int[] staying(int[] joining, int[] counts) {
    int[] stay = new int[s.items];
    int size = 0;
    for (int i = 0; i < s.items; i++) {
      boolean stays = counts[i] > 0;
      for (int item : joining) {
        stays &= i != item && !s.enemies(i, item);
      }
      if (stays) {
        stay[size++] = i;
      }
    }
    return Arrays.copyOf(stay, size);
  }

  private static Choice better(Choice one, Choice other) {
    return one == null || other != null && other.value() > one.value() ? other : one;
  }

  private Choice attempt(int[] joining, int[] stay, int first, int second, int[] limit) {
    int[] set = new int[stay.length + joining.length];
    int size = 0;
    for (int p = 0; p < stay.length; p++) {
      if (p != first && p != second) {
        set[size++] = stay[p];
      }
    }
    for (int item : joining) {
      set[size++] = item;
    }
    return choice(set, size, limit);
  }

  /** Starts from those that join alone and takes back, again and again, whoever adds most. */
  private Choice rebuilt(int[] joining, int[] stay, int[] limit) {
    int[] set = Arrays.copyOf(joining, joining.length + stay.length);
    int size = joining.length;
    Choice best = choice(set, size, limit);
    boolean[] back = new boolean[stay.length];
    for (int round = 0; best != null && round < stay.length; round++) {
      int chosen = NOBODY;
      for (int p = 0; p < stay.length; p++) {
        set[size] = stay[p];
        Choice more = back[p] ? null : choice(set, size + 1, limit);
        if (more != null && more.value() > best.value()) {
          best = more;
          chosen = p;
        }
      }
      if (chosen == NOBODY) {
        break;
      }
      set[size++] = stay[chosen];
      back[chosen] = true;
    }
    return best;
  }

  private Choice choice(int[] set, int size, int[] limit) {
    if (size > s.mostItems || hasGroupTooLarge(set, size)) {
      return null;
    }
    long value = filling.fill(set, size, limit);
    if (value == Filling.IMPOSSIBLE) {
      return null;
    }
    int[] counts = new int[s.items];
    for (int p = 0; p < size; p++) {
      counts[set[p]] = filling.counts[p];
    }
    return new Choice(counts, value);
  }

  private boolean hasGroupTooLarge(int[] set, int size) {
    int[] ofGroup = new int[s.groupRoom.length];
    for (int p = 0; p < size; p++) {
      int g = s.group[set[p]];
      if (g >= 0 && ++ofGroup[g] > s.groupRoom[g]) {
        return true;
      }
    }
    return false;
  }
}
