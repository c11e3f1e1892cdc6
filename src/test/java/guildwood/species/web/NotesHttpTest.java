package guildwood.species.web;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.store.Database;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a table said that no trait takes stands with the species, line by line, as text. */
class NotesHttpTest {
  @TempDir private Path directory;

  @Test
  void notesAreShownWithTheirSource() {
    Settings settings = new Settings(false, directory, "127.0.0.1", 0, "");
    try (App app = App.start(settings)) {
      HttpVisitor owner = new HttpVisitor(app);
      String link = app.greeting().get(1);
      owner.submit(link.substring(link.indexOf("/setup/")), "name", "Owner", "password", "a long enough one", "again", "a long enough one");
      assertFalse(owner.get("/library/tilia-americana").says("no value takes"));
    }
    try (Database database = Database.open(directory)) {
      database.change(handle -> handle.execute("insert into species_note (species_id, text, source_id) values "
          + "('tilia-americana', 'Remarks: <b>by the gate</b>' || chr(10) || 'Bark: grey', 'own-experience')"));
    }
    try (App app = App.start(settings)) {
      HttpVisitor owner = new HttpVisitor(app);
      owner.submit("/sign-in", "name", "Owner", "password", "a long enough one", "back", "/");
      Page page = owner.get("/library/tilia-americana");
      assertTrue(page.says("Own experience: 2 notes"), page.text());
      assertTrue(page.first("<li>(Bark: grey)</li>").isPresent());
      assertFalse(page.first("(<b>by the gate)").isPresent(), "a note is text");
    }
  }
}
