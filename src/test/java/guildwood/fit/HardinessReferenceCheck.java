package guildwood.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.HardinessZone;
import guildwood.species.Trait;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * USDA ARS, 2023 Plant Hardiness Zone Map (release text): thirteen zones of 10 degrees F by mean annual
 * extreme minimum temperature, half zones of 5 degrees F. The bands in degrees C are computed from it and
 * rounded to 0.1.
 */
class HardinessReferenceCheck {

  @ParameterizedTest
  @CsvSource({
    "1a,-51.1,-48.3", "1b,-48.3,-45.6", "2a,-45.6,-42.8", "2b,-42.8,-40.0", "3a,-40.0,-37.2", "3b,-37.2,-34.4",
    "4a,-34.4,-31.7", "4b,-31.7,-28.9", "5a,-28.9,-26.1", "5b,-26.1,-23.3", "6a,-23.3,-20.6", "6b,-20.6,-17.8",
    "7a,-17.8,-15.0", "7b,-15.0,-12.2", "8a,-12.2,-9.4", "8b,-9.4,-6.7", "9a,-6.7,-3.9", "9b,-3.9,-1.1",
    "10a,-1.1,1.7", "10b,1.7,4.4", "11a,4.4,7.2", "11b,7.2,10.0", "12a,10.0,12.8", "12b,12.8,15.6",
    "13a,15.6,18.3", "13b,18.3,21.1"})
  void bandsOfTheHalfZones(String zone, double low, double high) {
    Range band = HardinessZone.read(zone).orElseThrow().celsius();
    assertEquals(low, band.min(), 0.05);
    assertEquals(high, band.max(), 0.05);
  }

  @ParameterizedTest
  @CsvSource({
    "zone 5, zone 5a, FITS", "zone 5, zone 5b, FITS", "zone 6a, zone 5b, DOES_NOT_FIT",
    "zone 5b, zone 5, BORDERLINE", "zone 4a, zone 4a, FITS", "zone 4b, zone 4a, DOES_NOT_FIT"})
  void hardyToAZoneMeansToItsColdEdge(String hardyTo, String site, Verdict expected) {
    Tolerances bears = Tolerances.of(Stated.species("Malus exemplum").with(Trait.COLDEST_WINTER, hardyTo).make());
    Range winter = HardinessZone.read(site).orElseThrow().celsius();
    assertEquals(expected, Fit.ofRanges(bears, Map.of(Axis.WINTER_COLD, winter)).verdict());
  }

  /** -12 F lies in 5b; exactly -10 F belongs to the warmer zone; just below it is 5b again. */
  @Test
  void anEdgeBelongsToTheWarmerZone() {
    assertEquals("5b", HardinessZone.ofCelsius((-12.0 - 32) * 5 / 9).orElseThrow().toString());
    assertEquals("6a", HardinessZone.ofCelsius((-10.0 - 32) * 5 / 9).orElseThrow().toString());
    assertEquals("5b", HardinessZone.ofCelsius((-10.01 - 32) * 5 / 9).orElseThrow().toString());
    assertEquals(java.util.Optional.empty(), HardinessZone.ofCelsius((71.0 - 32) * 5 / 9));
  }
}
