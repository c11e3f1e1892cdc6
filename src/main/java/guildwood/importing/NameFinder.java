package guildwood.importing;

import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.species.names.NameIndex;
import guildwood.species.names.NameMatch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the species of the library that names in a table mean; near names are offered, never taken. */
final class NameFinder {
  /** Up to so many species every name is compared with every other; beyond it those with the same first letters. */
  private static final int COMPARED_WITH_ALL = 5_000;

  private static final int FIRST_LETTERS = 3;

  private final Map<String, Species> byId = new HashMap<>();
  private final Map<String, Species> byName = new HashMap<>();
  private final Map<String, List<Species>> byCommonName = new HashMap<>();
  private final Map<String, NameIndex> indexes = new HashMap<>();
  private final boolean small;

  NameFinder(SpeciesLibrary library) {
    this.small = library.species().size() + library.binned().size() <= COMPARED_WITH_ALL;
    Stream.concat(library.species().stream(), library.binned().stream()).forEach(this::add);
    // A synonym is known beside the names it could be mistaken for, not beside the one it stands for.
    Stream.concat(library.species().stream(), library.binned().stream()).forEach(species ->
        species.synonyms().forEach(s -> indexes.computeIfAbsent(letters(s), k -> NameIndex.of(List.of())).addSynonym(s, species.scientificName())));
  }

  private void add(Species species) {
    byId.put(species.id(), species);
    byName.put(species.scientificName(), species);
    indexes.computeIfAbsent(letters(species.scientificName()), k -> NameIndex.of(List.of())).add(species.scientificName());
    species.commonNames().forEach(name -> byCommonName.computeIfAbsent(Words.folded(name), k -> new ArrayList<>()).add(species));
  }

  private String letters(String name) {
    String folded = small ? "" : SpeciesNames.folded(name);
    return folded.substring(0, Math.min(FIRST_LETTERS, folded.length()));
  }

  Optional<Species> byId(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The species a name means, be it its own or a synonym of it; empty where none. */
  Optional<Species> same(String written) {
    return index(written).flatMap(index -> index.match(written))
        .filter(m -> m.kind() == NameMatch.Kind.SAME || m.kind() == NameMatch.Kind.SYNONYM)
        .flatMap(NameMatch::name).map(byName::get);
  }

  /** Species with nearly the same name: another spelling of it, a typing error, the species of a cultivar. */
  List<Species> near(String written) {
    Optional<NameMatch> match = index(written).map(index -> index.find(written));
    return match.map(m -> Stream.concat(m.name().stream(), m.suggestions().stream()).map(byName::get).toList()).orElse(List.of());
  }

  /** Species that are commonly called so. */
  List<Species> called(List<String> commonNames) {
    return commonNames.stream().flatMap(name -> byCommonName.getOrDefault(Words.folded(name), List.of()).stream()).distinct().toList();
  }

  private Optional<NameIndex> index(String written) {
    return Optional.ofNullable(indexes.get(letters(written)));
  }
}
