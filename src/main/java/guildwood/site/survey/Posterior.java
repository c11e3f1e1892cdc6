package guildwood.site.survey;

import guildwood.kernel.Range;

/** A probability density on an even grid. */
public final class Posterior {
  private static final int STARTS = 200;

  private final Range scale;
  private final double[] density;

  /**
   * @param scale the ends of the grid
   * @param weights any non-negative weights at its points, not all 0
   */
  Posterior(Range scale, double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    if (!(sum > 0) || !Double.isFinite(sum)) {
      throw new IllegalArgumentException("no density: the weights sum up to " + sum);
    }
    this.scale = scale;
    this.density = new double[weights.length];
    for (int i = 0; i < weights.length; i++) {
      density[i] = weights[i] / sum;
    }
  }

  public int points() {
    return density.length;
  }

  /** Place of a grid point on the scale. */
  public double at(int point) {
    return scale.min() + scale.width() * point / (density.length - 1);
  }

  /** Share of the probability at a grid point. */
  public double density(int point) {
    return density[point];
  }

  /** The place below which the share p of the probability lies; every point's share is spread over its cell. */
  public double quantile(double p) {
    double below = 0;
    for (int i = 0; i < density.length; i++) {
      if (below + density[i] >= p) {
        double within = (p - below) / density[i] - 0.5;
        double place = at(i) + within * scale.width() / (density.length - 1);
        return Math.min(scale.max(), Math.max(scale.min(), place));
      }
      below += density[i];
    }
    return scale.max();
  }

  /**
   * The shortest interval that holds the share p. On a scale with ends it reaches the end where the curve still
   * rises there, which an interval between two quantiles never does.
   */
  public Range shortest(double p) {
    Range best = scale;
    for (int i = 0; i <= STARTS; i++) {
      double below = (1 - p) * i / STARTS;
      Range tried = new Range(quantile(below), quantile(below + p));
      best = tried.width() < best.width() ? tried : best;
    }
    return best;
  }

  /** The same with a normal error of a standard deviation added; ends stay ends. */
  Posterior blurred(double deviation) {
    double step = scale.width() / (density.length - 1);
    int reach = (int) Math.ceil(4 * deviation / step);
    if (reach == 0) {
      return this;
    }
    double[] kernel = new double[reach + 1];
    for (int k = 0; k <= reach; k++) {
      double z = k * step / deviation;
      kernel[k] = StrictMath.exp(-z * z / 2);
    }
    double[] blurred = new double[density.length];
    for (int from = 0; from < density.length; from++) {
      int first = Math.max(0, from - reach);
      int last = Math.min(density.length - 1, from + reach);
      double mass = 0;
      for (int to = first; to <= last; to++) {
        mass += kernel[Math.abs(to - from)];
      }
      for (int to = first; to <= last; to++) {
        blurred[to] += density[from] * kernel[Math.abs(to - from)] / mass;
      }
    }
    return new Posterior(scale, blurred);
  }
}
