package guildwood.species;

import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One state of the owner's library: every species with its statements, and every source. Immutable; a
 * change to the kept library makes a new one.
 *
 */
public final class SpeciesLibrary {
  private final long revision;
  private final List<Species> species;
  private final List<Species> binned;
  private final Map<String, Source> sources;
  private final List<WrittenStatement> unread;
  private final Map<String, Species> byId = new HashMap<>();

  /**
   * @param revision grows with every change, so that what is derived from a library can tell it is stale
   * @param species those in use, in the order of their scientific names
   * @param binned those removed, restorable
   * @param sources by id
   * @param unread statements that are kept but can no longer be read; they take no part in any reckoning
   */
  public SpeciesLibrary(long revision, List<Species> species, List<Species> binned, Map<String, Source> sources,
      List<WrittenStatement> unread) {
    this.revision = revision;
    this.species = List.copyOf(species);
    this.binned = List.copyOf(binned);
    this.sources = Map.copyOf(sources);
    this.unread = List.copyOf(unread);
    all().forEach(each -> byId.put(each.id(), each));
  }

  /** A library in which everything can be read. */
  public SpeciesLibrary(long revision, List<Species> species, List<Species> binned, Map<String, Source> sources) {
    this(revision, species, binned, sources, List.of());
  }

  public long revision() {
    return revision;
  }

  public List<Species> species() {
    return species;
  }

  public List<Species> binned() {
    return binned;
  }

  public Map<String, Source> sources() {
    return sources;
  }

  public List<WrittenStatement> unread() {
    return unread;
  }

  public Optional<Species> find(String id) {
    return Optional.ofNullable(byId.get(id));
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
