package guildwood.importing;

import guildwood.kernel.Checked;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The rows of a table below its heading, blank ones left out, with the cells that somebody typed anew. */
public final class DataRows implements Table {
  private final Table table;
  private final Heading heading;
  private final Map<Long, Map<Integer, String>> typed = new TreeMap<>();

  private DataRows(Table table, Heading heading, Map<Decisions.Place, String> cells) {
    this.table = table;
    this.heading = heading;
    cells.forEach((place, text) -> typed.computeIfAbsent(place.row(), r -> new TreeMap<>()).put(place.column(), text));
  }

  public static DataRows of(Table table, Heading heading) {
    return new DataRows(table, heading, Map.of());
  }

  public static DataRows of(Table table, ImportPlan plan) {
    return new DataRows(table, plan.mapping().heading(), plan.decisions().cells());
  }

  @Override
  public String name() {
    return table.name();
  }

  @Override
  public Checked<Long> rows(RowTaker taker) {
    return table.rows(row -> {
      boolean below = row.number() > heading.lastRow();
      return !below || row.isBlank() && !typed.containsKey(row.number()) || taker.take(mended(row));
    });
  }

  /** The first rows, at most so many. */
  public Checked<List<TableRow>> first(int most) {
    List<TableRow> first = new ArrayList<>();
    return rows(row -> {
      first.add(row);
      return first.size() < most;
    }).map(read -> List.copyOf(first));
  }

  private TableRow mended(TableRow row) {
    Map<Integer, String> cells = typed.get(row.number());
    if (cells == null) {
      return row;
    }
    int last = Math.max(row.cells().size(), Collections.max(cells.keySet()) + 1);
    List<TableCell> mended = new ArrayList<>();
    for (int column = 0; column < last; column++) {
      mended.add(cells.containsKey(column) ? TableCell.text(cells.get(column)) : row.cell(column));
    }
    return new TableRow(row.number(), mended);
  }
}
