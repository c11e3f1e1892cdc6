package guildwood.bed.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first page and the list of sites, from nothing to a first bed, in a data directory of its own. */
class HomeHttpTest {
  @Test
  void leadsFromNothingToAFirstBed(@TempDir Path data) {
    try (App app = App.start(new Settings(false, data, "127.0.0.1", 0, ""))) {
      HttpVisitor visitor = new HttpVisitor(app);
      assertEquals("/setup", visitor.get("/").location());
      String setup = app.greeting().get(1).replaceFirst(".*(/setup/.*)", "$1");
      visitor.get(setup);
      Page empty = visitor.submit(setup, "name", "Ada", "password", "several long words", "again", "several long words");
      assertTrue(empty.says("Your ground"));
      assertTrue(empty.links().contains("/sites/new"));
      assertTrue(visitor.get("/sites").says("No site yet"));

      String site = visitor.post("/sites/new", "name", "Orchard edge").location();
      assertTrue(visitor.get("/").says("Now lay out its first bed."));
      assertTrue(visitor.get("/").links().contains(site + "/beds/new"));
      assertTrue(visitor.get("/sites").says("No beds yet."));

      visitor.post(site + "/beds/new", "name", "South strip", "area", "12");
      assertTrue(visitor.get("/").says("South strip 12 m²"));
      assertTrue(visitor.get("/sites").says("South strip 12 m²"));
    }
    try (App again = App.start(new Settings(false, data, "127.0.0.1", 0, ""))) {
      HttpVisitor stranger = new HttpVisitor(again);
      for (String path : new String[] {"/", "/sites", "/sites/new", "/sites/1", "/beds/1", "/beds/1/edit", "/sites/1/remove"}) {
        assertTrue(stranger.get(path).location().startsWith("/sign-in"), path);
      }
      assertEquals(403, stranger.post("/sites/1/remove").status());
      assertEquals(403, stranger.post("/beds/1/remove").status());
    }
  }
}
