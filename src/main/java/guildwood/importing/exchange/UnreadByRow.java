package guildwood.importing.exchange;

import java.util.ArrayList;
import java.util.List;

/** The unread cells of a review, row by row in the order of the table, a few at a time in memory. */
public final class UnreadByRow {
  private static final int AT_A_TIME = 500;

  private final KeptReview review;
  private List<ReviewedCell> held = List.of();
  private long from;
  private int next;

  public UnreadByRow(KeptReview review) {
    this.review = review;
  }

  /** Those of a row; rows must be asked for in their order. */
  public List<ReviewedCell> of(long row) {
    List<ReviewedCell> found = new ArrayList<>();
    for (ReviewedCell cell = peek(); cell != null && cell.row() <= row; cell = peek()) {
      if (cell.row() == row) {
        found.add(cell);
      }
      next++;
    }
    return found;
  }

  /** Whether no row is left that has any. */
  public boolean isDone() {
    return peek() == null;
  }

  private ReviewedCell peek() {
    if (next == held.size()) {
      from += held.size();
      next = 0;
      held = review.cells(ReviewSection.UNREAD, from, AT_A_TIME);
    }
    return held.isEmpty() ? null : held.get(next);
  }
}
