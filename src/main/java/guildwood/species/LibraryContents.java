package guildwood.species;

import guildwood.kernel.Source;
import java.util.List;
import java.util.Map;

/**
 * A whole library as it comes from files, checked, not yet kept.
 *
 * @param species names by id, in the order they came
 * @param statements each naming a species and a source that are there or kept already
 */
public record LibraryContents(List<Source> sources, Map<String, SpeciesNames> species, List<WrittenStatement> statements) {
  public LibraryContents {
    sources = List.copyOf(sources);
    statements = List.copyOf(statements);
    species = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(species));
  }
}
