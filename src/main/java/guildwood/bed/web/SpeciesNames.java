package guildwood.bed.web;

import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Finds a species by a name somebody typed. */
final class SpeciesNames {
  private static final int MOST_SUGGESTED = 12;

  private SpeciesNames() {}

  /** The species that bear exactly this name: scientific, common or older; several where a common name is shared. */
  static List<Species> named(SpeciesLibrary library, String typed) {
    String name = folded(typed);
    List<Species> scientific = library.species().stream()
        .filter(s -> folded(s.scientificName()).equals(name) || s.id().equals(name)).toList();
    return scientific.isEmpty()
        ? library.species().stream().filter(s -> names(s).anyMatch(n -> folded(n).equals(name))).toList()
        : scientific;
  }

  /** Species with a name that holds what was typed, those that begin with it first. */
  static List<Species> like(SpeciesLibrary library, String typed) {
    String part = folded(typed);
    List<Species> found = new ArrayList<>(library.species().stream()
        .filter(s -> names(s).anyMatch(n -> folded(n).contains(part))).toList());
    found.sort(Comparator.comparing((Species s) -> names(s).noneMatch(n -> folded(n).startsWith(part))));
    return found.subList(0, Math.min(found.size(), MOST_SUGGESTED));
  }

  private static Stream<String> names(Species species) {
    return Stream.of(Stream.of(species.scientificName()), species.commonNames().stream(), species.synonyms().stream()).flatMap(s -> s);
  }

  private static String folded(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
  }
}
