package guildwood.species;

import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One state of the owner's library: every species with its statements, and every source. Immutable; a
 * change to the kept library makes a new one.
 *
 * @param revision grows with every change, so that what is derived from a library can tell it is stale
 * @param species those in use, in the order of their scientific names
 * @param binned those removed, restorable
 * @param sources by id
 * @param unread statements that are kept but can no longer be read; they take no part in any reckoning
 */
public record SpeciesLibrary(
    long revision,
    List<Species> species,
    List<Species> binned,
    Map<String, Source> sources,
    List<WrittenStatement> unread) {
  public SpeciesLibrary {
    species = List.copyOf(species);
    binned = List.copyOf(binned);
    sources = Map.copyOf(sources);
    unread = List.copyOf(unread);
  }

  /** A library in which everything can be read. */
  public SpeciesLibrary(long revision, List<Species> species, List<Species> binned, Map<String, Source> sources) {
    this(revision, species, binned, sources, List.of());
  }

  public Optional<Species> find(String id) {
    return all().filter(s -> s.id().equals(id)).findFirst();
  }

  public boolean isEmpty() {
    return species.isEmpty() && binned.isEmpty();
  }

  /**
   * Why a species cannot be called so: another one, in use or in the bin, has the name already.
   *
   * @param speciesId the one that would be called so; empty for a new one
   */
  public Optional<Finding> clash(SpeciesNames names, String speciesId) {
    String accepted = SpeciesNames.folded(names.scientificName());
    List<String> synonyms = names.synonyms().stream().map(SpeciesNames::folded).toList();
    for (Species other : all().filter(s -> !s.id().equals(speciesId)).toList()) {
      String otherName = SpeciesNames.folded(other.scientificName());
      if (otherName.equals(accepted)) {
        return Optional.of(Finding.of(other.removed() ? "species.in-bin" : "species.taken", "scientific_name", other.scientificName()));
      }
      if (other.synonyms().stream().map(SpeciesNames::folded).anyMatch(accepted::equals)) {
        return Optional.of(Finding.of("species.is-synonym", "scientific_name", other.scientificName()));
      }
      if (synonyms.contains(otherName)) {
        return Optional.of(Finding.of("species.taken", "synonyms", other.scientificName()));
      }
    }
    return Optional.empty();
  }

  private Stream<Species> all() {
    return Stream.concat(species.stream(), binned.stream());
  }
}
