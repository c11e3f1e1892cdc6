package guildwood.importing.web;

import guildwood.importing.Heading;
import guildwood.importing.ImportDraft;
import guildwood.importing.MappingSuggester;
import guildwood.importing.MappingSuggestion;
import guildwood.importing.Table;
import guildwood.importing.TableRow;
import guildwood.kernel.Checked;
import guildwood.species.SpeciesLibrary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The beginning of a sheet, held while somebody says what its columns mean. */
final class Sample implements Table {
  private static final int MOST_ROWS = 400;
  private static final int MOST_CELLS = 60_000;

  private final long draftId;
  private final String name;
  private final List<TableRow> rows;
  private Optional<MappingSuggestion> suggested = Optional.empty();

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

  /** What its columns probably mean below a heading. Told once: trying all meanings on many columns takes seconds. */
  synchronized MappingSuggestion suggestion(Heading heading, SpeciesLibrary library) {
    if (suggested.filter(s -> s.heading().equals(heading)).isEmpty()) {
      // A sample is in memory and was read once.
      suggested = Optional.of(new MappingSuggester(library).suggest(this, heading).orThrow());
    }
    return suggested.get();
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
