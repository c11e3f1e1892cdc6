package guildwood.site.climate;

import java.util.List;
import java.util.Optional;

/**
 * Mean, 10th and 90th percentile over years: 'average', 'early' and 'late' of freeze dates in the words of the
 * Midwestern Regional Climate Center. Between two years the percentile is interpolated in a straight line, the
 * earliest of all being the 0th and the latest the 100th; the source does not say how it does so.
 */
public record Spread(double mean, double p10, double p90, int years) {
  /** None where no year has a value. */
  public static Optional<Spread> of(List<? extends Number> values) {
    if (values.isEmpty()) {
      return Optional.empty();
    }
    double[] sorted = values.stream().mapToDouble(Number::doubleValue).sorted().toArray();
    double mean = values.stream().mapToDouble(Number::doubleValue).sum() / sorted.length;
    return Optional.of(new Spread(mean, percentile(sorted, 0.1), percentile(sorted, 0.9), sorted.length));
  }

  private static double percentile(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
