package guildwood.species;

import guildwood.kernel.Source;
import guildwood.species.exchange.ShippedLibrary;
import java.util.List;

/** The library that comes with the program, read once for all the checks upon it. */
final class Shipped {
  static final SpeciesLibrary LIBRARY = ShippedLibrary.read("/seed-data").orThrow();

  private Shipped() {}

  static List<Species> species() {
    return LIBRARY.species();
  }

  static Species find(String id) {
    return LIBRARY.find(id).orElseThrow(() -> new AssertionError("the library has no " + id));
  }

  static Source source(Statement statement) {
    return LIBRARY.sources().get(statement.sourceId());
  }

  static boolean isCommonPractice(Statement statement) {
    return source(statement).kind() == Source.Kind.COMMON_PRACTICE;
  }

  /** A statement as a failing check should show it. */
  static String show(Species species, Statement statement) {
    return species.id() + " " + statement.trait().key() + (statement.item().isEmpty() ? "" : " " + statement.item())
        + " '" + statement.entered() + "' (" + statement.sourceId() + ")";
  }
}
