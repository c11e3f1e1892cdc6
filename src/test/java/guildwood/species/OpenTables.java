package guildwood.species;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assumptions;

/**
 * The open tables that some checks read. They are not part of the project: a folder {@code shared/data} beside
 * the checkout or beside one of its parents holds them, or the one that the system property
 * {@code guildwood.shared} names. Where it is absent such a check reports that it was not run.
 */
public final class OpenTables {
  static final String FOLDER_PROPERTY = "guildwood.shared";

  private static final CSVFormat WITH_HEADER =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private OpenTables() {}

  /** All rows of a table; ends the test as not run where the table is absent. */
  public static List<CSVRecord> rows(String file) {
    try (CSVParser parser = CSVParser.parse(path(file), StandardCharsets.UTF_8, WITH_HEADER)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  /** Where a table is; ends the test as not run where it is absent. */
  public static Path path(String file) {
    Optional<Path> table = find(file);
    Assumptions.assumeTrue(table.isPresent(), "not run: there is no shared/data/" + file
        + " beside the checkout; name the folder shared with -D" + FOLDER_PROPERTY + "=...");
    return table.get();
  }

  private static Optional<Path> find(String file) {
    String named = System.getProperty(FOLDER_PROPERTY);
    if (named != null) {
      return Optional.of(Path.of(named, "data", file)).filter(Files::isReadable);
    }
    for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
      Path table = at.resolve("shared").resolve("data").resolve(file);
      if (Files.isReadable(table)) {
        return Optional.of(table);
      }
    }
    return Optional.empty();
  }
}
