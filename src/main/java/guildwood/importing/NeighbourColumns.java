package guildwood.importing;

import guildwood.kernel.Finding;
import guildwood.species.Trait;
import guildwood.species.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What columns say together: a header merged over two columns holds both ends of a range, the column beside a genus holds
 * the epithet. Numbers of scales that only look like pH are left to notes.
 */
final class NeighbourColumns {
  /** Rows that must bear it out. Ours. */
  private static final int FEWEST = 2;

  private final List<TableRow> rows;

  NeighbourColumns(List<TableRow> rows) {
    this.rows = rows;
  }

  List<Suggestion> settle(List<Suggestion> columns) {
    List<Suggestion> settled = new ArrayList<>(columns);
    for (int i = 0; i < settled.size(); i++) {
      if (isOtherScale(settled.get(i).column())) {
        settled.set(i, new Suggestion(settled.get(i).column().with(Meaning.NOTE), 0, List.of(Finding.of("import.reason.other-scale", ""))));
      }
    }
    for (int i = 0; i + 1 < settled.size(); i++) {
      if (isSplitRange(settled, i)) {
        split(settled, i);
      }
    }
    return settled;
  }

  /** Whole numbers below 'Reaction' may be those of a scale of indicator values from 1 to 9 as well as pH. */
  private boolean isOtherScale(ColumnMapping column) {
    boolean acidity = column.meaning().trait().filter(t -> t.unit() == Unit.PH).isPresent();
    List<SpanText> numbers = rows.stream().map(r -> SpanText.read(r.cell(column.column()).text())).flatMap(Optional::stream).toList();
    return acidity && !HeaderText.read(column.header()).words().contains("ph") && !numbers.isEmpty()
        && numbers.stream().allMatch(n -> n.high().isEmpty() && n.low().stripTrailingZeros().scale() <= 0);
  }

  /** A header over two columns stands in the first of them: the second has none, and never a smaller number. */
  private boolean isSplitRange(List<Suggestion> columns, int i) {
    ColumnMapping left = columns.get(i).column();
    ColumnMapping right = columns.get(i + 1).column();
    boolean range = left.meaning().is(Meaning.Kind.VALUE) && left.meaning().trait().orElseThrow().shape() == Trait.Shape.SPAN
        && !left.header().isEmpty() && right.header().isEmpty() && right.meaning().is(Meaning.NOTE.kind());
    if (!range) {
      return false;
    }
    int both = 0;
    for (TableRow row : rows) {
      Optional<SpanText> low = SpanText.read(row.cell(left.column()).text());
      Optional<SpanText> high = SpanText.read(row.cell(right.column()).text());
      boolean blank = row.cell(right.column()).isBlank();
      boolean rises = low.isPresent() && high.isPresent() && low.get().high().isEmpty() && high.get().high().isEmpty()
          && low.get().highUnit().equals(high.get().highUnit()) && low.get().low().compareTo(high.get().low()) <= 0;
      if (!blank && !rises) {
        return false;
      }
      both += blank ? 0 : 1;
    }
    return both >= FEWEST;
  }

  private static void split(List<Suggestion> columns, int i) {
    Suggestion left = columns.get(i);
    Trait trait = left.column().meaning().trait().orElseThrow();
    List<Finding> reasons = new ArrayList<>(left.reasons());
    reasons.add(Finding.of("import.reason.two-columns", "", left.column().header()));
    columns.set(i, new Suggestion(left.column().with(Meaning.of(Meaning.Kind.LOWEST, trait, "")), left.certainty() / 2, reasons));
    ColumnMapping right = columns.get(i + 1).column().with(Meaning.of(Meaning.Kind.HIGHEST, trait, "")).with(left.column().unit());
    columns.set(i + 1, new Suggestion(right, left.certainty() / 2, reasons));
  }
}
