package guildwood.site.exchange;

import guildwood.kernel.Finding;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV file people hand in (RFC 4180, UTF-8, header row). Columns are found by name, in any order; what is wrong
 * is collected as findings whose field reads {@code file, row 3, column cover_percent}, the header being row 1.
 */
final class InputTable {
  private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder()
      .setHeader().setSkipHeaderRecord(true).setIgnoreHeaderCase(true).setTrim(true)
      .setIgnoreSurroundingSpaces(true).get();

  /** What statistics programs write for a value that is missing. */
  private static final Set<String> MISSING = Set.of("", "na", "n/a", "nan", "null");

  private final String file;
  private final List<Row> rows = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private InputTable(String file) {
    this.file = file;
  }

  /** Reads a file whose header must have the required columns. */
  static InputTable read(Path path, List<String> required) {
    try {
      String text = Files.readString(path, StandardCharsets.UTF_8);
      return parse(path.getFileName().toString(), text, required);
    } catch (CharacterCodingException e) {
      return refused(path, "table.not-utf8");
    } catch (IOException e) {
      return refused(path, "table.unreadable");
    }
  }

  static InputTable parse(String file, String text, List<String> required) {
    InputTable table = new InputTable(file);
    String clean = text.startsWith("\uFEFF") ? text.substring(1) : text;
    if (clean.isBlank()) {
      table.findings.add(Finding.of("table.empty", file));
      return table;
    }
    try (Reader reader = new StringReader(clean); CSVParser parser = FORMAT.parse(reader)) {
      List<String> missing = required.stream().filter(c -> !parser.getHeaderMap().containsKey(c)).toList();
      if (!missing.isEmpty()) {
        boolean otherSign = parser.getHeaderNames().size() == 1 && parser.getHeaderNames().get(0).matches(".*[;\t|].*");
        table.findings.add(Finding.of(otherSign ? "table.not-commas" : "table.columns-missing", file, String.join(", ", missing)));
        return table;
      }
      for (CSVRecord record : parser) {
        Row row = table.new Row(record.getRecordNumber() + 1, record.toMap());
        if (!record.isConsistent()) {
          row.refuse("", "table.row-length", record.size(), parser.getHeaderNames().size());
        }
        table.rows.add(row);
      }
    } catch (IOException | UncheckedIOException | IllegalArgumentException | IllegalStateException e) {
      table.findings.add(Finding.of("table.broken", file));
    }
    return table;
  }

  private static InputTable refused(Path path, String code) {
    InputTable table = new InputTable(path.toString());
    table.findings.add(Finding.of(code, path.toString()));
    return table;
  }

  List<Row> rows() {
    return rows;
  }

  /** All that is wrong, in the order found. */
  List<Finding> findings() {
    return findings;
  }

  /** One row below the header. */
  final class Row {
    private final long number;
    private final Map<String, String> cells;

    private Row(long number, Map<String, String> cells) {
      this.number = number;
      this.cells = cells;
    }

    long number() {
      return number;
    }

    /** Text of a column; empty where there is no such column or nothing in it. */
    String text(String column) {
      String text = cells.entrySet().stream().filter(e -> e.getKey().equalsIgnoreCase(column))
          .map(Map.Entry::getValue).findFirst().orElse("");
      return text == null || MISSING.contains(text.toLowerCase(java.util.Locale.ROOT)) ? "" : text;
    }

    /** Text that must be there; its absence is a finding. */
    Optional<String> required(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        refuse(column, "value.missing");
      }
      return Optional.of(text).filter(t -> !t.isEmpty());
    }

    /** A number; absent where the cell is empty or, with a finding, not a number. */
    OptionalDouble number(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        return OptionalDouble.empty();
      }
      try {
        double value = Double.parseDouble(text);
        if (Double.isFinite(value)) {
          return OptionalDouble.of(value);
        }
      } catch (NumberFormatException e) {
        // Falls through to the finding.
      }
      refuse(column, "number.unreadable", text);
      return OptionalDouble.empty();
    }

    void refuse(String column, String code, Object... args) {
      String where = file + ", row " + number + (column.isEmpty() ? "" : ", column " + column);
      findings.add(Finding.of(code, where, args));
    }
  }
}
