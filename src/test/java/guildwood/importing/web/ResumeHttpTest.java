package guildwood.importing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An import that is left and gone on with after the program was started anew; and that only the owner can do it. */
class ResumeHttpTest {
  private static final String PASSWORD = "leaf mould and ash";

  @TempDir
  private Path directory;

  private App start() {
    return App.start(new Settings(false, directory, "127.0.0.1", 0, ""));
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(directory.resolve("imports"))) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }

  @Test
  void theReviewAndItsDecisionsOutliveTheProgram() throws IOException {
    String draft;
    try (App app = start()) {
      HttpVisitor owner = new HttpVisitor(app);
      String link = app.greeting().get(1).replaceFirst(".*(?=/setup/)", "");
      owner.get(link);
      owner.submit(link, "name", "Wren", "password", PASSWORD, "again", PASSWORD);
      TableBringer bringer = new TableBringer(owner);
      draft = bringer.map("garden.csv", "Botanical name;Height\nInventia nova;5 m\nInventia altera;tall\n");
      bringer.look(draft);
      owner.submit(draft + "/cells", "row", "3", "column", "1", "text", "6 m");
      strangersAreTurnedAway(new HttpVisitor(app), draft);
      Files.writeString(directory.resolve("imports").resolve("of-nobody.table"), "left by a program that was killed");
    }
    try (App app = start()) {
      assertEquals(2, files().size(), files().toString());
      HttpVisitor owner = new HttpVisitor(app);
      owner.get("/sign-in");
      owner.submit("/sign-in", "name", "Wren", "password", PASSWORD);
      assertEquals(draft + "/review", owner.get(draft).location());
      Page unread = owner.get(draft + "/review?section=unread");
      assertTrue(unread.says("will be read instead"), unread.text());
      assertTrue(unread.says("since this was reckoned"));
      String run = new TableBringer(owner).bring(draft);
      assertTrue(owner.get("/library/inventia-altera").says("6 m"));
      assertTrue(owner.get(run).says("Brought in on"));
      assertEquals(List.of(), files());
    }
  }

  private static void strangersAreTurnedAway(HttpVisitor stranger, String draft) {
    byte[] table = "Name\nMalus domestica\n".getBytes(StandardCharsets.UTF_8);
    assertTrue(stranger.get("/import").location().startsWith("/sign-in"));
    assertEquals(403, stranger.postFile("/import", "a.csv", table).status());
    assertTrue(stranger.get(draft + "/review").location().startsWith("/sign-in"));
    assertTrue(stranger.get(draft + "/unread.csv").location().startsWith("/sign-in"));
    assertEquals(403, stranger.post(draft + "/bring").status());
  }
}
