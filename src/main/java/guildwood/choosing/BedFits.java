package guildwood.choosing;

import guildwood.fit.Fit;
import guildwood.fit.Verdict;
import guildwood.species.Species;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** How every species of one library suits one bed: the rows of {@link Facet#VERDICT}, and the order by fit. */
public final class BedFits {
  /** From the best to the worst; what is not known may still fit and stands before what does not. */
  private static final List<Verdict> BEST_FIRST =
      List.of(Verdict.FITS, Verdict.BORDERLINE, Verdict.NOT_KNOWN, Verdict.DOES_NOT_FIT);

  private final Function<Species, Fit> fit;
  private final FacetRows rows;
  private final int[] bestFirst;

  private BedFits(Function<Species, Fit> fit, FacetRows rows, int[] bestFirst) {
    this.fit = fit;
    this.rows = rows;
    this.bestFirst = bestFirst;
  }

  static BedFits of(List<Species> species, int[] byName, Function<Species, Fit> fit) {
    FacetRows rows = new FacetRows(Facet.VERDICT, species.size());
    int[] rank = new int[species.size()];
    double[] overall = new double[species.size()];
    int[] nameRank = new int[species.size()];
    for (int i = 0; i < species.size(); i++) {
      Fit found = fit.apply(species.get(i));
      rows.add(i, 0, marks(found.verdict()));
      rank[i] = BEST_FIRST.indexOf(found.verdict());
      overall[i] = found.overall().orElse(0);
      nameRank[byName[i]] = i;
    }
    Comparator<Integer> byVerdict = Comparator.comparingInt(i -> rank[i]);
    return new BedFits(fit, rows, Orders.sorted(species.size(),
        byVerdict.thenComparing(i -> -overall[i]).thenComparingInt(i -> nameRank[i])));
  }

  /** A verdict that is not known may turn out to be any other; it is also an answer one can ask for. */
  private static Marks marks(Verdict verdict) {
    return Marks.each(Facet.VERDICT, verdict.key()::equals, option -> verdict == Verdict.NOT_KNOWN);
  }

  /** The fit of one species, with its axes. */
  public Fit of(Species species) {
    return fit.apply(species);
  }

  FacetRows rows() {
    return rows;
  }

  int[] bestFirst() {
    return bestFirst;
  }
}
