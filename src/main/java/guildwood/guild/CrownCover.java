package guildwood.guild;

/**
 * How much of the ground lies under crowns.
 *
 * <p>The sum of all crown areas counts ground under two crowns twice and may pass 100 percent. The union
 * counts it once; where crowns stand at random it is {@code C' = 100 (1 - exp(-0.01 C))} (Crookston and
 * Stage 1999, USDA Forest Service, RMRS-GTR-24).
 */
public final class CrownCover {
  private CrownCover() {}

  /**
   * Cover of equal round crowns, overlaps counted twice, percent of the area.
   *
   * @param crownM diameter of a crown, metres
   * @param plants how many
   */
  public static double sumPercent(double crownM, double plants, double areaM2) {
    if (!(crownM >= 0 && plants >= 0 && areaM2 > 0)) {
      throw new IllegalArgumentException(plants + " crowns of " + crownM + " m on " + areaM2 + " m2");
    }
    return 100 * Math.PI * crownM * crownM / 4 * plants / areaM2;
  }

  /** Cover with overlaps counted once, percent, for crowns that stand at random. */
  public static double unionPercent(double sumPercent) {
    if (!(sumPercent >= 0)) {
      throw new IllegalArgumentException("a cover of " + sumPercent + " percent");
    }
    return -100 * Math.expm1(-0.01 * sumPercent);
  }
}
