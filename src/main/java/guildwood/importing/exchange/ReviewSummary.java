package guildwood.importing.exchange;

import com.fasterxml.jackson.databind.ObjectMapper;
import guildwood.importing.ImportCounts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The end of a review: its numbers. Written last, so that a review without it was not finished. */
record ReviewSummary(ImportCounts counts, List<ColumnTally> columns) {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String FILE = "summary.json";

  void write(Path directory) throws IOException {
    JSON.writeValue(directory.resolve(FILE).toFile(), this);
  }

  static Optional<ReviewSummary> read(Path directory) {
    Path file = directory.resolve(FILE);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try {
      return Optional.of(JSON.readValue(file.toFile(), ReviewSummary.class));
    } catch (IOException e) {
      throw new UncheckedIOException("a review cannot be read", e);
    }
  }
}
