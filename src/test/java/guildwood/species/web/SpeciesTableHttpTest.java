package guildwood.species.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.species.Trait;
import guildwood.species.exchange.SpeciesTableReader;
import guildwood.species.Species;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The library as a table to take away. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SpeciesTableHttpTest {
  private App app;
  private HttpVisitor visitor;

  @BeforeAll
  void start() {
    app = App.start(Settings.demoOnFreePort());
    visitor = new HttpVisitor(app);
  }

  @AfterAll
  void stop() {
    app.close();
  }

  @Test
  void theLibraryPageLinksToATableToKeep() {
    assertTrue(visitor.get("/library").html().contains("href=\"/library/species.csv\""));
    Page table = visitor.get("/library/species.csv");
    assertEquals(200, table.status());
    assertTrue(table.headers().get("content-type").startsWith("text/csv"));
    assertEquals("attachment; filename=\"species.csv\"", table.headers().get("content-disposition"));
    assertTrue(table.html().startsWith("id,scientific_name,common_names,family,synonyms,light,"));
  }

  @Test
  void holdsEverySpeciesInUseAndWhatWasJustSaid() {
    int before = read().size();
    visitor.submit("/library/new", "scientific_name", "Ribes × culverwellii", "common_names", "=jostaberry; jost", "family", "Grossulariaceae");
    List<Species> after = read();
    assertEquals(before + 1, after.size());
    Species added = after.stream().filter(s -> s.scientificName().equals("Ribes × culverwellii")).findFirst().orElseThrow();
    assertEquals(List.of("=jostaberry", "jost"), added.commonNames());
    assertTrue(visitor.get("/library/species.csv").html().contains(",'=jostaberry; jost,"), "no spreadsheet takes it for a formula");
    assertFalse(added.statements().stream().anyMatch(s -> s.trait() == Trait.HEIGHT));
  }

  private List<Species> read() {
    byte[] table = visitor.get("/library/species.csv").html().getBytes(StandardCharsets.UTF_8);
    return SpeciesTableReader.read(new ByteArrayInputStream(table)).orThrow().species();
  }
}
