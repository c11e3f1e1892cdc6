package guildwood.importing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.Decisions;
import guildwood.importing.HeaderFinder;
import guildwood.importing.ImportCounts;
import guildwood.importing.ImportPlan;
import guildwood.importing.ImportProgress;
import guildwood.importing.ImportRun;
import guildwood.importing.ImportSource;
import guildwood.importing.Mapping;
import guildwood.importing.MappingSuggester;
import guildwood.importing.NameDecision;
import guildwood.importing.Table;
import guildwood.importing.TextTable;
import guildwood.importing.UndoReport;
import guildwood.kernel.Checked;
import guildwood.kernel.Source;
import guildwood.species.Holding;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNames;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import guildwood.species.exchange.SeedFiles;
import guildwood.species.exchange.SpeciesTableWriter;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Imports in a real database: brought whole, told exactly, taken back exactly. */
class SqlImportsStoreTest {
  private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");
  private static final ImportSource NOTEBOOK = new ImportSource(Source.Kind.OWN_EXPERIENCE, "My notebook", "", OptionalInt.of(2024));
  private static final String JUNEBERRY = "amelanchier-alnifolia";

  /** The seed has the first plant; the second is nearly one of it, the third is new, the fourth has no name that can be kept. */
  private static final Table LIST = TextTable.of("list",
      "Latin name,Common name,Height (ft),pH,Sun,N-fixer,Have,Price,Book,Page,Remarks",
      "Amelanchier alnifolia (Nutt.) Nutt. ex M. Roem.,Pigeon berry,12,5-6,Full sun,no,4,$12.50,,,ripe before the cherries",
      "Amelanchier alnifola,,10,,sun,,,,,,",
      "Elaeagnus umbellata,Autumn olive,12-18,6.0 to 7.5,part shade,x,,,Field days,p. 7,spreads",
      ",,8,,,,,,,,",
      "Elaeagnus umbellata,Autumn berry,12-18,5 to 7,part shade,yes,2,,,,second row");

  private final Database database = Database.inMemory();
  private final SqlSpeciesRecords records = new SqlSpeciesRecords(database);
  private final SqlImports imports = new SqlImports(database, records);

  SqlImportsStoreTest() {
    records.addAll(SeedFiles.read("/seed-good").orThrow());
  }

  @AfterEach
  void close() {
    database.close();
  }

  private Mapping mapping(Table table) {
    return new MappingSuggester(records.library()).suggest(table, HeaderFinder.find(table).orThrow()).orThrow().mapping();
  }

  private ImportRun bring(Table table, Decisions decisions) {
    return imports.bring(table, new ImportPlan(mapping(table), NOTEBOOK, decisions), "list.csv", NOW, ImportProgress.NONE).orThrow();
  }

  private Species find(String id) {
    return records.library().find(id).orElseThrow();
  }

  @Test
  void bringsSpeciesValuesNotesHoldingsAndSources() {
    ImportCounts counts = bring(LIST, Decisions.NONE).counts();
    assertEquals(5, counts.rows());
    assertEquals(2, counts.newSpecies());
    assertEquals(1, counts.nearRows());
    assertEquals(1, counts.knownRows());
    assertEquals(1, counts.refusedRows());
    Species olive = find("elaeagnus-umbellata");
    assertEquals(List.of("Autumn olive", "Autumn berry"), olive.commonNames());
    assertEquals(List.of("6.0 to 7.5", "5 to 7"), olive.statements().stream().filter(s -> s.trait() == Trait.PH).map(Statement::entered).toList());
    assertEquals("6.0 to 7.5", olive.ruling(Trait.PH).orElseThrow().entered(), "the earlier row rules");
    Statement height = olive.ruling(Trait.HEIGHT).orElseThrow();
    assertEquals("12 ft to 18 ft", height.entered());
    assertEquals("Height (ft): 12-18; Page: p. 7", height.note());
    Source book = records.library().sources().get(height.sourceId());
    assertEquals("Field days", book.title());
    Source notebook = records.library().sources().get(olive.statements().stream().filter(s -> s.entered().equals("5 to 7")).findFirst().orElseThrow().sourceId());
    assertEquals(NOTEBOOK.title(), notebook.title());
    assertEquals(Source.Kind.OWN_EXPERIENCE, notebook.kind());
    assertEquals(List.of("Remarks: spreads", "Remarks: second row"), records.notes(olive.id()).stream().map(n -> n.text()).toList());
    assertEquals(2, records.holdings().get(olive.id()).plantsOnHand());
  }

  @Test
  void aKnownSpeciesKeepsWhatItHasAndSaysWhereTheTableDiffers() {
    Statement before = find(JUNEBERRY).ruling(Trait.HEIGHT).orElseThrow();
    bring(LIST, Decisions.NONE);
    Species juneberry = find(JUNEBERRY);
    assertTrue(juneberry.commonNames().contains("Pigeon berry"));
    assertEquals(before, juneberry.ruling(Trait.HEIGHT).orElseThrow());
    assertTrue(juneberry.statements().stream().anyMatch(s -> s.trait() == Trait.HEIGHT && s.entered().equals("12 ft")));
    assertEquals(4, records.holdings().get(JUNEBERRY).plantsOnHand());
    assertEquals(OptionalInt.of(1250), records.holdings().get(JUNEBERRY).priceCents());
    assertTrue(records.notes(JUNEBERRY).get(0).text().contains("Latin name: Amelanchier alnifolia (Nutt.) Nutt. ex M. Roem."));
  }

  @Test
  void theTableRulesWhereTheOwnerSaysSo() {
    String before = library();
    ImportRun run = bring(LIST, Decisions.NONE.withImportRules(true));
    assertEquals("12 ft", find(JUNEBERRY).ruling(Trait.HEIGHT).orElseThrow().entered());
    imports.undo(run.id(), NOW).orThrow();
    assertEquals(before, library());
  }

  @Test
  void aNearNameIsTakenForAKnownOneOnlyWhereSomebodySaysSo() {
    bring(LIST, Decisions.NONE.with("Amelanchier alnifola", NameDecision.sameAs(JUNEBERRY)));
    assertTrue(records.library().find("amelanchier-alnifola").isEmpty());
    assertTrue(find(JUNEBERRY).statements().stream().anyMatch(s -> s.entered().equals("10 ft")));
  }

  @Test
  void rowsLeftOutAndCellsTypedAnew() {
    Decisions decisions = Decisions.NONE.withoutRow(3).with(new Decisions.Place(5, 0), "Corylus avellana");
    ImportCounts counts = bring(LIST, decisions).counts();
    assertEquals(1, counts.leftOutRows());
    assertEquals(0, counts.refusedRows());
    assertEquals("8 ft", find("corylus-avellana").ruling(Trait.HEIGHT).orElseThrow().entered());
  }

  @Test
  void undoLeavesTheLibraryAsItWas() throws IOException {
    records.keep(new Holding(JUNEBERRY, 0, 3, OptionalInt.of(900)));
    String before = library();
    ImportRun run = bring(LIST, Decisions.NONE);
    assertFalse(before.equals(library()));
    UndoReport would = imports.wouldUndo(run.id());
    UndoReport report = imports.undo(run.id(), NOW.plusSeconds(60)).orThrow();
    assertEquals(would, report);
    assertEquals(List.of(), report.kept());
    assertEquals(2, report.species());
    assertEquals(before, library());
    assertTrue(imports.undo(run.id(), NOW).isRefused());
    assertEquals(Optional.of(NOW.plusSeconds(60)), imports.find(run.id()).orElseThrow().undoneAt());
    assertEquals(1, imports.runs().size());
    bring(LIST, Decisions.NONE);
  }

  @Test
  void whatWasEditedSinceStays() {
    ImportRun run = bring(LIST, Decisions.NONE);
    Species olive = find("elaeagnus-umbellata");
    Statement height = olive.ruling(Trait.HEIGHT).orElseThrow();
    records.change(olive.id(), new Statement(height.id(), Trait.HEIGHT, "", "4 m", TraitReader.read(Trait.HEIGHT, "4 m", "").orThrow(),
        height.sourceId(), Optional.empty(), false, ""), Optional.empty()).orThrow();
    records.rename(JUNEBERRY, SpeciesNames.read("Amelanchier alnifolia", "Saskatoon", "Rosaceae", "").orThrow()).orThrow();
    records.keep(new Holding(JUNEBERRY, 9, 0, OptionalInt.empty()));
    UndoReport report = imports.undo(run.id(), NOW).orThrow();
    assertEquals(List.of("holding-edited", "names-edited", "species-edited", "value-edited"),
        report.kept().stream().map(UndoReport.Kept::reason).sorted().toList());
    assertEquals(List.of("4 m"), find(olive.id()).statements().stream().map(Statement::entered).toList());
    assertEquals(List.of("Saskatoon"), find(JUNEBERRY).commonNames());
    assertEquals(9, records.holdings().get(JUNEBERRY).plantsOnHand());
  }

  @Test
  void aStoppedImportAndABrokenFileLeaveNothing() {
    String before = library();
    StringBuilder long1 = new StringBuilder("Latin name,pH\n");
    for (int i = 0; i < 900; i++) {
      long1.append("Genus species").append((char) ('a' + i % 26)).append((char) ('a' + i / 26)).append(",6\n");
    }
    Table many = TextTable.of("many", long1.toString().split("\n"));
    ImportPlan plan = new ImportPlan(mapping(many), NOTEBOOK, Decisions.NONE);
    Checked<ImportRun> stopped = imports.bring(many, plan, "t", NOW, rows -> rows < 500);
    assertEquals("import.stopped", stopped.findings().get(0).code());
    Table broken = new Table() {
      @Override
      public String name() {
        return "broken";
      }

      @Override
      public Checked<Long> rows(RowTaker taker) {
        many.rows(row -> row.number() < 700 && taker.take(row));
        return Checked.refused(guildwood.kernel.Finding.of("table-file.damaged", ""));
      }
    };
    assertEquals("table-file.damaged", imports.bring(broken, plan, "t", NOW, ImportProgress.NONE).findings().get(0).code());
    assertEquals(before, library());
    assertEquals(List.of(), imports.runs());
  }

  @Test
  void theLibrarysOwnTableSaysNothingNew() throws IOException {
    StringBuilder csv = new StringBuilder();
    SpeciesTableWriter.write(records.library().species(), csv);
    Table own = new TextTable("species", () -> new java.io.StringReader(csv.toString()));
    String before = library();
    ImportRun run = bring(own, Decisions.NONE);
    assertEquals(0, run.counts().valuesAdded() + run.counts().conflicts() + run.counts().cellsUnread() + run.counts().newSpecies());
    assertEquals(records.library().species().size(), run.counts().knownRows());
    imports.undo(run.id(), NOW).orThrow();
    assertEquals(before, library());
  }

  /** Everything the library holds, as text; ids of values count as places in their order. */
  private String library() {
    SpeciesLibrary library = records.library();
    StringBuilder text = new StringBuilder();
    for (Species species : library.species()) {
      text.append(species.id()).append(SpeciesNames.of(species)).append('\n');
      species.statements().forEach(s -> text.append("  ").append(s).append('\n'));
      records.notes(species.id()).forEach(n -> text.append("  note ").append(n.text()).append('\n'));
    }
    library.sources().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(e -> text.append(e.getValue()).append('\n'));
    new java.util.TreeMap<>(records.holdings()).forEach((id, holding) -> text.append(holding).append('\n'));
    return text.toString();
  }
}
