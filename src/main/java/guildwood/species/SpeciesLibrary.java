package guildwood.species;

import guildwood.kernel.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One state of the owner's library: every species with its statements, and every source. Immutable; a
 * change to the kept library makes a new one.
 *
 * @param revision grows with every change, so that what is derived from a library can tell it is stale
 * @param species those in use, in the order of their scientific names
 * @param binned those removed, restorable
 * @param sources by id
 */
public record SpeciesLibrary(
    long revision, List<Species> species, List<Species> binned, Map<String, Source> sources) {
  public SpeciesLibrary {
    species = List.copyOf(species);
    binned = List.copyOf(binned);
    sources = Map.copyOf(sources);
  }

  public Optional<Species> find(String id) {
    return java.util.stream.Stream.concat(species.stream(), binned.stream()).filter(s -> s.id().equals(id)).findFirst();
  }
}
