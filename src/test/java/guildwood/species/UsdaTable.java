package guildwood.species;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;

/** USDA NRCS, PLANTS Database, characteristics: 2,162 taxa, feet and degrees F; public domain. */
final class UsdaTable {
  static final String FILE = "usda_plants_characteristics.csv";
  static final String SOURCE = "usda-plants";

  private final Map<String, CSVRecord> rows = new HashMap<>();

  private UsdaTable() {}

  /** Ends the test as not run where the table is absent. */
  static UsdaTable read() {
    UsdaTable table = new UsdaTable();
    OpenTables.rows(FILE).forEach(row -> table.rows.put(withoutAuthors(row.get("scientific_name")), row));
    return table;
  }

  int size() {
    return rows.size();
  }

  /** The row of a species by its accepted name, otherwise by the first synonym that the table knows. */
  Optional<CSVRecord> find(Species species) {
    return Stream.concat(Stream.of(species.scientificName()), species.synonyms().stream())
        .map(name -> rows.get(name.replace("× ", "×"))).filter(row -> row != null).findFirst();
  }

  static OptionalDouble number(CSVRecord row, String column) {
    String cell = row.get(column).strip();
    return cell.isEmpty() || cell.equals("NA") ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
  }

  static Optional<String> word(CSVRecord row, String column) {
    String cell = row.get(column).strip();
    return cell.isEmpty() || cell.equals("NA") ? Optional.empty() : Optional.of(cell);
  }

  static double metres(double feet) {
    return feet * 0.3048;
  }

  static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  /** 'Alnus incana (L.) Moench ssp. rugosa (Du Roi) R.T. Clausen' becomes 'Alnus incana subsp. rugosa'. */
  static String withoutAuthors(String name) {
    String[] words = name.strip().split("\\s+");
    int at = 1;
    StringBuilder bare = new StringBuilder(words[0]).append(' ');
    if (words[at].equals("×") || words[at].equals("x")) {
      bare.append('×');
      at++;
    }
    bare.append(words[at]);
    for (int i = at + 1; i < words.length - 1; i++) {
      if (words[i].matches("var\\.|ssp\\.|subsp\\.")) {
        return bare.append(' ').append(words[i].replaceAll("^ssp\\.$", "subsp.")).append(' ').append(words[i + 1]).toString();
      }
    }
    return bare.toString();
  }
}
