package guildwood.species;

import guildwood.kernel.Source;
import java.util.List;
import java.util.Map;

/**
 * A whole library as it comes from files, checked, not yet kept.
 *
 * @param species names by id, in the order they came
 * @param statements each naming a species and a source that are there or kept already
 * @param holdings what the owner has of the species
 * @param notes what is kept with the species beside their values
 */
public record LibraryContents(
    List<Source> sources,
    Map<String, SpeciesNames> species,
    List<WrittenStatement> statements,
    List<Holding> holdings,
    List<SpeciesNote> notes) {
  public LibraryContents {
    sources = List.copyOf(sources);
    statements = List.copyOf(statements);
    holdings = List.copyOf(holdings);
    notes = List.copyOf(notes);
    species = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(species));
  }

  public boolean isEmpty() {
    return sources.isEmpty() && species.isEmpty() && statements.isEmpty() && holdings.isEmpty() && notes.isEmpty();
  }
}
