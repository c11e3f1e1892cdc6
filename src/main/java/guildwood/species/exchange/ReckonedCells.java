package guildwood.species.exchange;

import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.species.Statement;
import guildwood.species.TraitValue;
import java.util.Optional;

/** The numbers that a data package gives beside a value as entered, for programs that cannot read such values. */
final class ReckonedCells {
  private ReckonedCells() {}

  /** Whether somebody changed the one and not the other; empty where both agree or the value cannot be read. */
  static Optional<Finding> difference(CsvTable.Row row) {
    Optional<Statement> read = ContentsReader.written(row).read().value();
    if (read.isEmpty()) {
      return Optional.empty();
    }
    Optional<Range> range = read.get().value() instanceof TraitValue.Span span ? Optional.of(span.range()) : Optional.empty();
    boolean same = row.cell("low").equals(range.map(r -> PlainNumber.of(r.min())).orElse(""))
        && row.cell("high").equals(range.map(r -> PlainNumber.of(r.max())).orElse(""));
    return same ? Optional.empty() : Optional.of(row.finding("package.numbers-differ", "value", row.cell("value")));
  }
}
