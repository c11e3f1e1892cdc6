package guildwood.importing.exchange;

import guildwood.importing.Heading;
import guildwood.importing.TableRow;
import guildwood.species.exchange.SafeCell;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes rows that could not be read whole as a table of their own (RFC 4180), each with its number and the reasons
 * behind its cells, so that it can be mended in a spreadsheet and brought again.
 */
public final class RejectedRows {
  /** Headers of the two columns that are added; they are left out where the file is brought again. */
  public static final String ROW = "Row in the first file";

  public static final String REASON = "Why it stayed out";

  private final CSVPrinter printer;
  private final Heading heading;

  /** @param to where the text goes; the caller encodes it as UTF-8 */
  public RejectedRows(Appendable to, Heading heading) {
    this.heading = heading;
    try {
      printer = new CSVPrinter(to, CSVFormat.RFC4180);
      List<String> header = new ArrayList<>();
      for (int column = 0; column < heading.columns(); column++) {
        String unit = heading.units().get(column);
        header.add(SafeCell.mark(heading.headers().get(column) + (unit.isEmpty() ? "" : " (" + unit + ")")));
      }
      header.addAll(List.of(ROW, REASON));
      printer.printRecord(header);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** @param reasons in words */
  public void add(TableRow row, List<String> reasons) {
    List<String> cells = new ArrayList<>();
    for (int column = 0; column < heading.columns(); column++) {
      cells.add(SafeCell.mark(row.cell(column).text()));
    }
    cells.add(Long.toString(row.number()));
    cells.add(SafeCell.mark(String.join("; ", reasons)));
    try {
      printer.printRecord(cells);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
