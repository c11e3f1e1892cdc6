package guildwood.importing.web;

import guildwood.importing.ImportDraft;
import guildwood.importing.Table;
import guildwood.importing.TableRow;
import guildwood.kernel.Checked;
import java.util.ArrayList;
import java.util.List;

/** The beginning of a sheet, held while somebody says what its columns mean. */
final class Sample implements Table {
  private static final int MOST_ROWS = 600;
  private static final int MOST_CELLS = 60_000;

  private final long draftId;
  private final String name;
  private final List<TableRow> rows;

  private Sample(long draftId, String name, List<TableRow> rows) {
    this.draftId = draftId;
    this.name = name;
    this.rows = List.copyOf(rows);
  }

  static Checked<Sample> read(ImportDraft draft, Table table) {
    List<TableRow> rows = new ArrayList<>();
    int[] cells = {0};
    return table.rows(row -> {
      rows.add(row);
      cells[0] += row.cells().size();
      return rows.size() < MOST_ROWS && cells[0] < MOST_CELLS;
    }).map(read -> new Sample(draft.id(), table.name(), rows));
  }

  boolean isOf(ImportDraft draft, String sheet) {
    return draftId == draft.id() && name.equals(sheet);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Checked<Long> rows(RowTaker taker) {
    long handed = 0;
    for (TableRow row : rows) {
      handed++;
      if (!taker.take(row)) {
        break;
      }
    }
    return Checked.of(handed);
  }
}
