package guildwood.species.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.species.Holding;
import guildwood.species.LibraryContents;
import guildwood.species.LibraryExtract;
import guildwood.species.LibraryExtract.Beside;
import guildwood.species.LibraryMerge;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.species.SpeciesNote;
import guildwood.species.Statement;
import guildwood.species.WrittenStatement;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.web.Messages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A library taken out as a data package and brought into another database. */
class DataPackageStoreTest {
  private static final Messages MESSAGES = new Messages();

  @TempDir
  private Path folder;

  @Test
  void theShippedLibraryComesBackByteForByte() throws IOException {
    comesBack(SeedFiles.read("/seed-data").orThrow());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void anyLibraryComesBackByteForByte(long seed) throws IOException {
    comesBack(AnyContents.of(seed, 40));
  }

  private void comesBack(LibraryContents contents) throws IOException {
    try (Database first = Database.inMemory(); Database second = Database.inMemory()) {
      SqlSpeciesRecords here = new SqlSpeciesRecords(first);
      here.addAll(contents);
      byte[] once = taken(here);
      SqlSpeciesRecords there = new SqlSpeciesRecords(second);
      there.addAll(read(once).orThrow().contents());
      assertArrayEquals(once, taken(there));
      assertEquals(List.of(), read(once).orThrow().remarks());
      assertEquals(plain(here.library()), plain(there.library()));
      assertEquals(here.library().sources(), there.library().sources());
      assertEquals(texts(contents.notes()), texts(there.notes()));
      assertEquals(contents.statements().size(), there.library().species().stream().mapToInt(s -> s.statements().size()).sum());
      // Brought a second time, there is nothing left to keep.
      LibraryMerge again = there.addAll(read(once).orThrow().contents());
      assertTrue(again.additions().isEmpty() && again.replaced().isEmpty(), () -> again.additions().toString());
      assertArrayEquals(once, taken(there));
    }
  }

  @Test
  void someOfTheSpeciesComeBackByteForByteToo() throws IOException {
    try (Database first = Database.inMemory(); Database second = Database.inMemory()) {
      SqlSpeciesRecords here = new SqlSpeciesRecords(first);
      here.addAll(SeedFiles.read("/seed-data").orThrow());
      List<Species> some = here.library().species().stream().filter(s -> s.genus().equals("Rubus")).toList();
      byte[] once = written(LibraryExtract.some(here.library(), some, Beside.of(here)));
      SqlSpeciesRecords there = new SqlSpeciesRecords(second);
      there.addAll(read(once).orThrow().contents());
      assertTrue(some.size() > 1 && some.size() == there.library().species().size());
      assertArrayEquals(once, taken(there));
    }
  }

  @Test
  void whatCannotBeReadAnyMoreIsCarriedAndWhatLiesInTheBinIsNot() throws IOException {
    try (Database first = Database.inMemory(); Database second = Database.inMemory()) {
      SqlSpeciesRecords here = new SqlSpeciesRecords(first);
      here.addAll(SeedFiles.read("/seed-good").orThrow());
      String source = here.library().sources().keySet().stream().sorted().findFirst().orElseThrow();
      first.change(handle -> handle.createUpdate("insert into statement (species_id, trait, item, entered, source_id, evidence, chosen, note) "
          + "values ('vitis-riparia', 'vigour', '', '=strong', :s, null, true, 'kept')").bind("s", source).execute());
      here.remove("amelanchier-alnifolia");
      here.keep(new Holding("vitis-riparia", 3, OptionalInt.of(1250)));
      assertEquals(1, here.library().unread().size());
      byte[] once = taken(here);
      SqlSpeciesRecords there = new SqlSpeciesRecords(second);
      there.addAll(read(once).orThrow().contents());
      WrittenStatement unread = there.library().unread().get(0);
      assertEquals("vigour =strong kept true", unread.trait() + " " + unread.entered() + " " + unread.note() + " " + unread.chosen());
      assertFalse(there.library().find("amelanchier-alnifolia").isPresent());
      assertEquals(new Holding("vitis-riparia", 3, OptionalInt.of(1250)), there.holdings().get("vitis-riparia"));
      assertArrayEquals(once, taken(there));
    }
  }

  @Test
  void besideAnotherLibraryBothValuesAreKeptAndTheOneThatRulesGoesOn() throws IOException {
    try (Database first = Database.inMemory(); Database second = Database.inMemory()) {
      SqlSpeciesRecords here = new SqlSpeciesRecords(first);
      SqlSpeciesRecords there = new SqlSpeciesRecords(second);
      here.addAll(SeedFiles.read("/seed-good").orThrow());
      there.addAll(SeedFiles.read("/seed-good").orThrow());
      String rose = here.add(SpeciesNames.read("Rosa rugosa", "", "", "").orThrow()).orThrow();
      there.add(SpeciesNames.read("Rosa canina", "", "", "Rosa rugosa").orThrow()).orThrow();
      here.add(rose, said("height", "2 m", true), java.util.Optional.empty());
      here.add("vitis-riparia", said("height", "99 ft", true), java.util.Optional.empty());
      there.remove("amelanchier-alnifolia");
      String before = there.library().find("vitis-riparia").orElseThrow().ruling(guildwood.species.Trait.HEIGHT).orElseThrow().entered();

      LibraryMerge merge = there.addAll(read(taken(here)).orThrow().contents());
      assertEquals(List.of("Amelanchier alnifolia"), merge.inBin());
      assertEquals(2, merge.additions().statements().size());
      assertEquals(1, merge.disagreeing());
      assertEquals(0, merge.additions().species().size(), "a synonym here is the same species");
      Species apple = there.library().find("vitis-riparia").orElseThrow();
      assertEquals(before, apple.ruling(guildwood.species.Trait.HEIGHT).orElseThrow().entered());
      assertTrue(apple.statements().stream().anyMatch(s -> s.entered().equals("99 ft") && !s.chosen()));
      assertEquals("2 m", there.library().find("rosa-canina").orElseThrow().ruling(guildwood.species.Trait.HEIGHT).orElseThrow().entered());
    }
  }

  private static Statement said(String trait, String value, boolean chosen) {
    return new WrittenStatement(0, "x", trait, "", value, "own-experience", "", chosen, "").read().orThrow();
  }

  private static List<Object> plain(SpeciesLibrary library) {
    return library.species().stream().map(s -> (Object) List.of(s.id(), SpeciesNames.of(s),
        s.statements().stream().map(t -> WrittenStatement.of(s.id(), new Statement(0, t.trait(), t.item(), t.entered(), t.value(),
            t.sourceId(), t.evidence(), t.chosen(), t.note()))).toList())).toList();
  }

  private static List<String> texts(List<SpeciesNote> notes) {
    return notes.stream().map(n -> n.speciesId() + "|" + n.sourceId() + "|" + n.text()).sorted().toList();
  }

  private static byte[] taken(SqlSpeciesRecords records) throws IOException {
    return written(LibraryExtract.whole(records.library(), Beside.of(records)));
  }

  private static byte[] written(LibraryExtract extract) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataPackageWriter.write(extract, MESSAGES, out);
    return out.toByteArray();
  }

  private Checked<LibraryPackage> read(byte[] zip) throws IOException {
    Path file = Files.write(folder.resolve("library.zip"), zip);
    assertTrue(DataPackageReader.isPackage(file));
    return DataPackageReader.read(file);
  }
}
