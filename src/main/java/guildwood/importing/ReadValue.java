package guildwood.importing;

import guildwood.species.Evidence;
import guildwood.species.Statement;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import java.util.List;
import java.util.Optional;

/**
 * A value read from one cell, or from several together.
 *
 * @param entered as {@link guildwood.species.TraitReader} reads it: the cell itself where it does
 * @param note what stood in the cells where {@code entered} says it otherwise; may be empty
 * @param columns where it stood
 */
public record ReadValue(
    Trait trait, String item, String entered, TraitValue value, Optional<Evidence> evidence, String note, List<Integer> columns) {
  public ReadValue {
    columns = List.copyOf(columns);
  }

  /** As a statement of a source, not yet kept. */
  public Statement statement(String sourceId) {
    return new Statement(0, trait, item, entered, value, sourceId, evidence, false, note);
  }
}
