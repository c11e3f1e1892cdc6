package guildwood.importing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Source;
import guildwood.species.SpeciesLibrary;
import guildwood.species.TraitReader;
import guildwood.species.exchange.ShippedLibrary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for every table, however odd: each cell that is not blank is accounted for, and the counts add up. */
class NothingLostProperties {
  private static final SpeciesLibrary LIBRARY = ShippedLibrary.read("/seed-data").orThrow();
  private static final List<String> NAMES = List.of("Malus domestica", "Amelanchier alnifolia Nutt.", "Rosa canina", "Rosa cf. canina", "Salix spp.",
      "Quercus x bebbiana", "Pyrus communis 'Conference'", "hazel", "", "?", "Corylus avellana", "corylus avellana", "Malus domestca", "=1+1", "Total");
  private static final List<String> HEADERS = List.of("Height", "Height (ft)", "Spread, cm", "pH min", "pH max", "pH", "Zone", "Min temp °F", "Light",
      "Shade Tolerance", "Moisture", "Bloom", "Jan", "Bloom Apr", "Bloom May", "Harvest", "Uses", "Functions", "N-fixer", "Soil", "Sandy", "Clay",
      "Toxic", "Layer", "Family", "Synonyms", "Common name", "Have", "Price", "Source", "Page", "Notes", "whatever", "", "Evidence", "Value", "Trait",
      "Propagation", "Propagated by seed", "Type", "Juglone tolerant", "Growth rate", "Frost free days", "Genus", "Cultivar", "Edible", "Roots");

  private static String cell(Random random, List<String> pool) {
    int kind = random.nextInt(10);
    return kind < 3 ? "" : kind < 9 ? pool.get(random.nextInt(pool.size())) : pool.get(random.nextInt(pool.size())) + ", " + pool.get(random.nextInt(pool.size()));
  }

  private static Table table(Random random, List<String> pool) {
    List<String> headers = new ArrayList<>(List.of(random.nextInt(4) == 0 ? "name" : "Latin name"));
    for (int i = 0; i < 3 + random.nextInt(12); i++) {
      headers.add(HEADERS.get(random.nextInt(HEADERS.size())));
    }
    List<TableRow> rows = new ArrayList<>(List.of(new TableRow(1, headers.stream().map(TableCell::text).toList())));
    for (int r = 0; r < 12; r++) {
      List<TableCell> cells = new ArrayList<>(List.of(TableCell.text(NAMES.get(random.nextInt(NAMES.size())))));
      for (int i = 1; i < headers.size(); i++) {
        cells.add(new TableCell(cell(random, pool), TableCell.Kind.values()[random.nextInt(20) == 0 ? random.nextInt(5) : 0]));
      }
      rows.add(new TableRow(r + 2, cells));
    }
    return new Table() {
      @Override
      public String name() {
        return "t";
      }

      @Override
      public guildwood.kernel.Checked<Long> rows(RowTaker taker) {
        rows.stream().takeWhile(taker::take).count();
        return guildwood.kernel.Checked.of((long) rows.size());
      }
    };
  }

  @Test
  void everyCellIsAccountedForAndEveryValueIsReadAgainAsItself() throws Exception {
    List<String> pool = Stream.concat(CellReaderTest.lines("/importing/cells.txt").stream().map(line -> line.split(" \\| ", -1)[2]),
        Stream.of("yes", "x", "12", "3.5", "-30", "zone 4", "Rosaceae", "Malus pumila", "12.50", "seed; division", "bees, mulch", "\u0007bell", "a\nb")).toList();
    Random random = new Random(20261125);
    long values = 0;
    long unread = 0;
    for (int n = 0; n < 150; n++) {
      Table table = table(random, pool);
      var heading = HeaderFinder.at(table, 1, 1).orThrow();
      Mapping mapping = new MappingSuggester(LIBRARY).suggest(table, heading).orThrow().mapping();
      ImportPlan plan = new ImportPlan(mapping, new ImportSource(Source.Kind.HEARSAY, "T", "", OptionalInt.empty()), Decisions.NONE);
      if (!mapping.findings().isEmpty()) {
        continue;
      }
      List<RowOutcome> outcomes = new ArrayList<>();
      ImportCounts counts = new Review(plan, LIBRARY).run(table, outcomes::add, ImportProgress.NONE).orThrow();
      List<TableRow> rows = DataRows.of(table, plan).first(100).orThrow();
      assertEquals(rows.size(), outcomes.size());
      for (int i = 0; i < rows.size(); i++) {
        accounted(mapping, rows.get(i), outcomes.get(i));
      }
      assertEquals(rows.size(), counts.rows());
      assertEquals(counts.rows() - outcomes.stream().filter(o -> o.fate() == RowFate.NEW_AGAIN).count(),
          counts.newSpecies() + counts.knownRows() + counts.refusedRows() + counts.leftOutRows());
      assertEquals(outcomes.stream().mapToLong(o -> o.values().size()).sum(), counts.valuesAdded() + counts.valuesSame() + counts.conflicts());
      values += counts.valuesAdded() + counts.valuesSame() + counts.conflicts();
      unread += counts.cellsUnread();
    }
    assertTrue(values > 300 && unread > 500, values + " values, " + unread + " unread");
  }

  private static void accounted(Mapping mapping, TableRow row, RowOutcome outcome) {
    RowReading reading = outcome.reading();
    Set<Integer> places = new HashSet<>(reading.used());
    places.addAll(reading.silent());
    reading.values().forEach(v -> places.addAll(v.columns()));
    reading.notes().forEach(n -> places.add(n.column()));
    Stream.concat(reading.unread().stream(), outcome.unread().stream()).forEach(u -> places.add(u.column()));
    for (ColumnMapping column : mapping.columns()) {
      if (!row.cell(column.column()).isBlank()) {
        assertTrue(places.contains(column.column()), () -> column + " holds '" + row.cell(column.column()) + "' and is lost in " + reading);
      }
    }
    for (ReadValue value : reading.values()) {
      assertEquals(value.value(), TraitReader.read(value.trait(), value.entered(), "").orThrow(), value.toString());
      String cells = value.columns().stream().map(c -> row.cell(c).text().strip()).collect(Collectors.joining());
      assertTrue(value.entered().equals(cells) || !value.note().isEmpty(), () -> "what stood in the cell is lost: " + value + " from " + cells);
    }
  }
}
