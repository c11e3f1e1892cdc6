package guildwood.choosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The rows of one facet: for every variant and option who says yes, and of whom it is not known. */
final class FacetRows {
  private final Facet facet;
  private final long[][][] yes;
  private final long[][][] notKnown;

  FacetRows(Facet facet, int size) {
    this.facet = facet;
    this.yes = blank(facet, size);
    this.notKnown = blank(facet, size);
  }

  private static long[][][] blank(Facet facet, int size) {
    long[][][] rows = new long[facet.variants()][facet.options().size()][];
    for (long[][] variant : rows) {
      for (int option = 0; option < variant.length; option++) {
        variant[option] = BitRow.none(size);
      }
    }
    return rows;
  }

  void add(int species, int variant, Marks marks) {
    spread(species, marks.yes(), yes[variant]);
    spread(species, marks.notKnown(), notKnown[variant]);
  }

  private static void spread(int species, long marks, long[][] rows) {
    for (long left = marks; left != 0; left &= left - 1) {
      BitRow.set(rows[Long.numberOfTrailingZeros(left)], species);
    }
  }

  /** Passes whoever says yes to one of the options; with {@code keep} also those of whom one is not known. */
  Clause clause(int[] variants, Set<String> options, boolean keep) {
    List<long[]> rows = new ArrayList<>();
    for (int variant : variants) {
      for (String option : options) {
        int o = facet.options().indexOf(option);
        rows.add(yes[variant][o]);
        if (keep && !facet.leavesOut()) {
          rows.add(notKnown[variant][o]);
        }
      }
    }
    return new Clause(rows.toArray(long[][]::new), facet.leavesOut());
  }
}
