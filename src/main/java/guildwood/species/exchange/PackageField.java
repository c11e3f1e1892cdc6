package guildwood.species.exchange;

import java.util.List;

/**
 * One column of a table in a data package.
 *
 * @param words the only values it takes; empty where it takes any
 */
record PackageField(String name, Type type, boolean required, boolean unique, List<String> words) {

  /** Types of Table Schema that are used here. */
  enum Type {
    STRING,
    NUMBER,
    INTEGER,
    YEAR,
    /** Yes or empty. */
    YES
  }

  PackageField {
    words = List.copyOf(words);
  }

  static PackageField text(String name) {
    return new PackageField(name, Type.STRING, false, false, List.of());
  }

  static PackageField needed(String name) {
    return new PackageField(name, Type.STRING, true, false, List.of());
  }

  /** Text that tells one row from another. */
  static PackageField id(String name) {
    return new PackageField(name, Type.STRING, true, true, List.of());
  }

  static PackageField oneOf(String name, boolean required, List<String> words) {
    return new PackageField(name, Type.STRING, required, false, words);
  }

  static PackageField number(String name) {
    return new PackageField(name, Type.NUMBER, false, false, List.of());
  }

  static PackageField integer(String name) {
    return new PackageField(name, Type.INTEGER, true, false, List.of());
  }

  static PackageField of(String name, Type type) {
    return new PackageField(name, type, false, false, List.of());
  }
}
