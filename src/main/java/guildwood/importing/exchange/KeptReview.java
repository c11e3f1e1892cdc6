package guildwood.importing.exchange;

import guildwood.importing.ImportCounts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What looking an import through has found, kept in a directory of its own, so that any page of it can be shown at
 * once, whatever the size of the table, and also after a restart.
 */
public final class KeptReview {
  private static final String OUTDATED = "outdated";

  private final Path directory;
  private final ReviewSummary summary;

  private KeptReview(Path directory, ReviewSummary summary) {
    this.directory = directory;
    this.summary = summary;
  }

  /** The finished review in a directory; absent where none was finished. */
  public static Optional<KeptReview> open(Path directory) {
    return ReviewSummary.read(directory).map(summary -> new KeptReview(directory, summary));
  }

  /** Begins a review anew; what was in the directory before is gone. */
  public static ReviewWriter begin(Path directory) {
    try {
      remove(directory);
      Files.createDirectories(directory);
      return new ReviewWriter(directory);
    } catch (IOException e) {
      throw new UncheckedIOException("a review cannot be begun", e);
    }
  }

  /** Forgets a review; does nothing where there is none. */
  public static void remove(Path directory) {
    if (!Files.exists(directory)) {
      return;
    }
    try (Stream<Path> all = Files.walk(directory)) {
      List<Path> inside = all.sorted(Comparator.reverseOrder()).toList();
      for (Path path : inside) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a review cannot be removed", e);
    }
  }

  /** Notes that something was decided since. */
  public void outdate() {
    try {
      Files.writeString(directory.resolve(OUTDATED), "");
    } catch (IOException e) {
      throw new UncheckedIOException("a review cannot be marked", e);
    }
  }

  /** Whether something was decided since, which its numbers do not show. */
  public boolean isOutdated() {
    return Files.exists(directory.resolve(OUTDATED));
  }

  public ImportCounts counts() {
    return summary.counts();
  }

  /** What became of the cells of each column. */
  public List<ColumnTally> columns() {
    return summary.columns();
  }

  /** How many entries a section has. */
  public long size(ReviewSection section) {
    return spool(directory, section).size();
  }

  /** Entries of a section of rows, from one on. */
  public List<ReviewedRow> rows(ReviewSection section, long from, int most) {
    return new Spool<>(directory, section.key(), ReviewedRow.class).part(from, most);
  }

  public List<ReviewedName> names(long from, int most) {
    return new Spool<>(directory, ReviewSection.NEAR.key(), ReviewedName.class).part(from, most);
  }

  public List<ReviewedConflict> conflicts(long from, int most) {
    return new Spool<>(directory, ReviewSection.CONFLICTS.key(), ReviewedConflict.class).part(from, most);
  }

  public List<ReviewedCell> cells(ReviewSection section, long from, int most) {
    return new Spool<>(directory, section.key(), ReviewedCell.class).part(from, most);
  }

  private static Spool<?> spool(Path directory, ReviewSection section) {
    return new Spool<>(directory, section.key(), section.type());
  }
}
