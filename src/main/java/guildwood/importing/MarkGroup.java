package guildwood.importing;

import guildwood.kernel.Finding;
import guildwood.species.Statement.Topic;
import guildwood.species.Trait;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Columns whose marks together make one value: twelve months, three textures, full sun and part shade. */
record MarkGroup(Trait trait, String item, List<ColumnMapping> columns) {

  /** What the marks of a row say, by column. */
  record Marked(List<Integer> yes, List<Integer> no, Map<Integer, Finding> refused) {}

  static List<MarkGroup> of(Mapping mapping) {
    Map<Topic, List<ColumnMapping>> groups = new LinkedHashMap<>();
    for (ColumnMapping column : mapping.columns()) {
      if (column.meaning().is(Meaning.Kind.MARK)) {
        groups.computeIfAbsent(new Topic(column.meaning().trait().orElseThrow(), column.meaning().item()), t -> new ArrayList<>()).add(column);
      }
    }
    return groups.entrySet().stream().map(e -> new MarkGroup(e.getKey().trait(), e.getKey().item(), e.getValue())).toList();
  }

  Marked read(TableRow row) {
    Marked marked = new Marked(new ArrayList<>(), new ArrayList<>(), new LinkedHashMap<>());
    for (ColumnMapping column : columns) {
      TableCell cell = row.cell(column.column());
      if (!cell.isBlank()) {
        Optional<CellReading> before = CellReader.beforeReading(cell);
        Optional<Boolean> answer = before.isPresent() ? Optional.empty() : answer(column, cell.text().strip());
        if (answer.isPresent()) {
          (answer.get() ? marked.yes() : marked.no()).add(column.column());
        } else {
          marked.refused().put(column.column(), before.isPresent() && before.get() instanceof CellReading.Refused refused
              ? refused.reason() : Finding.of("value.yes-or-no", "", cell.text().strip()));
        }
      }
    }
    return marked;
  }

  /** A mark, for uses a grade, or the column's own word. */
  static Optional<Boolean> answer(ColumnMapping column, String text) {
    String folded = Words.folded(text);
    if (YesNo.saysNothing(text)) {
      return Optional.of(false);
    }
    // 'Fuelwood: low' is still fuelwood; 'juglone tolerance: low' is no tolerance.
    boolean isUse = column.meaning().trait().equals(Optional.of(Trait.USE));
    Optional<Boolean> answer = YesNo.read(text);
    boolean own = !folded.isEmpty() && (folded.equals(Words.folded(column.header())) || folded.equals(Words.folded(column.meaning().word()))
        || column.meaning().trait().flatMap(t -> ClassTable.value(t, folded)).filter(column.meaning().word()::equals).isPresent());
    return answer.isPresent() ? answer : isUse && CellReader.isGrade(folded) || own ? Optional.of(true) : Optional.empty();
  }

  /** The value of the marked columns together. */
  CellReading value(List<Integer> marked) {
    List<String> words = columns.stream().filter(c -> marked.contains(c.column())).map(c -> c.meaning().word()).distinct().toList();
    if (trait.shape() == Trait.Shape.WORD && words.size() > 1) {
      return CellReading.refused("import.several-words", String.join(", ", words));
    }
    return CellReader.kept(trait, item, String.join("; ", words));
  }
}
