package guildwood.site.survey;

import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.survey.AxisReading.Voice;
import guildwood.site.survey.Averages.Weighted;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads one axis from the species of a plot.
 *
 * <p>The evidence of a species is its response curve to the power of its weight. A plain product of the curves
 * would be far too sure of itself: species of one plot are no independent witnesses (they came from one
 * neighbourhood, and share all other conditions too). Hence:
 *
 * <ul>
 *   <li><b>Weight</b> w = c / (c + 1), c the cover as a part of the plot's largest, so half of the
 *       largest cover has two thirds of its weight. Seedlings count half. Multiplying all covers
 *       changes nothing.
 *   <li><b>Independent witnesses</b>: n species with equal weight count as n / (1 + (n - 1) rho), the usual design effect
 *       of correlated observations, rho 0.4 with covers and 0.55 for mere lists; never more than 2.5 (1.8).
 *   <li><b>Disagreement</b>: where the centres scatter more widely than their widths allow, the evidence is divided by
 *       the ratio of the variances.
 *   <li><b>Background</b>: a curve tells where a species occurs, so the product of several counts the common middle of
 *       the scale over and over. All evidence beyond the first witness is therefore taken relative to the spread of
 *       the whole flora ({@link IndicatorTable#background}); the prior is even over the scale.
 *   <li><b>Between plots</b>: what remains between plots with the same plants is added as a normal error of 0.45
 *       widths (less for few species: one alone already has it in its width).
 * </ul>
 *
 * <p>A single species thus gives its own curve, no more. The constants were set on seven open community tables by
 * leaving out each plot in turn (OpenTablesReferenceCheck among the tests counts how often the interval holds).
 */
final class Indication {
  static final int FEW = 5;
  private static final int GRID = 401;
  private static final double FLOOR_OF_BELL = 0.01;
  private static final double FLOOR_OF_RANGE = 0.05;
  private static final double HALF_COVER = 1;
  private static final double SEEDLING = 0.5;
  private static final double ALIKE = 0.4;
  private static final double ALIKE_IN_LISTS = 0.55;
  private static final double BETWEEN_PLOTS = 0.45;
  private static final double WIDTH_COUNTS_AS = 4;
  private static final double AVERAGES_COUNT_AS = 16;
  private static final double LARGEST_SHARE = 0.92;
  private static final double LEAVES_OPEN = 2.0 / 3;

  private final IndicatorTable table;
  private final List<Witness> witnesses;
  private final boolean list;
  private final double[][] logs;
  private final double[] logBackground = new double[GRID];

  /**
   * One species that speaks.
   *
   * @param amount cover in percent, or 1 for each in a mere list
   */
  record Witness(String species, double amount, boolean seedling) {}

  Indication(IndicatorTable table, List<Witness> witnesses, boolean list) {
    if (witnesses.isEmpty()) {
      throw new IllegalArgumentException("nobody speaks about " + table.axis());
    }
    this.table = table;
    this.witnesses = List.copyOf(witnesses);
    this.list = list;
    this.logs = new double[witnesses.size()][GRID];
    for (int i = 0; i < GRID; i++) {
      double x = place(i);
      logBackground[i] = StrictMath.log(table.background(x));
      for (int k = 0; k < witnesses.size(); k++) {
        Response response = table.response(witnesses.get(k).species());
        double floor = response instanceof Response.Bell ? FLOOR_OF_BELL : FLOOR_OF_RANGE;
        logs[k][i] = StrictMath.log(floor + (1 - floor) * response.at(x));
      }
    }
  }

  AxisReading read(double matchedCoverPercent) {
    double[] weights = weights(-1);
    Posterior curve = posterior(weights);
    double median = curve.quantile(0.5);
    boolean[] generalist = new boolean[weights.length];
    boolean all = true;
    for (int k = 0; k < weights.length; k++) {
      generalist[k] = isGeneralist(k);
      all &= generalist[k];
    }
    Range interval = all ? table.scale() : curve.shortest(0.8);
    return new AxisReading(table.axis(), table.system(), table.scale(), !all, median, interval, averages(),
        voices(weights, generalist), Averages.effectiveNumber(weights), matchedCoverPercent,
        warnings(weights, all, median, interval), curve);
  }

  /** Pulls are told without the error between plots: it hardly moves a median, and takes most of the time. */
  private List<Voice> voices(double[] weights, boolean[] generalist) {
    double sum = sum(weights);
    double median = sharp(weights).quantile(0.5);
    List<Voice> voices = new ArrayList<>();
    for (int k = 0; k < weights.length; k++) {
      double pull = weights.length == 1 ? 0 : median - sharp(weights(k)).quantile(0.5);
      String species = witnesses.get(k).species();
      voices.add(new Voice(species, weights[k] / sum, onScale(table.response(species).reach()), generalist[k], pull));
    }
    return voices;
  }

  /** Weights of all witnesses; one of them can be left out with weight 0. */
  private double[] weights(int without) {
    double[] weights = new double[witnesses.size()];
    double most = 0;
    for (int k = 0; k < weights.length; k++) {
      most = k == without ? most : Math.max(most, witnesses.get(k).amount());
    }
    for (int k = 0; k < weights.length; k++) {
      double part = witnesses.get(k).amount() / most;
      weights[k] = k == without ? 0 : part / (part + HALF_COVER) * (witnesses.get(k).seedling() ? SEEDLING : 1);
    }
    return weights;
  }

  private Posterior posterior(double[] weights) {
    double effective = Averages.effectiveNumber(weights);
    double width2 = widthSquared(weights);
    double plots = Math.sqrt(width2 * inflation(weights, effective, width2) * Math.max(0, 1 - 1 / effective));
    return sharp(weights).blurred(BETWEEN_PLOTS * plots);
  }

  /** The posterior of what the plants agree on, before the error between plots is added. */
  private Posterior sharp(double[] weights) {
    double sum = sum(weights);
    double effective = Averages.effectiveNumber(weights);
    double alike = list ? ALIKE_IN_LISTS : ALIKE;
    double evidence = effective / (1 + (effective - 1) * alike) / inflation(weights, effective, widthSquared(weights));
    double[] log = new double[GRID];
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < GRID; i++) {
      double mean = 0;
      for (int k = 0; k < weights.length; k++) {
        mean += weights[k] * logs[k][i];
      }
      log[i] = evidence * mean / sum - Math.max(0, evidence - 1) * logBackground[i];
      best = Math.max(best, log[i]);
    }
    for (int i = 0; i < GRID; i++) {
      log[i] = StrictMath.exp(log[i] - best);
    }
    return new Posterior(table.scale(), log);
  }

  /** By how much the centres scatter more widely than the widths allow, as a ratio of variances. */
  private double inflation(double[] weights, double effective, double width2) {
    double free = effective - 1;
    double scatter2 = scatterSquared(weights, effective);
    if (table.widths().kind() != Widths.Kind.USUAL_OF_AVERAGES) {
      return Math.max(1, (free * scatter2 + WIDTH_COUNTS_AS * width2) / (free + WIDTH_COUNTS_AS) / width2);
    }
    // Averages of one plot that differ as much as those of the whole table tell little: variances within and
    // between add up, so a share s of the spread within plots goes with a width of s / sqrt(1 - s^2) spreads.
    double spread2 = table.widths().centreSpread() * table.widths().centreSpread();
    double ratio = width2 / spread2;
    double expected = ratio / (1 + ratio);
    double share2 = (free * scatter2 / spread2 + AVERAGES_COUNT_AS * expected) / (free + AVERAGES_COUNT_AS);
    double believed = Math.min(share2, LARGEST_SHARE * LARGEST_SHARE);
    return believed / (1 - believed) / ratio;
  }

  private double scatterSquared(double[] weights, double effective) {
    if (effective < 1.01) {
      return 0;
    }
    double sum = sum(weights);
    double mean = 0;
    for (int k = 0; k < weights.length; k++) {
      mean += weights[k] * centre(k) / sum;
    }
    double variance = 0;
    for (int k = 0; k < weights.length; k++) {
      variance += weights[k] * (centre(k) - mean) * (centre(k) - mean) / sum;
    }
    return variance * effective / (effective - 1);
  }

  private double widthSquared(double[] weights) {
    double square = 0;
    for (int k = 0; k < weights.length; k++) {
      double spread = table.response(witnesses.get(k).species()).spread();
      square += weights[k] * spread * spread;
    }
    return square / sum(weights);
  }

  private Averages averages() {
    List<Weighted> values = new ArrayList<>();
    for (int k = 0; k < witnesses.size(); k++) {
      values.add(new Weighted(centre(k), witnesses.get(k).amount()));
    }
    return Averages.of(values);
  }

  private List<Finding> warnings(double[] weights, boolean allGeneralists, double median, Range interval) {
    List<Finding> warnings = new ArrayList<>();
    String axis = table.axis().key();
    if (witnesses.size() < FEW) {
      warnings.add(Finding.of("indication.few-species", axis, witnesses.size()));
    }
    if (allGeneralists) {
      warnings.add(Finding.of("indication.generalists", axis));
    } else if (interval.width() > table.scale().width() / 2) {
      warnings.add(Finding.of("indication.wide", axis));
    }
    if (disagrees(weights, median)) {
      warnings.add(Finding.of("indication.disagreement", axis));
    }
    if (table.widths().kind() != Widths.Kind.GIVEN) {
      warnings.add(Finding.of("indication.width-assumed", axis));
    }
    if (table.axis() == SurveyAxis.LIGHT) {
      warnings.add(Finding.of("indication.light", axis));
    }
    if (list) {
      warnings.add(Finding.of("indication.no-cover", axis));
    }
    return warnings;
  }

  /** A third of the evidence says that the median is no place for it. */
  private boolean disagrees(double[] weights, double median) {
    double against = 0;
    for (int k = 0; k < weights.length; k++) {
      against += table.response(witnesses.get(k).species()).at(median) < 0.15 ? weights[k] : 0;
    }
    return against >= sum(weights) / 3;
  }

  private boolean isGeneralist(int k) {
    Response response = table.response(witnesses.get(k).species());
    double open = 0;
    for (int i = 0; i < GRID; i++) {
      open += response.at(place(i)) / GRID;
    }
    return open >= LEAVES_OPEN;
  }

  /** The part of a reach that lies on the scale; its nearest end where none does. */
  private Range onScale(Range reach) {
    Range scale = table.scale();
    double low = Math.min(Math.max(reach.min(), scale.min()), scale.max());
    return new Range(low, Math.max(low, Math.min(reach.max(), scale.max())));
  }

  private double centre(int k) {
    return table.value(witnesses.get(k).species()).centre();
  }

  private double place(int i) {
    return table.scale().min() + table.scale().width() * i / (GRID - 1);
  }

  private static double sum(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    return sum;
  }
}
