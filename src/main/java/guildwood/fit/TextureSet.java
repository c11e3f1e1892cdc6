package guildwood.fit;

import guildwood.kernel.Range;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/**
 * The texture classes a species bears: a set, not an interval (coarse and fine without medium happens).
 * The response is the share of the place's classes that are in the set.
 *
 * @param classes 1 coarse, 2 medium, 3 fine
 */
public record TextureSet(Set<Integer> classes) implements Tolerance {
  public TextureSet {
    if (classes.isEmpty() || classes.stream().anyMatch(c -> c < 1 || c > 3)) {
      throw new IllegalArgumentException("no texture classes: " + classes);
    }
    classes = java.util.Collections.unmodifiableSet(new TreeSet<>(classes));
  }

  public static TextureSet of(Collection<Integer> classes) {
    return new TextureSet(new TreeSet<>(classes));
  }

  @Override
  public TextureSet overClasses(double half) {
    return this;
  }

  @Override
  public double mean(Range bed) {
    int first = (int) Math.round(bed.min());
    int last = (int) Math.round(bed.max());
    int borne = 0;
    for (int texture = first; texture <= last; texture++) {
      borne += classes.contains(texture) ? 1 : 0;
    }
    return (double) borne / (last - first + 1);
  }

  /** Classes to the nearest one that is borne, counted from the place's middle; 0 where all are borne. */
  @Override
  public double shortfall(Range bed) {
    if (mean(bed) == 1) {
      return 0;
    }
    double nearest = Double.POSITIVE_INFINITY;
    for (int texture : classes) {
      double move = texture - bed.middle();
      nearest = Math.abs(move) < Math.abs(nearest) ? move : nearest;
    }
    return nearest;
  }

  @Override
  public Range tolerated() {
    TreeSet<Integer> ordered = new TreeSet<>(classes);
    return new Range(ordered.first(), ordered.last());
  }

  @Override
  public Range preferred() {
    return tolerated();
  }
}
