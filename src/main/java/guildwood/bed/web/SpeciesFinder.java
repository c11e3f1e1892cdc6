package guildwood.bed.web;

import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Finds a species by a name somebody typed. */
public final class SpeciesFinder {
  private static final int MOST_SUGGESTED = 12;

  private SpeciesFinder() {}

  /** The species that bear exactly this name: scientific, common or older; several where a common name is shared. */
  public static List<Species> named(SpeciesLibrary library, String typed) {
    String name = SpeciesNames.folded(typed);
    List<Species> scientific = library.species().stream()
        .filter(s -> SpeciesNames.folded(s.scientificName()).equals(name)).toList();
    return !scientific.isEmpty() || name.isEmpty() ? scientific
        : library.species().stream().filter(s -> names(s).anyMatch(n -> n.equals(name))).toList();
  }

  /** Species with a name that holds what was typed, those that begin with it first. */
  public static List<Species> like(SpeciesLibrary library, String typed) {
    String part = SpeciesNames.folded(typed);
    if (part.isEmpty()) {
      return List.of();
    }
    List<Species> found = new ArrayList<>(library.species().stream()
        .filter(s -> names(s).anyMatch(n -> n.contains(part))).toList());
    found.sort(Comparator.comparing((Species s) -> names(s).noneMatch(n -> n.startsWith(part))));
    return found.subList(0, Math.min(found.size(), MOST_SUGGESTED));
  }

  private static Stream<String> names(Species species) {
    return Stream.of(Stream.of(species.scientificName()), species.commonNames().stream(), species.synonyms().stream())
        .flatMap(s -> s).map(SpeciesNames::folded);
  }
}
