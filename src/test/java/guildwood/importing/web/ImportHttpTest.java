package guildwood.importing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where an import begins: what is taken, what is refused and in which words, and the sheet with its headers. */
class ImportHttpTest {
  private static App app;
  private final HttpVisitor visitor = new HttpVisitor(app);
  private final TableBringer bringer = new TableBringer(visitor);

  @BeforeAll
  static void serve() {
    app = App.start(Settings.demoOnFreePort());
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  private Page refused(String name, byte[] content) {
    Page page = visitor.postFile("/import", name, content);
    assertEquals(422, page.status());
    return page;
  }

  @Test
  void theLibraryLeadsHere() {
    assertTrue(visitor.get("/library").links().contains("/import"));
    assertTrue(visitor.get("/import").says("Nothing was brought in yet."));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "list.pdf | %PDF-1.7 and more | This is a PDF.",
      "list.csv | <!DOCTYPE html><html><table></table></html> | This is a web page",
      "mapping.csv | {\"format\": \"something\"} | This is a JSON file"})
  void whatIsNoTableIsRefusedInWords(String name, String content, String words) {
    String message = refused(name, content.getBytes(StandardCharsets.UTF_8)).messageOf("file");
    assertTrue(message.startsWith(words), message);
  }

  @Test
  void nothingAndAnEmptyFileAreRefused() {
    assertEquals("Choose a file first.", refused("", new byte[0]).messageOf("file"));
    assertEquals("“plants.csv” is empty: there is nothing in it.", refused("plants.csv", new byte[0]).messageOf("file"));
    assertEquals("Choose a file first.", visitor.post("/import").messageOf("file"));
  }

  @Test
  void aFileBeyondTheLimitIsRefusedInWordsAndTheNextOneIsTaken() {
    byte[] large = new byte[(50 << 20) + 1];
    java.util.Arrays.fill(large, (byte) 'x');
    assertTrue(refused("large.csv", large).messageOf("file").startsWith("The file is larger than"));
    assertTrue(bringer.send("small.csv", "Name\nMalus domestica\n").startsWith("/import/"));
  }

  @Test
  void anotherSiteCannotSendAFile() {
    visitor.get("/import");
    assertEquals(403, visitor.postFileWithoutToken("/import", "a.csv", new byte[] {'a'}).status());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/import/999999", "/import/abc", "/import/999999/sheet", "/import/999999/columns", "/import/999999/review",
      "/import/999999/bring", "/import/999999/unread.csv", "/import/999999/mapping.json", "/imports/999999", "/imports/999999/undo"})
  void whatIsNotThereIsNotFound(String path) {
    assertEquals(404, visitor.get(path).status());
  }

  @ParameterizedTest
  @ValueSource(strings = {"sheet", "columns", "review", "review/stop", "names", "cells", "rows", "rule", "bring", "remove", "mapping/use"})
  void nothingCanBeChangedOfADraftThatIsNotThere(String what) {
    assertEquals(404, visitor.post("/import/999999/" + what, "row", "1").status());
  }

  @Test
  void theHeadersAreFoundBelowATitleAndCanBeSetByHand() {
    String draft = bringer.send("garden.csv", "My garden;;\n\nBotanical name;Common name;Height\nMalus domestica;apple;5 m\n");
    assertEquals(draft + "/sheet", visitor.get(draft).location());
    Page sheet = visitor.get(draft + "/sheet");
    assertEquals("3", sheet.valueOf("first"));
    assertEquals("3", sheet.valueOf("last"));
    assertTrue(sheet.says("3 header Botanical name Common name Height"));
    Page columns = visitor.submit(draft + "/sheet", "sheet", "garden.csv", "first", "4", "last", "4");
    assertTrue(columns.says("Malus domestica"));
    assertTrue(columns.says("A Malus domestica About"), "the header was to be row 4");
    assertEquals("4", visitor.get(draft + "/sheet").valueOf("first"));
  }

  @Test
  void wrongRowsAndSheetsAreRefused() {
    String draft = bringer.send("garden.csv", "Botanical name;Height\nMalus domestica;5 m\n");
    assertFalse(visitor.post(draft + "/sheet", "sheet", "garden.csv", "first", "x", "last", "1").messageOf("first").isEmpty());
    assertFalse(visitor.post(draft + "/sheet", "sheet", "garden.csv", "first", "0", "last", "1").messageOf("first").isEmpty());
    assertEquals(422, visitor.post(draft + "/sheet", "sheet", "garden.csv", "first", "77", "last", "78").status());
    assertEquals(422, visitor.post(draft + "/sheet", "sheet", "another", "first", "1", "last", "1").status());
    assertEquals(303, visitor.post(draft + "/sheet", "sheet", "garden.csv", "first", "1", "last", "1").status());
  }

  @Test
  void aDraftIsListedAndCanBeDropped() {
    String draft = bringer.send("drop <me>.csv", "Name\nMalus domestica\n");
    assertTrue(visitor.get("/import").says("drop <me>.csv"));
    Page after = visitor.submit(draft + "/remove");
    assertTrue(after.says("drop <me>.csv was dropped."));
    assertFalse(after.links().contains(draft));
    assertEquals(404, visitor.get(draft).status());
  }

  @Test
  void noMoreFilesWaitThanThereIsRoomFor() {
    App full = App.start(Settings.demoOnFreePort());
    try {
      TableBringer other = new TableBringer(new HttpVisitor(full));
      for (int i = 0; i < 20; i++) {
        other.send("list-" + i + ".csv", "Name\nMalus domestica\n");
      }
      Page page = other.visitor().postFile("/import", "more.csv", "Name\nMalus domestica\n".getBytes(StandardCharsets.UTF_8));
      assertEquals("There are 20 files that wait already. Finish or drop one first.", page.messageOf("file"));
    } finally {
      full.close();
    }
  }

  @Test
  void aTableWithoutHeadersLosesNoRow() {
    String draft = bringer.map("plain.csv", "Quercus robur,English oak,25 m,zone 4\nFagus sylvatica,beech,30 m,zone 5\nBetula pendula,birch,20 m,zone 2\n");
    assertEquals("0", visitor.get(draft + "/sheet").valueOf("first"));
    bringer.look(draft);
    bringer.bring(draft);
    for (String species : List.of("quercus-robur", "fagus-sylvatica", "betula-pendula")) {
      assertEquals(200, visitor.get("/library/" + species).status(), species);
    }
  }

  @Test
  void aTurnedTableSaysSo() {
    String draft = bringer.send("turned.csv", "Plant,Cornus kousa,Prunus maritima\nHeight,20 ft,6 ft\nZone,5-8,3-7\nSun,part shade,full sun\n");
    Page sheet = visitor.get(draft + "/sheet");
    Page reply = visitor.post(draft + "/sheet", "sheet", sheet.valueOf("sheet"), "first", "", "last", "");
    assertEquals(422, reply.status());
    assertTrue(reply.says("the species seem to stand beside one another"), reply.messages().toString());
  }
}
