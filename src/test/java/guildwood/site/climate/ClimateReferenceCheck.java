package guildwood.site.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Temperature;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Degree days, chill and frost against published values; the source stands beside each.
 *
 * <p>Not asserted: the Utah cut points in degrees F, known second-hand; simple chill hours, which have no source (see
 * {@link ChillTest}); the Minnesota DNR's table of chances, since no chances are printed; and how a percentile lies
 * between two years, which the Midwestern Regional Climate Center does not say.
 */
class ClimateReferenceCheck {
  /** Iowa State University, Agronomy 541: high 70, low 50, base 50 give 10; 36 is the most in one day. */
  @Test
  void degreeDaysOfAgronomy541() {
    assertEquals(10, GrowingDegreeDays.plain(day(50, 70), 50), 1e-9);
    assertEquals(10, GrowingDegreeDays.corn(day(50, 70)), 1e-9);
    assertEquals(36, GrowingDegreeDays.corn(day(86, 86)), 1e-9);
    assertEquals(36, GrowingDegreeDays.corn(day(95, 120)), 1e-9);
  }

  /** Computed by the two methods of the Western Regional Climate Center's station pages. */
  @Test
  void degreeDaysOfAHotDay() {
    assertEquals(23, GrowingDegreeDays.plain(day(51, 95), 50), 1e-9);
    assertEquals(18.5, GrowingDegreeDays.corn(day(51, 95)), 1e-9);
  }

  /** The same pages: negatives dropped; the low raised to 50. */
  @ParameterizedTest
  @CsvSource({"20, 40, 0, 0", "30, 60, 0, 5", "40, 64, 2, 7"})
  void degreeDaysOfColdDays(double lowF, double highF, double plain, double corn) {
    assertEquals(plain, GrowingDegreeDays.plain(day(lowF, highF), 50), 1e-9);
    assertEquals(corn, GrowingDegreeDays.corn(day(lowF, highF)), 1e-9);
  }

  /** Utah model (Richardson, Seeley and Walker 1974), computed for a day of one temperature; the same by either set of cut points. */
  @ParameterizedTest
  @CsvSource({"40, 24", "50, 12", "70, -24"})
  void chillUnitsOfADay(double fahrenheit, double units) {
    double[] hours = new double[24];
    Arrays.fill(hours, fahrenheit);
    assertEquals(units, Chill.utahUnits(hours), 1e-9);
    assertEquals(units, 24 * Chill.utahUnitsPerHourC(Temperature.toCelsius(fahrenheit)), 1e-9);
  }

  /** Cut points in degrees C in the documentation of the R package ChillModels: 1.4, 2.4, 9.1, 12.4, 15.9, 18.0. */
  @ParameterizedTest
  @CsvSource({
    "1.35, 0", "1.45, 0.5", "2.35, 0.5", "2.45, 1", "9.05, 1", "9.15, 0.5", "12.35, 0.5", "12.55, 0", "15.85, 0",
    "16.05, -0.5", "17.95, -0.5", "18.05, -1"
  })
  void chillUnitsChangeAtThePublishedCutPoints(double celsius, double units) {
    assertEquals(units, Chill.utahUnitsPerHourC(celsius), 0);
  }

  /** US National Weather Service, Jackson: frost, freeze and hard freeze at 36, 32 and 28 F. */
  @Test
  void thresholdsOfTheWeatherService() {
    assertEquals(36, FrostThreshold.FROST.fahrenheit(), 0);
    assertEquals(32, FrostThreshold.FREEZE.fahrenheit(), 0);
    assertEquals(28, FrostThreshold.HARD_FREEZE.fahrenheit(), 0);
  }

  /** First autumn freeze less last spring freeze: 5 May to 5 October are 153 days, leap year or not (the calendar). */
  @ParameterizedTest
  @CsvSource({"2023", "2024"})
  void frostFreeDaysFromMayToOctober(int year) {
    StationYear station = Stations.year(Hemisphere.NORTH, year, year + "-05-05", year + "-10-05");
    assertEquals(OptionalLong.of(153), FrostYear.of(station, 32).frostFreeDays());
  }

  /** Utah Climate Center: spring and autumn part at 24 July in the north, at 24 January in the south. */
  @ParameterizedTest
  @CsvSource({
    "NORTH, 2023-07-23, true", "NORTH, 2023-07-25, false", "SOUTH, 2024-01-23, true", "SOUTH, 2024-01-25, false"
  })
  void springAndAutumnPartInTheMiddleOfSummer(Hemisphere hemisphere, String date, boolean isSpring) {
    FrostYear frost = FrostYear.of(Stations.year(hemisphere, 2023, date), 32);
    assertEquals(isSpring, frost.lastSpring().equals(java.util.Optional.of(LocalDate.parse(date))));
    assertEquals(!isSpring, frost.firstAutumn().equals(java.util.Optional.of(LocalDate.parse(date))));
  }

  /** 'Early' and 'late' are the 10th and 90th percentile, 'average' the mean: Midwestern Regional Climate Center. */
  @Test
  void earlyAverageAndLate() {
    Spread spread = Spread.of(java.util.stream.IntStream.rangeClosed(100, 200).boxed().toList()).orElseThrow();
    assertEquals(110, spread.p10(), 1e-9);
    assertEquals(150, spread.mean(), 1e-9);
    assertEquals(190, spread.p90(), 1e-9);
    assertTrue(Spread.of(java.util.List.of()).isEmpty());
  }

  /** USDA ARS, 2023 map: zones by the mean annual extreme minimum; -12 F is in 5b, exactly -10 F in 6a by the rule for edges. */
  @ParameterizedTest
  @CsvSource({"-12, -12, 5b", "-14, -6, 6a", "-20, -0.02, 5b", "71, 71, none"})
  void coldestWinterGivesTheZone(double firstF, double secondF, String zone) {
    StationRecord station = Stations.withMinima(firstF, secondF);
    ColdestWinter winter = ColdestWinter.of(station).orElseThrow();
    assertEquals((firstF + secondF) / 2, winter.meanAnnualMinimumF(), 1e-9);
    assertEquals(zone, winter.zone().map(Object::toString).orElse("none"));
  }

  private static DayTemperatures day(double lowF, double highF) {
    return new DayTemperatures(LocalDate.of(2024, 6, 1), lowF, highF);
  }
}
