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
import org.junit.jupiter.params.provider.ValueSource;

/** The sources, their counts and their values. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SourceHttpTest {
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
  void listsSourcesWithCountsAndKinds() {
    Page page = visitor.get("/sources");
    assertTrue(page.says("USDA NRCS: PLANTS Database: characteristics") && page.says("agency table") && page.says("% of all"));
    int values = Integer.parseInt(page.first("(?s)href=\"/sources/usda-plants\".*?data-label=\"Values\">(\\d+)<").orElseThrow());
    Page source = visitor.get("/sources/usda-plants");
    assertTrue(source.says("Values " + values), "the page of the source counts the same");
    int pages = (values + 99) / 100;
    assertTrue(source.says("Page 1 of " + pages));
    Page last = visitor.get("/sources/usda-plants?page=" + pages);
    assertEquals(values - 100 * (pages - 1), last.html().split("<th scope=\"row\">", -1).length - 1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "x", "999999", "99999999999"})
  void aPageNumberThatIsNonsenseLeadsToAPageThatExists(String page) {
    assertEquals(200, visitor.get("/sources/usda-plants?page=" + page).status());
  }

  @Test
  void addsAndEditsASource() {
    Page added = visitor.submit("/sources/new", "source_kind", "publication", "source_author", "A. Grower", "source_title", "Our <plums>",
        "source_year", "1999", "source_locator", "page 3");
    assertTrue(added.says("A. Grower: Our <plums> (1999)") && added.says("No value of a species in use comes from it."));
    Page edited = visitor.submit("/sources/a-grower-our-plums/edit", "source_kind", "hearsay", "source_author", "", "source_title", "Our pears",
        "source_year", "", "source_locator", "");
    assertTrue(edited.says("Our pears") && edited.says("hearsay") && !edited.says("1999"));
  }

  @Test
  void refusesASourceThatIsNonsense() {
    for (String form : new String[] {"/sources/new", "/sources/usda-plants/edit"}) {
      Page refused = visitor.post(form, "source_kind", "", "source_author", "a\tb", "source_title", "t".repeat(501), "source_year", "12",
          "source_locator", "l".repeat(301));
      assertEquals(422, refused.status());
      for (String field : new String[] {"source_kind", "source_author", "source_title", "source_year", "source_locator"}) {
        assertFalse(refused.messageOf(field).isEmpty(), field);
      }
      assertEquals("t".repeat(501), refused.valueOf("source_title"));
      assertEquals("12", refused.valueOf("source_year"));
    }
    assertTrue(visitor.get("/sources/usda-plants").says("PLANTS Database"));
  }
}
