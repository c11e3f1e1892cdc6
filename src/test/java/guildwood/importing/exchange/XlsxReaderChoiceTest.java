package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.importing.Table;
import guildwood.importing.TableCell;
import guildwood.kernel.Checked;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Why XLSX is read by ourselves: what workbooks contain that fastexcel-reader does not read or reads as something else.
 * Where this fails because the library has learned it, weigh the decision in DEVELOPERS.md anew.
 */
class XlsxReaderChoiceTest {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String STRICT = "http://purl.oclc.org/ooxml/";
  private static final String TEXTS_PART = "<Override PartName=\"/xl/sharedStrings.xml\" ContentType=\"application/"
      + "vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml\"/>";
  private static final String HAZEL = "<c r=\"A1\" t=\"s\"><v>0</v></c>";

  @TempDir
  Path folder;

  static Stream<Arguments> workbooks() {
    Map<String, String> plain = parts(HAZEL);
    return Stream.of(
        Arguments.of("a plain one", plain, "hazel", "hazel"),
        Arguments.of("a filled-down formula with a name that ends in a number",
            parts("<c r=\"A1\"><f t=\"shared\" ref=\"A1:B1\" si=\"0\">ATAN2(C1,D1)</f><v>1</v></c><c r=\"B1\"><f t=\"shared\" si=\"0\"/><v>2</v></c>"),
            "1 2", "ArrayIndexOutOfBoundsException"),
        Arguments.of("a day written as such", parts(HAZEL + "<c r=\"B1\" t=\"d\"><v>2026-04-08</v></c>"), "hazel 2026-04-08", "IllegalStateException"),
        Arguments.of("strict names", changed(changed(plain, MAIN, STRICT + "spreadsheetml/main"), RELATIONS, STRICT + "officeDocument/relationships"),
            "hazel", "ExcelReaderException"),
        Arguments.of("texts that only a relation names", changed(plain, TEXTS_PART, ""), "hazel", "null"),
        Arguments.of("a text that is not there", parts("<c r=\"A1\" t=\"s\"><v>7</v></c>"), "table-file.damaged", ""),
        Arguments.of("a reading hint", parts("<c r=\"A1\" t=\"inlineStr\"><is><t>東</t><rPh sb=\"0\" eb=\"1\"><t>ひがし</t></rPh></is></c>"), "東", "東ひがし"),
        // One came to an empty text, the other has yet to be worked out: the library says the same of both.
        Arguments.of("an empty text", parts("<c r=\"A1\" t=\"str\"><f>D1</f><v/></c>"), "", ""),
        Arguments.of("a value still to come", parts("<c r=\"A1\"><f>D1</f><v/></c>"), "=D1", ""));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("workbooks")
  void oursAndTheLibrary(String name, Map<String, String> parts, String ours, String library) throws IOException {
    Path file = TestTables.file(folder, "plants.xlsx", TestTables.zip(parts));
    assertEquals(ours, ours(file), "ours");
    assertEquals(library, library(file), "fastexcel-reader");
  }

  private static String ours(Path file) {
    List<String> texts = new ArrayList<>();
    Table sheet = TableFiles.open(file, "plants").orThrow().get(0);
    Checked<Long> rows = sheet.rows(row -> texts.addAll(row.cells().stream().map(TableCell::text).toList()));
    return rows.isRefused() ? rows.findings().get(0).code() : String.join(" ", texts);
  }

  private static String library(Path file) throws IOException {
    try (ReadableWorkbook book = new ReadableWorkbook(file.toFile(), new ReadingOptions(false, true)); Stream<Row> rows = book.getFirstSheet().openStream()) {
      return String.join(" ", rows.flatMap(Row::stream).map(cell -> String.valueOf(cell.getRawValue())).toList());
    } catch (RuntimeException e) {
      return e.getClass().getSimpleName();
    }
  }

  private static Map<String, String> parts(String cells) {
    String packaged = "http://schemas.openxmlformats.org/package/2006/";
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("[Content_Types].xml", "<Types xmlns=\"" + packaged + "content-types\"><Override PartName=\"/xl/workbook.xml\" ContentType=\"application/"
        + "vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>" + TEXTS_PART + "</Types>");
    parts.put("_rels/.rels", "<Relationships xmlns=\"" + packaged + "relationships\"><Relationship Id=\"r1\" Type=\"" + RELATIONS
        + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
    parts.put("xl/workbook.xml", "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + RELATIONS + "\"><sheets><sheet name=\"Plants\" r:id=\"r1\"/></sheets></workbook>");
    parts.put("xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"" + packaged + "relationships\"><Relationship Id=\"r1\" Type=\"" + RELATIONS
        + "/worksheet\" Target=\"worksheets/sheet1.xml\"/><Relationship Id=\"r2\" Type=\"" + RELATIONS + "/sharedStrings\" Target=\"sharedStrings.xml\"/></Relationships>");
    parts.put("xl/worksheets/sheet1.xml", "<worksheet xmlns=\"" + MAIN + "\"><sheetData><row r=\"1\">" + cells + "</row></sheetData></worksheet>");
    parts.put("xl/sharedStrings.xml", "<sst xmlns=\"" + MAIN + "\"><si><t>hazel</t></si></sst>");
    return parts;
  }

  private static Map<String, String> changed(Map<String, String> parts, String from, String to) {
    Map<String, String> changed = new LinkedHashMap<>(parts);
    changed.replaceAll((part, text) -> text.replace(from, to));
    return changed;
  }
}
