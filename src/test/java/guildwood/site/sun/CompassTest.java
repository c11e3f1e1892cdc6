package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompassTest {
  @ParameterizedTest
  @CsvSource({"N, 0", "n, 0", "NNE, 22.5", "E, 90", "south-west, 225", "South West, 225", "NNW, 337.5", "225, 225", "225°, 225",
    "'22,5', 22.5", "360, 0", "0, 0", "90 degrees, 90", "north-north-east, 22.5"})
  void readsPointsAndDegrees(String typed, double degrees) {
    assertEquals(degrees, Compass.read(typed, "x").orThrow());
  }

  @ParameterizedTest
  @CsvSource({"'', value.missing", "361, compass.out-of-scale", "-90, compass.unreadable", "NEN, compass.unreadable", "up, compass.unreadable",
    "NS, compass.unreadable"})
  void refusesWhatIsNoDirection(String typed, String code) {
    assertEquals(code, Compass.read(typed, "x").findings().get(0).code());
  }

  @Test
  void aStepEastGoesEast() {
    GroundPoint east = Compass.step(90, 5);
    assertEquals(5, east.xM(), 1e-12);
    assertEquals(0, east.yM(), 1e-12);
    GroundPoint southWest = Compass.step(225, Math.sqrt(2));
    assertEquals(-1, southWest.xM(), 1e-12);
    assertEquals(-1, southWest.yM(), 1e-12);
  }

  @Test
  void everyPointIsReadBackFromItsStep() {
    for (String point : Compass.POINTS) {
      double degrees = Compass.read(point, "x").orThrow();
      assertEquals(degrees, Compass.towards(Compass.step(degrees, 12)), 1e-9);
      assertEquals(point, Compass.nearest(degrees));
      assertEquals(point, Compass.nearest(degrees + 11.2));
      assertEquals(point, Compass.nearest((degrees + 348.8) % 360));
    }
  }
}
