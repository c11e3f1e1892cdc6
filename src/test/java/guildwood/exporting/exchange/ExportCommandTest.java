package guildwood.exporting.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.Main;
import guildwood.species.exchange.DataPackageReader;
import guildwood.species.exchange.SeedFiles;
import guildwood.species.exchange.SpeciesTableReader;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** The command {@code export}, run inside the test on a data directory of its own. */
class ExportCommandTest {
  @TempDir
  private static Path folder;

  @BeforeAll
  static void fill() {
    try (Database database = Database.open(folder.resolve("data"))) {
      new SqlSpeciesRecords(database).addAll(SeedFiles.read("/seed-data").orThrow());
    }
  }

  /** The form follows the name of the file; a database filled from the package of another gives the same bytes. */
  @Test
  void theWholeLibraryInEveryFormComesOutOfAnotherDatabaseTheSame() throws IOException {
    Path zip = folder.resolve("all.zip");
    assertEquals("0 339 species written to " + zip, export(zip.toString()));
    Path other = folder.resolve("other");
    try (Database database = Database.open(other)) {
      new SqlSpeciesRecords(database).addAll(DataPackageReader.read(zip).orThrow().contents());
    }
    for (String name : List.of("zip", "xlsx", "csv")) {
      Path first = folder.resolve("all." + name);
      Path second = folder.resolve("second." + name);
      export(first.toString());
      run("export", "--data", other.toString(), "--to", second.toString());
      assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second), name);
    }
    assertEquals(339, species(folder.resolve("all.csv")).size());
  }

  @Test
  void onlyWhatTheLibraryPageWouldShow() throws IOException {
    Path some = folder.resolve("some.csv");
    String said = export(some.toString(), "--filter", "/library?layer=shrub&function=nitrogen-fixer&page=2");
    List<String> ids = species(some);
    assertEquals("0 " + ids.size() + " species written to " + some, said);
    assertTrue(ids.size() > 3 && ids.size() < 40, ids.toString());
    Path named = folder.resolve("named.csv");
    export(named.toString(), "--filter", "q=sea buckthorn");
    assertEquals(List.of("hippophae-rhamnoides"), species(named));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "layer=bush&bed=7 | guildwood: \"bush\" is not a choice under \"layer\".~guildwood: There is no bed \"7\".",
    "layers=shrub | guildwood: The library page knows nothing called \"layers\".",
    "verdict=fits | guildwood: Name a bed too: without one, a verdict cannot be asked for.",
    "q=%zz | guildwood: \"q=%zz\" is not the address of a library page."
  })
  void aFilterThatCannotBeReadWritesNothing(String filter, String complaint) throws IOException {
    Path file = Files.writeString(folder.resolve("kept.csv"), "as it was");
    assertEquals("2 " + complaint.replace("~", "\n"), export(file.toString(), "--filter", filter));
    assertEquals("as it was", Files.readString(file));
    try (Stream<Path> files = Files.list(folder)) {
      assertFalse(files.anyMatch(f -> f.toString().endsWith(".part")));
    }
  }

  @Test
  void whatIsMissingIsSaid() {
    assertEquals("2 guildwood: " + folder.resolve("nowhere") + " holds no database. Name the directory with --data.",
        run("export", "--data", folder.resolve("nowhere").toString(), "--to", folder.resolve("x.csv").toString()));
    assertFalse(Files.exists(folder.resolve("nowhere")));
    assertEquals("2 guildwood: Please name the form: --format csv, xlsx or package.", export(folder.resolve("x.txt").toString()));
    assertEquals("2 guildwood: \"ods\" is not a form that can be written; there are csv, xlsx and package.",
        export(folder.resolve("x.ods").toString(), "--format", "ods"));
  }

  private static List<String> species(Path table) throws IOException {
    try (InputStream in = Files.newInputStream(table)) {
      return SpeciesTableReader.read(in).orThrow().species().stream().map(s -> s.id()).toList();
    }
  }

  private static String export(String to, String... more) {
    return run(Stream.concat(Stream.of("export", "--data", folder.resolve("data").toString(), "--to", to), Stream.of(more)).toArray(String[]::new));
  }

  private static String run(String... args) {
    StringWriter said = new StringWriter();
    CommandLine line = new CommandLine(new Main());
    line.setOut(new PrintWriter(said, true));
    line.setErr(new PrintWriter(said, true));
    return line.execute(args) + " " + said.toString().strip();
  }
}
