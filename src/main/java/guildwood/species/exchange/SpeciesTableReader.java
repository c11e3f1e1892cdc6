package guildwood.species.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.Species;
import guildwood.species.SpeciesNames;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the table that {@link SpeciesTableWriter} writes, also one that people made with fewer columns or
 * their own words in the cells. Only the scientific name must be there. Every finding says row and column.
 */
public final class SpeciesTableReader {
  private static final CSVFormat RFC_4180 = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private final List<Finding> findings = new ArrayList<>();
  private final List<Species> species = new ArrayList<>();
  private final Map<String, Long> rowsById = new HashMap<>();
  private final Map<String, Integer> places = new HashMap<>();
  private final List<String> unknown = new ArrayList<>();
  private int columns;
  private long row = 1;

  private SpeciesTableReader() {}

  /** The stream is read to its end and left open. */
  public static Checked<SpeciesTable> read(InputStream in) {
    SpeciesTableReader reader = new SpeciesTableReader();
    // A fresh decoder reports malformed bytes instead of replacing them.
    try (CSVParser parser = CSVParser.parse(decoded(in), RFC_4180)) {
      reader.table(parser.iterator());
    } catch (IOException | UncheckedIOException e) {
      boolean badText = e instanceof CharacterCodingException || e.getCause() instanceof CharacterCodingException;
      reader.findings.add(badText ? Finding.of("seed.not-utf-8", "") : Finding.of("seed.unreadable", at(reader.row + 1, "")));
    }
    return reader.findings.isEmpty()
        ? Checked.of(new SpeciesTable(reader.species, reader.unknown))
        : Checked.refused(reader.findings);
  }

  private static Reader decoded(InputStream in) {
    return new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder());
  }

  private void table(Iterator<CSVRecord> records) {
    if (!records.hasNext()) {
      findings.add(Finding.of("species-table.no-name-column", ""));
      return;
    }
    header(records.next().toList());
    while (records.hasNext() && columns > 0) {
      List<String> cells = records.next().toList();
      row++;
      if (cells.size() == columns) {
        species(cells);
      } else if (cells.size() != 1 || !cells.get(0).isBlank()) {
        findings.add(Finding.of("seed.cells", at(row, ""), cells.size(), columns));
      }
    }
  }

  private void header(List<String> headings) {
    Set<String> known = new HashSet<>(SpeciesColumn.NAMES);
    SpeciesColumn.TRAITS.forEach(column -> known.add(column.name()));
    for (int i = 0; i < headings.size(); i++) {
      String heading = headings.get(i).replace(BYTE_ORDER_MARK, "").strip();
      if (heading.isEmpty()) {
        continue;
      }
      if (places.putIfAbsent(heading, i) != null) {
        findings.add(Finding.of("seed.twice", at(1, ""), heading));
      } else if (!known.contains(heading)) {
        unknown.add(heading);
      }
    }
    columns = places.containsKey("scientific_name") ? headings.size() : 0;
    if (columns == 0) {
      findings.add(Finding.of("species-table.no-name-column", ""));
    }
  }

  private void species(List<String> cells) {
    int before = findings.size();
    Checked<SpeciesNames> names = SpeciesNames.read(cell(cells, "scientific_name"), cell(cells, "common_names"),
        cell(cells, "family"), cell(cells, "synonyms"));
    names.findings().forEach(f -> findings.add(new Finding(f.code(), at(row, f.field()), f.args())));
    String id = cell(cells, "id").isEmpty() ? names.value().map(SpeciesNames::id).orElse("") : cell(cells, "id");
    if (!id.isEmpty() && !id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      findings.add(Finding.of("seed.id", at(row, "id"), id));
    }
    Long first = id.isEmpty() ? null : rowsById.putIfAbsent(id, row);
    if (first != null) {
      findings.add(Finding.of("species-table.twice", at(row, ""), id, first));
    }
    SpeciesRow statements = new SpeciesRow(name -> cell(cells, name), column -> at(row, column), findings);
    SpeciesNames called = names.value().orElse(null);
    var stated = statements.read();
    if (findings.size() == before && called != null) {
      species.add(new Species(id, called.scientificName(), called.commonNames(), called.family(), called.synonyms(), false, stated));
    }
  }

  /** The text of a cell; empty where the table has no such column. */
  private String cell(List<String> cells, String column) {
    Integer place = places.get(column);
    return place == null ? "" : SafeCell.unmark(cells.get(place)).strip();
  }

  private static String at(long row, String column) {
    return "row " + row + (column.isEmpty() ? "" : ", column " + column);
  }
}
