package guildwood.choosing;

import guildwood.fit.Fit;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

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
    // Each word of a row belongs to 64 species, so that threads which take whole words never meet.
    IntStream.range(0, BitRow.none(species.size()).length).parallel().forEach(word -> {
      for (int i = word * Long.SIZE; i < Math.min(species.size(), (word + 1) * Long.SIZE); i++) {
        read(species.get(i), i, rows);
      }
    });
    return new FacetIndex(species, rows);
  }

  private static void read(Species species, int position, Map<Facet, FacetRows> rows) {
    Reading reading = new Reading(species);
    rows.forEach((facet, facetRows) -> {
      for (int variant = 0; variant < facet.variants(); variant++) {
        facetRows.add(position, variant, reading.marks(facet, variant));
      }
    });
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

  /** Names to search for instead of one that nothing in the library begins with, nearest spelling first. */
  public List<String> nearTexts(String text) {
    long[] named = BitRow.all(species.size());
    names.narrow(named, text);
    return BitRow.count(named) > 0 ? List.of() : names.nearTexts(text);
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
