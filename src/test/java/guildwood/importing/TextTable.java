package guildwood.importing;

import guildwood.kernel.Checked;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A table for tests, from comma-separated text. */
public final class TextTable implements Table {
  private final String name;
  private final Supplier<Reader> open;

  public TextTable(String name, Supplier<Reader> open) {
    this.name = name;
    this.open = open;
  }

  public static TextTable of(String name, String... lines) {
    String text = String.join("\n", lines);
    return new TextTable(name, () -> new StringReader(text));
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Checked<Long> rows(RowTaker taker) {
    long taken = 0;
    try (CSVParser parser = CSVParser.parse(open.get(), CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get())) {
      for (CSVRecord csv : parser) {
        taken++;
        List<TableCell> cells = csv.toList().stream().map(TableCell::text).toList();
        if (!taker.take(new TableRow(csv.getRecordNumber(), cells))) {
          break;
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Checked.of(taken);
  }
}
