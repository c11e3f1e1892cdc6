package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.miachm.sods.Range;
import com.github.miachm.sods.Sheet;
import com.github.miachm.sods.SpreadSheet;
import guildwood.importing.Table;
import guildwood.importing.TableCell;
import guildwood.importing.TableCell.Kind;
import guildwood.importing.TableRow;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spreadsheets from another writer (SODS), and content written by hand as office programs write it. */
class OdsFileTest {
  @TempDir
  Path folder;

  @Test
  void readsWhatAnotherProgramWroteAndReads() throws IOException {
    java.util.Random random = new java.util.Random(6);
    Sheet sheet = new Sheet("Plants", 200, 10);
    for (int row = 0; row < 200; row++) {
      for (int column = 0; column < 10; column++) {
        if (random.nextInt(3) > 0) {
          sheet.getRange(row, column).setValue(random.nextBoolean() ? "text  " + random.nextInt(50) + "\nä & <b>" : (Object) (random.nextInt(10_000) / 8.0));
        }
      }
    }
    sheet.getRange(0, 0).setValue(LocalDate.of(2026, 4, 8));
    sheet.getRange(0, 1).setValue(true);
    SpreadSheet book = new SpreadSheet();
    book.appendSheet(sheet);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    book.save(bytes);
    Path file = TestTables.file(folder, "plants.bin", bytes.toByteArray());

    List<TableRow> ours = TestTables.rows(TableFiles.open(file, "x").orThrow().get(0));
    assertEquals(new TableCell("2026-04-08", Kind.DATE), ours.get(0).cell(0));
    assertEquals(new TableCell("TRUE", Kind.YES_NO), ours.get(0).cell(1));
    Range theirs = new SpreadSheet(file.toFile()).getSheet(0).getDataRange();
    int cells = 0;
    for (TableRow row : ours) {
      for (int column = 0; column < 10; column++) {
        Object their = theirs.getCell((int) row.number() - 1, column).getValue();
        TableCell our = row.cell(column);
        if (their instanceof Number number) {
          assertEquals(number.doubleValue(), Double.parseDouble(our.text()));
          assertEquals(Kind.NUMBER, our.kind());
        } else if (our.kind() == Kind.TEXT) {
          assertEquals(their == null ? "" : their, our.text());
        }
        cells += their == null ? 0 : 1;
      }
    }
    assertTrue(cells > 1_000, "only " + cells + " cells were compared");
  }

  @Test
  void cellsAsOfficeProgramsWriteThem() {
    Path file = book("""
        <table:table table:name="Plants" table:style-name="shown">
          <table:table-column table:number-columns-repeated="16384"/>
          <table:shapes><draw:frame><draw:text-box><text:p>a remark on the sheet</text:p></draw:text-box></draw:frame></table:shapes>
          <table:table-header-rows><table:table-row><table:table-cell office:value-type="string"><text:p>name</text:p></table:table-cell>
            <table:table-cell table:number-columns-repeated="2" office:value-type="string"><text:p>month</text:p></table:table-cell>
            <table:table-cell table:number-columns-repeated="16381"/></table:table-row></table:table-header-rows>
          <table:table-row table:number-rows-repeated="3"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>
          <table:table-row table:number-rows-repeated="2">
            <table:table-cell office:value-type="string"><office:annotation><text:p>a comment</text:p></office:annotation><text:p>two<text:s text:c="2"/>
        words</text:p><text:p>next <text:span>line</text:span></text:p></table:table-cell>
            <table:covered-table-cell/>
            <table:table-cell office:value-type="float" office:value="9.144" ><text:p>9,1 m</text:p></table:table-cell>
            <table:table-cell office:value-type="float" office:value="12000"><text:p>12k</text:p></table:table-cell>
            <table:table-cell office:value-type="float" office:value="1500"><text:p>1.500,0</text:p></table:table-cell>
            <table:table-cell office:value-type="percentage" office:value="0.07"><text:p>7 %</text:p></table:table-cell>
            <table:table-cell office:value-type="currency" office:currency="EUR" office:value="4.5"><text:p>4,50 €</text:p></table:table-cell>
            <table:table-cell office:value-type="time" office:time-value="PT13H30M00S"><text:p>13:30</text:p></table:table-cell>
            <table:table-cell office:value-type="string" calcext:value-type="error" table:formula="of:=1/0"><text:p>#DIV/0!</text:p></table:table-cell>
            <table:table-cell office:value-type="date" office:date-value="2026-04-08"><text:p>4-8</text:p></table:table-cell>
          </table:table-row>
          <table:table-row table:number-rows-repeated="1048500"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>
        </table:table>""");
    List<TableRow> rows = TestTables.rows(TableFiles.open(file, "x").orThrow().get(0));
    assertEquals(List.of(1L, 5L, 6L), rows.stream().map(TableRow::number).toList());
    assertEquals(List.of("name", "month", "month"), rows.get(0).cells().stream().map(TableCell::text).toList());
    assertEquals(List.of(TableCell.text("two  \nwords\nnext line"), TableCell.EMPTY, TableCell.text("9.144 m"), new TableCell("12000", Kind.NUMBER),
        new TableCell("1500", Kind.NUMBER), TableCell.text("7%"), new TableCell("4.5", Kind.NUMBER), new TableCell("13:30", Kind.DATE),
        new TableCell("#DIV/0!", Kind.ERROR), new TableCell("2026-04-08", Kind.DATE)), rows.get(1).cells());
  }

  @Test
  void hiddenSheetsComeLastAndForeignTablesNotAtAll() {
    Path file = book("""
        <table:tracked-changes><table:cell-content-deletion><table:table-cell><text:p>gone</text:p></table:table-cell></table:cell-content-deletion></table:tracked-changes>
        <table:table table:name="Lists" table:style-name="hidden"/><table:table table:name="Plants" table:style-name="shown"/>
        <table:dde-links><table:dde-link><table:table table:name="Elsewhere"/></table:dde-link></table:dde-links>""");
    assertEquals(List.of("Plants", "Lists"), TableFiles.open(file, "x").orThrow().stream().map(Table::name).toList());
  }

  @Test
  void refusesWhatHarms() {
    String cell = "<table:table-cell office:value-type=\"string\"><text:p>x</text:p></table:table-cell>";
    assertEquals("rows 1000000", TestTables.refusal(book("<table:table><table:table-row table:number-rows-repeated=\"999999999\">" + cell + "</table:table-row></table:table>")));
    assertEquals("columns 1 1000", TestTables.refusal(book("<table:table><table:table-row>" + cell.replace("cell ", "cell table:number-columns-repeated=\"999999999\" ")
        + "</table:table-row></table:table>")));
    assertEquals("cell 1 1 32767", TestTables.refusal(book("<table:table><table:table-row>" + cell.replace(">x<", ">" + "x".repeat(50_000) + "<") + "</table:table-row></table:table>")));
    assertEquals("damaged", TestTables.refusal(book("<table:table><table:table-row>")));
    Map<String, String> locked = new LinkedHashMap<>();
    locked.put("mimetype", "application/vnd.oasis.opendocument.spreadsheet");
    locked.put("META-INF/manifest.xml", "<m:manifest xmlns:m=\"m\"><m:file-entry><m:encryption-data/></m:file-entry></m:manifest>");
    locked.put("content.xml", "gibberish");
    assertEquals("password", TestTables.refusal(TestTables.file(folder, "locked.ods", TestTables.zip(locked))));
  }

  private Path book(String tables) {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("mimetype", "application/vnd.oasis.opendocument.spreadsheet");
    parts.put("content.xml", "<office:document-content xmlns:office=\"o\" xmlns:table=\"t\" xmlns:text=\"x\" xmlns:style=\"s\" xmlns:draw=\"d\" xmlns:calcext=\"c\">"
        + "<office:automatic-styles><style:style style:name=\"shown\" style:family=\"table\"><style:table-properties table:display=\"true\"/></style:style>"
        + "<style:style style:name=\"hidden\" style:family=\"table\"><style:table-properties table:display=\"false\"/></style:style></office:automatic-styles>"
        + "<office:body><office:spreadsheet>" + tables + "</office:spreadsheet></office:body></office:document-content>");
    return TestTables.file(folder, "book.bin", TestTables.zip(parts));
  }
}
