package guildwood.choosing;

import guildwood.fit.Fit;
import guildwood.fit.Tolerances;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.SpeciesLibrary;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** The index of the library as it stands, and the judgements of the beds last asked for; made anew when the library changes. */
public final class CurrentIndex {
  /** Judgements kept: a gardener goes back and forth between a few beds. */
  private static final int MOST_BEDS = 8;

  private final Supplier<SpeciesLibrary> current;
  private State state;

  /** One state of the library with its index; it stays consistent while the library moves on. */
  public record State(SpeciesLibrary library, FacetIndex index, Map<Map<Axis, Range>, BedFits> beds) {
    /** How the library's species suit a bed. */
    public BedFits fits(BedChoice bed) {
      Map<Axis, Range> conditions = Fit.ranges(bed.conditions());
      synchronized (beds) {
        return beds.computeIfAbsent(conditions,
            place -> index.judge(species -> Fit.ofRanges(Tolerances.of(species), place)));
      }
    }
  }

  public CurrentIndex(Supplier<SpeciesLibrary> current) {
    this.current = current;
  }

  public synchronized State get() {
    SpeciesLibrary library = current.get();
    if (state == null || state.library() != library) {
      state = new State(library, FacetIndex.of(library), new LastUsed<>());
    }
    return state;
  }

  private static final class LastUsed<K, V> extends LinkedHashMap<K, V> {
    private static final long serialVersionUID = 1L;

    LastUsed() {
      super(16, 0.75f, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
      return size() > MOST_BEDS;
    }
  }
}
