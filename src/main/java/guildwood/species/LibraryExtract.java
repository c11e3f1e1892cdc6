package guildwood.species;

import guildwood.kernel.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What somebody takes out of a library: species with all that is stated about them, and all that belongs to it.
 * What lies in the bin stays behind. Everything comes in one order, whatever the order it was kept in.
 *
 * @param species in the order of their scientific names
 * @param sources in the order of their ids
 * @param unread values of these species that are kept but can no longer be read
 * @param holdings what the owner has of these species; those with nothing at hand and no price are absent
 */
public record LibraryExtract(
    List<Species> species, List<Source> sources, List<WrittenStatement> unread, List<Holding> holdings) {
  public LibraryExtract {
    species = List.copyOf(species);
    sources = List.copyOf(sources);
    unread = List.copyOf(unread);
    holdings = List.copyOf(holdings);
  }

  /** All species in use and every source, also those without a value. */
  public static LibraryExtract whole(SpeciesLibrary library, Map<String, Holding> holdings) {
    return of(library, library.species(), library.sources().keySet(), holdings);
  }

  /** Some of the species, with the sources they rest on. The owner's own experience is a source of every library. */
  public static LibraryExtract some(SpeciesLibrary library, List<Species> chosen, Map<String, Holding> holdings) {
    Set<String> used = new HashSet<>(Set.of(Source.OWN_EXPERIENCE));
    Set<String> ids = new HashSet<>();
    for (Species each : chosen) {
      ids.add(each.id());
      each.statements().forEach(s -> used.add(s.sourceId()));
    }
    library.unread().stream().filter(s -> ids.contains(s.speciesId())).forEach(s -> used.add(s.sourceId()));
    return of(library, chosen, used, holdings);
  }

  private static LibraryExtract of(SpeciesLibrary library, List<Species> chosen, Set<String> sources, Map<String, Holding> holdings) {
    List<Species> species = chosen.stream().sorted(Comparator.comparing(Species::scientificName)).toList();
    List<Source> named = library.sources().values().stream().filter(s -> sources.contains(s.id()))
        .sorted(Comparator.comparing(Source::id)).toList();
    Map<String, List<WrittenStatement>> unread = new java.util.HashMap<>();
    library.unread().forEach(s -> unread.computeIfAbsent(s.speciesId(), id -> new ArrayList<>()).add(s));
    return new LibraryExtract(species, named,
        species.stream().flatMap(s -> unread.getOrDefault(s.id(), List.of()).stream()).toList(),
        species.stream().map(s -> holdings.get(s.id())).filter(Objects::nonNull)
            .filter(h -> !h.equals(Holding.none(h.speciesId()))).toList());
  }
}
