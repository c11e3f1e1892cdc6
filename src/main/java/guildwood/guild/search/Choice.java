package guildwood.guild.search;

import java.util.Arrays;

/**
 * Counts of the items of a {@link Selection}, and what they are worth.
 *
 * @param counts by item, 0 where it is not chosen
 */
public record Choice(int[] counts, long value) {
  public Choice {
    counts = counts.clone();
  }

  /** How many items are chosen in one of the two but not in both. */
  int apart(Choice other) {
    int apart = 0;
    for (int i = 0; i < counts.length; i++) {
      apart += counts[i] > 0 != other.counts[i] > 0 ? 1 : 0;
    }
    return apart;
  }

  int[] set() {
    int size = 0;
    int[] set = new int[counts.length];
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        set[size++] = i;
      }
    }
    return Arrays.copyOf(set, size);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Choice choice && value == choice.value && Arrays.equals(counts, choice.counts);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(counts);
  }

  @Override
  public String toString() {
    return Arrays.toString(counts) + " worth " + value;
  }
}
