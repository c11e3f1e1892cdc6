package guildwood.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.importing.exchange.TableFiles;
import guildwood.kernel.Checked;
import guildwood.kernel.Source;
import guildwood.species.SpeciesLibrary;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Six spreadsheets of very different make, invented for this, by suggestion alone into an empty library: everything that
 * becomes of every row stands beside the sheet in its {@code .expected} file, checked by eye.
 */
class SheetsTest {
  private static final SpeciesLibrary EMPTY = new SpeciesLibrary(0, List.of(), List.of(), Map.of());
  private static final ImportSource SOURCE = new ImportSource(Source.Kind.HEARSAY, "A sheet", "", OptionalInt.empty());

  @ParameterizedTest
  @ValueSource(strings = {"growers-list.csv", "extension-table.csv", "european.txt", "months.csv", "long-form.csv", "messy-notes.csv"})
  void becomesWhatIsExpected(String file) throws IOException, URISyntaxException {
    Path sheet = Path.of(SheetsTest.class.getResource("/importing/sheets/" + file).toURI());
    Table table = TableFiles.open(sheet, file).orThrow().get(0);
    List<String> lines = lines(table);
    assertEquals(String.join("\n", Files.readAllLines(sheet.resolveSibling(file.replaceAll("\\..*", ".expected")))), String.join("\n", lines));
  }

  /** Sheets that are likely to be taken wrong; every sheet of a workbook is held against its lines. */
  @ParameterizedTest
  @ValueSource(strings = {"workbook.xlsx", "office.ods", "nursery.csv", "dump.tsv", "three-header-rows.csv", "split-names.csv", "park-trees.xlsx",
      "turned.csv", "names.csv", "prose-cells.csv", "no-headers.csv", "merged-down.xlsx", "other-scales.csv", "merged-ends.xlsx", "made-dates.csv",
      "common-names.csv", "sections.csv", "parts.csv", "two-tables.xlsx", "ends.csv", "stock.csv", "lengths.csv", "marks.csv"})
  void isNotBent(String file) throws IOException, URISyntaxException {
    Path sheet = Path.of(SheetsTest.class.getResource("/importing/odd/" + file).toURI());
    List<String> lines = new ArrayList<>();
    for (Table table : TableFiles.open(sheet, file).orThrow()) {
      lines.add("sheet " + table.name());
      Checked<Heading> heading = HeaderFinder.find(table);
      lines.addAll(heading.isRefused() ? List.of("no heading: " + heading.findings().get(0).code()) : lines(table));
    }
    assertEquals(String.join("\n", Files.readAllLines(sheet.resolveSibling(file.replaceAll("\\..*", ".expected")))), String.join("\n", lines));
  }

  @Test
  void everyOfTenThousandRowsIsCounted() {
    StringBuilder text = new StringBuilder("Latin name,Height (cm),pH");
    for (int i = 0; i < 10_000; i++) {
      String letters = Integer.toString(i, 26).chars().mapToObj(c -> String.valueOf((char) (c <= '9' ? 'q' + c - '0' : c))).reduce("", String::concat);
      text.append('\n').append(i % 100 == 99 ? "Subtotal" : "Carex zz" + letters + "us").append(',').append(i % 7 == 0 ? "tall" : 10 + i % 90).append(",\"6,5\"");
    }
    Table table = TextTable.of("long", text.toString());
    Mapping mapping = new MappingSuggester(EMPTY).suggest(table, HeaderFinder.find(table).orThrow()).orThrow().mapping();
    ImportCounts counts = new Review(new ImportPlan(mapping, SOURCE, Decisions.NONE), EMPTY).run(table, row -> true, ImportProgress.NONE).orThrow();
    assertEquals(10_000, counts.rows());
    assertEquals(100, counts.refusedRows());
    assertEquals(9_900, counts.newSpecies());
    assertEquals(2 * 9_900, counts.valuesAdded() + counts.cellsUnread());
  }

  private static List<String> lines(Table table) {
    Mapping mapping = new MappingSuggester(EMPTY).suggest(table, HeaderFinder.find(table).orThrow()).orThrow().mapping();
    List<String> lines = new ArrayList<>();
    if (!mapping.findings().isEmpty()) {
      return List.of("cannot serve: " + mapping.findings().get(0).code());
    }
    mapping.columns().forEach(c -> lines.add("column " + c.header() + " = " + c.meaning().key() + " in " + c.unit().key()));
    ImportCounts counts = new Review(new ImportPlan(mapping, SOURCE, Decisions.NONE), EMPTY).run(table, row -> {
      lines.add(row.row() + " " + row.fate().key() + " " + row.name() + (row.names() == null ? "" : " " + row.names().commonNames()));
      row.values().forEach(v -> lines.add("  " + v.fate().key() + " " + v.value().trait().key()
          + (v.value().item().isEmpty() ? "" : "." + v.value().item()) + " = " + v.value().entered()));
      row.notes().forEach(n -> lines.add("  note " + n.header() + ": " + n.text()));
      row.unread().forEach(u -> lines.add("  unread " + u.header() + ": " + u.text() + " (" + u.reason().code() + ")"));
      row.reading().plantsOnHand().ifPresent(n -> lines.add("  at hand " + n));
      row.reading().priceCents().ifPresent(n -> lines.add("  cents " + n));
      return true;
    }, ImportProgress.NONE).orThrow();
    lines.add(counts.toString());
    return lines;
  }
}
