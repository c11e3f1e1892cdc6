package guildwood.importing.exchange;

import guildwood.importing.Table.RowTaker;
import guildwood.importing.TableCell;
import guildwood.importing.TableRow;
import java.util.ArrayList;
import java.util.List;

/** Gathers the cells of a row, keeps to the limits and hands the row over. Rows with nothing in them are left out. */
final class RowGate {
  private final RowTaker taker;
  private final List<TableCell> cells = new ArrayList<>();
  private long handedOver;
  private long chars;

  RowGate(RowTaker taker) {
    this.taker = taker;
  }

  /** Puts a cell in its place; blank ones are understood. */
  void put(long row, long column, TableCell cell) throws RefusedRead {
    if (cell.isBlank()) {
      return;
    }
    if (column >= TableLimits.COLUMNS) {
      throw new RefusedRead("columns", row, TableLimits.COLUMNS);
    }
    if (cell.text().length() > TableLimits.CELL_CHARS) {
      throw new RefusedRead("cell", row, column + 1, TableLimits.CELL_CHARS);
    }
    chars += cell.text().length();
    if (chars > TableLimits.ROW_CHARS) {
      throw new RefusedRead("row-length", row);
    }
    while (cells.size() <= column) {
      cells.add(TableCell.EMPTY);
    }
    cells.set((int) column, cell);
  }

  /**
   * Ends a row that stands several times in a row.
   *
   * @return whether to go on
   */
  boolean end(long row, long times) throws RefusedRead {
    boolean more = true;
    if (!cells.isEmpty()) {
      List<TableCell> kept = List.copyOf(cells);
      for (long i = 0; i < times && more; i++) {
        if (handedOver == TableLimits.ROWS) {
          throw new RefusedRead("rows", TableLimits.ROWS);
        }
        handedOver++;
        more = taker.take(new TableRow(row + i, kept));
      }
      cells.clear();
    }
    chars = 0;
    return more;
  }

  long handedOver() {
    return handedOver;
  }
}
