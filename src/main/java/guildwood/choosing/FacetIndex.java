package guildwood.choosing;

import guildwood.fit.Fit;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One library, laid out for choosing: a bit row for every option of every facet and each of yes and not
 * known, the words of all names, and the orders. Immutable; a changed library needs a new index.
 */
public final class FacetIndex {
  private final List<Species> species;
  private final Map<Facet, FacetRows> rows;
  private final NameIndex names;
  private final Orders orders;

  private FacetIndex(List<Species> species, Map<Facet, FacetRows> rows) {
    this.species = species;
    this.rows = rows;
    this.names = new NameIndex(species);
    this.orders = new Orders(species);
  }

  /** Lays out the species in use; those in the bin are not offered. */
  public static FacetIndex of(SpeciesLibrary library) {
    List<Species> species = library.species();
    Map<Facet, FacetRows> rows = new EnumMap<>(Facet.class);
    for (Facet facet : Facet.values()) {
      if (facet != Facet.VERDICT) {
        rows.put(facet, new FacetRows(facet, species.size()));
      }
    }
    for (int i = 0; i < species.size(); i++) {
      Reading reading = new Reading(species.get(i));
      for (Map.Entry<Facet, FacetRows> facet : rows.entrySet()) {
        for (int variant = 0; variant < facet.getKey().variants(); variant++) {
          facet.getValue().add(i, variant, reading.marks(facet.getKey(), variant));
        }
      }
    }
    return new FacetIndex(species, rows);
  }

  /** Judges every species for a bed, once. */
  public BedFits judge(Function<Species, Fit> fit) {
    return BedFits.of(species, orders.by(Order.NAME), fit);
  }

  /**
   * What remains of the library, and what every further choice would come to. Choices in a facet that is
   * silent - the verdict without a bed, wetland ratings without a region - have no effect.
   *
   * @param bed of this index, where a bed is chosen
   */
  public Outcome choose(Query query, Optional<BedFits> bed) {
    long[] named = BitRow.all(species.size());
    names.narrow(named, query.text());
    return new Outcome(this, new Demands(this, query, bed), named, bed);
  }

  FacetRows rows(Facet facet) {
    return rows.get(facet);
  }

  Orders orders() {
    return orders;
  }

  List<Species> species() {
    return species;
  }
}
