package guildwood.importing;

import guildwood.species.Trait;
import guildwood.species.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The unit of the bare numbers in a column. A unit written in a cell always holds there. */
public enum ColumnUnit {
  /** Nothing to add: the cells hold no bare numbers, or the trait's numbers have no unit. */
  AS_WRITTEN(""),
  METRES("m"),
  CENTIMETRES("cm"),
  MILLIMETRES("mm"),
  FEET("ft"),
  INCHES("in"),
  CELSIUS("C"),
  FAHRENHEIT("F"),
  ZONE(""),
  HOURS("h"),
  DAYS("days"),
  /** The program's own classes: moisture 1 to 5, fertility 1 to 3. */
  OUR_CLASSES(""),
  /** Words for seasons are to be taken for months, by our reading. */
  SEASONS_AS_MONTHS(""),
  /** Bare numbers could be in several units: the column is not brought in until somebody says which. */
  NOT_KNOWN("");

  private final String written;

  ColumnUnit(String written) {
    this.written = written;
  }

  /** As {@link guildwood.species.TraitReader} reads it behind a number. */
  String written() {
    return written;
  }

  /** Stable name in files and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<ColumnUnit> ofKey(String key) {
    return Arrays.stream(values()).filter(unit -> unit.key().equals(key)).findFirst();
  }

  /** The units to choose from for a column; only {@link #AS_WRITTEN} where it has none. */
  public static List<ColumnUnit> choices(Meaning meaning) {
    if (meaning.is(Meaning.Kind.MARK) || meaning.trait().isEmpty()) {
      return List.of(AS_WRITTEN);
    }
    return choices(meaning.trait().get());
  }

  static List<ColumnUnit> choices(Trait trait) {
    if (trait == Trait.BLOOM || trait == Trait.HARVEST) {
      return List.of(AS_WRITTEN, SEASONS_AS_MONTHS);
    }
    return switch (trait.unit()) {
      case METRES -> List.of(AS_WRITTEN, METRES, CENTIMETRES, MILLIMETRES, FEET, INCHES, NOT_KNOWN);
      case CELSIUS -> List.of(AS_WRITTEN, CELSIUS, FAHRENHEIT, ZONE, NOT_KNOWN);
      case SUN_HOURS -> List.of(AS_WRITTEN, HOURS, NOT_KNOWN);
      case DAYS -> List.of(AS_WRITTEN, DAYS, NOT_KNOWN);
      case MOISTURE_CLASS, FERTILITY_CLASS -> List.of(AS_WRITTEN, OUR_CLASSES, NOT_KNOWN);
      case PH, NONE -> List.of(AS_WRITTEN);
    };
  }

  /** Whether bare numbers of the trait mean nothing without a unit. */
  static boolean isNeeded(Trait trait) {
    return trait.unit() != Unit.NONE && trait.unit() != Unit.PH;
  }
}
