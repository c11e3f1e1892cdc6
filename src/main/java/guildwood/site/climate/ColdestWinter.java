package guildwood.site.climate;

import guildwood.kernel.Temperature;
import guildwood.species.HardinessZone;
import java.util.List;
import java.util.Optional;

/**
 * The mean annual extreme minimum, degrees F, by which hardiness zones are drawn (USDA ARS, 2023 Plant Hardiness
 * Zone Map: means of 1991 to 2020). A year is one of growth, so a winter belongs half to one and half to the next.
 */
public record ColdestWinter(double meanAnnualMinimumF, int years) {
  /** Years behind the published map; the mean of fewer is less steady. */
  public static final int YEARS_OF_THE_MAP = 30;

  /** None where there is no whole year. */
  public static Optional<ColdestWinter> of(StationRecord station) {
    List<StationYear> whole = station.wholeYears();
    return whole.isEmpty() ? Optional.empty() : Optional.of(new ColdestWinter(
        whole.stream().mapToDouble(ColdestWinter::minimumF).sum() / whole.size(), whole.size()));
  }

  /** None below zone 1 and above zone 13. */
  public Optional<HardinessZone> zone() {
    return HardinessZone.ofCelsius(Temperature.toCelsius(meanAnnualMinimumF));
  }

  private static double minimumF(StationYear year) {
    return year.days().stream().mapToDouble(DayTemperatures::minF).min().orElseThrow();
  }
}
