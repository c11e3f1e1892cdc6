package guildwood.importing.exchange;

import guildwood.importing.RowOutcome;
import guildwood.importing.RowReading;
import guildwood.importing.Unread;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Counts what becomes of the cells of each column. */
final class Tallies {
  private enum Fate {
    READ,
    NOTE,
    UNREAD,
    SILENT
  }

  private final Map<Integer, long[]> counts = new TreeMap<>();

  void take(RowOutcome outcome) {
    RowReading reading = outcome.reading();
    reading.values().stream().flatMap(v -> v.columns().stream()).distinct().forEach(column -> add(column, Fate.READ));
    reading.used().forEach(column -> add(column, Fate.READ));
    reading.notes().forEach(note -> add(note.column(), Fate.NOTE));
    reading.silent().forEach(column -> add(column, Fate.SILENT));
    outcome.unread().stream().mapToInt(Unread::column).filter(column -> column >= 0).distinct().forEach(column -> add(column, Fate.UNREAD));
  }

  private void add(int column, Fate fate) {
    counts.computeIfAbsent(column, c -> new long[Fate.values().length])[fate.ordinal()]++;
  }

  List<ColumnTally> list() {
    return counts.entrySet().stream().map(e -> new ColumnTally(e.getKey(), e.getValue()[Fate.READ.ordinal()],
        e.getValue()[Fate.NOTE.ordinal()], e.getValue()[Fate.UNREAD.ordinal()], e.getValue()[Fate.SILENT.ordinal()])).toList();
  }
}
