package guildwood.site.survey;

/** Spearman's rank correlation with mean ranks for ties. */
final class Ranks {
  private Ranks() {}

  static double correlation(double[] a, double[] b) {
    double[] ra = ranks(a);
    double[] rb = ranks(b);
    double mean = (a.length - 1) / 2.0;
    double ab = 0;
    double aa = 0;
    double bb = 0;
    for (int i = 0; i < a.length; i++) {
      ab += (ra[i] - mean) * (rb[i] - mean);
      aa += (ra[i] - mean) * (ra[i] - mean);
      bb += (rb[i] - mean) * (rb[i] - mean);
    }
    return ab / Math.sqrt(aa * bb);
  }

  private static double[] ranks(double[] values) {
    double[] ranks = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      for (double other : values) {
        ranks[i] += other < values[i] ? 1 : other == values[i] ? 0.5 : 0;
      }
      ranks[i] -= 0.5;
    }
    return ranks;
  }
}
