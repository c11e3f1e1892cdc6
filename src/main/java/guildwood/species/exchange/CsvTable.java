package guildwood.species.exchange;

import guildwood.kernel.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One CSV file of fixed columns (RFC 4180, UTF-8, header row), read strictly. */
public final class CsvTable {
  private static final CSVFormat RFC_4180 = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();

  private CsvTable() {}

  /**
   * Every row that has the columns; what is wrong with the file or its rows goes to the findings.
   *
   * @param file name of the file in the findings
   */
  public static List<Row> read(String file, Supplier<InputStream> open, List<String> columns, List<Finding> findings) {
    List<Row> rows = new ArrayList<>();
    try (InputStream in = open.get()) {
      if (in == null) {
        findings.add(Finding.of("seed.no-file", Place.of(file)));
        return rows;
      }
      // A fresh decoder reports malformed bytes instead of replacing them.
      read(file, new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder()), columns, findings, rows::add);
    } catch (IOException e) {
      findings.add(Finding.of("seed.unreadable", Place.of(file)));
    }
    return rows;
  }

  /** Hands over every row that has the columns, one by one, until the taker has enough. */
  static void read(String file, Reader reader, List<String> columns, List<Finding> findings, Predicate<Row> taker) {
    long last = 0;
    try (CSVParser parser = CSVParser.parse(reader, RFC_4180)) {
      for (CSVRecord csv : parser) {
        last = csv.getRecordNumber();
        Optional<Row> row = row(file, csv, columns, findings);
        if (row.isPresent() && !taker.test(row.get())) {
          return;
        }
      }
    } catch (IOException | UncheckedIOException e) {
      findings.add(isBadText(e)
          ? Finding.of("seed.not-utf-8", Place.of(file))
          : Finding.of("seed.unreadable", Place.of(file, last + 1, "")));
    }
  }

  private static boolean isBadText(Exception e) {
    return e instanceof CharacterCodingException || e.getCause() instanceof CharacterCodingException;
  }

  private static Optional<Row> row(String file, CSVRecord csv, List<String> columns, List<Finding> findings) {
    long number = csv.getRecordNumber();
    List<String> cells = csv.toList();
    if (number == 1) {
      if (!cells.equals(columns)) {
        findings.add(Finding.of("seed.header", Place.of(file, 1, ""), String.join(",", columns)));
      }
    } else if (cells.size() != columns.size()) {
      findings.add(Finding.of("seed.cells", Place.of(file, number, ""), cells.size(), columns.size()));
    } else {
      return Optional.of(new Row(file, number, columns, cells));
    }
    return Optional.empty();
  }

  /**
   * One row.
   *
   * @param number as a spreadsheet counts: the header is row 1
   */
  public record Row(String file, long number, List<String> columns, List<String> cells) {
    public String cell(String column) {
      return cells.get(columns.indexOf(column));
    }

    /** The row with the marks taken off that keep a spreadsheet from taking text for a formula. */
    Row unmarked() {
      return new Row(file, number, columns, cells.stream().map(SafeCell::unmark).toList());
    }

    /** A finding about one of the row's cells. */
    Finding finding(String code, String column, Object... args) {
      return Finding.of(code, at(column), args);
    }

    /** Another reader's finding, moved to where it stands in the file. */
    Finding moved(Finding finding, String column) {
      return new Finding(finding.code(), at(column), finding.args());
    }

    private String at(String column) {
      return Place.of(file, number, column);
    }
  }

  /** Where in the files something stands, in words. */
  static final class Place {
    private Place() {}

    static String of(String file) {
      return file;
    }

    static String of(String file, long row, String column) {
      return file + ", row " + row + (column.isEmpty() ? "" : ", column " + column);
    }
  }
}
