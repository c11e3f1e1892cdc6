package guildwood.drawing;

/**
 * The share of its mature size that a plant has reached after some years: the Chapman-Richards curve
 * {@code y = a (1 - exp(-b t))^c}, as the R package ForGM documents it, with a = 1.
 *
 * <p>The parameters are rules of thumb of ours, no publication: c = 1.5 gives a slow start and its fastest growth
 * after about a fifth of the time; b is chosen so that {@link #GROWN} of the mature size is reached in the years to
 * maturity, where the curve is brought to the whole. It never falls and never passes 1: crown width never exceeds the
 * mature width.
 */
final class GrowthCurve {
  /** The share at which the curve is taken to be at its end. */
  static final double GROWN = 0.95;

  private static final double BEND = 1.5;
  private static final double RATE = -StrictMath.log(1 - StrictMath.pow(GROWN, 1 / BEND));

  private GrowthCurve() {}

  /** The share after so many years, 0 to 1. */
  static double share(double years, double yearsToMaturity) {
    if (!(years >= 0) || !(yearsToMaturity > 0)) {
      throw new IllegalArgumentException("grown for " + years + " of " + yearsToMaturity + " years");
    }
    double raw = StrictMath.pow(1 - StrictMath.exp(-RATE * years / yearsToMaturity), BEND);
    return Math.min(1, raw / GROWN);
  }
}
