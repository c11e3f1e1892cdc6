package guildwood.materials;

import guildwood.kernel.Range;

/**
 * A sheet of card as laid under mulch, each over the edge of the last.
 *
 * @param overlapM of neighbours, on every side
 */
public record CardSheet(double lengthM, double widthM, double overlapM) {
  public static final Range SIDE_M = new Range(0.1, 10);
  public static final Range OVERLAP_M = new Range(0, 1);
  /** An opened removal box and a hand's length; common practice, no source. */
  public static final CardSheet USUAL = new CardSheet(1.2, 0.8, 0.15);

  public CardSheet {
    if (!SIDE_M.contains(lengthM) || !SIDE_M.contains(widthM) || !OVERLAP_M.contains(overlapM)
        || overlapM >= Math.min(lengthM, widthM)) {
      throw new IllegalArgumentException("a sheet of " + lengthM + " by " + widthM + " m overlapping by " + overlapM + " m");
    }
  }

  /** Ground one sheet adds: each of its sides less one overlap, square metres. */
  public double addsM2() {
    return (lengthM - overlapM) * (widthM - overlapM);
  }

  /** Whole sheets for an area. Crooked edges and narrow strips take a few more. */
  public int sheets(double areaM2) {
    if (!(areaM2 >= 0)) {
      throw new IllegalArgumentException("card for " + areaM2 + " m2");
    }
    // A hair of rounding must not cost a sheet.
    return (int) Math.ceil(areaM2 / addsM2() - 1e-9);
  }
}
