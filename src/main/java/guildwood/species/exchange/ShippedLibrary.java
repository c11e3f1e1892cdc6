package guildwood.species.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Source;
import guildwood.species.LibraryContents;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Statement;
import guildwood.species.WrittenStatement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The library that comes with the program, straight from its files: for reports and checks that need no database. */
public final class ShippedLibrary {
  private ShippedLibrary() {}

  /**
   * Reads and checks the files, as the first filling of a database does.
   *
   * @param root folder on the class path, such as {@code /seed-data}
   */
  public static Checked<SpeciesLibrary> read(String root) {
    return SeedFiles.read(root).map(ShippedLibrary::of);
  }

  private static SpeciesLibrary of(LibraryContents contents) {
    Map<String, List<Statement>> statements = new HashMap<>();
    for (WrittenStatement written : contents.statements()) {
      statements.computeIfAbsent(written.speciesId(), id -> new ArrayList<>()).add(written.read().orThrow());
    }
    List<Species> species = contents.species().entrySet().stream()
        .map(e -> new Species(e.getKey(), e.getValue().scientificName(), e.getValue().commonNames(), e.getValue().family(),
            e.getValue().synonyms(), false, statements.getOrDefault(e.getKey(), List.of())))
        .sorted(Comparator.comparing(Species::scientificName)).toList();
    Map<String, Source> sources = contents.sources().stream().collect(Collectors.toMap(Source::id, Function.identity()));
    return new SpeciesLibrary(0, species, List.of(), sources);
  }
}
