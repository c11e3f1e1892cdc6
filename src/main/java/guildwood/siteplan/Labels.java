package guildwood.siteplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for words on a drawing: none overlaps another or leaves the drawing. All lengths are in the drawing's
 * units, x to the right, y down.
 */
public final class Labels {
  /** Widths in shares of the letter size, wider than the usual fonts without serifs, so that words never turn out longer. */
  private static final double NARROW = 0.36;
  private static final double USUAL = 0.62;
  private static final double WIDE = 0.96;
  private static final double CAPITAL = 0.78;

  /** How far letters reach above and below the line they stand on, in shares of their size. */
  private static final double ABOVE = 0.95;
  private static final double BELOW = 0.28;

  private final Box frame;
  private final double letters;
  private final List<Box> taken = new ArrayList<>();

  /** @param letters size of the letters */
  public Labels(double width, double depth, double letters) {
    this.frame = new Box(0, 0, width, depth);
    this.letters = letters;
  }

  /** A rectangle of the drawing. */
  public record Box(double left, double top, double right, double bottom) {
    public boolean meets(Box other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    public boolean holds(Box other) {
      return left <= other.left && other.right <= right && top <= other.top && other.bottom <= bottom;
    }
  }

  /**
   * Words with their place.
   *
   * @param x of their middle
   * @param y of the line they stand on
   */
  public record Label(String words, double x, double y, Box box) {}

  /** Keeps words away from something that is drawn. */
  public void keepFree(Box box) {
    taken.add(box);
  }

  /** Words with their middle at x, y, moved into the drawing where they stick out; empty where other words are there. */
  public Optional<Label> place(String words, double x, double y) {
    double half = width(words, letters) / 2;
    double inX = Math.min(Math.max(x, half), frame.right - half);
    double inY = Math.min(Math.max(y + 0.35 * letters, ABOVE * letters), frame.bottom - BELOW * letters);
    Box box = new Box(inX - half, inY - ABOVE * letters, inX + half, inY + BELOW * letters);
    if (!frame.holds(box) || taken.stream().anyMatch(box::meets)) {
      return Optional.empty();
    }
    taken.add(box);
    return Optional.of(new Label(words, inX, inY, box));
  }

  /**
   * The first of several wordings that finds a place.
   *
   * @param box what the words belong to; they may stand above, below, right and left of it, and do so first where it
   *     is smaller than they are
   * @param x where they stand best in it
   * @param wordings best first
   */
  public Optional<Label> placeBy(Box box, double x, double y, List<String> wordings) {
    double middleX = (box.left + box.right) / 2;
    double middleY = (box.top + box.bottom) / 2;
    double step = 0.75 * letters;
    for (String words : wordings) {
      double half = width(words, letters) / 2 + 0.3 * letters;
      boolean covered = width(words, letters) > box.right - box.left || letters > box.bottom - box.top;
      double[][] places = {covered ? new double[] {middleX, box.top - step} : new double[] {x, y}, {middleX, box.bottom + step},
          {middleX, box.top - step}, {box.right + half, middleY}, {box.left - half, middleY}, {x, y}};
      for (double[] at : places) {
        Optional<Label> placed = place(words, at[0], at[1]);
        if (placed.isPresent()) {
          return placed;
        }
      }
    }
    return Optional.empty();
  }

  /** At least as wide as the words turn out. */
  public static double width(String words, double letters) {
    return letters * words.codePoints().mapToDouble(Labels::share).sum();
  }

  private static double share(int letter) {
    if ("iljtfrI.,:;!|'’ ()[]-".indexOf(letter) >= 0) {
      return NARROW;
    }
    if ("mwMWQO@%—…".indexOf(letter) >= 0 || letter > 0x2000) {
      return WIDE;
    }
    return Character.isUpperCase(letter) ? CAPITAL : USUAL;
  }
}
