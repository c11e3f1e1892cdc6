package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import net.e175.klaus.solarpositioning.SPA;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sun on a slope against the published example and against plain geometry. */
class SlopeReferenceCheck {
  /**
   * Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302, worked example: slope 30 degrees, rotated by -10 from
   * south, incidence 25.187000 degrees. From south the report counts westwards, so the slope faces 170.
   */
  @Test
  void incidenceOfTheWorkedExampleOfNrel() {
    var seen = SPA.calculateSolarPosition(
        OffsetDateTime.parse("2003-10-17T12:30:30-07:00").toZonedDateTime(), 39.742476, -105.1786, 1830.14, 67, 820, 11);
    SunPosition sun = new SunPosition(seen.azimuth(), 90 - seen.zenithAngle());
    assertEquals(25.187000, new Slope(30, 170).incidenceDegrees(sun), 1e-4);
  }

  /** On level ground the incidence is the zenith angle; a wall's is the angle to its perpendicular. */
  @Test
  void levelGroundAndWalls() {
    SunPosition sun = new SunPosition(194.340241, 39.888378);
    assertEquals(50.111622, new Slope(0, 123).incidenceDegrees(sun), 1e-9);
    assertEquals(30, new Slope(90, 180).incidenceDegrees(new SunPosition(150, 0)), 1e-9);
    assertEquals(150, new Slope(90, 0).incidenceDegrees(new SunPosition(150, 0)), 1e-9);
  }

  /**
   * Plain geometry: at an equinox the sun is up from hour angle -90 to 90 degrees on level ground and on a slope that
   * faces the equator alike, and a day's ratio is cos(latitude - steepness) / cos(latitude).
   */
  @ParameterizedTest
  @CsvSource({"40, 30, 180", "50, 10, 180", "-35, 20, 0", "30, 30, 180"})
  void ratioAtAnEquinox(double latitude, double steepness, double facing) {
    double away = Math.toRadians(Math.abs(latitude) - steepness);
    double expected = Math.cos(away) / Math.cos(Math.toRadians(latitude));
    SunPath path = SunPath.of(new Coordinates(latitude, 0), 2026, 10);
    assertEquals(expected, new Slope(steepness, facing).directRatio(path, Season.of(3, 20, 3, 20)).orElseThrow(), 0.01);
  }

  /** A slope turned away from a low winter sun gets nothing; turned half round, the two halves of the day change places. */
  @Test
  void awayFromTheSunAndSideways() {
    SunPath path = SunPath.of(new Coordinates(50, 0), 2026, 10);
    Season december = Season.of(12, 1, 12, 31);
    assertEquals(0, new Slope(60, 0).directRatio(path, december).orElseThrow(), 1e-9);
    double east = new Slope(25, 90).directRatio(path, Season.of(4, 1, 9, 30)).orElseThrow();
    assertEquals(east, new Slope(25, 270).directRatio(path, Season.of(4, 1, 9, 30)).orElseThrow(), 5e-3);
    assertTrue(new Slope(25, 180).directRatio(path, december).orElseThrow() > 2);
  }
}
