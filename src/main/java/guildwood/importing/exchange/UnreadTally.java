package guildwood.importing.exchange;

import guildwood.importing.ImportProgress;
import guildwood.importing.ImportCounts;
import guildwood.importing.Review;
import guildwood.importing.RowOutcome;
import guildwood.importing.Table;
import guildwood.importing.TableRow;
import guildwood.importing.Unread;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.web.Messages;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What stays out of an import, by column and reason, so that it can be told in a few lines however many cells it is. */
public final class UnreadTally {
  private static final int MOST_GROUPS = 1_000;
  private static final int MOST_NEAR = 100;

  private final Map<String, Group> groups = new LinkedHashMap<>();
  private final List<NearName> near = new ArrayList<>();

  /**
   * Cells of one column that stay out for one kind of reason.
   *
   * @param header empty where whole rows stay out
   * @param text what stood in the first of them
   */
  public record Group(String header, long cells, long firstRow, String text, Finding reason) {}

  /** A name of the table that is nearly one of the library. */
  public record NearName(long row, String written, List<String> speciesIds) {}

  /**
   * Goes through the table as the import would.
   *
   * @param rejects takes every row of which anything stays out
   */
  public Checked<ImportCounts> review(Table table, Review review, Optional<RejectedRows> rejects, Messages messages) {
    LastRow last = new LastRow(table);
    return review.run(last, outcome -> {
      take(outcome);
      if (!outcome.unread().isEmpty()) {
        rejects.ifPresent(rows -> rows.add(last.row, outcome.unread().stream().map(cell -> reason(cell, messages)).distinct().toList()));
      }
      return true;
    }, ImportProgress.NONE);
  }

  private void take(RowOutcome outcome) {
    for (Unread cell : outcome.unread()) {
      String header = cell.column() == Unread.WHOLE_ROW ? "" : cell.header();
      Group first = new Group(header, 1, cell.row(), cell.text(), cell.reason());
      if (groups.size() < MOST_GROUPS || groups.containsKey(key(first))) {
        groups.merge(key(first), first, (a, b) -> new Group(a.header(), a.cells() + 1, a.firstRow(), a.text(), a.reason()));
      }
    }
    if (!outcome.near().isEmpty() && near.size() < MOST_NEAR) {
      near.add(new NearName(outcome.row(), outcome.reading().writtenName(), outcome.near()));
    }
  }

  private static String key(Group group) {
    return group.header() + '\n' + group.reason().code();
  }

  private static String reason(Unread cell, Messages messages) {
    String why = messages.say(cell.reason());
    return cell.column() == Unread.WHOLE_ROW ? why : messages.say("topic", cell.header(), why);
  }

  /** In the order of the table. */
  public List<Group> groups() {
    return List.copyOf(groups.values());
  }

  /** The first of them. */
  public List<NearName> near() {
    return List.copyOf(near);
  }

  /** Remembers the row that was handed over last, for the outcome does not hold it. */
  private static final class LastRow implements Table {
    private final Table table;
    private TableRow row;

    LastRow(Table table) {
      this.table = table;
    }

    @Override
    public String name() {
      return table.name();
    }

    @Override
    public Checked<Long> rows(RowTaker taker) {
      return table.rows(next -> {
        row = next;
        return taker.take(next);
      });
    }
  }
}
