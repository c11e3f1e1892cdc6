package guildwood.guild.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Caps that follow from those of a selection but that fractions of items would break. Of what takes more than
 * half of a cap there can be one only, of what takes more than a third two, and so on: where
 * {@code sum(use * n) <= cap}, then {@code sum((ceil((k + 1) * use / cap) - 1) * n) <= k} for every whole k
 * (a dual feasible function, as known from bin packing). They forbid nothing that is allowed and bring the
 * bound down.
 */
final class SharedCaps {
  private static final int MOST_SHARERS = 3;

  private SharedCaps() {}

  /** The same selection with those caps added. */
  static Selection addedTo(Selection s) {
    List<long[]> uses = new ArrayList<>();
    List<Long> limits = new ArrayList<>();
    for (int r = 0; r < s.caps.length; r++) {
      for (int sharers = 1; sharers <= MOST_SHARERS && s.caps[r] > 0; sharers++) {
        long[] parts = parts(s, r, sharers);
        if (Arrays.stream(parts).filter(part -> part > 0).count() > 1) {
          uses.add(parts);
          limits.add((long) sharers);
        }
      }
    }
    return uses.isEmpty() ? s : with(s, uses, limits);
  }

  private static long[] parts(Selection s, int cap, int sharers) {
    long[] parts = new long[s.items];
    for (int i = 0; i < s.items; i++) {
      long use = s.source.get(i).uses()[cap];
      parts[i] = Math.max(0, ((sharers + 1) * use + s.caps[cap] - 1) / s.caps[cap] - 1);
    }
    return parts;
  }

  private static Selection with(Selection s, List<long[]> uses, List<Long> limits) {
    long[] caps = Arrays.copyOf(s.caps, s.caps.length + uses.size());
    for (int r = 0; r < uses.size(); r++) {
      caps[s.caps.length + r] = limits.get(r);
    }
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < s.items; i++) {
      long[] own = Arrays.copyOf(s.source.get(i).uses(), caps.length);
      for (int r = 0; r < uses.size(); r++) {
        own[s.caps.length + r] = uses.get(r)[i];
      }
      items.add(s.source.get(i).using(own));
    }
    Selection strong = s.with(items, caps);
    System.arraycopy(s.bonus, 0, strong.bonus, 0, s.items);
    return strong;
  }
}
