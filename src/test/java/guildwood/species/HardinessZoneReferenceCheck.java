package guildwood.species;

import guildwood.kernel.Temperature;
import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.kernel.Range;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * USDA Agricultural Research Service, release on the 2023 Plant Hardiness Zone Map: 13 zones of 10 degrees F
 * with half zones of 5 degrees F by average annual extreme minimum temperature. USDA Miscellaneous
 * Publication 1475 (1990): zone 11 begins at 40 degrees F. The bands in degrees C follow from these,
 * rounded to a tenth.
 */
class HardinessZoneReferenceCheck {
  @ParameterizedTest
  @CsvSource({
      "1a, -60, -55, -51.1, -48.3", "1b, -55, -50, -48.3, -45.6", "2a, -50, -45, -45.6, -42.8", "2b, -45, -40, -42.8, -40.0",
      "3a, -40, -35, -40.0, -37.2", "3b, -35, -30, -37.2, -34.4", "4a, -30, -25, -34.4, -31.7", "4b, -25, -20, -31.7, -28.9",
      "5a, -20, -15, -28.9, -26.1", "5b, -15, -10, -26.1, -23.3", "6a, -10, -5, -23.3, -20.6", "6b, -5, 0, -20.6, -17.8",
      "7a, 0, 5, -17.8, -15.0", "7b, 5, 10, -15.0, -12.2", "8a, 10, 15, -12.2, -9.4", "8b, 15, 20, -9.4, -6.7",
      "9a, 20, 25, -6.7, -3.9", "9b, 25, 30, -3.9, -1.1", "10a, 30, 35, -1.1, 1.7", "10b, 35, 40, 1.7, 4.4",
      "11a, 40, 45, 4.4, 7.2", "11b, 45, 50, 7.2, 10.0", "12a, 50, 55, 10.0, 12.8", "12b, 55, 60, 12.8, 15.6",
      "13a, 60, 65, 15.6, 18.3", "13b, 65, 70, 18.3, 21.1"})
  void halfZonesHaveTheirPublishedBands(String zone, double lowF, double highF, double lowC, double highC) {
    Range band = HardinessZone.read(zone).orElseThrow().celsius();
    assertEquals(lowF, Temperature.toFahrenheit(band.min()), 1e-9);
    assertEquals(highF, Temperature.toFahrenheit(band.max()), 1e-9);
    assertEquals(lowC, band.min(), 0.05001);
    assertEquals(highC, band.max(), 0.05001);
    assertEquals(zone, HardinessZone.ofCelsius(Temperature.toCelsius((lowF + highF) / 2)).orElseThrow().toString());
  }

  /** The rule for an edge: it belongs to the warmer zone. */
  @ParameterizedTest
  @CsvSource({"-12, 5b", "-10, 6a", "-10.01, 5b", "40, 11a", "69.9, 13b"})
  void readsAMinimumInDegreesF(double fahrenheit, String zone) {
    assertEquals(zone, HardinessZone.ofCelsius(Temperature.toCelsius(fahrenheit)).orElseThrow().toString());
  }

  @Test
  void knowsNoZoneBeyondTheMap() {
    assertEquals(Optional.empty(), HardinessZone.ofCelsius(Temperature.toCelsius(71)));
    assertEquals(Optional.empty(), HardinessZone.ofCelsius(Temperature.toCelsius(70)));
    assertEquals(Optional.empty(), HardinessZone.ofCelsius(Temperature.toCelsius(-60.1)));
  }

  @Test
  void aPlantHardyToAZoneBearsTheWholeOfIt() {
    double hardyTo5 = coldest("zone 5");
    double hardyTo6a = coldest("zone 6a");
    double coldestOf5a = HardinessZone.read("5a").orElseThrow().celsius().min();
    double coldestOf5b = HardinessZone.read("5b").orElseThrow().celsius().min();
    assertEquals(coldestOf5a, hardyTo5, 1e-9);
    assertEquals(1, Double.compare(hardyTo6a, coldestOf5b));
  }

  private static double coldest(String entered) {
    return ((TraitValue.Span) TraitReader.read(Trait.COLDEST_WINTER, entered, "value").orThrow()).range().min();
  }
}
