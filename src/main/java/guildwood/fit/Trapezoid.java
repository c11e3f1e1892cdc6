package guildwood.fit;

import guildwood.kernel.Range;

/**
 * The plateau model: 0 outside the tolerated range, 1 inside the preferred one, linear in between, as
 * FAO's ECOCROP uses it (Hackett 1991). Where both ranges share an end the response is a step there, and
 * the end itself belongs to the inside.
 */
public record Trapezoid(Range tolerated, Range preferred) implements Tolerance {
  public Trapezoid {
    if (!tolerated.contains(preferred)) {
      throw new IllegalArgumentException("prefers " + preferred + " beyond tolerated " + tolerated);
    }
  }

  /**
   * Brings two statements together that may come from different sources: what is preferred is tolerated,
   * so the tolerated range is stretched to hold a preferred range that exceeds it. Stretching, unlike
   * cutting the preferred range, keeps one rule at every distance between the two: a wider statement
   * never makes the species fit worse.
   */
  static Trapezoid reconciled(Range tolerated, Range preferred) {
    return new Trapezoid(tolerated.hull(preferred), preferred);
  }

  /** The response at one value. */
  public double at(double value) {
    if (!tolerated.contains(value)) {
      return 0;
    }
    if (value < preferred.min()) {
      return (value - tolerated.min()) / (preferred.min() - tolerated.min());
    }
    if (value > preferred.max()) {
      return (tolerated.max() - value) / (tolerated.max() - preferred.max());
    }
    return 1;
  }

  @Override
  public Trapezoid overClasses(double half) {
    return half == 0 ? this : new Trapezoid(tolerated.widened(half), preferred.widened(half));
  }

  @Override
  public double mean(Range bed) {
    if (bed.width() == 0) {
      return at(bed.min());
    }
    double area = overArea(bed, tolerated.min(), preferred.min())
        + overArea(bed, preferred.min(), preferred.max())
        + overArea(bed, preferred.max(), tolerated.max());
    return Math.min(1, Math.max(0, area / bed.width()));
  }

  /** On each of the three pieces the response is linear, so its mean is the response at the middle. */
  private double overArea(Range bed, double from, double to) {
    double low = Math.max(bed.min(), from);
    double high = Math.min(bed.max(), to);
    return high <= low ? 0 : (high - low) * at(low + (high - low) / 2);
  }

  @Override
  public double shortfall(Range bed) {
    boolean bedIsWider = bed.width() > tolerated.width();
    // A bed wider than the tolerance cannot lie inside it; then the tolerance should lie inside the bed.
    Range inner = bedIsWider ? tolerated : bed;
    Range outer = bedIsWider ? bed : tolerated;
    double move = inner.min() < outer.min() ? outer.min() - inner.min()
        : inner.max() > outer.max() ? outer.max() - inner.max() : 0;
    return move == 0 ? 0 : bedIsWider ? -move : move;
  }
}
