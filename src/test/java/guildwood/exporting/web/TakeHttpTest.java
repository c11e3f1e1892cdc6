package guildwood.exporting.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.web.SharedDemo;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be taken away, as pages and files. */
class TakeHttpTest {
  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());

  @ParameterizedTest
  @CsvSource({
    "/take/species.csv, text/csv, id",
    "/take/species.xlsx, application/vnd.openxmlformats-officedocument.spreadsheetml.sheet, PK",
    "/take/species-library.zip, application/zip, PK"
  })
  void everyFileOfThePageIsThere(String path, String type, String start) {
    assertTrue(visitor.get("/take").links().contains(path));
    Page file = visitor.get(path);
    assertEquals(200, file.status());
    assertTrue(file.headers().get("content-type").startsWith(type), file.headers().toString());
    assertEquals("attachment; filename=\"" + path.substring("/take/".length()) + "\"", file.headers().get("content-disposition"));
    assertTrue(file.html().startsWith(start));
  }

  @Test
  void everyLinkOfThePageLeadsSomewhere() {
    List<String> links = visitor.get("/take").links().stream().filter(l -> l.startsWith("/")).distinct().toList();
    assertTrue(links.size() > 5, links.toString());
    for (String link : links) {
      assertEquals(200, visitor.get(link).status(), link);
    }
  }

  @Test
  void theLibraryPageTakesWhatItShows() {
    String address = "?layer=shrub&function=nitrogen-fixer&sort=tallest-first";
    Page library = visitor.get("/library" + address);
    List<String> links = library.links().stream().filter(l -> l.startsWith("/take/") || l.endsWith(".csv")).toList();
    assertEquals(List.of("/take/species.csv" + address, "/take/species.xlsx" + address, "/take/species-library.zip" + address,
        "/library/species.csv", "/take/species.xlsx", "/take/species-library.zip"), links);
    String shown = library.first("(\\d+) of \\d+ species").orElseThrow();
    List<String> rows = visitor.get(links.get(0)).html().lines().toList();
    assertEquals(Integer.parseInt(shown), rows.size() - 1);
    assertTrue(rows.get(0).startsWith("id,scientific_name,common_names,family,synonyms,light,"));
    assertFalse(visitor.get("/library").says("What is shown here"), "that would be the whole library too");
    assertTrue(visitor.getFragment("/library" + address).links().contains("/take/species.xlsx" + address), "the links follow every change");
  }

  @Test
  void aBedBringsItsVerdicts() {
    String bed = visitor.get("/library").first("<option value=\"(\\d+)\"[^>]*>[^<]*Ditch corner").orElseThrow();
    List<String> rows = visitor.get("/take/species.csv?verdict=fits&bed=" + bed).html().lines().toList();
    assertTrue(rows.get(0).startsWith("id,scientific_name,common_names,family,synonyms,verdict,fit,limiting_axis,light,"), rows.get(0));
    assertTrue(rows.size() > 5 && rows.stream().skip(1).allMatch(r -> r.contains(",fits,")));
  }

  /** A file cannot say that it holds more than was asked for; the page can. */
  @Test
  void whatCannotBeReadLeadsToThePageThatSaysSo() {
    Page reply = visitor.get("/take/species.xlsx?layer=bush");
    assertEquals(303, reply.status());
    assertTrue(visitor.get(reply.location()).says("“bush” is not a choice"));
  }

  @Test
  void nobodyTakesAnythingWithoutSigningIn(@TempDir Path data) {
    Settings settings = new Settings(false, data, "127.0.0.1", 0, "");
    try (App app = App.start(settings)) {
      HttpVisitor stranger = new HttpVisitor(app);
      for (String path : List.of("/take", "/take/species.csv", "/take/species.xlsx", "/take/species-library.zip")) {
        assertEquals("303 /setup", stranger.get(path).status() + " " + stranger.get(path).location(), path);
      }
    }
  }
}
