package guildwood.site.survey;

import java.util.List;

/**
 * The classical averages of indicator values.
 *
 * @param weightedMean sum(cover * value) / sum(cover) over the species that have a value (weighted averaging,
 *     as in vegan's {@code wascores})
 * @param standardError of the weighted mean: root of the weighted variance over (n' - 1), n' the number of equally
 *     covering species with the same weight of evidence; with equal covers s / sqrt(n). NaN for one species
 * @param unweightedMean mean over the species
 */
public record Averages(double weightedMean, double standardError, double unweightedMean) {

  /** A value with its weight. */
  record Weighted(double value, double weight) {}

  static Averages of(List<Weighted> values) {
    double sum = values.stream().mapToDouble(Weighted::weight).sum();
    double mean = values.stream().mapToDouble(v -> v.weight() * v.value()).sum() / sum;
    double plain = values.stream().mapToDouble(Weighted::value).sum() / values.size();
    double variance = values.stream().mapToDouble(v -> v.weight() * (v.value() - mean) * (v.value() - mean)).sum() / sum;
    double effective = effectiveNumber(values.stream().mapToDouble(Weighted::weight).toArray());
    double error = values.size() < 2 ? Double.NaN : Math.sqrt(variance / (effective - 1));
    return new Averages(mean, error, plain);
  }

  /** Number of equal weights that carry as much evidence: (sum w)^2 / sum w^2. */
  static double effectiveNumber(double[] weights) {
    double sum = 0;
    double squares = 0;
    for (double weight : weights) {
      sum += weight;
      squares += weight * weight;
    }
    return sum * sum / squares;
  }
}
