package guildwood.species;

import guildwood.kernel.Source;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What somebody takes out of a library: species with all that is stated about them, and all that belongs to it.
 * What lies in the bin stays behind. Everything comes in one order, whatever the order it was kept in.
 *
 * @param species in the order of their scientific names
 * @param sources in the order of their ids
 * @param unread values of these species that are kept but can no longer be read
 * @param holdings what the owner has of these species; those with nothing at hand and no price are absent
 * @param notes what is kept with these species beside their values
 */
public record LibraryExtract(
    List<Species> species, List<Source> sources, List<WrittenStatement> unread, List<Holding> holdings, List<SpeciesNote> notes) {
  public LibraryExtract {
    species = List.copyOf(species);
    sources = List.copyOf(sources);
    unread = List.copyOf(unread);
    holdings = List.copyOf(holdings);
    notes = List.copyOf(notes);
  }

  /**
   * What is kept of species beside what is stated about them.
   *
   * @param holdings by species id
   * @param notes in the order they were kept
   */
  public record Beside(Map<String, Holding> holdings, List<SpeciesNote> notes) {
    public static final Beside NOTHING = new Beside(Map.of(), List.of());

    public static Beside of(SpeciesRecords records) {
      return new Beside(records.holdings(), records.notes());
    }
  }

  /** All species in use and every source, also those without a value. */
  public static LibraryExtract whole(SpeciesLibrary library, Beside beside) {
    return of(library, library.species(), library.sources().keySet(), beside);
  }

  /** Some of the species, with the sources they rest on. The owner's own experience is a source of every library. */
  public static LibraryExtract some(SpeciesLibrary library, List<Species> chosen, Beside beside) {
    Set<String> used = new HashSet<>(Set.of(Source.OWN_EXPERIENCE));
    Set<String> ids = new HashSet<>();
    for (Species each : chosen) {
      ids.add(each.id());
      each.statements().forEach(s -> used.add(s.sourceId()));
    }
    library.unread().stream().filter(s -> ids.contains(s.speciesId())).forEach(s -> used.add(s.sourceId()));
    beside.notes().stream().filter(n -> ids.contains(n.speciesId())).forEach(n -> used.add(n.sourceId()));
    return of(library, chosen, used, beside);
  }

  private static LibraryExtract of(SpeciesLibrary library, List<Species> chosen, Set<String> sources, Beside beside) {
    List<Species> species = chosen.stream().sorted(Comparator.comparing(Species::scientificName)).toList();
    List<Source> named = library.sources().values().stream().filter(s -> sources.contains(s.id()))
        .sorted(Comparator.comparing(Source::id)).toList();
    return new LibraryExtract(species, named,
        inOrder(species, library.unread(), WrittenStatement::speciesId),
        species.stream().map(s -> beside.holdings().get(s.id())).filter(Objects::nonNull)
            .filter(h -> !h.equals(Holding.none(h.speciesId()))).toList(),
        inOrder(species, beside.notes(), SpeciesNote::speciesId));
  }

  private static <T> List<T> inOrder(List<Species> species, List<T> all, Function<T, String> speciesId) {
    Map<String, List<T>> bySpecies = all.stream().collect(Collectors.groupingBy(speciesId));
    return species.stream().flatMap(s -> bySpecies.getOrDefault(s.id(), List.of()).stream()).toList();
  }
}
