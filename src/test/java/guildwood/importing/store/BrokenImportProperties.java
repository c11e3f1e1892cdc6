package guildwood.importing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.Decisions;
import guildwood.importing.ImportCounts;
import guildwood.importing.ImportPlan;
import guildwood.importing.ImportProgress;
import guildwood.importing.ImportRun;
import guildwood.importing.ImportSource;
import guildwood.importing.Mapping;
import guildwood.importing.Review;
import guildwood.importing.Table;
import guildwood.importing.exchange.ChosenTable;
import guildwood.importing.exchange.Damage;
import guildwood.importing.exchange.DamagedFiles;
import guildwood.importing.exchange.TableFiles;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * No half import: whatever happens to a file, the library is afterwards as it was, or it holds all that the import says it
 * brought; undone, it is as it was. Damaged files of every kind, seeded, on a real database. That every one of 5,000 files
 * a kind is read or refused is shown without the database, in {@code DamagedFilesProperties}.
 */
@Timeout(1_800)
class BrokenImportProperties {
  private static final int FILES = 5_000;

  /** Every so many that can be read are brought; all of them would take minutes and show the same. */
  private static final int BROUGHT = Integer.getInteger("guildwood.damaged.every", 12);

  private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");
  private static final ImportSource SOURCE = new ImportSource(Source.Kind.HEARSAY, "A damaged table", "", OptionalInt.empty());

  @TempDir
  Path folder;

  private final Database database = Database.inMemory();
  private final SqlSpeciesRecords records = new SqlSpeciesRecords(database);
  private final SqlImports imports = new SqlImports(database, records);

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void textFiles() throws IOException {
    damage(DamagedFiles.texts(), Damage::bytes);
  }

  @Test
  void workbooks() throws IOException {
    damageZip(DamagedFiles.workbook());
  }

  @Test
  void openDocuments() throws IOException {
    damageZip(DamagedFiles.openDocument());
  }

  private void damageZip(byte[] whole) throws IOException {
    var parts = Damage.parts(Files.write(folder.resolve("whole.zip"), whole));
    damage(List.of(whole), (damage, seed) -> damage.zip(seed, parts));
  }

  private void damage(List<byte[]> seeds, BiFunction<Damage, byte[], byte[]> kind) throws IOException {
    Mapping whole = ChosenTable.of(Files.write(folder.resolve("whole"), seeds.get(0)), Optional.empty(), Optional.empty(), records.library())
        .orThrow().mapping();
    Rows before = rows();
    int brought = 0;
    int refused = 0;
    for (int i = 0; i < FILES; i += BROUGHT) {
      Path file = Files.write(folder.resolve("damaged"), kind.apply(new Damage(i), seeds.get(i % seeds.size())));
      Checked<List<Table>> sheets = TableFiles.open(file, "damaged");
      if (sheets.isRefused()) {
        refused++;
        continue;
      }
      look(file);
      // The mapping of the undamaged table: what is suggested for a damaged one would often bring nothing.
      Checked<ImportRun> run = imports.bring(sheets.orThrow().get(0), new ImportPlan(whole, SOURCE, Decisions.NONE), "damaged " + i, NOW, ImportProgress.NONE);
      if (run.isRefused()) {
        refused++;
      } else {
        brought++;
        before.assertGrownBy(run.orThrow().counts(), rows(), "damaged file " + i);
        imports.undo(run.orThrow().id(), NOW).orThrow();
      }
      assertEquals(before, rows(), "damaged file " + i);
    }
    assertTrue(brought > 20 && refused > 5, brought + " brought, " + refused + " refused");
  }

  /** What the damaged table itself suggests is suggested and gone through without an accident. */
  private void look(Path file) {
    ChosenTable.of(file, Optional.empty(), Optional.empty(), records.library()).value().ifPresent(chosen -> {
      ImportPlan plan = new ImportPlan(chosen.mapping(), SOURCE, Decisions.NONE);
      new Review(plan, records.library(), records.holdings()).run(chosen.table(), outcome -> true, ImportProgress.NONE);
    });
  }

  /** A file that goes bad while it is written into the library, at every place; and somebody who stops it there. */
  @Test
  void aFileThatBreaksWhileItIsWritten() throws IOException {
    ChosenTable chosen = ChosenTable.of(Files.write(folder.resolve("many.csv"), DamagedFiles.manyPlants(1_500).getBytes(StandardCharsets.UTF_8)),
        Optional.empty(), Optional.empty(), records.library()).orThrow();
    ImportPlan plan = new ImportPlan(chosen.mapping(), SOURCE, Decisions.NONE);
    Rows before = rows();
    for (int row : List.of(2, 500, 1_001, 1_500)) {
      Checked<ImportRun> broken = imports.bring(new Breaking(chosen.table(), row), plan, "broken", NOW, ImportProgress.NONE);
      assertEquals("table-file.damaged", broken.findings().get(0).code());
      assertEquals(before, rows(), "broken in row " + row);
      Checked<ImportRun> stopped = imports.bring(chosen.table(), plan, "stopped", NOW, rows -> rows < row);
      assertTrue(stopped.isRefused() || row >= 1_500, "stopped at row " + row);
      stopped.value().ifPresent(run -> imports.undo(run.id(), NOW).orThrow());
      assertEquals(before, rows(), "stopped at row " + row);
    }
    ImportRun run = imports.bring(chosen.table(), plan, "whole", NOW, ImportProgress.NONE).orThrow();
    before.assertGrownBy(run.counts(), rows(), "whole");
    assertEquals(1_500, run.counts().newSpecies());
  }

  private Rows rows() {
    return database.read(handle -> new Rows(
        handle.createQuery("select count(*) from species").mapTo(Long.class).one(),
        handle.createQuery("select count(*) from statement").mapTo(Long.class).one(),
        handle.createQuery("select count(*) from species_note").mapTo(Long.class).one(),
        handle.createQuery("select count(*) from source").mapTo(Long.class).one(),
        records.library().species().size(), records.library().species().stream().mapToLong(s -> s.statements().size()).sum()));
  }

  /** What the database holds, and what the library in memory shows of it. */
  private record Rows(long species, long statements, long notes, long sources, long speciesShown, long statementsShown) {
    void assertGrownBy(ImportCounts counts, Rows now, String what) {
      assertEquals(species + counts.newSpecies(), now.species, what);
      assertEquals(statements + counts.valuesAdded() + counts.conflicts(), now.statements, what);
      assertEquals(speciesShown + counts.newSpecies(), now.speciesShown, what);
      assertEquals(statementsShown + counts.valuesAdded() + counts.conflicts(), now.statementsShown, what);
    }
  }

  /** A table whose file goes bad when its rows are read for the second time: the first time only looks for doubles. */
  private static final class Breaking implements Table {
    private final Table table;
    private final int breaksAt;
    private int readings;

    Breaking(Table table, int breaksAt) {
      this.table = table;
      this.breaksAt = breaksAt;
    }

    @Override
    public String name() {
      return table.name();
    }

    @Override
    public Checked<Long> rows(RowTaker taker) {
      readings++;
      boolean breaks = readings > 1;
      Checked<Long> read = table.rows(row -> !(breaks && row.number() >= breaksAt) && taker.take(row));
      return breaks ? Checked.refused(Finding.of("table-file.damaged", "")) : read;
    }
  }
}
