package guildwood.importing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.kernel.Source;
import guildwood.species.Holding;
import guildwood.species.LibraryExtract;
import guildwood.species.Species;
import guildwood.species.SpeciesNote;
import guildwood.species.WrittenStatement;
import guildwood.species.exchange.DataPackageWriter;
import guildwood.web.Messages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A data package through the pages: seen before it is brought, brought as one step, undone as one. */
class PackageHttpTest {
  private static App app;
  private final HttpVisitor visitor = new HttpVisitor(app);

  @BeforeAll
  static void serve() {
    app = App.start(Settings.demoOnFreePort());
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  @Test
  void aNeighboursLibraryIsSeenBroughtAndTakenOutAgain() throws IOException {
    String before = visitor.get("/take/species.csv").html();
    Page sent = visitor.postFile("/import", "neighbour.zip", neighbour());
    Page begun = visitor.get(sent.location());
    Page seen = visitor.get(begun.location());
    assertTrue(begun.location().endsWith("/package"), begun.location());
    assertTrue(seen.says("New species 1") && seen.says("Values added 2") && seen.says("Two opinions 1"), seen.text());
    assertEquals(before, visitor.get("/take/species.csv").html(), "looking changes nothing");

    Page brought = visitor.submit(begun.location());
    assertTrue(brought.says("The library is brought in.") && brought.says("New species 1"), brought.text());
    assertTrue(visitor.get("/library/rosa-vicina").says("over the fence"));
    String run = brought.first("href=\"(/imports/\\d+)/undo\"").orElseThrow();
    visitor.post(run + "/undo");
    for (int i = 0; i < 100 && !visitor.get(run).says("undone"); i++) {
      visitor.get(run + "/undo");
    }
    assertEquals(404, visitor.get("/library/rosa-vicina").status());
    assertEquals(before, visitor.get("/take/species.csv").html());
  }

  @Test
  void ofALibraryOfOnesOwnNothingIsNew() {
    Page seen = visitor.get(visitor.get(visitor.postFile("/import", "own.zip", visitor.getBytes("/take/species-library.zip")).location()).location());
    assertTrue(seen.says("Values known already") && !seen.says("New species") && !seen.says("Values added"), seen.text());
  }

  @Test
  void aSpoiltPackageIsRefusedWithEveryPlace() throws IOException {
    byte[] spoilt = new String(neighbour(), StandardCharsets.ISO_8859_1).replace("99 ft", "99 fx").getBytes(StandardCharsets.ISO_8859_1);
    Page begun = visitor.get(visitor.postFile("/import", "spoilt.zip", spoilt).location());
    Page seen = visitor.get(begun.location());
    assertEquals(422, seen.status());
    assertTrue(seen.says("nothing was changed"), seen.text());
    assertEquals(422, visitor.post(begun.location()).status());
    Page left = visitor.submit(begun.location().replace("/package", "/remove"));
    assertFalse(left.says("spoilt.zip Begun"), left.text());
  }

  /** One species of its own, and another height of one that the demonstration has too. */
  private static byte[] neighbour() throws IOException {
    Source source = new Source("neighbour", Source.Kind.HEARSAY, "A neighbour", "Told over the fence", OptionalInt.empty(), "");
    Species rose = new Species("rosa-vicina", "Rosa vicina", List.of("neighbour's rose"), "", List.of(), false,
        List.of(new WrittenStatement(0, "x", "height", "", "2 m", "neighbour", "", false, "over the fence").read().orThrow()));
    Species apple = new Species("malus-domestica", "Malus domestica", List.of(), "", List.of(), false,
        List.of(new WrittenStatement(0, "x", "height", "", "99 ft", "neighbour", "", true, "").read().orThrow()));
    LibraryExtract extract = new LibraryExtract(List.of(apple, rose), List.of(source), List.of(),
        List.of(new Holding("rosa-vicina", 2, 1, OptionalInt.empty())), List.of(new SpeciesNote(0, "rosa-vicina", "Soil: any", "neighbour")));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataPackageWriter.write(extract, new Messages(), out);
    return out.toByteArray();
  }
}
