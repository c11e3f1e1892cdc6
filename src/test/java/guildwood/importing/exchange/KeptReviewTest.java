package guildwood.importing.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.importing.ImportCounts;
import guildwood.importing.RowFate;
import guildwood.importing.RowOutcome;
import guildwood.importing.RowReading;
import guildwood.importing.Unread;
import guildwood.kernel.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A review on the disk: any part of it can be read, whatever its size, and only a finished one counts. */
class KeptReviewTest {
  private static final ImportCounts COUNTS = new ImportCounts(1_000, 0, 0, 0, 1_000, 0, 0, 0, 0, 0, 0, 1_000);

  @TempDir
  private Path directory;

  private static RowOutcome refused(long row, String text) {
    Unread cell = new Unread(row, Unread.WHOLE_ROW, "Name", text, Finding.of("import.no-name", "", text, "ü"));
    RowReading reading = new RowReading(row, text, "", List.of(), "", List.of(), List.of(), List.of(), List.of(cell), List.of(0),
        List.of(), OptionalInt.empty(), OptionalInt.empty(), RowReading.RowSource.NONE);
    return new RowOutcome(reading, RowFate.REFUSED, "", null, false, List.of(), List.of(), List.of(), List.of(cell));
  }

  private KeptReview written(Path at) throws IOException {
    try (ReviewWriter writer = KeptReview.begin(at)) {
      for (int row = 2; row < 1_002; row++) {
        writer.take(refused(row, "ünïcode \"" + row + "\"\n=1+1"));
      }
      return writer.finish(COUNTS);
    }
  }

  @Test
  void anyPartIsReadAsItWasWritten() throws IOException {
    KeptReview review = written(directory.resolve("review"));
    assertEquals(1_000, review.size(ReviewSection.UNREAD));
    assertEquals(0, review.size(ReviewSection.NEW));
    List<ReviewedCell> part = review.cells(ReviewSection.UNREAD, 975, 25);
    assertEquals(25, part.size());
    assertEquals(977, part.get(0).row());
    assertEquals("ünïcode \"1001\"\n=1+1", part.get(24).text());
    assertEquals(Finding.of("import.no-name", "", "ünïcode \"1001\"\n=1+1", "ü"), part.get(24).reason());
    assertTrue(part.get(24).isWholeRow());
    assertEquals(1, review.cells(ReviewSection.UNREAD, 999, 25).size());
    assertEquals(List.of(), review.cells(ReviewSection.UNREAD, 1_000, 25));
    assertEquals(List.of(new ColumnTally(0, 1_000, 0, 0, 0)), review.columns());
    assertEquals(COUNTS, KeptReview.open(directory.resolve("review")).orElseThrow().counts());
  }

  @Test
  void unreadCellsAreFoundRowByRow() throws IOException {
    UnreadByRow unread = new UnreadByRow(written(directory.resolve("review")));
    assertEquals(List.of(), unread.of(1));
    assertEquals(2, unread.of(2).get(0).row());
    assertEquals(900, unread.of(900).get(0).row());
    assertFalse(unread.isDone());
    assertEquals(1, unread.of(1_001).size());
    assertTrue(unread.isDone());
    assertEquals(List.of(), unread.of(1_002));
  }

  @Test
  void aReviewThatWasNotFinishedIsNone() throws IOException {
    Path at = directory.resolve("review");
    assertTrue(KeptReview.open(at).isEmpty());
    try (ReviewWriter writer = KeptReview.begin(at)) {
      writer.take(refused(2, "x"));
    }
    assertTrue(KeptReview.open(at).isEmpty());
    assertFalse(written(at).isOutdated());
    KeptReview.open(at).orElseThrow().outdate();
    assertTrue(KeptReview.open(at).orElseThrow().isOutdated());
    assertFalse(written(at).isOutdated());
    KeptReview.remove(at);
    assertFalse(Files.exists(at));
  }
}
