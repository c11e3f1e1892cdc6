package guildwood.importing.exchange;

import guildwood.importing.ReadValue;
import guildwood.species.Evidence;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitReader;
import java.util.Optional;

/**
 * A value as it is read from the table, or as the library has it.
 *
 * @param trait key of the trait
 * @param sourceId where the library has it from; empty for one of the table
 */
public record ReviewedValue(String trait, String item, String entered, String note, String sourceId) {
  static ReviewedValue of(ReadValue value) {
    return new ReviewedValue(value.trait().key(), value.item(), value.entered(), value.note(), "");
  }

  static ReviewedValue of(Statement statement) {
    return new ReviewedValue(statement.trait().key(), statement.item(), statement.entered(), statement.note(), statement.sourceId());
  }

  /** The same as a statement, to be put into words. */
  public Statement statement() {
    Trait known = Trait.ofKey(trait).orElseThrow();
    Optional<Evidence> evidence = Optional.empty();
    return new Statement(0, known, item, entered, TraitReader.read(known, entered, "").orThrow(), sourceId, evidence, false, note);
  }
}
