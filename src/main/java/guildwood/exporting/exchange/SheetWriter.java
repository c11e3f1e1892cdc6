package guildwood.exporting.exchange;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes one table of a workbook: a heading that stays in sight, then row by row, without keeping them. A table of
 * more rows than a sheet can hold goes on on another one.
 */
final class SheetWriter {
  /** A sheet ends at row 1,048,576 (ECMA-376, part 1, 18.3.1.73). */
  private static final int MOST_ROWS = 1_000_000;
  private static final int ROWS_KEPT = 500;
  private static final int WIDEST = 40;
  /** Text that a program takes for a formula when somebody edits the cell, unless the cell is marked as text. */
  private static final Pattern RISKY = Pattern.compile("[=+\\-@].*", Pattern.DOTALL);

  private final Workbook workbook;
  private final String name;
  private final List<String> heading;
  private final int frozenColumns;
  private Worksheet sheet;
  private int sheets;
  private int row;

  SheetWriter(Workbook workbook, String name, List<String> heading, int frozenColumns) {
    this.workbook = workbook;
    this.name = name;
    this.heading = List.copyOf(heading);
    this.frozenColumns = frozenColumns;
    begin();
  }

  private void begin() {
    sheets++;
    sheet = workbook.newWorksheet(sheets == 1 ? name : name + " " + sheets);
    sheet.freezePane(frozenColumns, 1);
    for (int i = 0; i < heading.size(); i++) {
      sheet.inlineString(0, i, heading.get(i));
      sheet.style(0, i).bold().set();
      sheet.width(i, Math.min(WIDEST, Math.max(12, heading.get(i).length() + 2)));
    }
    row = 1;
  }

  /** Adds a row; cells are text or numbers, empty text leaves the cell empty. */
  void row(List<?> cells) throws IOException {
    if (row > MOST_ROWS) {
      sheet.finish();
      begin();
    }
    for (int i = 0; i < cells.size(); i++) {
      cell(i, cells.get(i));
    }
    if (++row % ROWS_KEPT == 0) {
      sheet.flush();
    }
  }

  private void cell(int column, Object value) {
    if (value instanceof BigDecimal number) {
      sheet.value(row, column, number);
    } else if (!((String) value).isEmpty()) {
      String text = (String) value;
      sheet.inlineString(row, column, text);
      if (RISKY.matcher(text).matches()) {
        sheet.style(row, column).format("@").set();
      }
    }
  }

  void finish() throws IOException {
    sheet.finish();
  }
}
