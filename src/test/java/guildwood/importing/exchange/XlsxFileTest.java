package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.Table;
import guildwood.importing.TableCell;
import guildwood.importing.TableCell.Kind;
import guildwood.importing.TableRow;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.dhatim.fastexcel.VisibilityState;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks from another writer (fastexcel), and parts written by hand as other programs write them. */
class XlsxFileTest {
  @TempDir
  Path folder;

  @Test
  void everyKindOfCellOfAnotherWriter() {
    Path file = workbook(sheet -> {
      sheet.value(0, 0, "Corylus avellana & <co>");
      sheet.value(0, 1, 4.5);
      sheet.value(0, 2, true);
      sheet.value(0, 3, LocalDate.of(2026, 4, 8));
      sheet.style(0, 3).format("yyyy-mm-dd").set();
      sheet.value(0, 4, 0.07);
      sheet.style(0, 4).format("0%").set();
      sheet.value(0, 5, 30);
      sheet.style(0, 5).format("0\" ft\"").set();
      sheet.formula(0, 6, "B1*2");
      sheet.inlineString(0, 7, "in place");
      sheet.value(4, 0, "row five");
    });
    List<TableRow> rows = TestTables.rows(TableFiles.open(file, "x").orThrow().get(0));
    assertEquals(List.of(new TableCell("Corylus avellana & <co>", Kind.TEXT), new TableCell("4.5", Kind.NUMBER), new TableCell("TRUE", Kind.YES_NO),
        new TableCell("2026-04-08", Kind.DATE), new TableCell("7%", Kind.TEXT), new TableCell("30 ft", Kind.TEXT), new TableCell("=B1*2", Kind.ERROR),
        new TableCell("in place", Kind.TEXT)), rows.get(0).cells());
    assertEquals(5, rows.get(1).number());
  }

  /** Beside an independent reader: the same cells, for a thousand seeded rows. */
  @Test
  void readsWhatAnotherReaderReads() throws IOException {
    java.util.Random random = new java.util.Random(5);
    Path file = workbook(sheet -> {
      for (int row = 0; row < 1_000; row++) {
        for (int column = 0; column < 12; column++) {
          if (random.nextInt(4) == 0) {
            sheet.value(row, column, Math.round(random.nextGaussian() * 1e6) / 1e3);
          } else if (random.nextInt(3) > 0) {
            sheet.value(row, column, "text " + random.nextInt(300) + " äé–\n☘ 𝒳".substring(0, random.nextInt(8)));
          }
        }
      }
    });
    List<TableRow> ours = TestTables.rows(TableFiles.open(file, "x").orThrow().get(0));
    try (ReadableWorkbook other = new ReadableWorkbook(file.toFile()); Stream<org.dhatim.fastexcel.reader.Row> rows = other.getFirstSheet().openStream()) {
      List<org.dhatim.fastexcel.reader.Row> theirs = rows.toList();
      assertEquals(theirs.size(), ours.size());
      int cells = 0;
      for (int row = 0; row < theirs.size(); row++) {
        for (int column = 0; column < 12; column++) {
          String their = theirs.get(row).getOptionalCell(column).map(c -> c.getText()).orElse("");
          TableCell our = ours.get(row).cell(column);
          if (our.kind() == Kind.NUMBER) {
            assertEquals(Double.parseDouble(their), Double.parseDouble(our.text()));
          } else {
            assertEquals(their, our.text());
          }
          cells += their.isEmpty() ? 0 : 1;
        }
      }
      assertTrue(cells > 8_000, "only " + cells + " cells were compared");
    }
  }

  @Test
  void hiddenSheetsComeLast() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      Worksheet lists = book.newWorksheet("Lists");
      lists.value(0, 0, "x");
      lists.setVisibilityState(VisibilityState.HIDDEN);
      book.newWorksheet("Plants").value(0, 0, "y");
      book.newWorksheet("Beds").value(0, 0, "z");
    }
    Path file = TestTables.file(folder, "sheets.bin", bytes.toByteArray());
    assertEquals(List.of("Plants", "Beds", "Lists"), TableFiles.open(file, "x").orThrow().stream().map(Table::name).toList());
  }

  @Test
  void partsAsOtherProgramsWriteThem() {
    // No references, runs of different looks, phonetic hints, escapes, a date as text, an error, strict names.
    String strings = """
        <sst><si><r><t>Corylus </t></r><r><rPr><i/></rPr><t xml:space="preserve">avellana</t></r></si>
        <si><t>東</t><rPh sb="0" eb="1"><t>ひがし</t></rPh></si><si><t>a_x000D_\nb_x005F_x0041_ _x0000_</t></si><si/></sst>""";
    String sheet = """
        <x:worksheet xmlns:x="http://purl.oclc.org/ooxml/spreadsheetml/main"><x:sheetData>
        <x:row><x:c t="s"><x:v>0</x:v></x:c><x:c t="s"><x:v>1</x:v></x:c><x:c t="s"><x:v>2</x:v></x:c><x:c t="s"><x:v>3</x:v></x:c></x:row>
        <x:row r="7"><x:c r="C7" t="e"><x:v>#N/A</x:v></x:c><x:c t="d"><x:v>2026-04-08T00:00:00</x:v></x:c><x:c t="str"><x:f>A1</x:f><x:v>so</x:v></x:c>
        <x:c><x:v>3.2999999999999998</x:v></x:c><x:c><x:v>1.5E-3</x:v></x:c><x:c><x:v>1E999999999</x:v></x:c><x:c><x:v>-0</x:v></x:c></x:row>
        </x:sheetData></x:worksheet>""";
    List<TableRow> rows = TestTables.rows(TableFiles.open(book(sheet, strings), "x").orThrow().get(0));
    assertEquals(List.of("Corylus avellana", "東", "a\r\nb_x0041_ _x0000_"), rows.get(0).cells().stream().map(TableCell::text).toList());
    assertEquals(7, rows.get(1).number());
    assertEquals(List.of(TableCell.EMPTY, TableCell.EMPTY, new TableCell("#N/A", Kind.ERROR), new TableCell("2026-04-08", Kind.DATE),
        new TableCell("so", Kind.TEXT), new TableCell("3.3", Kind.NUMBER), new TableCell("0.0015", Kind.NUMBER), new TableCell("1E999999999", Kind.TEXT),
        new TableCell("0", Kind.NUMBER)), rows.get(1).cells());
  }

  /** As programs write them; SheetJS describes what Excel writes for an empty text (XlsxWriter issue 877). */
  @Test
  void whatFormulasCameTo() {
    String sheet = """
        <worksheet><sheetData>
        <row r="1"><c r="A1" t="str"><f>IF(C1="","",C1)</f><v/></c><c r="B1" t="str"><f>IF(C1="","",C1)</f><v></v></c></row>
        <row r="2"><c r="A2"><f>B2*2</f><v /></c><c r="B2"><f>C2*2</f></c><c r="C2" t="str"><f>D2</f></c></row>
        <row r="3"><c r="A3"><f t="shared" ref="A3:A5" si="0">ATAN2(B3,C3)</f><v>1.5</v></c></row>
        <row r="4"><c r="A4"><f t="shared" si="0"/><v>2.5</v></c></row>
        <row r="5"><c r="A5"><f t="shared" si="0"/></c></row>
        </sheetData></worksheet>""";
    List<TableRow> rows = TestTables.rows(TableFiles.open(book(sheet, "<sst/>"), "x").orThrow().get(0));
    assertEquals(List.of(2L, 3L, 4L, 5L), rows.stream().map(TableRow::number).toList(), "a row of formulas that came to nothing is an empty row");
    assertEquals(List.of(new TableCell("=B2*2", Kind.ERROR), new TableCell("=C2*2", Kind.ERROR), new TableCell("=D2", Kind.ERROR)), rows.get(0).cells());
    assertEquals(List.of(new TableCell("1.5", Kind.NUMBER)), rows.get(1).cells());
    assertEquals(List.of(new TableCell("2.5", Kind.NUMBER)), rows.get(2).cells());
    assertEquals(List.of(new TableCell("=", Kind.ERROR)), rows.get(3).cells(), "a value that is not in the file is not passed over");
  }

  @Test
  void refusesWhatHarms() {
    String head = "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;\">]>";
    assertEquals("entity", TestTables.refusal(book(head + "<worksheet><sheetData><row><c t=\"str\"><v>&b;</v></c></row></sheetData></worksheet>", "<sst/>")));
    String outside = "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>";
    assertEquals("entity", TestTables.refusal(book(outside + "<worksheet><sheetData><row><c t=\"str\"><v>&a;</v></c></row></sheetData></worksheet>", "<sst/>")));
    assertEquals("columns 1 1000", TestTables.refusal(book("<worksheet><sheetData><row><c r=\"XFD1\"><v>1</v></c></row></sheetData></worksheet>", "<sst/>")));
    assertEquals("cell 1 1 32767", TestTables.refusal(book("<worksheet><sheetData><row><c t=\"str\"><v>" + "x".repeat(40_000)
        + "</v></c></row></sheetData></worksheet>", "<sst/>")));
    assertEquals("xml-step", TestTables.refusal(book("<worksheet><sheetData><row><c t=\"str\"><v>" + "x".repeat(30_000_000)
        + "</v></c></row></sheetData></worksheet>", "<sst/>")), "one cell of 30 MB");
    assertEquals("bomb", TestTables.refusal(book("<worksheet><sheetData>" + "<row/>".repeat(5_000_000) + "</sheetData></worksheet>", "<sst/>")));
    assertEquals("xml-step", TestTables.refusal(book("<worksheet><sheetData><row><c t=\"" + "x".repeat(3_000_000) + "\"/></row></sheetData></worksheet>", "<sst/>")));
    assertEquals("damaged", TestTables.refusal(book("<worksheet><sheetData><row><c t=\"s\"><v>9</v></c></row></sheetData></worksheet>", "<sst/>")));
    assertEquals("damaged", TestTables.refusal(book("<worksheet><sheetData><row><c t=\"s\"><v>9", "<sst/>")));
  }

  private Path workbook(java.util.function.Consumer<Worksheet> fill) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", "1.0")) {
      fill.accept(book.newWorksheet("Plants"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return TestTables.file(folder, "plants.bin", bytes.toByteArray());
  }

  /** A workbook of one sheet with parts in unusual places. */
  private Path book(String sheet, String strings) {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("[Content_Types].xml", "<Types/>");
    parts.put("_rels/.rels", "<Relationships><Relationship Id=\"a\" Type=\"x/officeDocument\" Target=\"/book/main.xml\"/></Relationships>");
    parts.put("book/main.xml", "<workbook xmlns:r=\"r\"><sheets><sheet name=\"Plants\" r:id=\"s1\"/></sheets></workbook>");
    parts.put("book/_rels/main.xml.rels", "<Relationships><Relationship Id=\"s1\" Type=\"x/worksheet\" Target=\"../sheets/one.xml\"/>"
        + "<Relationship Id=\"t\" Type=\"x/sharedStrings\" Target=\"texts.xml\"/><Relationship Id=\"y\" Type=\"x/styles\" Target=\"./looks.xml\"/></Relationships>");
    parts.put("sheets/one.xml", sheet);
    parts.put("book/texts.xml", strings);
    parts.put("book/looks.xml", "<styleSheet/>");
    return TestTables.file(folder, "book.bin", TestTables.zip(parts));
  }
}
