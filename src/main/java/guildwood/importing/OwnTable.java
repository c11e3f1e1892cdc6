package guildwood.importing;

import java.util.Optional;

/** The library's own species table: its columns have the traits' keys, its numbers the units the program reckons in. */
final class OwnTable {
  private OwnTable() {}

  static Optional<ColumnUnit> unit(Meaning meaning) {
    return meaning.trait().flatMap(trait -> switch (trait.unit()) {
      case METRES -> Optional.of(ColumnUnit.METRES);
      case CELSIUS -> Optional.of(ColumnUnit.CELSIUS);
      case SUN_HOURS -> Optional.of(ColumnUnit.HOURS);
      case DAYS -> Optional.of(ColumnUnit.DAYS);
      case MOISTURE_CLASS, FERTILITY_CLASS -> Optional.of(ColumnUnit.OUR_CLASSES);
      case PH, NONE -> Optional.empty();
    });
  }

  /** Whether a table is one: three columns at the least have names that nobody else gives them. */
  static boolean is(Heading heading) {
    return heading.headers().contains("scientific_name") && heading.headers().stream()
        .filter(header -> header.matches("[a-z_]+\\.[a-z-]+|coldest_winter|frost_free_days|[a-z]+_preferred|root_form|growth_rate")).count() >= 3;
  }
}
