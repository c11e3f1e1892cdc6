package guildwood.importing;

import guildwood.importing.Meaning.Kind;
import guildwood.species.Trait;
import guildwood.species.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Two columns that hold the two ends of one range. */
record EndPair(Trait trait, Optional<ColumnMapping> low, Optional<ColumnMapping> high) {

  static boolean isEnd(ColumnMapping column) {
    return column.meaning().is(Kind.LOWEST) || column.meaning().is(Kind.HIGHEST);
  }

  static List<EndPair> of(Mapping mapping) {
    List<EndPair> pairs = new ArrayList<>();
    for (Trait trait : Trait.values()) {
      Optional<ColumnMapping> low = end(mapping, Kind.LOWEST, trait);
      Optional<ColumnMapping> high = end(mapping, Kind.HIGHEST, trait);
      if (low.isPresent() || high.isPresent()) {
        pairs.add(new EndPair(trait, low, high));
      }
    }
    return pairs;
  }

  private static Optional<ColumnMapping> end(Mapping mapping, Kind kind, Trait trait) {
    return mapping.columns().stream().filter(c -> c.meaning().is(kind) && c.meaning().trait().equals(Optional.of(trait))).findFirst();
  }

  /** Columns of the pair with something in them. */
  List<Integer> filled(TableRow row) {
    List<Integer> filled = new ArrayList<>();
    low.filter(c -> !row.cell(c.column()).isBlank()).ifPresent(c -> filled.add(c.column()));
    high.filter(c -> !row.cell(c.column()).isBlank()).ifPresent(c -> filled.add(c.column()));
    return filled;
  }

  CellReading read(TableRow row) {
    Optional<CellReading> first = low.flatMap(c -> end(c, row));
    Optional<CellReading> last = high.flatMap(c -> end(c, row));
    for (Optional<CellReading> end : List.of(first, last)) {
      if (end.isPresent() && end.get() instanceof CellReading.Refused) {
        return end.get();
      }
    }
    Optional<String> from = first.flatMap(EndPair::entered);
    Optional<String> to = last.flatMap(EndPair::entered);
    if (from.isPresent() && to.isPresent()) {
      return CellReader.kept(trait, "", from.get() + " to " + to.get());
    }
    if (from.isEmpty() && to.isEmpty()) {
      return CellReading.SILENT;
    }
    return oneEnd(from, to);
  }

  /** One end alone is a value only where the trait is about that end: the coldest winter, the tallest height. */
  private CellReading oneEnd(Optional<String> from, Optional<String> to) {
    if (from.isPresent() && (trait.unit() == Unit.CELSIUS || trait.unit() == Unit.DAYS)) {
      return CellReader.kept(trait, "", from.get());
    }
    if (to.isPresent() && trait.unit() == Unit.METRES) {
      return CellReader.kept(trait, "", to.get());
    }
    return CellReading.refused("import.one-end");
  }

  private Optional<CellReading> end(ColumnMapping column, TableRow row) {
    TableCell cell = row.cell(column.column());
    return cell.isBlank() ? Optional.empty() : Optional.of(CellReader.value(trait, "", column, cell));
  }

  private static Optional<String> entered(CellReading reading) {
    return reading instanceof CellReading.Values values ? Optional.of(values.values().get(0).entered()) : Optional.empty();
  }
}
