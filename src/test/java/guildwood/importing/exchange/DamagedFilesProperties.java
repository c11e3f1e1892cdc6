package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.miachm.sods.Sheet;
import com.github.miachm.sods.SpreadSheet;
import guildwood.importing.Table;
import guildwood.importing.TableCell;
import guildwood.importing.TableRow;
import guildwood.kernel.Checked;
import guildwood.web.Messages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
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
  private static final String[][] PLANTS = {
      {"Scientific name", "Height (ft)", "Zone", "Bloom", "Notes"},
      {"Corylus avellana L.", "15", "4-8", "Feb–Mar", "nuts, \"sweet\"; poles"},
      {"Mentha × piperita", "2.5", "zone 5b", "July", "tea\nbees"},
      {"Malus domestica 'Ashmead'", "18", "4", "2026-05-08", "=1+2"},
      {"Trifolium repens", "0.5", "3", "May to Sept", "groundcover é"}};

  @TempDir
  Path folder;

  private final Messages messages = new Messages();
  private int read;
  private int refused;

  @Test
  void textFiles() {
    StringBuilder text = new StringBuilder();
    for (String[] row : PLANTS) {
      for (String cell : row) {
        text.append('"').append(cell.replace("\"", "\"\"")).append("\",");
      }
      text.append("\r\n");
    }
    String semicolons = text.toString().replace("\",\"", "\";\"").replace("×", "x").replace("–", "-");
    List<byte[]> seeds = List.of(text.toString().getBytes(StandardCharsets.UTF_8), ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE),
        semicolons.getBytes(Charset.forName("windows-1252")), text.toString().replace("\",\"", "\t").replace("\"", "").getBytes(StandardCharsets.UTF_8),
        ("sep=|\n" + text.toString().replace("\",\"", "|").replace("\"", "")).getBytes(StandardCharsets.UTF_8));
    damage(seeds, Damage::bytes);
  }

  @Test
  void workbooks() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet sheet = book.newWorksheet("Plants");
      for (int row = 0; row < PLANTS.length; row++) {
        for (int column = 0; column < PLANTS[row].length; column++) {
          sheet.value(row, column, PLANTS[row][column]);
        }
        sheet.value(row, 5, row * 1.25);
        sheet.value(row, 6, LocalDate.of(2026, 4, 8));
        sheet.style(row, 6).format("yyyy-mm-dd").set();
        sheet.formula(row, 7, "F1*2");
        sheet.inlineString(row, 8, "in place");
        sheet.value(row, 9, row % 2 == 0);
      }
      book.newWorksheet("Empty");
    }
    damageZip(bytes.toByteArray());
  }

  @Test
  void openDocuments() throws IOException {
    Sheet sheet = new Sheet("Plants", PLANTS.length, 7);
    for (int row = 0; row < PLANTS.length; row++) {
      for (int column = 0; column < PLANTS[row].length; column++) {
        sheet.getRange(row, column).setValue(PLANTS[row][column]);
      }
      sheet.getRange(row, 5).setValue(row * 1.25);
      sheet.getRange(row, 6).setValue(LocalDate.of(2026, 4, 8));
    }
    SpreadSheet book = new SpreadSheet();
    book.appendSheet(sheet);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    book.save(bytes);
    damageZip(bytes.toByteArray());
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
