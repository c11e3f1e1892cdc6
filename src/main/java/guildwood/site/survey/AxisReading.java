package guildwood.site.survey;

import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the plants of a plot say about one axis.
 *
 * @param system whose values were used
 * @param scale the ends of the scale
 * @param called false where the plants allow no call: the interval is then the whole scale
 * @param interval80 holds the true value in about four of five plots
 * @param voices the species that speak, in the order of the survey
 * @param effectiveSpecies equally weighing species with as much evidence
 * @param matchedCoverPercent share of the wild cover (in a list: of the species) that has a value
 * @param curve the posterior behind median and interval
 */
public record AxisReading(
    SurveyAxis axis,
    String system,
    Range scale,
    boolean called,
    double median,
    Range interval80,
    Averages averages,
    List<Voice> voices,
    double effectiveSpecies,
    double matchedCoverPercent,
    List<Finding> warnings,
    Posterior curve) {

  /**
   * One species that speaks.
   *
   * @param species its name in the table of values
   * @param weight its part in the evidence, 0 to 1; all parts sum up to 1
   * @param reach where it can be expected
   * @param generalist whether alone it leaves two thirds of the scale open
   * @param pull how far it moves the median: median with it minus median without it
   */
  public record Voice(String species, double weight, Range reach, boolean generalist, double pull) {}

  public AxisReading {
    voices = List.copyOf(voices);
    warnings = List.copyOf(warnings);
  }

  /** The species that moves the median most; empty where none moves it. */
  public Optional<Voice> strongest() {
    return voices.stream().filter(v -> v.pull() != 0)
        .max(Comparator.comparingDouble(v -> Math.abs(v.pull())));
  }

  /**
   * The interval as a condition of a bed, with basis 'indicated', one decimal outwards; empty where the plants allow no
   * call or were read on another scale than that of the beds.
   *
   * @param entered how the reading is named on the page, for example the plot
   */
  public Optional<Condition> condition(String entered) {
    if (!called || axis.axis().isEmpty() || !system.equals(SurveyAxis.OWN_AXES)) {
      return Optional.empty();
    }
    double low = Math.max(scale.min(), Math.floor(interval80.min() * 10) / 10);
    double high = Math.min(scale.max(), Math.ceil(interval80.max() * 10) / 10);
    return Optional.of(new Condition(axis.axis().get(), new Range(low, high), Basis.INDICATED, entered));
  }

  /** Whether a measured or observed range lies wholly outside the interval; never where there is no call. */
  public boolean contradicts(Range measured) {
    return called && !interval80.overlaps(measured);
  }

  public boolean warnsOf(String code) {
    return warnings.stream().anyMatch(w -> w.code().equals(code));
  }
}
