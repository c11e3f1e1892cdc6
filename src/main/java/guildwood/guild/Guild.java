package guildwood.guild;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Species and how many plants of each, standing ones included. Immutable; ordered by species id.
 *
 * @param counts at least 1 each
 */
public record Guild(SortedMap<String, Integer> counts) {
  public static final Guild EMPTY = new Guild(new TreeMap<>());

  public Guild {
    counts = Collections.unmodifiableSortedMap(new TreeMap<>(counts));
    counts.forEach((id, count) -> {
      if (count < 1) {
        throw new IllegalArgumentException(count + " plants of " + id);
      }
    });
  }

  public static Guild of(Map<String, Integer> counts) {
    return new Guild(new TreeMap<>(counts));
  }

  public int count(String speciesId) {
    return counts.getOrDefault(speciesId, 0);
  }

  public boolean has(String speciesId) {
    return counts.containsKey(speciesId);
  }

  public Set<String> species() {
    return counts.keySet();
  }

  /** With this many plants of a species; with none it leaves. */
  public Guild with(String speciesId, int count) {
    SortedMap<String, Integer> changed = new TreeMap<>(counts);
    if (count == 0) {
      changed.remove(speciesId);
    } else {
      changed.put(speciesId, count);
    }
    return new Guild(changed);
  }

  public Guild without(String speciesId) {
    return with(speciesId, 0);
  }

  /** How many species are in one of the two but not in both. */
  public int speciesApart(Guild other) {
    Set<String> all = new TreeSet<>(species());
    all.addAll(other.species());
    return (int) all.stream().filter(id -> has(id) != other.has(id)).count();
  }
}
