package guildwood.importing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Looking a table through, deciding and mending, bringing it in, and undoing that. */
class ReviewHttpTest {
  private static final String TABLE = """
      Botanical name;Common name;Height (ft);Bloom;Lore
      Malus domestica;apple;90;April-May;
      Rubus idaeuss;raspberry;5;June;by the wall
      Inventia nova;made-up plant;tall;July;
      Inventia altera;;4;Smarch;=1+1
      ;;7;;
      """;

  private static App app;
  private final HttpVisitor visitor = new HttpVisitor(app);
  private final TableBringer bringer = new TableBringer(visitor);
  private String draft;

  @BeforeAll
  static void serve() {
    app = App.start(Settings.demoOnFreePort());
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  @BeforeEach
  void look() {
    draft = bringer.map("garden.csv", TABLE);
    bringer.look(draft);
  }

  // Only so many drafts may wait.
  @AfterEach
  void drop() {
    visitor.post(draft + "/remove");
  }

  private void undo(String run) {
    assertEquals(run + "/undo", visitor.post(run + "/undo").location());
    bringer.await(run + "/undo");
  }

  private Page section(String key) {
    return visitor.get(draft + "/review?section=" + key);
  }

  private String library() {
    return visitor.get("/library/species.csv").html();
  }

  @Test
  void whatWouldHappenIsToldAndNothingIsChanged() {
    String before = library();
    assertTrue(section("near").says("Rubus idaeuss row 3 It is Rubus idaeus"), section("near").text());
    assertTrue(section("unread").says("Row 4, column C: Height (ft)"), section("unread").text());
    assertTrue(section("unread").says("“tall”"));
    assertTrue(section("unread").says("Row 5, column D: Bloom"));
    assertTrue(section("unread").says("row 6"));
    assertTrue(section("conflicts").says("Malus domestica"), section("conflicts").text());
    assertTrue(section("conflicts").says("27.4 m"));
    assertTrue(section("new").says("Inventia nova"));
    assertTrue(section("known").says("Malus domestica"));
    assertTrue(section("notes").says("=1+1"));
    assertTrue(section("notes").says("by the wall"));
    assertEquals(before, library());
  }

  @Test
  void aReviewWaitsWhereItWasLeft() {
    assertEquals(draft + "/review", visitor.get(draft).location());
    assertTrue(visitor.get("/import").links().contains(draft));
    assertEquals(404, visitor.get(draft + "/review?section=nonsense").status());
    assertEquals(200, visitor.get(draft + "/review?section=new&page=999").status());
    assertEquals(200, visitor.get(draft + "/review?section=new&page=x").status());
  }

  @Test
  void aNameIsDecidedAndCountsAfterReckoningAnew() {
    Page after = visitor.submit(draft + "/names", "written-0", "Rubus idaeuss", "choice-0", "rubus-idaeus");
    assertTrue(after.says("You decided or mended something since this was reckoned."));
    assertTrue(after.first("value=\"rubus-idaeus\"[^>]*checked").isPresent(), "the choice is not shown");
    visitor.post(draft + "/review");
    Page anew = bringer.await(draft + "/review");
    assertFalse(anew.says("since this was reckoned"));
    assertTrue(section("near").says("There are none."));
    assertTrue(section("known").says("Rubus idaeus written: Rubus idaeuss"), section("known").text());
  }

  @ParameterizedTest
  @CsvSource({"Rubus idaeuss, no-such-species", "'', new", "Rubus idaeuss, ''"})
  void aChoiceThatIsNoneChangesNothing(String written, String choice) {
    Page after = visitor.submit(draft + "/names", "written-0", written, "choice-0", choice);
    assertTrue(after.says("That choice is not one of the page."));
    assertFalse(after.says("since this was reckoned"));
  }

  @Test
  void aCellIsMendedWhereItCanBeReadThen() {
    Page wrong = visitor.post(draft + "/cells?page=1", "row", "4", "column", "2", "text", "very tall");
    assertEquals(422, wrong.status());
    assertTrue(wrong.says("“very tall”"), wrong.text());
    assertTrue(wrong.html().contains("value=\"very tall\""), "what was typed is lost");
    Page right = visitor.submit(draft + "/cells?page=1", "row", "4", "column", "2", "text", "6 ft");
    assertTrue(right.says("will be read instead"));
    assertTrue(right.html().contains("value=\"6 ft\""));
    visitor.post(draft + "/review");
    bringer.await(draft + "/review");
    assertFalse(section("unread").says("Row 4"));
    assertTrue(section("new").says("1.8 m"));
  }

  @ParameterizedTest
  @CsvSource({"1, 2", "0, 2", "4, 99", "4, -1", "x, 2", "4, x", "99999999999, 2"})
  void aCellThatIsNoneOfTheTableIsNotFound(String row, String column) {
    assertEquals(404, visitor.post(draft + "/cells", "row", row, "column", column, "text", "6").status());
  }

  @Test
  void aRowWithoutANameGetsOneOrIsLeftOut() {
    visitor.submit(draft + "/cells", "row", "6", "column", "0", "text", "Inventia tertia");
    visitor.submit(draft + "/rows", "row", "5");
    visitor.post(draft + "/review");
    bringer.await(draft + "/review");
    assertTrue(section("new").says("Inventia tertia"));
    assertFalse(section("new").says("Inventia altera"));
    visitor.submit(draft + "/rows", "row", "5", "keep", "yes");
    visitor.post(draft + "/review");
    bringer.await(draft + "/review");
    assertTrue(section("new").says("Inventia altera"));
  }

  @Test
  void theRowsNotReadGoAwayAsAFileWithReasonsAndComeBack() {
    Page file = visitor.get(draft + "/unread.csv");
    assertEquals("attachment; filename=\"unread-rows.csv\"", file.headers().get("content-disposition"));
    String[] lines = file.html().split("\r\n");
    assertEquals("Botanical name,Common name,Height (ft),Bloom,Lore,Row in the first file,Why it stayed out", lines[0]);
    assertEquals(4, lines.length);
    assertTrue(lines[1].startsWith("Inventia nova,made-up plant,tall,July,,4,"), lines[1]);
    assertTrue(lines[2].startsWith("Inventia altera,,4,Smarch,'=1+1,5,"), lines[2]);
    assertTrue(lines[3].startsWith("\"\",,7,,,6,"), lines[3]);

    String again = bringer.map("unread-rows.csv", file.html().replace("tall", "6").replace("Smarch", "March"));
    assertEquals("ignored", visitor.get(again + "/columns").valueOf("about-5"));
    assertEquals("ignored", visitor.get(again + "/columns").valueOf("about-6"));
    bringer.look(again);
    assertTrue(visitor.get(again + "/review?section=new").says("1.8 m"));
    assertTrue(visitor.get(again + "/review?section=notes").says("=1+1"));
  }

  @Test
  void whoRulesIsChosenForTheWholeTable() {
    assertEquals(404, visitor.post(draft + "/rule", "rules", "nobody").status());
    Page after = visitor.submit(draft + "/rule?page=1", "rules", "import");
    assertTrue(after.first("value=\"import\"[^>]*checked").isPresent());
    String run = bringer.bring(draft);
    assertTrue(visitor.get("/library/malus-domestica").says("27.4 m"));
    assertTrue(library().lines().filter(l -> l.contains("malus-domestica,")).findFirst().orElseThrow().contains("27.432"));
    undo(run);
  }

  @Test
  void theTableIsBroughtInAsOneStepAndUndone() {
    String before = library();
    String run = bringer.bring(draft);
    assertTrue(run.matches("/imports/\\d+"), run);
    Page done = visitor.get(run);
    assertTrue(done.says("garden.csv"));
    assertEquals(404, visitor.get(draft).status());
    assertTrue(visitor.get("/library/inventia-nova").says("Inventia nova"));
    assertTrue(visitor.get("/library/inventia-nova").says("My notebook"));
    assertFalse(before.equals(library()));

    Page ask = visitor.get(run + "/undo");
    assertTrue(ask.says("This takes out what the import of"));
    undo(run);
    assertTrue(visitor.get(run).says("Undone on"));
    assertEquals(before, library());
    assertEquals(run, visitor.get(run + "/undo").location());
    assertEquals(run, visitor.post(run + "/undo").location());
    assertTrue(visitor.get("/import").says("undone"));
  }

  @Test
  void whatWasEditedSinceStaysAndIsNamed() {
    // Plants of its own, for one of them stays.
    visitor.post(draft + "/remove");
    draft = bringer.map("stays.csv", TABLE.replace("Inventia", "Manentia"));
    bringer.look(draft);
    String run = bringer.bring(draft);
    visitor.submit("/library/manentia-nova/names", "scientific_name", "Manentia nova", "common_names", "renamed plant", "family", "", "synonyms", "");
    Page ask = visitor.get(run + "/undo");
    assertTrue(ask.says("Stays"), ask.text());
    assertTrue(ask.says("renamed plant"));
    undo(run);
    assertEquals(200, visitor.get("/library/manentia-nova").status());
    assertEquals(404, visitor.get("/library/manentia-altera").status());
  }

  @Test
  void nothingIsBroughtInThatWasNotLookedThrough() {
    String other = bringer.map("other.csv", TABLE);
    assertEquals(404, visitor.post(other + "/bring").status());
    assertEquals(other + "/columns", visitor.get(other + "/review").location());
    // What is mapped otherwise must be looked through again.
    visitor.submit(draft + "/columns", "about-4", "ignored", "then", "again");
    assertEquals(404, visitor.post(draft + "/bring").status());
  }
}
