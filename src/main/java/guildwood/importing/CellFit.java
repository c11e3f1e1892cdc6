package guildwood.importing;

import guildwood.importing.Meaning.Kind;
import guildwood.species.Trait;
import guildwood.species.names.NameReader;
import java.util.List;

/** How well a cell fits a meaning, 0 to 1; 0.5 where any text would. */
final class CellFit {
  /** Meanings that cells can tell without a header. */
  static final List<Meaning> TELLING = List.of(Meaning.of(Kind.FAMILY), Meaning.of(Kind.VALUE, Trait.LIGHT, ""),
      Meaning.of(Kind.VALUE, Trait.DURATION, ""), Meaning.of(Kind.VALUE, Trait.LAYER, ""), Meaning.of(Kind.VALUE, Trait.COLDEST_WINTER, ""),
      Meaning.of(Kind.VALUE, Trait.TEXTURE, ""), Meaning.of(Kind.ITEMS, Trait.FUNCTION, ""));

  private static final double ANY_TEXT = 0.5;

  private final ColumnMapping column;

  CellFit(ColumnMapping column) {
    this.column = column;
  }

  double of(TableCell cell) {
    String text = cell.text().strip();
    Meaning meaning = column.meaning();
    return switch (meaning.kind()) {
      case SCIENTIFIC_NAME -> NameShape.isScientific(text) ? 1 : NameReader.read(text).value().filter(n -> text.contains(" ")).isPresent() ? 0.3 : 0.1;
      case GENUS -> text.matches("[×x]?\\s?\\p{Lu}[\\p{Ll}-]+") ? 1 : 0;
      case EPITHET -> text.matches("([×x]\\s?)?[\\p{Ll}-]{3,}( .*)?") ? text.contains("-") ? 0.7 : 1 : 0;
      case CULTIVAR -> text.matches("['‘\"]?\\p{Lu}.*") ? 0.8 : 0.3;
      case LOWER_RANK -> text.matches("(var|subsp|ssp|f)\\.? .*|[\\p{Ll}-]{4,}") ? 1 : 0;
      case SPECIES_ID -> text.matches("[a-z0-9]+(-[a-z0-9]+)+") ? 1 : 0;
      case COMMON_NAMES -> isNumber(text) ? 0 : NameShape.isScientific(text) ? 0.2 : 0.6;
      case FAMILY -> text.matches("\\p{Lu}\\p{Ll}+(aceae|ae)\\b.*") ? 1 : 0;
      case ON_HAND -> text.matches("\\d{1,6}(\\.0+)?") ? 1 : 0;
      case PRICE -> text.matches("\\D{0,4}\\d+([.,]\\d{1,2})?\\D{0,5}") ? 1 : 0;
      case TRAIT_NAME, ITEM_NAME, TRAIT_VALUE, VALUE_UNIT, VALUE_EVIDENCE, VALUE_NOTE, NOTE, IGNORED, SYNONYMS,
          SOURCE_TITLE, SOURCE_AUTHOR, SOURCE_YEAR, SOURCE_PLACE -> ANY_TEXT;
      case MARK -> MarkGroup.answer(column, text).isPresent() ? 1 : 0;
      case CAUTIONS -> 1;
      case EVIDENCE -> 1;
      case ITEMS -> ofReading(CellReader.items(meaning.trait().orElseThrow(), column, cell));
      case USES_AND_JOBS -> ofReading(CellReader.usesAndJobs(column, cell));
      case VALUE, LOWEST, HIGHEST -> ofValue(cell, text);
    };
  }

  /** A bare number fits what has numbers, whatever its unit may turn out to be. */
  private double ofValue(TableCell cell, String text) {
    Trait trait = column.meaning().trait().orElseThrow();
    boolean waits = trait.shape() == Trait.Shape.SPAN && column.unit() == ColumnUnit.AS_WRITTEN && ColumnUnit.isNeeded(trait)
        && SpanText.read(text).filter(span -> !span.hasUnit()).isPresent();
    return waits ? 0.9 : ofReading(CellReader.value(trait, column.meaning().item(), column, cell));
  }

  private static double ofReading(CellReading reading) {
    return reading instanceof CellReading.Values values ? values.unread().isPresent() ? 0.6 : 1
        : reading instanceof CellReading.Silent ? 0.5 : 0;
  }

  private static boolean isNumber(String text) {
    return text.matches("[\\d.,\\s-]+");
  }
}
