package guildwood.importing;

import guildwood.importing.CellReading.Value;
import guildwood.importing.CellReading.Values;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import guildwood.species.TraitValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads single cells as values of traits: what people and tables write is put as {@link TraitReader} takes it, so that
 * one reader decides what a value means wherever it comes from.
 */
final class CellReader {
  private CellReader() {}

  /** Why a cell cannot hold a value at all, or that it says nothing; empty where it must be read. */
  static Optional<CellReading> beforeReading(TableCell cell) {
    String text = cell.text().strip();
    if (cell.kind() == TableCell.Kind.ERROR) {
      return Optional.of(CellReading.refused("import.error-cell"));
    }
    if (cell.kind() == TableCell.Kind.DATE) {
      return Optional.of(CellReading.refused("import.date-cell"));
    }
    if (text.length() > TraitReader.LONGEST) {
      return Optional.of(CellReading.refused("text.too-long", TraitReader.LONGEST));
    }
    return Optional.empty();
  }

  /** Reads a cell that holds a whole value of one trait and item. */
  static CellReading value(Trait trait, String item, ColumnMapping column, TableCell cell) {
    Optional<CellReading> before = beforeReading(cell);
    if (before.isPresent()) {
      return before.get();
    }
    String text = cell.text().strip();
    if (YesNo.saysNothing(text) && !(trait.shape() == Trait.Shape.YES_NO && text.equalsIgnoreCase("none"))
        && ClassTable.value(trait, Words.folded(text)).isEmpty()) {
      return CellReading.SILENT;
    }
    if (isDoubtful(text) && trait.shape() != Trait.Shape.TEXT) {
      return CellReading.refused("import.doubtful");
    }
    return switch (trait.shape()) {
      case SPAN -> SpanCell.read(trait, column.unit(), column.separator(), text);
      case WORD -> word(trait, item, column, text);
      case WORDS -> words(trait, column, text);
      case MONTHS -> months(trait, item, column, text);
      case SEASONS -> seasons(trait, item, column, text);
      case YES_NO -> yesNo(trait, item, text);
      case TEXT -> kept(trait, item, text);
    };
  }

  /** The table itself is not sure, or a sign that its file could not hold has become a question mark. */
  private static boolean isDoubtful(String text) {
    return text.contains("?");
  }

  /** Reads an entered text, and says why where it cannot be read. */
  static CellReading kept(Trait trait, String item, String entered) {
    Checked<TraitValue> read = TraitReader.read(trait, entered, "");
    return read.isRefused()
        ? new CellReading.Refused(read.findings().get(0))
        : CellReading.of(trait, item, entered, read.orThrow());
  }

  private static CellReading word(Trait trait, String item, ColumnMapping column, String text) {
    if (!TraitReader.read(trait, text, "").isRefused()) {
      return kept(trait, item, text);
    }
    Function<String, Optional<String>> known = token -> ClassTable.value(trait, token);
    List<String> tokens = Tokens.of(text, column.separator(), token -> known.apply(token).isPresent());
    List<String> values = tokens.stream().map(known).flatMap(Optional::stream).distinct().toList();
    if (values.size() > 1) {
      return CellReading.refused("import.several-words", String.join(", ", values));
    }
    return values.isEmpty() || tokens.stream().anyMatch(t -> known.apply(t).isEmpty())
        ? unknown(trait, text) : kept(trait, item, values.get(0));
  }

  private static CellReading words(Trait trait, ColumnMapping column, String text) {
    if (!TraitReader.read(trait, text, "").isRefused()) {
      return kept(trait, "", text);
    }
    Function<String, Optional<String>> known = token -> ClassTable.value(trait, token);
    List<String> tokens = Tokens.of(text, column.separator(), token -> known.apply(token).isPresent());
    List<String> values = tokens.stream().map(known).flatMap(Optional::stream).distinct().toList();
    List<String> strange = tokens.stream().filter(t -> known.apply(t).isEmpty()).toList();
    return values.isEmpty() ? unknown(trait, text) : with(kept(trait, "", String.join("; ", values)), strange, trait.words());
  }

  /** The items that a cell names, each with the value that naming it means. */
  static CellReading items(Trait trait, ColumnMapping column, TableCell cell) {
    Optional<CellReading> before = beforeReading(cell);
    if (before.isPresent() || YesNo.saysNothing(cell.text())) {
      return before.orElse(CellReading.SILENT);
    }
    String said = trait == Trait.NATIVITY ? "native" : "yes";
    return list(cell.text(), column, token -> ClassTable.item(trait, token).map(item -> one(trait, item, said)), trait.items());
  }

  /** Uses and jobs in any mixture; what can be either is a use. */
  static CellReading usesAndJobs(ColumnMapping column, TableCell cell) {
    Optional<CellReading> before = beforeReading(cell);
    if (before.isPresent() || YesNo.saysNothing(cell.text())) {
      return before.orElse(CellReading.SILENT);
    }
    List<String> known = new ArrayList<>(Trait.USE.words());
    known.addAll(Trait.FUNCTION.items());
    return list(cell.text(), column, token -> ClassTable.value(Trait.USE, token).map(use -> one(Trait.USE, "", use))
        .or(() -> ClassTable.item(Trait.FUNCTION, token).map(job -> one(Trait.FUNCTION, job, "yes"))), known);
  }

  private static CellReading list(String text, ColumnMapping column, Function<String, Optional<Value>> read, List<String> choices) {
    if (isDoubtful(text)) {
      return CellReading.refused("import.doubtful");
    }
    List<String> tokens = Tokens.of(text, column.separator(), token -> read.apply(token).isPresent());
    List<Value> values = tokens.stream().map(read).flatMap(Optional::stream).distinct().toList();
    List<String> strange = tokens.stream().filter(t -> read.apply(t).isEmpty()).toList();
    return values.isEmpty()
        ? CellReading.refused("value.unknown-word", text.strip(), String.join(", ", choices))
        : with(new Values(together(values), Optional.empty()), strange, choices);
  }

  /** Several words of one trait make one value. */
  private static List<Value> together(List<Value> values) {
    List<Value> all = new ArrayList<>(values.stream().filter(v -> v.trait() != Trait.USE).toList());
    List<String> uses = values.stream().filter(v -> v.trait() == Trait.USE).map(Value::entered).distinct().toList();
    if (!uses.isEmpty()) {
      all.add(one(Trait.USE, "", String.join("; ", uses)));
    }
    return all;
  }

  private static Value one(Trait trait, String item, String entered) {
    return new Value(trait, item, entered, TraitReader.read(trait, entered, "").orThrow());
  }

  private static CellReading with(CellReading read, List<String> strange, List<String> choices) {
    return strange.isEmpty() || !(read instanceof Values values) ? read
        : new Values(values.values(), Optional.of(Finding.of("value.unknown-word", "", String.join(", ", strange), String.join(", ", choices))));
  }

  private static CellReading months(Trait trait, String item, ColumnMapping column, String text) {
    Optional<Boolean> answer = YesNo.read(text);
    if (answer.isPresent() && !text.equals("1") && trait == Trait.HARVEST) {
      return answer.get() ? kept(trait, item, "yes") : CellReading.SILENT;
    }
    if (Words.folded(text).matches("all year|year round|all year round|always|all months")) {
      return kept(trait, item, "1 to 12");
    }
    if (MonthWords.isDate(text)) {
      return CellReading.refused("import.date-cell");
    }
    Optional<String> plain = MonthWords.plain(text);
    if (plain.isPresent()) {
      return TraitReader.read(trait, text, "").isRefused() ? kept(trait, item, plain.get()) : kept(trait, item, text);
    }
    if (!MonthWords.isSeason(Words.folded(text))) {
      return CellReading.refused("month.unreadable", text);
    }
    Optional<String> season = MonthWords.ofSeason(text);
    return column.unit() == ColumnUnit.SEASONS_AS_MONTHS && season.isPresent()
        ? kept(trait, item, season.get()) : CellReading.refused("import.season", text);
  }

  private static CellReading seasons(Trait trait, String item, ColumnMapping column, String text) {
    Optional<Boolean> answer = YesNo.read(text);
    if (answer.isPresent()) {
      return answer.get() ? kept(trait, item, "yes") : CellReading.SILENT;
    }
    List<String> tokens = Tokens.of(text.replaceAll("(?i)\\bfall\\b", "autumn"), column.separator(), trait.words()::contains);
    return kept(trait, item, String.join("; ", tokens));
  }

  private static CellReading yesNo(Trait trait, String item, String text) {
    String folded = Words.folded(text);
    Optional<Boolean> answer = folded.equals("none") ? Optional.of(false) : isGrade(folded) ? Optional.of(true) : YesNo.read(text);
    if (answer.isEmpty() && ClassTable.item(trait, folded).filter(item::equals).isPresent()) {
      answer = Optional.of(true);
    }
    return answer.map(yes -> kept(trait, item, yes ? "yes" : "no")).orElseGet(() -> CellReading.refused("value.yes-or-no", text));
  }

  /** Grades of a thing that is there: by our reading a yes. */
  static boolean isGrade(String folded) {
    return folded.matches("low|medium|moderate|high|slight|severe|strong|good|excellent|very good|some");
  }

  private static CellReading unknown(Trait trait, String text) {
    return CellReading.refused("value.unknown-word", text, String.join(", ", trait.words()));
  }
}
