package guildwood.exporting.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Source;
import guildwood.species.Holding;
import guildwood.species.LibraryExtract;
import guildwood.species.Species;
import guildwood.species.SpeciesLibrary;
import guildwood.species.SpeciesNote;
import guildwood.species.Trait;
import guildwood.species.WrittenStatement;
import guildwood.species.exchange.ShippedLibrary;
import guildwood.species.exchange.SpeciesTableWriter;
import guildwood.species.exchange.SpeciesTableWriter.Added;
import guildwood.web.Messages;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;

/** Workbooks, read back with a reader that is not the writer's. */
class LibraryWorkbookTest {
  private static final List<String> HARD = List.of("=1+1", "+49", "-", "@a", "'=x", "a;b", "say \"so\"", "Übergrün 木 🌳", "<b>&amp;",
      "0123", "TRUE", "2026-11-25", "4-8", "x".repeat(300));

  @Test
  void theShippedLibraryIsReadBackCellByCell() throws IOException {
    SpeciesLibrary library = ShippedLibrary.read("/seed-data").orThrow();
    byte[] workbook = written(LibraryExtract.whole(library, LibraryExtract.Beside.NOTHING), library.species(), List.of());
    Map<String, List<List<String>>> sheets = read(workbook);
    assertEquals(List.of("Species", "Values", "Sources", "Notes", "Plants at hand", "Columns"), List.copyOf(sheets.keySet()));

    List<List<String>> expected = new ArrayList<>(List.of(SpeciesTableWriter.header(List.of())));
    library.species().forEach(s -> expected.add(SpeciesTableWriter.cells(s, List.of())));
    assertEquals(expected, sheets.get("Species"));
    assertEquals(1 + library.species().stream().mapToInt(s -> s.statements().size()).sum(), sheets.get("Values").size());
    assertEquals(1 + library.sources().size(), sheets.get("Sources").size());
    List<String> columns = sheets.get("Columns").stream().skip(1).map(row -> row.get(0)).toList();
    assertEquals(expected.get(0), columns, "every column of the table is explained");
    assertArrayEquals(workbook, written(LibraryExtract.whole(library, LibraryExtract.Beside.NOTHING), library.species(), List.of()), "the same library, the same file");
  }

  @Test
  void numbersAreNumbersAndEverythingElseIsText() throws IOException {
    Species plum = plum("x");
    byte[] workbook = written(extract(plum), List.of(plum), List.of(new Added("fit", true, s -> "0.75")));
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(workbook))) {
      List<Row> rows = book.findSheet("Species").orElseThrow().read();
      List<String> header = texts(rows.get(0), rows.get(0).getCellCount());
      assertEquals(CellType.NUMBER, rows.get(1).getCell(header.indexOf("coldest_winter")).getType());
      assertEquals("-28", rows.get(1).getCell(header.indexOf("coldest_winter")).asNumber().toPlainString());
      assertEquals("0.75", rows.get(1).getCell(header.indexOf("fit")).asNumber().toPlainString());
      assertEquals("6 to 7", rows.get(1).getCell(header.indexOf("ph")).asString());
      assertEquals(CellType.STRING, rows.get(1).getCell(header.indexOf("bloom")).getType(), "a month is not a quantity");
      Row values = book.findSheet("Values").orElseThrow().read().get(2);
      assertEquals("6 7 pH", values.getCell(5).asNumber() + " " + values.getCell(6).asNumber() + " " + values.getCell(7).asString());
    }
  }

  @Test
  void textThatLooksLikeAFormulaStaysText() throws IOException {
    for (String hard : HARD) {
      Species plum = plum(hard);
      Map<String, List<List<String>>> sheets = read(written(extract(plum), List.of(plum), List.of()));
      assertEquals(hard, sheets.get("Values").get(1).get(11));
      assertEquals(hard.replace(";", ""), sheets.get("Species").get(1).get(2));
      assertEquals(hard, sheets.get("Sources").get(1).get(3));
    }
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(written(extract(plum("=1+1")), List.of(plum("=1+1")), List.of())))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String xml = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(!xml.contains("<f>") && !xml.contains("<f "), entry.getName() + " holds a formula");
      }
    }
  }

  @Test
  void whatTheOwnerHasAndNotesHaveSheets() throws IOException {
    Species plum = plum("x");
    Holding holding = new Holding("prunus-domestica", 3, 2, OptionalInt.of(1250));
    SpeciesNote note = new SpeciesNote(1, "prunus-domestica", "Soil: any\n=1+1 " + "y".repeat(40_000), "s");
    LibraryExtract extract = new LibraryExtract(List.of(plum), extract(plum).sources(), List.of(), List.of(holding), List.of(note));
    List<List<String>> notes = read(written(extract, List.of(plum), List.of())).get("Notes");
    assertEquals(List.of("1", "prunus-domestica", "s", "Soil: any"), notes.get(1));
    assertEquals("=1+1 " + "y".repeat(40_000), notes.get(2).get(3) + notes.get(3).get(3));
    assertEquals(List.of("prunus-domestica", "Prunus domestica", "3", "2", "12.50"),
        read(written(extract, List.of(plum), List.of())).get("Plants at hand").get(1));
  }

  private static Species plum(String hard) {
    List<String> common = List.of(hard.replace(";", ""));
    return new Species("prunus-domestica", "Prunus domestica", common, "", List.of(), false, List.of(
        new WrittenStatement(1, "x", "coldest_winter", "", "-28 C", "s", "", false, hard).read().orThrow(),
        new WrittenStatement(2, "x", Trait.PH.key(), "", "6.0 to 7.0", "s", "", false, "").read().orThrow(),
        new WrittenStatement(3, "x", "bloom", "", "April", "s", "", false, "").read().orThrow()));
  }

  private static LibraryExtract extract(Species species) {
    String title = species.statements().get(0).note();
    return new LibraryExtract(List.of(species), List.of(new Source("s", Source.Kind.HEARSAY, "", title, OptionalInt.empty(), "")),
        List.of(), List.of(), List.of());
  }

  private static byte[] written(LibraryExtract extract, List<Species> species, List<Added> added) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new LibraryWorkbook(extract, species, added, new Messages()).write(out);
    return out.toByteArray();
  }

  private static Map<String, List<List<String>>> read(byte[] workbook) throws IOException {
    Map<String, List<List<String>>> sheets = new LinkedHashMap<>();
    try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(workbook))) {
      for (Sheet sheet : book.getSheets().toList()) {
        List<Row> rows = sheet.read();
        int width = rows.get(0).getCellCount();
        sheets.put(sheet.getName(), rows.stream().map(row -> texts(row, width)).toList());
      }
    }
    return sheets;
  }

  private static List<String> texts(Row row, int width) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < width; i++) {
      texts.add(row.getOptionalCell(i).map(c -> c.getType() == CellType.NUMBER ? c.getRawValue() : c.getText()).orElse(""));
    }
    return texts;
  }
}
