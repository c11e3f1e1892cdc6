package guildwood.importing.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.BroughtLibrary;
import guildwood.importing.UndoReport;
import guildwood.kernel.Source;
import guildwood.species.Holding;
import guildwood.species.LibraryContents;
import guildwood.species.LibraryExtract;
import guildwood.species.SpeciesNames;
import guildwood.species.SpeciesNote;
import guildwood.species.Trait;
import guildwood.species.WrittenStatement;
import guildwood.species.exchange.AnyContents;
import guildwood.species.exchange.DataPackageWriter;
import guildwood.species.exchange.SeedFiles;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.web.Messages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Another library brought in as one import, and taken out again. */
class BroughtLibraryStoreTest {
  private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");

  private final Database database = Database.inMemory();
  private final SqlSpeciesRecords records = new SqlSpeciesRecords(database);
  private final SqlImports imports = new SqlImports(database, records);

  BroughtLibraryStoreTest() {
    records.addAll(SeedFiles.read("/seed-good").orThrow());
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void undoneTheLibraryIsAsItWasByteForByte() throws IOException {
    records.keep(new Holding("vitis-riparia", 2, 0, OptionalInt.empty()));
    byte[] before = taken();
    BroughtLibrary brought = imports.bring(AnyContents.of(3, 30), "neighbour.zip", NOW);
    assertEquals(30, brought.run().counts().newSpecies());
    assertEquals(brought.merge().additions().statements().size(), brought.run().counts().valuesAdded());
    assertEquals(brought.run(), imports.runs().get(0));
    assertTrue(records.holdings().size() > 5 && records.notes().size() > 5);

    UndoReport undone = imports.undo(brought.run().id(), NOW).orThrow();
    assertEquals(List.of(), undone.kept());
    assertEquals(30, undone.species());
    assertArrayEquals(before, taken());
  }

  @Test
  void whatWasHereStaysAndWhatWasAddedToItGoesAgain() throws IOException {
    byte[] before = taken();
    LibraryContents more = new LibraryContents(
        List.of(new Source("book", Source.Kind.PUBLICATION, "Somebody", "A book", OptionalInt.of(1999), "")),
        Map.of("vine", SpeciesNames.read("Vitis riparia", "grape", "", "").orThrow()),
        List.of(new WrittenStatement(0, "vine", "height", "", "99 ft", "book", "", true, "")),
        List.of(new Holding("vine", 1, 7, OptionalInt.of(250))),
        List.of(new SpeciesNote(0, "vine", "Soil: any\nand more", "book")));
    BroughtLibrary brought = imports.bring(more, "book.zip", NOW);
    assertEquals(0, brought.run().counts().newSpecies());
    assertEquals(1, brought.run().counts().knownRows());
    assertEquals(1, brought.run().counts().conflicts(), "the height of this library goes on ruling");
    assertTrue(!records.library().find("vitis-riparia").orElseThrow().ruling(Trait.HEIGHT).orElseThrow().entered().equals("99 ft"));
    assertEquals(7, records.holdings().get("vitis-riparia").plantsToPropagate());
    assertEquals("Soil: any\nand more", records.notes("vitis-riparia").get(0).text());

    assertEquals(List.of(), imports.undo(brought.run().id(), NOW).orThrow().kept());
    assertArrayEquals(before, taken());
  }

  @Test
  void whatWasEditedSinceStays() {
    BroughtLibrary brought = imports.bring(AnyContents.of(3, 5), "neighbour.zip", NOW);
    String id = brought.merge().additions().holdings().get(0).speciesId();
    records.keep(new Holding(id, 99, 0, OptionalInt.empty()));
    UndoReport undone = imports.undo(brought.run().id(), NOW).orThrow();
    assertEquals(4, undone.species());
    assertTrue(undone.kept().stream().allMatch(k -> k.speciesId().equals(id)), undone.kept().toString());
    assertEquals(99, records.holdings().get(id).plantsOnHand());
  }

  private byte[] taken() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataPackageWriter.write(LibraryExtract.whole(records.library(), LibraryExtract.Beside.of(records)), new Messages(), out);
    return out.toByteArray();
  }
}
