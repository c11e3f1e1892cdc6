package guildwood.importing;

/** Counts what an import does. */
final class Counting {
  private final long[] rowsByFate = new long[RowFate.values().length];
  private final long[] valuesByFate = new long[ValueOutcome.Fate.values().length];
  private long rows;
  private long namesChanged;
  private long notes;
  private long unread;

  void add(RowOutcome outcome) {
    rows++;
    rowsByFate[outcome.fate().ordinal()]++;
    namesChanged += outcome.namesChange() && outcome.fate() == RowFate.KNOWN ? 1 : 0;
    outcome.values().forEach(value -> valuesByFate[value.fate().ordinal()]++);
    notes += outcome.notes().size();
    unread += outcome.fate().isBrought() ? outcome.unread().size() : 0;
  }

  long rows() {
    return rows;
  }

  ImportCounts counts() {
    return new ImportCounts(rows, of(RowFate.NEW) + of(RowFate.NEAR), of(RowFate.KNOWN), of(RowFate.NEAR), of(RowFate.REFUSED),
        of(RowFate.LEFT_OUT), namesChanged, of(ValueOutcome.Fate.ADDED), of(ValueOutcome.Fate.SAME), of(ValueOutcome.Fate.CONFLICT),
        notes, unread);
  }

  private long of(RowFate fate) {
    return rowsByFate[fate.ordinal()];
  }

  private long of(ValueOutcome.Fate fate) {
    return valuesByFate[fate.ordinal()];
  }
}
