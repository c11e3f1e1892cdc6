package guildwood.drawing;

import java.util.Locale;

/**
 * Sheets a drawing is printed on, with the room inside margins of 15 mm that the international size and its American
 * neighbour have in common: A4 and letter, A3 and tabloid.
 */
public enum Paper {
  SMALL_UPRIGHT(180, 245),
  SMALL_ACROSS(245, 178),
  LARGE_UPRIGHT(247, 386),
  LARGE_ACROSS(386, 245);

  private final double widthMm;
  private final double heightMm;

  Paper(double widthMm, double heightMm) {
    this.widthMm = widthMm;
    this.heightMm = heightMm;
  }

  public double widthMm() {
    return widthMm;
  }

  public double heightMm() {
    return heightMm;
  }

  boolean isLarge() {
    return this == LARGE_UPRIGHT || this == LARGE_ACROSS;
  }

  /** Stable name in message keys and style classes. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
