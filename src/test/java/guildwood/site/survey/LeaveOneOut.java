package guildwood.site.survey;

import guildwood.kernel.Range;
import guildwood.site.survey.IndicatorValue.Point;
import guildwood.site.survey.IndicatorValue.Tolerated;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Leaves out each plot of a vegetation table in turn: the other plots give the species' values, the plot left out is
 * read with them and compared with what was measured on it.
 */
final class LeaveOneOut {
  /** What the other plots tell of each species. */
  enum Told {
    /** Weighted average, without a width. */
    AVERAGE,
    /** Weighted average and weighted standard deviation. */
    AVERAGE_AND_WIDTH,
    /** Smallest and largest measured value, quartiles as the preferred range. */
    RANGE
  }

  /**
   * How the readings compare with the measurements.
   *
   * @param held share of plots whose measured value lies in the 80 % interval
   * @param width mean width of the interval in standard deviations of the measured values
   * @param rank rank correlation of the medians with the measured values
   * @param rankOfMean the same of the plain weighted averages
   */
  record Outcome(double held, double width, double rank, double rankOfMean) {}

  private LeaveOneOut() {}

  static Outcome of(double[][] cover, double[] measured, Told told) {
    List<double[]> rows = new ArrayList<>();
    for (int out = 0; out < measured.length; out++) {
      Map<String, IndicatorValue> values = values(cover, measured, out, told);
      List<Occurrence> plants = new ArrayList<>();
      for (int k = 0; k < cover[out].length; k++) {
        if (cover[out][k] > 0) {
          plants.add(Occurrence.wild("species " + k, cover[out][k]));
        }
      }
      IndicatorTable table = new IndicatorTable(SurveyAxis.MOISTURE, "averages", values);
      AxisReading reading = new SurveyReader(List.of(table)).read(Survey.of("plot", plants)).readings().get(SurveyAxis.MOISTURE);
      if (reading != null) {
        rows.add(new double[] {measured[out], reading.median(), reading.interval80().min(), reading.interval80().max(),
            reading.averages().weightedMean()});
      }
    }
    double[] truth = column(rows, 0);
    double held = rows.stream().filter(r -> r[2] <= r[0] && r[0] <= r[3]).count() / (double) rows.size();
    double width = rows.stream().mapToDouble(r -> r[3] - r[2]).average().orElseThrow() / deviation(truth);
    return new Outcome(held, width, Ranks.correlation(column(rows, 1), truth), Ranks.correlation(column(rows, 4), truth));
  }

  private static Map<String, IndicatorValue> values(double[][] cover, double[] measured, int out, Told told) {
    Map<String, IndicatorValue> values = new LinkedHashMap<>();
    for (int k = 0; k < cover[0].length; k++) {
      double sum = 0;
      double first = 0;
      List<Double> where = new ArrayList<>();
      for (int i = 0; i < measured.length; i++) {
        if (i != out && cover[i][k] > 0) {
          sum += cover[i][k];
          first += cover[i][k] * measured[i];
          where.add(measured[i]);
        }
      }
      if (!where.isEmpty()) {
        double square = 0;
        for (int i = 0; i < measured.length; i++) {
          double off = measured[i] - first / sum;
          square += i == out ? 0 : cover[i][k] * off * off;
        }
        values.put("species " + k, value(first / sum, Math.sqrt(square / sum), where, told));
      }
    }
    return values;
  }

  private static IndicatorValue value(double mean, double width, List<Double> where, Told told) {
    double[] sorted = where.stream().mapToDouble(d -> d).sorted().toArray();
    return switch (told) {
      case AVERAGE -> new Point(mean, OptionalDouble.empty());
      case AVERAGE_AND_WIDTH -> new Point(mean, width > 1e-9 ? OptionalDouble.of(width) : OptionalDouble.empty());
      case RANGE -> new Tolerated(new Range(sorted[0], sorted[sorted.length - 1]),
          Optional.of(new Range(sorted[(sorted.length - 1) / 4], sorted[3 * (sorted.length - 1) / 4])));
    };
  }

  private static double[] column(List<double[]> rows, int column) {
    return rows.stream().mapToDouble(r -> r[column]).toArray();
  }

  private static double deviation(double[] values) {
    double mean = Arrays.stream(values).average().orElseThrow();
    return Math.sqrt(Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElseThrow());
  }
}
