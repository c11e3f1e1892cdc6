package guildwood.site.water;

import guildwood.kernel.Range;

/**
 * The most water that comes at one moment, by the rational method: Q = C i A / 360 in cubic metres a second, with i in
 * millimetres an hour and A in hectares (GISHydro, University of Maryland).
 *
 * @param coefficient C, the share of the rain that runs off at the worst moment
 * @param mmPerHour i, the heaviest rain that lasts as long as water takes to come down from the farthest point
 */
public record PeakFlow(double coefficient, double mmPerHour) {
  public static final Range COEFFICIENT = new Range(0.01, 1);
  public static final Range MM_PER_HOUR = new Range(0.1, 1000);

  private static final double M2_IN_HECTARE = 10_000;

  public PeakFlow {
    if (!COEFFICIENT.contains(coefficient) || !MM_PER_HOUR.contains(mmPerHour)) {
      throw new IllegalArgumentException("coefficient " + coefficient + ", " + mmPerHour + " mm an hour");
    }
  }

  public double m3PerSecond(double areaM2) {
    return coefficient * mmPerHour * (areaM2 / M2_IN_HECTARE) / 360;
  }
}
