package guildwood.guild;

import guildwood.kernel.Range;
import java.util.Optional;

/**
 * What it takes to move a soil's reaction, as ranges to go shopping with after a soil test, never as doses.
 *
 * <p>For lime two rules are in common use, neither with an original publication we know of, and they
 * disagree: a table of pounds of ground limestone a hundred square feet that bring a soil to pH 6.5, and so
 * many pounds a thousand square feet for every whole step of pH. Both are kept here and the range between
 * them is what is said. For sulfur only the most at a time is said, which Clemson University publishes.
 */
public final class SoilAmendment {
  /** Grams a square metre that are one pound a thousand square feet: 453.59237 g over 92.90304 m2. */
  private static final double GRAMS_M2 = 453.59237 / 92.90304;

  /** Limestone to pH 6.5, pounds a 100 square feet, from pH 4.0 by halves; common practice, no source. */
  private static final double[][] TO_6_5 = {
      {11.5, 9.5, 8, 6, 3, 0},
      {16, 13.5, 10.5, 8, 4, 0},
      {23, 19.5, 15, 10.5, 5.5, 0}};
  private static final double TABLE_FROM = 4.0;
  private static final double TABLE_TO = 6.5;
  private static final double TABLE_STEP = 0.5;

  /** Limestone for one whole step of pH, pounds a 1,000 square feet; common practice, no source. */
  private static final double[] ONE_STEP = {35, 50, 70};

  /** The most elemental sulfur to spread at a time, 5 to 10 pounds a 1,000 square feet: Clemson University. */
  public static final Range SULFUR_AT_A_TIME_G_M2 = new Range(5 * GRAMS_M2, 10 * GRAMS_M2);

  /** Weeks to wait before spreading sulfur again, 2 to 3 months: Clemson University. */
  public static final Range SULFUR_MONTHS_APART = new Range(2, 3);

  private SoilAmendment() {}

  /**
   * Ground limestone that the rules in use give for raising the soil reaction, grams a square metre.
   *
   * @param texture of the bed as texture classes, 1 coarse to 3 fine; where nobody knows it the whole range
   * @return empty where the move does not lie within the pH 4.0 to 6.5 the table covers, or does not rise
   */
  public static Optional<Range> limeGramsM2(double fromPh, double toPh, Range texture) {
    if (fromPh < TABLE_FROM || toPh > TABLE_TO || fromPh >= toPh) {
      return Optional.empty();
    }
    Range said = null;
    for (int row = row(texture.min()); row <= row(texture.max()); row++) {
      Range byTable = Range.of(10 * (toSixAndAHalf(row, fromPh) - toSixAndAHalf(row, toPh)) * GRAMS_M2);
      Range byStep = Range.of(ONE_STEP[row] * (toPh - fromPh) * GRAMS_M2);
      said = said == null ? byTable.hull(byStep) : said.hull(byTable).hull(byStep);
    }
    return Optional.of(said);
  }

  private static int row(double textureClass) {
    return (int) Math.max(0, Math.min(2, Math.round(textureClass) - 1));
  }

  private static double toSixAndAHalf(int row, double ph) {
    double place = (ph - TABLE_FROM) / TABLE_STEP;
    int below = Math.min((int) place, TO_6_5[row].length - 2);
    return TO_6_5[row][below] + (place - below) * (TO_6_5[row][below + 1] - TO_6_5[row][below]);
  }
}
