package guildwood;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import guildwood.importing.store.SqlImports;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.web.Messages;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The command {@code import}, run inside the test on a data directory of its own. */
class ImportCommandTest {
  private static final Path INVENTED = Path.of("src/test/resources/importing/characteristics-40.csv");
  private static final String PLANTS = "Latin name,Height (ft),Zone,Remarks\nFictoria longa,10,5,tall\nFictoria brevis,tall,4,small\n";

  /** A data directory that the program has filled; every test has a copy. */
  @TempDir
  private static Path filled;

  @TempDir
  Path folder;

  private Path data;
  private String said;
  private String complained;

  @BeforeAll
  static void fill() {
    try (Database database = Database.open(filled)) {
      FirstFilling.fill(new SqlSpeciesRecords(database), new Messages(), FirstFilling.SEED);
    }
  }

  @BeforeEach
  void place() throws IOException {
    data = copy("data");
  }

  private Path copy(String name) throws IOException {
    Path copy = Files.createDirectory(folder.resolve(name));
    try (Stream<Path> files = Files.list(filled)) {
      for (Path file : files.toList()) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
    }
    return copy;
  }

  @Test
  void aTableComesInAsOneStepThatCanBeUndone() {
    data = folder.resolve("new");
    assertEquals(0, run("import", INVENTED.toString(), "--data", data.toString(), "--source", "Invented plants", "--source-kind", "publication"));
    assertTrue(said.startsWith(INVENTED + ": 40 rows read below row 1.\n40 new species; no rows about species of the library; no rows refused.\n"), said);
    assertTrue(said.contains("\n  Height, Mature (feet): Mature height, in feet\n"), said);
    assertTrue(said.contains("\n  Height, Mature (feet): 1 cell, in row 37. \"tall\" "), said);
    assertTrue(said.endsWith("Kept as import 1. It can be undone as one step on the page of imports.\n"), said);
    try (Database database = Database.open(data)) {
      SqlSpeciesRecords records = new SqlSpeciesRecords(database);
      SpeciesLibrary library = records.library();
      assertEquals(339 + 40, library.species().size(), "the library that comes with the program is there too");
      Species alba = library.species().stream().filter(s -> s.scientificName().equals("Fictoria alba")).findFirst().orElseThrow();
      TraitValue height = alba.ruling(Trait.HEIGHT).orElseThrow().value();
      assertEquals(6 * 0.3048, ((TraitValue.Span) height).range().max(), 1e-9);
      assertEquals("Invented plants", library.sources().get(alba.ruling(Trait.HEIGHT).orElseThrow().sourceId()).title());
      new SqlImports(database, records).undo(1, Instant.EPOCH).orThrow();
      assertEquals(339, records.library().species().size());
    }
  }

  @Test
  void aDryRunChangesNothing() {
    assertEquals(0, run("import", INVENTED.toString(), "--data", data.toString(), "--dry-run"));
    assertTrue(said.endsWith("This was a dry run. Nothing was changed.\n"), said);
    assertEquals(339, species());
  }

  @Test
  void rejectsReportAndMappingAreWritten() throws IOException {
    Path table = Files.writeString(folder.resolve("plants.csv"), PLANTS);
    Path rejects = folder.resolve("rejects.csv");
    Path report = folder.resolve("report.json");
    Path mapping = folder.resolve("mapping.json");
    assertEquals(0, run("import", table.toString(), "--data", data.toString(), "--rejects", rejects.toString(), "--report", report.toString(),
        "--save-mapping", mapping.toString()), complained);
    List<String> rejected = Files.readAllLines(rejects);
    assertEquals(2, rejected.size(), rejected.toString());
    assertTrue(rejected.get(1).startsWith("Fictoria brevis,tall,4,small,3,"), rejected.get(1));
    JsonNode json = new ObjectMapper().readTree(report.toFile());
    assertEquals(2, json.at("/counts/newSpecies").asInt());
    assertEquals("value:height", json.at("/columns/1/meaning").asText());
    assertEquals("Height (ft)", json.at("/unread/0/header").asText());
    assertEquals(1, json.at("/import").asInt());

    String edited = Files.readString(mapping).replace("\"feet\"", "\"metres\"");
    Files.writeString(mapping, edited);
    Path other = copy("other");
    assertEquals(0, run("import", table.toString(), "--data", other.toString(), "--mapping", mapping.toString()), complained);
    assertTrue(said.contains("Height (ft): Mature height, in metres\n"), said);
  }

  @Test
  void aSheetIsChosenAndTheOthersAreNamed() throws IOException {
    Path file = folder.resolve("plants.xlsx");
    try (OutputStream out = Files.newOutputStream(file); Workbook book = new Workbook(out, "test", "1.0")) {
      book.newWorksheet("Empty");
      for (String name : List.of("Trees", "Herbs")) {
        var sheet = book.newWorksheet(name);
        sheet.value(0, 0, "Scientific name");
        sheet.value(0, 1, "Height (m)");
        sheet.value(1, 0, "Fictoria " + (name.equals("Trees") ? "alta" : "nana"));
        sheet.value(1, 1, 2);
      }
    }
    assertEquals(0, run("import", file.toString(), "--data", data.toString(), "--dry-run"));
    assertTrue(said.startsWith(file + ", sheet Trees: 1 row read below row 1.\n2 other sheets are not brought: Empty, Herbs. "), said);
    assertEquals(0, run("import", file.toString(), "--data", data.toString(), "--sheet", "herbs"));
    assertTrue(said.startsWith(file + ", sheet Herbs: 1 row"), said);
    assertEquals(2, run("import", file.toString(), "--data", data.toString(), "--sheet", "Shrubs"));
    assertEquals("guildwood: " + file + ": There is no sheet \"Shrubs\" in the file. It has: Empty, Trees, Herbs.\n", complained);
  }

  @Test
  void whatCannotBeBroughtChangesNothing() throws IOException {
    assertRefused("there is no such file.", folder.resolve("nowhere.csv"));
    assertRefused("This is a PDF.", Files.writeString(folder.resolve("plants.csv"), "%PDF-1.7"));
    assertRefused("No column holds the names", Files.writeString(folder.resolve("heights.csv"), "Height (m),Zone\n2,5\n3,4\n"));
    assertRefused("The quote marks in row 3", Files.writeString(folder.resolve("quotes.csv"), "Latin name,Zone,Uses\nFictoria alba,4,\"a\"\nFictoria nana,\"5,b\n"));
    assertEquals(2, run("import", INVENTED.toString(), "--data", data.toString(), "--source-kind", "rumour"));
    assertTrue(complained.contains("no kind of source"), complained);
    Path mapping = Files.writeString(folder.resolve("mapping.json"), "{\"format\": \"other\"}");
    assertEquals(2, run("import", INVENTED.toString(), "--data", data.toString(), "--mapping", mapping.toString()));
    assertTrue(complained.contains("not a mapping file"), complained);
    Files.writeString(mapping, "{\"format\": \"guildwood-mapping-1\", \"columns\": [{\"header\": \"Girth\", \"meaning\": \"note\"}]}");
    assertEquals(2, run("import", INVENTED.toString(), "--data", data.toString(), "--mapping", mapping.toString()));
    assertTrue(complained.contains("None of the columns that the mapping names"), complained);
    assertEquals(339, species());
  }

  @Test
  void aDatabaseThatAServerHasOpenIsLeftAlone() throws IOException, InterruptedException {
    Process server = ChildJava.start("-Xmx256m", "guildwood.Main", "serve", "--data", data.toString(), "--port", "0");
    try {
      ChildJava.awaitLine(server, "Guildwood is at ");
      assertEquals(2, run("import", INVENTED.toString(), "--data", data.toString()));
      assertTrue(complained.contains("the database is in use"), complained);
    } finally {
      server.destroyForcibly().waitFor();
    }
  }

  /** An export, brought into an empty library and exported again, gives the same bytes. */
  @Test
  void aDataPackageComesInWhole() throws IOException {
    Path first = folder.resolve("first.zip");
    Path second = folder.resolve("second.zip");
    run("import", INVENTED.toString(), "--data", data.toString());
    assertEquals(0, run("export", "--data", data.toString(), "--to", first.toString()), complained);
    Path other = folder.resolve("other");
    assertEquals(0, run("import", first.toString(), "--data", other.toString()), complained);
    assertTrue(said.startsWith("379 species, "), said);
    assertEquals(0, run("export", "--data", other.toString(), "--to", second.toString()), complained);
    assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second));
    assertEquals(0, run("import", first.toString(), "--data", other.toString(), "--dry-run"), complained);
    assertTrue(said.startsWith("0 species, 0 values and 0 sources brought; 379 species and "), said);
    assertEquals(2, run("import", first.toString(), "--data", other.toString(), "--sheet", "x"));
    assertTrue(complained.contains("Bring it without further options"), complained);
  }

  private void assertRefused(String reason, Path file) {
    assertEquals(2, run("import", file.toString(), "--data", data.toString()), said);
    assertTrue(complained.startsWith("guildwood: " + file + ": ") && complained.contains(reason), complained);
    assertFalse(complained.contains("Exception"), complained);
    assertEquals("", said);
  }

  private int species() {
    try (Database database = Database.open(data)) {
      return new SqlSpeciesRecords(database).library().species().size();
    }
  }

  private int run(String... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit = Main.line().setOut(new PrintWriter(out)).setErr(new PrintWriter(err)).execute(words);
    said = out.toString().replace(System.lineSeparator(), "\n");
    complained = err.toString().replace(System.lineSeparator(), "\n");
    return exit;
  }
}
