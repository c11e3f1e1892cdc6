package guildwood.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.importing.exchange.TableFiles;
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

  private static List<String> lines(Table table) {
    Mapping mapping = new MappingSuggester(EMPTY).suggest(table, HeaderFinder.find(table).orThrow()).orThrow().mapping();
    List<String> lines = new ArrayList<>();
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
