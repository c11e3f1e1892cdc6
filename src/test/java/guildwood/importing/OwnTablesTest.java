package guildwood.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Source;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Statement;
import guildwood.species.exchange.ShippedLibrary;
import guildwood.species.exchange.SpeciesTableWriter;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.junit.jupiter.api.Test;

/** The library's own tables, wide and long, map wholly and say nothing new. */
class OwnTablesTest {
  private static final SpeciesLibrary LIBRARY = ShippedLibrary.read("/seed-data").orThrow();
  private static final ImportSource SOURCE = new ImportSource(Source.Kind.HEARSAY, "Own", "", OptionalInt.empty());

  private static Mapping mapping(Table table) {
    return new MappingSuggester(LIBRARY).suggest(table, HeaderFinder.find(table).orThrow()).orThrow().mapping();
  }

  private static ImportCounts review(Table table, Mapping mapping, SpeciesLibrary library, List<String> odd) {
    return new Review(new ImportPlan(mapping, SOURCE, Decisions.NONE), library).run(table, row -> {
      row.unread().forEach(u -> odd.add(u.toString()));
      row.values().stream().filter(v -> v.fate() != ValueOutcome.Fate.SAME).forEach(v -> odd.add(row.name() + " " + v));
      return true;
    }, ImportProgress.NONE).orThrow();
  }

  private static Table wide() throws IOException {
    StringBuilder csv = new StringBuilder();
    SpeciesTableWriter.write(LIBRARY.species(), csv);
    return new TextTable("species", () -> new StringReader(csv.toString()));
  }

  @Test
  void everyColumnOfTheSpeciesTableHasAMeaning() throws IOException {
    assertEquals(List.of(), mapping(wide()).columns().stream().filter(c -> c.meaning().is(Meaning.Kind.NOTE)).map(ColumnMapping::header).toList());
    assertEquals(List.of(), mapping(wide()).columns().stream().filter(ColumnMapping::asksForUnit).map(ColumnMapping::header).toList());
  }

  @Test
  void theShippedLibrarysTableIsAllTheSame() throws IOException {
    List<String> odd = new ArrayList<>();
    ImportCounts counts = review(wide(), mapping(wide()), LIBRARY, odd);
    assertEquals(List.of(), odd);
    assertEquals(LIBRARY.species().size(), counts.knownRows());
    assertTrue(counts.valuesSame() > 6_000, counts.toString());
  }

  /** Into an empty library every value of the table arrives. */
  @Test
  void theShippedLibrarysTableFillsAnEmptyLibrary() throws IOException {
    SpeciesLibrary empty = new SpeciesLibrary(0, List.of(), List.of(), Map.of());
    long same = review(wide(), mapping(wide()), LIBRARY, new ArrayList<>()).valuesSame();
    ImportCounts counts = review(wide(), mapping(wide()), empty, new ArrayList<>());
    assertEquals(same, counts.valuesAdded());
    assertEquals(0, counts.cellsUnread());
    assertEquals(LIBRARY.species().size(), counts.newSpecies());
  }

  @Test
  void itsValuesInLongFormAreAllTheSame() throws IOException {
    StringBuilder csv = new StringBuilder();
    CSVPrinter printer = new CSVPrinter(csv, CSVFormat.RFC4180);
    printer.printRecord("species", "trait", "item", "value", "source", "evidence", "rules", "note");
    for (var species : LIBRARY.species()) {
      for (Statement s : species.statements()) {
        printer.printRecord(species.id(), s.trait().key(), s.item(), s.entered(), s.sourceId(), s.evidence().map(e -> e.key()).orElse(""), "", s.note());
      }
    }
    Table table = new TextTable("values", () -> new StringReader(csv.toString()));
    List<String> odd = new ArrayList<>();
    ImportCounts counts = review(table, mapping(table), LIBRARY, odd);
    assertEquals(List.of(), odd);
    assertEquals(LIBRARY.species().stream().mapToLong(s -> s.statements().size()).sum(), counts.valuesSame());
  }
}
