package guildwood.species.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.species.SpeciesLibrary;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A library kept on disk: filled once, closed to strangers, and honest about values that cannot be read. */
class UnreadHttpTest {
  @TempDir private Path directory;

  @Test
  void keptValuesThatCannotBeReadAreShownAndCanBePutRight() {
    int values;
    try (App app = App.start(settings())) {
      HttpVisitor owner = owner(app);
      assertEquals(303, new HttpVisitor(app).get("/library/tilia-americana").status(), "strangers are sent to sign in");
      assertEquals(403, new HttpVisitor(app).post("/library/new", "scientific_name", "Malus aliena").status());
      assertFalse(owner.get("/library/tilia-americana").says("Values that cannot be read"));
    }
    try (Database database = Database.open(directory)) {
      database.change(handle -> handle.execute("insert into statement (species_id, trait, item, entered, source_id, note) values "
          + "('tilia-americana', 'height', '', 'as tall as a house', 'own-experience', ''), "
          + "('tilia-americana', 'smell', '', 'sweet', 'own-experience', '')"));
      values = count(new SqlSpeciesRecords(database).library());
    }
    try (App app = App.start(settings())) {
      HttpVisitor owner = signIn(app);
      Page page = owner.get("/library/tilia-americana");
      assertTrue(page.says("Values that cannot be read") && page.says("“ as tall as a house ”") && page.says("smell"), page.text());
      assertTrue(owner.get("/sources").says("cannot be read: 2"));
      String mend = page.first("href=\"([^\"]*/values/\\d+)\">Put it right").orElseThrow();
      assertEquals("as tall as a house", owner.get(mend).valueOf("value"));
      Page mended = owner.submit(mend, "trait", "height", "value", "20 m", "source", "own-experience");
      assertTrue(mended.says("20 m"));
      String remove = mended.first("action=\"([^\"]*/values/\\d+/remove)\">\\s*<input[^>]*>\\s*<button[^>]*Remove smell").orElseThrow();
      assertFalse(owner.submit(remove).says("Values that cannot be read"));
      assertTrue(owner.get("/bin").says("smell"));
    }
    try (Database database = Database.open(directory)) {
      assertEquals(values + 1, count(new SqlSpeciesRecords(database).library()), "the seed was not loaded again");
    }
  }

  private static int count(SpeciesLibrary library) {
    return library.species().stream().mapToInt(s -> s.statements().size()).sum();
  }

  private Settings settings() {
    return new Settings(false, directory, "127.0.0.1", 0, "");
  }

  private static HttpVisitor owner(App app) {
    HttpVisitor visitor = new HttpVisitor(app);
    String link = app.greeting().get(1);
    visitor.submit(link.substring(link.indexOf("/setup/")), "name", "Owner", "password", "a long enough one", "again", "a long enough one");
    return visitor;
  }

  private static HttpVisitor signIn(App app) {
    HttpVisitor visitor = new HttpVisitor(app);
    visitor.submit("/sign-in", "name", "Owner", "password", "a long enough one", "back", "/");
    return visitor;
  }
}
