package guildwood.species.exchange;

import guildwood.kernel.Source;
import guildwood.species.Evidence;
import guildwood.species.Trait;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** The tables of a library's data package, in the order in which they stand in it. */
enum PackageTable {
  SPECIES("species", "id", Map.of(),
      PackageField.id("id"), PackageField.id("scientific_name"), PackageField.text("common_names"), PackageField.text("family"),
      PackageField.text("synonyms")),
  SOURCES("sources", "id", Map.of(),
      PackageField.id("id"), PackageField.oneOf("kind", true, Arrays.stream(Source.Kind.values()).map(Source.Kind::key).toList()),
      PackageField.text("author"), PackageField.needed("title"), PackageField.of("year", PackageField.Type.YEAR),
      PackageField.text("locator")),
  /** What can be said about a species: words and units for who reads the package without this program. */
  TRAITS("traits", "trait", Map.of(),
      PackageField.id("trait"), PackageField.needed("title"), PackageField.needed("form"), PackageField.text("unit"),
      PackageField.number("lowest"), PackageField.number("highest"), PackageField.text("words"), PackageField.text("items")),
  VALUES("values", "", Map.of("species", "species.id", "trait", "traits.trait", "source", "sources.id"),
      PackageField.needed("species"), PackageField.oneOf("trait", true, Arrays.stream(Trait.values()).map(Trait::key).toList()),
      PackageField.text("item"), PackageField.needed("value"), PackageField.number("low"), PackageField.number("high"),
      PackageField.text("unit"), PackageField.needed("source"),
      PackageField.oneOf("evidence", false, Arrays.stream(Evidence.values()).map(Evidence::key).toList()),
      PackageField.of("rules", PackageField.Type.YES), PackageField.text("note")),
  /** What the library keeps although it can no longer be read; usually empty. */
  UNREAD("unread", "", Map.of("species", "species.id", "source", "sources.id"),
      PackageField.needed("species"), PackageField.needed("trait"), PackageField.text("item"), PackageField.needed("value"),
      PackageField.needed("source"), PackageField.text("evidence"), PackageField.of("rules", PackageField.Type.YES),
      PackageField.text("note")),
  /** What no trait takes: one line of a note a row, because a line break in a cell is a trap for many programs. */
  NOTES("notes", "", Map.of("species", "species.id", "source", "sources.id"),
      PackageField.integer("note"), PackageField.needed("species"), PackageField.needed("source"), PackageField.text("text")),
  HOLDINGS("holdings", "species", Map.of("species", "species.id"),
      PackageField.id("species"), PackageField.integer("plants_on_hand"), PackageField.integer("plants_to_propagate"),
      PackageField.number("price"));

  private final String key;
  private final String primaryKey;
  private final Map<String, String> references;
  private final List<PackageField> fields;

  /**
   * @param primaryKey the field that tells rows apart; empty where none does
   * @param references fields that hold a key of another table, as {@code table.field}
   */
  PackageTable(String key, String primaryKey, Map<String, String> references, PackageField... fields) {
    this.key = key;
    this.primaryKey = primaryKey;
    this.references = new java.util.TreeMap<>(references);
    this.fields = List.of(fields);
  }

  /** Its name as a resource of the package. */
  String key() {
    return key;
  }

  String file() {
    return key + ".csv";
  }

  String primaryKey() {
    return primaryKey;
  }

  Map<String, String> references() {
    return references;
  }

  List<PackageField> fields() {
    return fields;
  }

  List<String> columns() {
    return fields.stream().map(PackageField::name).toList();
  }
}
