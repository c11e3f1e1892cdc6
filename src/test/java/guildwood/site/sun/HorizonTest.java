package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HorizonTest {
  private static final Horizon COMPASS = Horizon.ofCompass(List.of(0.0, 10.0, 20.0, 5.0, 8.0, 0.0, 0.0, 4.0));

  @ParameterizedTest
  @CsvSource({"0, 0", "45, 10", "22.5, 5", "90, 20", "112.5, 12.5", "180, 8", "315, 4", "337.5, 2", "359.999, 0.0001", "360, 0", "-45, 4", "405, 10"})
  void isInterpolatedAllAround(double azimuth, double elevation) {
    assertEquals(elevation, COMPASS.elevationDegrees(azimuth), 1e-3);
  }

  @Test
  void interpolatesOverNorth() {
    Horizon horizon = Horizon.through("", List.of(new HorizonPoint(20, 6), new HorizonPoint(340, 2))).orThrow();
    assertEquals(4, horizon.elevationDegrees(0), 1e-9);
    assertEquals(5, horizon.elevationDegrees(10), 1e-9);
    assertEquals(4, horizon.elevationDegrees(180), 1e-9);
  }

  @Test
  void oneDirectionStandsForAll() {
    Horizon horizon = Horizon.through("", List.of(new HorizonPoint(180, 12))).orThrow();
    assertEquals(12, horizon.elevationDegrees(0), 0);
    assertEquals(12, horizon.elevationDegrees(180), 0);
    assertEquals(12, horizon.elevationDegrees(271), 0);
  }

  @Test
  void northMayBeGivenTwiceIfBothAgree() {
    assertEquals(3, Horizon.through("", List.of(new HorizonPoint(360, 3), new HorizonPoint(0, 3), new HorizonPoint(90, 5)))
        .orThrow().elevationDegrees(0), 0);
    Checked<Horizon> two = Horizon.through("horizon", List.of(new HorizonPoint(360, 3), new HorizonPoint(0, 4)));
    assertEquals("sun.horizon-twice", two.findings().get(0).code());
  }

  @Test
  void aLevelSkylineHidesNothingAtAll() {
    assertTrue(Horizon.LEVEL.isLevel());
    assertFalse(Horizon.LEVEL.hides(new SunPosition(100, -0.4)));
    assertFalse(Horizon.ofCompass(List.of(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0)).hides(new SunPosition(100, -0.4)));
    assertTrue(COMPASS.hides(new SunPosition(90, 19.9)));
    assertFalse(COMPASS.hides(new SunPosition(90, 20.1)));
  }

  @Test
  void aRingOfHillsShortensTheDayByWhatTheSunNeedsToClimbThem() {
    Coordinates place = Scenes.WISCONSIN;
    Horizon ring = Horizon.through("", List.of(new HorizonPoint(0, 10))).orThrow();
    Scene scene = new Scene(place, 2026, Scenes.SUMMER, Scenes.SUMMER, 0, ring, List.of());
    SunHours hours = SunHours.of(scene, scene.sunPath(5), List.of(new GroundPoint(0, 0)));
    Sun sun = new Sun(place, 2026);
    // Refraction lifts a sun at 10 degrees by about 0.09 degrees (Reda & Andreas' formula at 1010 hPa and 10 degrees C).
    double overTheHills = LocalDate.of(2026, 4, 1).datesUntil(LocalDate.of(2026, 10, 1))
        .mapToDouble(date -> sun.day(date, 9.91).lengthHours()).average().orElseThrow();
    assertEquals(overTheHills, hours.seasonMeanHours(0), 0.005);
    assertEquals(hours.openMeanHours() - overTheHills, hours.lostHours(0).get(Scene.HORIZON), 0.005);
    assertTrue(hours.wonIfGoneHours(0).isEmpty(), "nobody fells a hill");
  }

  @Test
  void refusesWhatIsNoSkyline() {
    assertThrows(IllegalArgumentException.class, () -> new HorizonPoint(361, 0));
    assertThrows(IllegalArgumentException.class, () -> new HorizonPoint(0, -1));
    assertThrows(IllegalArgumentException.class, () -> new HorizonPoint(0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Horizon.ofCompass(List.of(1.0, 2.0)));
  }
}
