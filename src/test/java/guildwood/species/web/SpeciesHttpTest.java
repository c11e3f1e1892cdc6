package guildwood.species.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One species: its page, its names, its stock, its way into the bin and back. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SpeciesHttpTest {
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
  void everySpeciesOfTheSeedHasAPage() {
    HttpVisitor other = new HttpVisitor(app);
    for (String group : new String[] {"trees", "shrubs", "climbers", "herbs", "ground-covers", "roots"}) {
      for (String id : Seed.ids(group)) {
        assertEquals(200, other.get("/library/" + id).status(), id);
      }
    }
  }

  @Test
  void showsValueAsReckonedAndAsWrittenWithItsSource() {
    // USDA NRCS PLANTS characteristics: Tilia americana, height at maturity 100 feet, minimum temperature -46 F.
    Page page = visitor.get("/library/tilia-americana");
    assertTrue(page.says("American basswood"));
    assertTrue(page.says("30.5 m") && page.says("as written: 100 ft"));
    assertTrue(page.says("zone 2a (−43.3 °C)") && page.says("as written: -46 F"));
    assertTrue(page.says("USDA NRCS: PLANTS Database: characteristics"));
    assertTrue(page.says("full sun from 6 h, part shade 3-6 h, full shade under 3 h"));
    assertTrue(page.links().contains("/sources/usda-plants"));
  }

  @Test
  void numbersComeInTheVisitorsUnits() {
    HttpVisitor american = new HttpVisitor(app);
    american.submit("/units", "units", "us", "back", "/sources");
    Page page = american.get("/library/tilia-americana");
    assertTrue(page.says("100 ft") && page.says("zone 2a (−46 °F)"));
    assertFalse(page.says("30.5 m"));
  }

  @Test
  void cautionsStandOnTopAndBesideWhatIsEaten() {
    Page page = visitor.get("/library/sambucus-canadensis");
    String text = page.text();
    assertTrue(page.says("Take care") && page.says("Only cooked"));
    assertTrue(page.says("ask a licensed practitioner"));
    assertTrue(text.indexOf("Take care") < text.indexOf("Where it grows"));
    assertTrue(text.indexOf("Before anybody eats it:", text.indexOf("Bloom, harvest and uses")) > 0);
    // Where none is kept the page says that this is no all-clear.
    Page none = visitor.submit("/library/new", "scientific_name", "Malus exemplum");
    visitor.submit(path(none) + "/values/new", "trait", "use", "value", "food", "source", "own-experience");
    assertTrue(visitor.get(path(none)).says("No caution is kept for this species; that does not mean that there is none."));
  }

  @Test
  void aLegalCautionNamesTheAuthorityAndTheDayItWasChecked() {
    // Illinois Exotic Weed Act, 525 ILCS 10: Elaeagnus umbellata; checked on 2026-11-25, confirm with the authority.
    Page page = visitor.submit("/library/new", "scientific_name", "Elaeagnus exemplum");
    String id = path(page);
    visitor.submit(id + "/values/new", "trait", "caution", "caution_kind", "listed", "caution_detail", "US-IL", "value",
        "Illinois Exotic Weed Act: no planting without a permit.", "source", "il-exotic-weed-act");
    assertTrue(visitor.get(id).says("On a legal list: US-IL"));
    assertTrue(visitor.get(id).says("Checked on 2026-11-25; confirm with the authority: State of Illinois."));
    visitor.submit(id + "/values/new", "trait", "caution", "caution_kind", "permit", "caution_detail", "DE", "value", "Ask first.",
        "source", "own-experience");
    assertTrue(visitor.get(id).says("Confirm with the authority: Own experience."));
  }

  @Test
  void addsASpeciesByItsNames() {
    Page page = visitor.submit("/library/new", "scientific_name", "Mespilus x exemplum", "common_names", "medlar; our medlar",
        "family", "Rosaceae", "synonyms", "Crataegus exemplum");
    assertTrue(page.says("medlar is in the library."));
    assertTrue(page.says("Mespilus × exemplum") && page.says("Also called our medlar") && page.says("Crataegus exemplum"));
    Page renamed = visitor.submit("/library/mespilus-x-exemplum/names", "scientific_name", "Mespilus exemplaris", "common_names", "medlar");
    assertTrue(renamed.says("Mespilus exemplaris") && !renamed.says("our medlar"));
    assertEquals("Mespilus exemplaris", visitor.get("/library/mespilus-x-exemplum/names").valueOf("scientific_name"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/library/new", "/library/tilia-americana/names"})
  void refusesNamesThatAreNoneAndKeepsTheRest(String form) {
    Page refused = visitor.post(form, "scientific_name", "12 <b>", "common_names", "x".repeat(501), "family", "4", "synonyms", "a\u0007");
    assertEquals(422, refused.status());
    assertTrue(refused.says("Not saved yet."));
    assertEquals("12 <b>", refused.valueOf("scientific_name"));
    assertEquals("“12 <b>” is not a scientific name: it begins with the genus and a capital letter, for example Malus domestica.",
        refused.messageOf("scientific_name"));
    assertEquals("Too long: at most 500 characters.", refused.messageOf("common_names"));
    assertEquals("x".repeat(501), refused.valueOf("common_names"));
    assertEquals("“4” is not the name of a family.", refused.messageOf("family"));
    assertTrue(refused.messageOf("synonyms").startsWith("Contains characters"));
    assertFalse(refused.html().contains("12 <b>"), "what was typed is escaped");
    assertTrue(visitor.get("/library/tilia-americana").says("American basswood"));
  }

  @Test
  void refusesANameThatIsThereAlready() {
    assertEquals("Tilia americana is in the library already.",
        visitor.post("/library/new", "scientific_name", "tilia americana".replace("t", "T")).messageOf("scientific_name"));
    assertEquals(422, visitor.post("/library/corylus-americana/names", "scientific_name", "Tilia americana").status());
  }

  @Test
  void keepsStockAndPrice() {
    Page page = visitor.submit("/library/corylus-americana/stock", "plants", "12", "price", "4.50");
    assertEquals("12", page.valueOf("plants"));
    assertEquals("4.50", page.valueOf("price"));
    Page emptied = visitor.submit("/library/corylus-americana/stock", "plants", "", "price", "");
    assertEquals("", emptied.valueOf("plants") + emptied.valueOf("price"));
  }

  @ParameterizedTest
  @CsvSource({"many, 4, plants", "1.5, 4, plants", "-1, 4, plants", "100001, 4, plants", "1, cheap, price", "1, -1, price",
      "1, 1.999, price", "1, 99999999999, price"})
  void refusesStockThatIsNonsense(String plants, String price, String wrong) {
    visitor.submit("/library/asimina-triloba/stock", "plants", "2", "price", "9");
    Page refused = visitor.post("/library/asimina-triloba/stock", "plants", plants, "price", price);
    assertEquals(422, refused.status());
    assertFalse(refused.messageOf(wrong).isEmpty());
    assertEquals(plants, refused.valueOf("plants"));
    assertEquals(price, refused.valueOf("price"));
    assertEquals("2", visitor.get("/library/asimina-triloba").valueOf("plants"));
  }

  @Test
  void goesIntoTheBinAndComesBack() {
    Page page = visitor.submit("/library/new", "scientific_name", "Pyrus exemplum");
    String id = path(page);
    Page binned = visitor.submit(id + "/remove");
    assertTrue(binned.says("This species lies in the bin"));
    assertTrue(visitor.get("/bin").says("Pyrus exemplum"));
    assertEquals(404, visitor.get(id + "/names").status());
    assertEquals(404, visitor.post(id + "/stock", "plants", "1").status());
    assertEquals(404, visitor.post(id + "/remove").status());
    assertEquals("Pyrus exemplum lies in the bin; restore it there.",
        visitor.post("/library/new", "scientific_name", "Pyrus exemplum").messageOf("scientific_name"));
    assertFalse(visitor.submit(id + "/restore").says("This species lies in the bin"));
    assertFalse(visitor.get("/bin").says("Pyrus exemplum"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/library/nobody", "/library/nobody/names", "/library/%3Cscript%3E", "/library/nobody/values/new",
      "/library/tilia-americana/values/999999999", "/library/tilia-americana/values/x", "/library/tilia-americana/values/99999999999999999999",
      "/library/tilia-americana/values/new?trait=smell", "/sources/nobody", "/sources/nobody/edit"})
  void answersWhatIsNotThereWithAPlainPage(String path) {
    Page page = visitor.get(path);
    assertEquals(404, page.status());
    assertTrue(page.says("Nothing here"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/library/new", "/library/tilia-americana/remove", "/library/tilia-americana/stock",
      "/library/tilia-americana/names", "/library/tilia-americana/values/new", "/sources/new"})
  void changesNeedTheTokenOfOurOwnForms(String path) {
    assertEquals(403, visitor.postWithoutToken(path, "scientific_name", "Malus aliena").status());
  }

  private static String path(Page page) {
    return page.first("href=\"(/library/[^\"]*)/names\"").orElseThrow();
  }
}
