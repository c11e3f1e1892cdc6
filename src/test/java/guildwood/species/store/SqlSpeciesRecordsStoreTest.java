package guildwood.species.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Source;
import guildwood.species.GuildFunction;
import guildwood.species.Holding;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.WrittenStatement;
import guildwood.species.exchange.SeedFiles;
import guildwood.store.Database;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The library in a real database. */
class SqlSpeciesRecordsStoreTest {
  private static final String JUNEBERRY = "amelanchier-alnifolia";
  private static final Optional<Source> NONE = Optional.empty();

  private final Database database = Database.inMemory();
  private final SqlSpeciesRecords records = new SqlSpeciesRecords(database);

  SqlSpeciesRecordsStoreTest() {
    records.addAll(SeedFiles.read("/seed-good").orThrow());
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void keepsEverythingTheFilesHold() {
    Map<String, SpeciesNames> seed = SeedFiles.read("/seed-good").orThrow().species();
    SpeciesLibrary library = records.library();
    assertEquals(seed.values().stream().map(SpeciesNames::scientificName).sorted().toList(),
        library.species().stream().map(Species::scientificName).toList());
    library.species().forEach(s -> assertEquals(seed.get(s.id()), SpeciesNames.of(s)));
    assertEquals(SeedFiles.read("/seed-good").orThrow().statements().size(),
        library.species().stream().mapToInt(s -> s.statements().size()).sum());
    assertTrue(library.sources().containsKey(Source.OWN_EXPERIENCE));
    assertEquals(4.572, juneberry().ruling(Trait.HEIGHT).map(s -> juneberry().range(Trait.HEIGHT).orElseThrow().middle()).orElseThrow(), 1e-6);
    assertEquals(Optional.of(false), juneberry().does(GuildFunction.NITROGEN_FIXER));
  }

  @Test
  void theSnapshotStaysTheSameUntilSomethingChanges() {
    SpeciesLibrary before = records.library();
    assertSame(before, records.library());
    records.remove(JUNEBERRY);
    assertNotEquals(before.revision(), records.library().revision());
    assertTrue(before.species().stream().anyMatch(s -> s.id().equals(JUNEBERRY)), "a snapshot never changes");
  }

  @Test
  void addsRenamesRemovesAndRestoresASpecies() {
    SpeciesNames names = new SpeciesNames("Cornus mas", List.of("Cornelian cherry", "dirndl"), "Cornaceae", List.of());
    assertEquals("cornus-mas", records.add(names).orThrow());
    assertEquals(names, SpeciesNames.of(find("cornus-mas")));
    SpeciesNames other = new SpeciesNames("Cornus officinalis", List.of(), "", List.of("Macrocarpium officinale"));
    records.rename("cornus-mas", other).orThrow();
    assertEquals(other, SpeciesNames.of(find("cornus-mas")));
    records.remove("cornus-mas");
    assertTrue(find("cornus-mas").removed());
    assertTrue(records.library().species().stream().noneMatch(s -> s.id().equals("cornus-mas")));
    records.restore("cornus-mas");
    assertTrue(!find("cornus-mas").removed());
    // The name that was given up is free again, the id is not.
    assertEquals("cornus-mas-2", records.add(names).orThrow());
  }

  @Test
  void refusesANameThatIsTakenInWhateverSpelling() {
    assertEquals("species.taken", codeOf("Amelanchier Alnifolia"));
    assertEquals("species.taken", codeOf("Symphytum uplandicum"));
    assertEquals("species.is-synonym", codeOf("Symphytum peregrinum"));
    records.remove(JUNEBERRY);
    assertEquals("species.in-bin", codeOf("Amelanchier alnifolia"));
    SpeciesNames synonym = new SpeciesNames("Vitis nova", List.of(), "", List.of("Vitis riparia"));
    assertEquals("synonyms", records.add(synonym).findings().get(0).field());
  }

  @Test
  void addsChangesRemovesAndRestoresAStatement() {
    long id = records.add(JUNEBERRY, statement(0, Trait.HEIGHT, "", "2 m", Source.OWN_EXPERIENCE), NONE).orThrow();
    assertEquals("2 m", statementOf(id).entered());
    records.change(JUNEBERRY, statement(id, Trait.HEIGHT, "", "8 ft", Source.OWN_EXPERIENCE), NONE).orThrow();
    assertEquals("8 ft", statementOf(id).entered());
    records.removeStatement(id);
    assertTrue(juneberry().statements().stream().noneMatch(s -> s.id() == id));
    assertEquals(List.of(id), records.binnedStatements().stream().map(WrittenStatement::id).toList());
    records.restoreStatement(id);
    assertEquals("8 ft", statementOf(id).entered());
    assertEquals(List.of(), records.binnedStatements());
  }

  @Test
  void oneStatementOfATopicRulesAtATime() {
    List<Statement> heights = juneberry().byTopic().get(new Statement.Topic(Trait.HEIGHT, ""));
    Statement overruled = heights.stream().filter(s -> !juneberry().rules(s)).findFirst().orElseThrow();
    records.letRule(overruled.id());
    assertEquals(overruled.id(), juneberry().ruling(Trait.HEIGHT).orElseThrow().id());
    assertEquals(1, juneberry().statements().stream().filter(s -> s.trait() == Trait.HEIGHT && s.chosen()).count());
    assertTrue(juneberry().statements().stream().anyMatch(s -> s.trait() == Trait.CROWN && s.chosen()), "other topics stay");
    // In the bin it rules no more, and does not come back as a ruler.
    records.removeStatement(overruled.id());
    records.restoreStatement(overruled.id());
    assertTrue(!statementOf(overruled.id()).chosen());
  }

  @Test
  void usesOfSeveralSourcesAddUpUntilOneIsChosen() {
    long id = records.add(JUNEBERRY, statement(0, Trait.USE, "", "dye", Source.OWN_EXPERIENCE), NONE).orThrow();
    assertEquals(List.of("dye", "food", "hedge"), juneberry().words(Trait.USE));
    records.letRule(id);
    assertEquals(List.of("dye"), juneberry().words(Trait.USE));
  }

  @Test
  void aNewSourceIsKeptWithItsStatementOrNotAtAll() {
    Source neighbour = new Source("neighbour-2026", Source.Kind.HEARSAY, "A neighbour", "Over the fence", OptionalInt.of(2026), "");
    records.add(JUNEBERRY, statement(0, Trait.GROWTH_RATE, "", "fast", neighbour.id()), Optional.of(neighbour)).orThrow();
    assertEquals(neighbour, records.library().sources().get(neighbour.id()));

    Source second = new Source("second", Source.Kind.HEARSAY, "", "Told", OptionalInt.empty(), "");
    assertEquals("statement.twice", records.add(JUNEBERRY, statement(0, Trait.GROWTH_RATE, "", "Fast", neighbour.id()), Optional.of(second))
        .findings().get(0).code());
    assertTrue(!records.library().sources().containsKey("second"));

    // The database refuses a source whose id is taken: the statement must go with it.
    int before = juneberry().statements().size();
    assertThrows(RuntimeException.class,
        () -> records.add(JUNEBERRY, statement(0, Trait.GROWTH_RATE, "", "slow", neighbour.id()), Optional.of(neighbour)));
    assertEquals(before, juneberry().statements().size());
    assertEquals("source.unknown", records.add(JUNEBERRY, statement(0, Trait.GROWTH_RATE, "", "slow", "nobody"), NONE).findings().get(0).code());
  }

  @Test
  void changesASource() {
    Source before = records.library().sources().get("usda-plants");
    Source after = new Source(before.id(), before.kind(), before.author(), "Characteristics", OptionalInt.of(2026), "");
    records.change(after);
    assertEquals(after, records.library().sources().get("usda-plants"));
  }

  @Test
  void keepsAndReportsWhatCanNoLongerBeRead() {
    database.change(handle -> handle.execute("insert into statement (species_id, trait, item, entered, source_id, note) values "
        + "('amelanchier-alnifolia', 'height', '', 'as tall as a house', 'usda-plants', ''), "
        + "('amelanchier-alnifolia', 'smell', '', 'sweet', 'usda-plants', '')"));
    SpeciesLibrary library = new SqlSpeciesRecords(database).library();
    assertEquals(List.of("as tall as a house", "sweet"), library.unread().stream().map(WrittenStatement::entered).toList());
    assertEquals(juneberry().statements(), library.find(JUNEBERRY).orElseThrow().statements());
  }

  @Test
  void keepsWhatTheOwnerHas() {
    assertEquals(Map.of(), records.holdings());
    Holding some = new Holding(JUNEBERRY, 3, 8, OptionalInt.of(1250));
    records.keep(some);
    records.keep(new Holding("tilia-americana", 0, OptionalInt.empty()));
    assertEquals(some, records.holdings().get(JUNEBERRY));
    assertEquals(OptionalInt.empty(), records.holdings().get("tilia-americana").priceCents());
    records.keep(new Holding(JUNEBERRY, 0, OptionalInt.empty()));
    assertEquals(Holding.none(JUNEBERRY), records.holdings().get(JUNEBERRY));
  }

  @Test
  void anUnknownIdIsABugOfTheCallerAndChangesNothing() {
    long revision = records.library().revision();
    assertThrows(RuntimeException.class, () -> records.remove("nobody"));
    assertThrows(RuntimeException.class, () -> records.letRule(-1));
    assertThrows(RuntimeException.class, () -> records.removeStatement(-1));
    assertEquals(revision, records.library().revision());
    assertEquals(revision, new SqlSpeciesRecords(database).library().revision());
  }

  @Test
  void aLibraryOnDiskIsThereAgainAfterReopening(@TempDir Path directory) {
    SpeciesLibrary before;
    try (Database onDisk = Database.open(directory)) {
      SqlSpeciesRecords kept = new SqlSpeciesRecords(onDisk);
      kept.addAll(SeedFiles.read("/seed-data").orThrow());
      before = kept.library();
    }
    try (Database onDisk = Database.open(directory)) {
      SpeciesLibrary after = new SqlSpeciesRecords(onDisk).library();
      assertEquals(before.species(), after.species());
      assertEquals(before.sources(), after.sources());
      assertEquals(List.of(), after.unread());
      assertEquals(before.revision(), after.revision());
    }
  }

  private String codeOf(String name) {
    return records.add(new SpeciesNames(name, List.of(), "", List.of())).findings().get(0).code();
  }

  private Species find(String id) {
    return records.library().find(id).orElseThrow();
  }

  private Species juneberry() {
    return find(JUNEBERRY);
  }

  private Statement statementOf(long id) {
    return juneberry().statements().stream().filter(s -> s.id() == id).findFirst().orElseThrow();
  }

  private static Statement statement(long id, Trait trait, String item, String entered, String source) {
    return new WrittenStatement(id, JUNEBERRY, trait.key(), item, entered, source, "", false, "").read().orThrow();
  }
}
