package guildwood.importing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is in which column: proposed, shown on real cells, put right by hand, kept to be used again. */
class ColumnHttpTest {
  private static final String TABLE = """
      Botanical name;Height (ft);Spread;Sun;Lore
      Malus domestica;15-20;3 m;full sun;by the gate
      Symphytum officinale;tall;1 m;part shade;
      Sambucus canadensis;8;2 m;gloomy;ask Anna
      """;

  private static App app;
  private final HttpVisitor visitor = new HttpVisitor(app);
  private final TableBringer bringer = new TableBringer(visitor);
  private final String draft = bringer.map("plants.csv", TABLE);

  @BeforeAll
  static void serve() {
    app = App.start(Settings.demoOnFreePort());
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  // Room for the next test: only so many drafts may wait.
  @AfterEach
  void drop() {
    visitor.post(draft + "/remove");
  }

  @Test
  void cellsStandBesideWhatWasReadOfThem() {
    Page page = visitor.get(draft + "/columns");
    assertEquals("trait.height", page.valueOf("about-1"));
    assertEquals("feet", page.valueOf("unit-1"));
    assertTrue(page.says("2 15-20 4.6 – 6.1 m"), page.text());
    assertTrue(page.says("3 tall not read “tall”"));
    assertTrue(page.says("Why: The header says so"));
    assertEquals("note", page.valueOf("about-4"));
    assertTrue(page.says("by the gate kept as a note, as it stands"));
  }

  @Test
  void readingsAreInTheVisitorsUnits() {
    visitor.post("/units", "units", "us", "back", "/import");
    assertTrue(visitor.get(draft + "/columns").says("2 15-20 15 – 20 ft"));
  }

  @Test
  void anotherUnitChangesTheReadings() {
    Page page = visitor.submit(draft + "/columns", "about-1", "trait.height", "detail-1", "value:height", "unit-1", "metres", "then", "again");
    assertTrue(page.says("2 15-20 15 – 20 m"), page.text());
  }

  @Test
  void anotherTopicOffersWhatItCanSay() {
    Page page = visitor.submit(draft + "/columns", "about-4", "trait.bloom", "then", "again");
    assertEquals("value:bloom", page.valueOf("detail-4"));
    assertTrue(page.html().contains("value=\"mark:bloom:4\""));
    assertTrue(page.says("2 by the gate not read"));
  }

  @Test
  void htmxGetsTheColumnsOnly() {
    Page part = visitor.postForFragment(draft + "/columns?page=1", "about-1", "note");
    assertEquals(200, part.status());
    assertTrue(part.html().stripLeading().startsWith("<div id=\"columns\""), part.html().substring(0, 200));
    assertTrue(part.says("15-20 kept as a note"));
    assertEquals("note", visitor.get(draft + "/columns").valueOf("about-1"));
  }

  @ParameterizedTest
  @CsvSource({"about-5, note", "about-99999, note", "about--1, note", "about-x, note", "about-1, trait.soul", "about-1, ''"})
  void tamperedColumnsAreRefusedAndChangeNothing(String field, String value) {
    assertEquals(422, visitor.post(draft + "/columns", "about-2", "note", field, value, "then", "again").status());
    assertEquals("trait.crown", visitor.get(draft + "/columns").valueOf("about-2"));
  }

  @Test
  void tamperedUnitsAndSeparatorsAreRefused() {
    assertEquals(422, visitor.post(draft + "/columns", "about-1", "trait.height", "unit-1", "cubits").status());
    assertEquals(422, visitor.post(draft + "/columns", "about-0", "common-names", "separator-0", "too long").status());
    // A meaning that belongs to another topic is no answer; the topic's own stays.
    Page page = visitor.submit(draft + "/columns", "about-1", "trait.height", "detail-1", "value:ph", "then", "again");
    assertEquals("value:height", page.valueOf("detail-1"));
  }

  @Test
  void withoutANameColumnNothingIsLookedThrough() {
    Page page = visitor.post(draft + "/columns", "about-0", "note", "source_kind", "own-experience", "source_title", "x", "then", "look");
    assertEquals(422, page.status());
    assertTrue(page.says("No column holds the names of the species."));
  }

  @Test
  void theSourceMustBeNamed() {
    Page page = visitor.post(draft + "/columns", "source_kind", "", "source_title", " ", "source_year", "12", "then", "look");
    assertEquals(422, page.status());
    assertEquals("Please choose what kind of source it is.", page.messageOf("source_kind"));
    assertFalse(page.messageOf("source_title").isEmpty());
    assertFalse(page.messageOf("source_year").isEmpty());
  }

  @Test
  void aColumnWhoseUnitCannotBeToldAsks() {
    String other = bringer.map("numbers.csv", "Botanical name;Height\nNewia plantis;15\nNewia altera;3\n");
    Page page = visitor.get(other + "/columns");
    assertEquals("not-known", page.valueOf("unit-1"));
    assertTrue(page.says("The unit of these columns is not known, and they stay out until you choose it: Height"));
    visitor.post(other + "/remove");
  }

  /** Headers of the agency's characteristics table: whether the fruit lasts is no harvest. */
  @Test
  void whatIsSaidOfFruitIsNotAlwaysAHarvest() {
    String other = bringer.map("fruit.csv", "Scientific Name,Fruit/Seed Persistence,fruit_seed_conspicuous\nMalus domestica,TRUE,FALSE\nRubus idaeus,FALSE,TRUE\n");
    Page page = visitor.get(other + "/columns");
    assertEquals("note", page.valueOf("about-1"));
    assertEquals("note", page.valueOf("about-2"));
    visitor.post(other + "/remove");
  }

  @Test
  void manyColumnsComeInPages() {
    StringBuilder header = new StringBuilder("Botanical name");
    StringBuilder row = new StringBuilder("Malus domestica");
    for (int i = 1; i < 75; i++) {
      header.append(";Remark ").append(i);
      row.append(";said ").append(i);
    }
    String other = bringer.map("wide.csv", header + "\n" + row + "\n");
    Page second = visitor.get(other + "/columns?page=2");
    assertTrue(second.says("Page 2 of 3"));
    assertTrue(second.says("AE Remark 30"));
    assertFalse(second.says("Remark 29"));
    assertEquals(other + "/columns?page=3", visitor.post(other + "/columns?page=2", "about-30", "ignored", "then", "3").location());
    assertEquals("ignored", visitor.get(other + "/columns?page=2").valueOf("about-30"));
    assertTrue(visitor.get(other + "/columns?page=99").says("Page 3 of 3"));
    visitor.post(other + "/remove");
  }

  @Test
  void aMappingIsKeptUsedForAnotherTableAndForgotten() {
    visitor.submit(draft + "/columns", "about-3", "ignored", "then", "again");
    assertTrue(visitor.submit(draft + "/mapping/keep", "mapping-name", "Yearly list").says("Kept as Yearly list."));
    String other = bringer.map("next.csv", TABLE);
    assertEquals("trait.light", visitor.get(other + "/columns").valueOf("about-3"));
    Page used = visitor.submit(other + "/mapping/use", "mapping", "Yearly list");
    assertEquals("ignored", used.valueOf("about-3"));
    assertTrue(visitor.submit(other + "/mapping/forget", "mapping", "Yearly list").says("Yearly list was forgotten."));
    assertEquals(422, visitor.post(other + "/mapping/use", "mapping", "Yearly list").status());
    visitor.post(other + "/remove");
  }

  @Test
  void aMappingNeedsAName() {
    assertFalse(visitor.post(draft + "/mapping/keep", "mapping-name", " ").messageOf("mapping-name").isEmpty());
    assertFalse(visitor.post(draft + "/mapping/keep", "mapping-name", "x".repeat(121)).messageOf("mapping-name").isEmpty());
  }

  @Test
  void aMappingGoesRoundAsAFile() {
    visitor.submit(draft + "/columns", "about-3", "ignored", "then", "again");
    Page file = visitor.get(draft + "/mapping.json");
    assertEquals("attachment; filename=\"mapping.json\"", file.headers().get("content-disposition"));
    String other = bringer.map("next.csv", TABLE);
    Page reply = visitor.postFile(other + "/mapping", "mapping.json", file.html().getBytes(StandardCharsets.UTF_8));
    assertEquals(303, reply.status());
    assertEquals("ignored", visitor.get(other + "/columns").valueOf("about-3"));
    assertEquals(file.html(), visitor.get(other + "/mapping.json").html());
    visitor.post(other + "/remove");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "no json", "{}", "[]", "{\"format\":\"guildwood-mapping-1\"}",
      "{\"format\":\"guildwood-mapping-1\",\"columns\":[{\"header\":\"A\",\"meaning\":\"soul\"}]}"})
  void aBadMappingFileIsRefusedInWords(String content) {
    Page page = visitor.postFile(draft + "/mapping", "mapping.json", content.getBytes(StandardCharsets.UTF_8));
    assertEquals(422, page.status());
    assertFalse(page.messageOf("file").isEmpty());
    assertEquals("trait.light", visitor.get(draft + "/columns").valueOf("about-3"));
  }
}
