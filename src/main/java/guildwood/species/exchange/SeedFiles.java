package guildwood.species.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.LibraryContents;
import guildwood.species.exchange.CsvTable.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Reads the library that comes with the program: {@code sources.csv}, then for each group of plants its
 * names under {@code species/} and its values under {@code values/}. All findings are gathered, each with
 * file, row and column, so that the whole of it can be put right at once.
 */
public final class SeedFiles {
  static final List<String> GROUPS = List.of("trees", "shrubs", "climbers", "herbs", "ground-covers", "roots");
  static final List<String> VALUE_COLUMNS =
      List.of("species", "trait", "item", "value", "source", "evidence", "rules", "note");

  private SeedFiles() {}

  /** @param root folder on the class path, such as {@code /seed-data} */
  public static Checked<LibraryContents> read(String root) {
    List<Finding> findings = new ArrayList<>();
    ContentsReader reader = new ContentsReader(ContentsReader.Tidiness.SHIPPED, findings);
    table(root, "sources.csv", ContentsReader.SOURCE_COLUMNS, findings).forEach(reader::source);
    for (String group : GROUPS) {
      table(root, "species/" + group + ".csv", ContentsReader.SPECIES_COLUMNS, findings).forEach(reader::species);
    }
    for (String group : GROUPS) {
      table(root, "values/" + group + ".csv", VALUE_COLUMNS, findings).forEach(reader::value);
    }
    reader.finish();
    return findings.isEmpty() ? Checked.of(reader.contents()) : Checked.refused(findings);
  }

  private static List<Row> table(String root, String name, List<String> columns, List<Finding> findings) {
    Supplier<java.io.InputStream> open = () -> SeedFiles.class.getResourceAsStream(root + "/" + name);
    return CsvTable.read(name, open, columns, findings);
  }
}
