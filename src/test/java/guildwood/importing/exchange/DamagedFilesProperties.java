package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.Table;
import guildwood.importing.TableCell;
import guildwood.importing.TableRow;
import guildwood.kernel.Checked;
import guildwood.web.Messages;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever happens to a file, it is read within the limits or refused with a sentence: 5,000 damaged files of each
 * kind, seeded. The time limits only end a reader that hangs.
 */
@Timeout(180)
class DamagedFilesProperties {
  private static final int FILES = 5_000;
  private static final long ENOUGH_ROWS = 5_000;
  @TempDir
  Path folder;

  private final Messages messages = new Messages();
  private int read;
  private int refused;

  @Test
  void textFiles() {
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
    Path file = TestTables.file(folder, "whole.zip", whole);
    Map<String, byte[]> parts = Damage.parts(file);
    damage(List.of(whole), (damage, seed) -> damage.zip(seed, parts));
    List<List<TableRow>> rows = allRows(TableFiles.open(file, "whole").orThrow());
    int read = 0;
    for (int i = 0; i < FILES / 5; i++) {
      Checked<List<Table>> sheets = TableFiles.open(TestTables.file(folder, "damaged.bin", new Damage(i).flipped(whole)), "damaged");
      if (sheets.value().isPresent() && sheets.orThrow().stream().noneMatch(sheet -> sheet.rows(row -> true).isRefused())) {
        assertEquals(rows, allRows(sheets.orThrow()), "a packed file with bad bytes that is read at all is read as it was: damaged file " + i);
        read++;
      }
    }
    assertTrue(read > 0, "no damaged zip was read");
  }

  private static List<List<TableRow>> allRows(List<Table> sheets) {
    return sheets.stream().map(TestTables::rows).toList();
  }

  private void damage(List<byte[]> seeds, BiFunction<Damage, byte[], byte[]> kind) {
    for (int i = 0; i < FILES; i++) {
      byte[] seed = seeds.get(i % seeds.size());
      byte[] damaged = kind.apply(new Damage(i), seed);
      try {
        check(TestTables.file(folder, "damaged.bin", damaged));
      } catch (RuntimeException | StackOverflowError | AssertionError e) {
        throw new AssertionError("damaged file " + i, e);
      }
    }
    assertTrue(read > FILES / 20, "hardly any file was read, so the damage is too great to show anything: " + read);
    assertTrue(refused > FILES / 20, "hardly any file was refused, so the damage is too small to show anything: " + refused);
  }

  private void check(Path file) {
    Checked<List<Table>> sheets = TableFiles.open(file, "damaged");
    boolean whole = !sheets.isRefused();
    sheets.findings().forEach(finding -> assertFalse(messages.say(finding).isBlank()));
    for (Table sheet : sheets.value().orElse(List.of())) {
      long[] rows = new long[1];
      Checked<Long> count = sheet.rows(row -> {
        checkRow(row);
        return ++rows[0] < ENOUGH_ROWS;
      });
      count.findings().forEach(finding -> assertFalse(messages.say(finding).isBlank()));
      count.value().ifPresent(n -> assertEquals(rows[0], n));
      whole &= !count.isRefused();
    }
    read += whole ? 1 : 0;
    refused += whole ? 0 : 1;
  }

  private static void checkRow(TableRow row) {
    assertFalse(row.isBlank());
    assertTrue(row.cells().size() <= TableLimits.COLUMNS);
    for (TableCell cell : row.cells()) {
      assertTrue(cell.text().length() <= TableLimits.CELL_CHARS);
    }
  }
}
