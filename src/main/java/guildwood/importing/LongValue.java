package guildwood.importing;

import guildwood.importing.Meaning.Kind;
import guildwood.kernel.Finding;
import guildwood.species.Evidence;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * The one value that a row of a table in long form holds.
 *
 * @param columns of trait, item, value, unit, evidence and note, as far as they are filled
 */
record LongValue(List<Integer> columns, int valueColumn, CellReading reading, String note, Optional<Evidence> evidence) {
  LongValue {
    columns = List.copyOf(columns);
  }

  static Optional<LongValue> read(Mapping mapping, TableRow row) {
    List<Integer> columns = new ArrayList<>();
    for (Kind kind : List.of(Kind.TRAIT_NAME, Kind.ITEM_NAME, Kind.TRAIT_VALUE, Kind.VALUE_UNIT, Kind.VALUE_EVIDENCE, Kind.VALUE_NOTE)) {
      mapping.first(kind).filter(c -> !row.cell(c.column()).isBlank()).ifPresent(c -> columns.add(c.column()));
    }
    if (columns.isEmpty()) {
      return Optional.empty();
    }
    Optional<Evidence> evidence = Evidence.ofKey(Words.folded(text(mapping, row, Kind.VALUE_EVIDENCE)));
    String note = text(mapping, row, Kind.VALUE_NOTE).replaceAll("\\p{Cntrl}+", " ");
    int valueColumn = mapping.first(Kind.TRAIT_VALUE).orElseThrow().column();
    return Optional.of(new LongValue(columns, valueColumn, reading(mapping, row), note.length() > 500 ? note.substring(0, 500) : note, evidence));
  }

  /** The cell that is to blame. */
  int columnOf(Finding reason) {
    return reason.code().equals("trait.unknown") ? columns.get(0) : valueColumn;
  }

  /** The row's own note; without one what stood in the cell, where the value as entered says it otherwise. */
  String noteOrWritten(BiFunction<String, List<Integer>, String> written) {
    return !note.isEmpty() || !(reading instanceof CellReading.Values values)
        ? note : written.apply(values.values().get(0).entered(), List.of(valueColumn));
  }

  private static CellReading reading(Mapping mapping, TableRow row) {
    TableCell value = mapping.first(Kind.TRAIT_VALUE).map(c -> row.cell(c.column())).orElse(TableCell.EMPTY);
    if (value.isBlank()) {
      return CellReading.refused("value.missing");
    }
    String trait = text(mapping, row, Kind.TRAIT_NAME);
    String item = text(mapping, row, Kind.ITEM_NAME);
    Optional<Meaning> meaning = meaning(trait, item);
    if (meaning.isEmpty()) {
      return CellReading.refused("trait.unknown", item.isEmpty() ? trait : trait + " " + item);
    }
    Optional<ColumnUnit> unit = HeaderText.unitOf(text(mapping, row, Kind.VALUE_UNIT)).or(() -> HeaderText.read(trait).unit());
    ColumnMapping column = ColumnMapping.of(0, trait, meaning.get(), unit.orElseGet(() -> usual(mapping, meaning.get())));
    return switch (meaning.get().kind()) {
      case VALUE -> CellReader.value(meaning.get().trait().orElseThrow(), meaning.get().item(), column, value);
      case ITEMS -> CellReader.items(meaning.get().trait().orElseThrow(), column, value);
      case CAUTIONS -> CautionReader.read(meaning.get().item(), column, value);
      case USES_AND_JOBS -> CellReader.usesAndJobs(column, value);
      default -> CellReading.refused("trait.unknown", trait);
    };
  }

  /** Days are days; the library's own classes and hours only in a table that has its columns of items and evidence. */
  private static ColumnUnit usual(Mapping mapping, Meaning meaning) {
    boolean own = mapping.has(Kind.ITEM_NAME) && mapping.has(Kind.VALUE_EVIDENCE);
    return OwnTable.unit(meaning)
        .filter(u -> u == ColumnUnit.DAYS || own && (u == ColumnUnit.HOURS || u == ColumnUnit.OUR_CLASSES)).orElse(ColumnUnit.AS_WRITTEN);
  }

  /** By the library's own key first, then by the words of headers. */
  private static Optional<Meaning> meaning(String trait, String item) {
    Optional<Trait> known = Trait.ofKey(trait);
    if (known.isPresent() && !TraitReader.readItem(known.get(), item, "").isRefused()) {
      return Optional.of(Meaning.of(Kind.VALUE, known.get(), item));
    }
    HeaderText text = HeaderText.read(item.isEmpty() ? trait : trait + " " + item);
    return text.phrases().stream().flatMap(p -> HeaderWords.meanings(p).stream())
        .filter(m -> m.is(Kind.VALUE) || m.is(Kind.ITEMS) || m.is(Kind.CAUTIONS) || m.is(Kind.USES_AND_JOBS)).findFirst();
  }

  private static String text(Mapping mapping, TableRow row, Kind kind) {
    return mapping.first(kind).map(c -> row.cell(c.column()).text().strip()).orElse("");
  }
}
