package guildwood.importing;

import java.util.List;

/**
 * One row of a table.
 *
 * @param number as a spreadsheet shows it, from 1; in a text file the number of the record, whatever lines it spans
 * @param cells as many as the row has; missing ones at its end count as empty
 */
public record TableRow(long number, List<TableCell> cells) {
  public TableRow {
    cells = List.copyOf(cells);
  }

  public TableCell cell(int column) {
    return column < cells.size() ? cells.get(column) : TableCell.EMPTY;
  }

  public boolean isBlank() {
    return cells.stream().allMatch(TableCell::isBlank);
  }
}
