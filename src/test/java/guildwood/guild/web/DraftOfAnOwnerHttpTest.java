package guildwood.guild.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.Settings;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where people have accounts, a draft belongs to its owner and not to a browser. */
class DraftOfAnOwnerHttpTest {
  private static final String PASSWORD = "leaf mould and ash";

  @TempDir
  private Path directory;

  @Test
  void aDraftBegunAtTheDeskGoesOnInTheBed() {
    try (App app = App.start(new Settings(false, directory, "127.0.0.1", 0, ""))) {
      HttpVisitor desk = new HttpVisitor(app);
      String greeting = app.greeting().get(1);
      String link = greeting.substring(greeting.indexOf("/setup/"));
      desk.get(link);
      desk.submit(link, "name", "Wren", "password", PASSWORD, "again", PASSWORD);
      TestBed bed = TestBed.laidOut(desk, "South strip");
      desk.submit(bed.path() + "/guild/edit", "name", "x", "add", "asparagus-officinalis", "addCount", "4", "do", "compute");
      HttpVisitor phone = new HttpVisitor(app);
      assertEquals(303, phone.get(bed.path() + "/guild/edit").status(), "nobody is signed in there yet");
      phone.submit("/sign-in", "name", "Wren", "password", PASSWORD);
      assertEquals(Map.of("asparagus-officinalis", "4"), TestBed.counts(phone.get(bed.path() + "/guild/edit")));
    }
  }
}
