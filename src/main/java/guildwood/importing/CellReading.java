package guildwood.importing;

import guildwood.kernel.Finding;
import guildwood.species.Trait;
import guildwood.species.TraitValue;
import java.util.List;
import java.util.Optional;

/** What a cell was read as. */
sealed interface CellReading {

  /**
   * One or several values.
   *
   * @param unread why part of the cell could not be read, where it could not
   */
  record Values(List<Value> values, Optional<Finding> unread) implements CellReading {
    public Values {
      values = List.copyOf(values);
    }
  }

  /** One value. */
  record Value(Trait trait, String item, String entered, TraitValue value) {}

  /** The cell says that nothing is known, or a no where only a yes is kept. */
  record Silent() implements CellReading {}

  record Refused(Finding reason) implements CellReading {}

  CellReading SILENT = new Silent();

  static CellReading refused(String code, Object... args) {
    return new Refused(Finding.of(code, "", args));
  }

  static CellReading of(Trait trait, String item, String entered, TraitValue value) {
    return new Values(List.of(new Value(trait, item, entered, value)), Optional.empty());
  }
}
