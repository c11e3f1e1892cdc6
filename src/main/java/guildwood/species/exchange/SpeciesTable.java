package guildwood.species.exchange;

import guildwood.kernel.Source;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * What a species table says.
 *
 * @param species in the order of the rows
 * @param unknownColumns headings that mean nothing here, perhaps misspelt
 */
public record SpeciesTable(List<Species> species, List<String> unknownColumns) {
  /** Where the values of a table come from as far as the table tells: it carries values, not their sources. */
  static final Source ORIGIN = new Source("species-table", Source.Kind.HEARSAY, "", "A species table, read from a file",
      OptionalInt.empty(), "");

  public SpeciesTable {
    species = List.copyOf(species);
    unknownColumns = List.copyOf(unknownColumns);
  }

  public SpeciesLibrary library() {
    return new SpeciesLibrary(0, species, List.of(), Map.of(ORIGIN.id(), ORIGIN));
  }
}
