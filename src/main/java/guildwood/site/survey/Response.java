package guildwood.site.survey;

import guildwood.kernel.Range;

/** How readily a species is met along a scale: 1 where it is at home, towards 0 where it is not. */
public sealed interface Response {

  double at(double x);

  /** Standard deviation of the curve taken as a density. */
  double spread();

  /** Length of scale it leaves open: the area under the curve. */
  double openness();

  /** Where it can be expected: the tolerated range, or the middle 80 % of a bell. */
  Range reach();

  /** Gaussian response: optimum and tolerance, its standard deviation. */
  record Bell(double optimum, double tolerance) implements Response {
    @Override
    public double at(double x) {
      double z = (x - optimum) / tolerance;
      return StrictMath.exp(-z * z / 2);
    }

    @Override
    public double spread() {
      return tolerance;
    }

    @Override
    public double openness() {
      return tolerance * Math.sqrt(2 * Math.PI);
    }

    @Override
    public Range reach() {
      return new Range(optimum - 1.2816 * tolerance, optimum + 1.2816 * tolerance);
    }
  }

  /** Plateau over the preferred range, falling straight to 0 at {@code from} and {@code to}. */
  record Plateau(double from, double preferredFrom, double preferredTo, double to, Range reach) implements Response {
    public Plateau {
      if (!(from < to && from <= preferredFrom && preferredFrom <= preferredTo && preferredTo <= to)) {
        throw new IllegalArgumentException("not a plateau: " + from + ", " + preferredFrom + ", " + preferredTo + ", " + to);
      }
    }

    @Override
    public double at(double x) {
      if (x < from || x > to) {
        return 0;
      }
      if (x < preferredFrom) {
        return (x - from) / (preferredFrom - from);
      }
      return x > preferredTo ? (to - x) / (to - preferredTo) : 1;
    }

    /** As if even over the tolerated range. */
    @Override
    public double spread() {
      return reach.width() / Math.sqrt(12);
    }

    @Override
    public double openness() {
      return (to - from + preferredTo - preferredFrom) / 2;
    }
  }
}
