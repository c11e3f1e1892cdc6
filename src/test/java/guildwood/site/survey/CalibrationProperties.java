package guildwood.site.survey;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * On made-up vegetation whose conditions are known, the 80 % interval holds the truth about four times out of five or a
 * little more often, and the medians rank the plots as well as the plain weighted average. Species answer to the gradient
 * and to a second one nobody measures, so that those of one plot err together; their values are stated with errors.
 */
class CalibrationProperties {
  private static final int PLOTS = 150;
  private static final int FLORA = 120;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void expertRanksAreReadHonestly(long seed) {
    check("ranks", seed, new World(seed, 1.3, 0.5).readings((optimum, random) ->
        new IndicatorValue.Point(clamp(Math.rint(optimum + 0.7 * random.nextGaussian())), OptionalDouble.empty())));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void positionsWithWidthsAreReadHonestly(long seed) {
    check("widths", seed, new World(seed, 1.3, 0.5).readings((optimum, random) ->
        new IndicatorValue.Point(clamp(optimum + 0.5 * random.nextGaussian()),
            OptionalDouble.of(1.3 * Math.exp(0.3 * random.nextGaussian())))));
  }

  private static double clamp(double value) {
    return Math.max(1, Math.min(12, value));
  }

  private static void check(String what, long seed, List<double[]> rows) {
    double held = rows.stream().filter(r -> r[2] <= r[0] && r[0] <= r[3]).count() / (double) rows.size();
    double rank = Ranks.correlation(column(rows, 1), column(rows, 0));
    double rankOfMean = Ranks.correlation(column(rows, 4), column(rows, 0));
    double width = rows.stream().mapToDouble(r -> r[3] - r[2]).average().orElseThrow();
    System.out.printf(Locale.ROOT, "%s, world %d: held %.3f, mean width %.2f, rank %.4f, of weighted mean %.4f%n", what, seed,
        held, width, rank, rankOfMean);
    assertTrue(held >= 0.75 && held <= 0.95, "held " + held);
    assertTrue(rank >= rankOfMean - 0.002, rank + " against " + rankOfMean);
  }

  private static double[] column(List<double[]> rows, int column) {
    return rows.stream().mapToDouble(r -> r[column]).toArray();
  }

  private interface Source {
    IndicatorValue state(double optimum, Random random);
  }

  /** Plots along a scale from 1 to 12, on which the flora spreads as on Ellenberg's scale of moisture. */
  private static final class World {
    private final Random random;
    private final double tolerance;
    private final double shared;

    /** @param shared standard deviation, in tolerances, of what makes all species of a plot err together */
    World(long seed, double tolerance, double shared) {
      this.random = new Random(seed);
      this.tolerance = tolerance;
      this.shared = shared;
    }

    /** Rows of truth, median, ends of the interval, weighted mean. */
    List<double[]> readings(Source source) {
      double[] optimum = random.doubles(FLORA).map(u -> 6 + 2.2 * random.nextGaussian()).toArray();
      double[] hidden = random.doubles(FLORA, -3, 3).toArray();
      Map<String, IndicatorValue> values = new LinkedHashMap<>();
      for (int k = 0; k < FLORA; k++) {
        values.put("species " + k, source.state(optimum[k], random));
      }
      SurveyReader reader = new SurveyReader(List.of(new IndicatorTable(SurveyAxis.MOISTURE, "ellenberg", values)));
      List<double[]> rows = new ArrayList<>();
      while (rows.size() < PLOTS) {
        double truth = 2 + 9 * random.nextDouble();
        double felt = truth + shared * tolerance * random.nextGaussian();
        AxisReading reading = reader.read(Survey.of("plot", plants(felt, optimum, hidden))).readings().get(SurveyAxis.MOISTURE);
        if (reading != null) {
          rows.add(new double[] {truth, reading.median(), reading.interval80().min(), reading.interval80().max(),
              reading.averages().weightedMean()});
        }
      }
      return rows;
    }

    private List<Occurrence> plants(double felt, double[] optimum, double[] hidden) {
      double other = random.nextGaussian();
      List<Occurrence> plants = new ArrayList<>();
      for (int k = 0; k < FLORA; k++) {
        double z = (felt - optimum[k]) / tolerance;
        double chance = 0.6 * Math.exp(-z * z / 2 - (other - hidden[k]) * (other - hidden[k]) / 2);
        if (random.nextDouble() < chance) {
          plants.add(Occurrence.wild("species " + k, Math.min(100, 5 * Math.exp(1.2 * random.nextGaussian()))));
        }
      }
      return plants;
    }
  }
}
