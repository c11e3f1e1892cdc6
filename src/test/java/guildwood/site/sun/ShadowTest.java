package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shadows worked out by hand, with the sun due south at 45 degrees unless said otherwise: 1 m throws 1 m north. */
class ShadowTest {
  private static final SunPath.Step SOUTH_45 = SunPath.Step.of(new SunPosition(180, 45), 1, true);

  /** A house with an inner corner: the square 0..4 by 0..4 without its north-eastern quarter. */
  private static final Building ANGLED = building(3, 0, 0, 4, 0, 4, 2, 2, 2, 2, 4, 0, 4);

  @ParameterizedTest
  @CsvSource({
    // A wall from x -5 to 5, y -8 to -4, 6 m high: its shadow reaches 6 m beyond its northern edge, to y 2.
    "0, 1.99, true", "0, 2.01, false", "4.99, -3, true", "5.01, -3, false", "-4.99, 0, true", "-5.01, 0, false",
    // Under the roof, and on the sunny side.
    "0, -6, true", "0, -8.01, false", "0, -20, false"
  })
  void houseInTheSouth(double x, double y, boolean shaded) {
    assertEquals(shaded, falls(building(6, -5, -8, 5, -8, 5, -4, -5, -4), SOUTH_45, new GroundPoint(x, y)));
  }

  @ParameterizedTest
  @CsvSource({
    // Behind the low wing (its northern edge at y 2) and behind the long one (at y 4).
    "3, 4.99, true", "3, 5.01, false", "1, 6.99, true", "1, 7.01, false",
    // In the inner corner, close to the wall; south of the house; beside it.
    "3, 2.01, true", "3, -0.01, false", "4.01, 3, false", "-0.01, 3, false"
  })
  void houseWithAnInnerCorner(double x, double y, boolean shaded) {
    assertEquals(shaded, falls(ANGLED, SOUTH_45, new GroundPoint(x, y)));
  }

  @Test
  void theInnerCornerLooksOutOnTheMorningSun() {
    SunPath.Step eastAndHigh = SunPath.Step.of(new SunPosition(90, 45), 1, true);
    assertFalse(falls(ANGLED, eastAndHigh, new GroundPoint(3, 3)), "open to the east");
    SunPath.Step westAndHigh = SunPath.Step.of(new SunPosition(270, 45), 1, false);
    assertTrue(falls(ANGLED, westAndHigh, new GroundPoint(3, 3)), "the long wing stands 1 m to the west");
  }

  @Test
  void cornersMayGoRoundEitherWay() {
    Building backwards = building(3, 0, 4, 2, 4, 2, 2, 4, 2, 4, 0, 0, 0);
    for (double x = -1.05; x < 6; x += 0.3) {
      for (double y = -1.05; y < 9; y += 0.3) {
        GroundPoint point = new GroundPoint(x, y);
        assertEquals(falls(ANGLED, SOUTH_45, point), falls(backwards, SOUTH_45, point), point::toString);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    // Crown dome 2 m in radius on a base at 3 m, 5 m in all, foot at the origin. The base's shadow is a disc around
    // y 3. North of its middle the dome's shadow is half an ellipse with the half-axis sqrt(2 * 2 + 2 * 2) = 2.828.
    "0, 1.01, true", "0, 0.99, false", "0, 3, true", "0, 5.82, true", "0, 5.83, false",
    "1.99, 3, true", "2.01, 3, false", "0, 0, false",
    // At x 1 the ellipse ends at 3 + 2.828 * sqrt(1 - 1/4) = 5.449, the disc at 3 - sqrt(4 - 1) = 1.268.
    "1, 5.44, true", "1, 5.46, false", "-1, 1.28, true", "-1, 1.26, false"
  })
  void crownOnATrunk(double x, double y, boolean shaded) {
    assertEquals(shaded, falls(tree(5, 3, 2), SOUTH_45, new GroundPoint(x, y)));
  }

  @Test
  void shrubClothedToTheGroundShadesItsOwnFoot() {
    assertTrue(falls(tree(2, 0, 1), SOUTH_45, new GroundPoint(0, 0)));
    assertTrue(falls(tree(2, 0, 1), SOUTH_45, new GroundPoint(0, -0.99)));
    assertFalse(falls(tree(2, 0, 1), SOUTH_45, new GroundPoint(0, -1.01)));
    // sqrt(1 * 1 + 2 * 2) = 2.236
    assertTrue(falls(tree(2, 0, 1), SOUTH_45, new GroundPoint(0, 2.23)));
    assertFalse(falls(tree(2, 0, 1), SOUTH_45, new GroundPoint(0, 2.24)));
  }

  @Test
  void lightReadHigherUpLosesTheShadowOfWhatIsLower() {
    GroundPoint point = new GroundPoint(0, 3.5);
    assertTrue(falls(post(4), SOUTH_45, point, 0));
    assertTrue(falls(post(4), SOUTH_45, point, 0.4));
    assertFalse(falls(post(4), SOUTH_45, point, 0.6));
    assertFalse(falls(tree(2, 0, 1), SOUTH_45, new GroundPoint(0, 0), 2.01), "above its top");
    assertTrue(falls(tree(2, 0, 1), SOUTH_45, new GroundPoint(0, 0), 1.9), "within the crown");
    // At half its height the dome is sqrt(1 - 1/4) = 0.866 wide.
    assertTrue(falls(tree(2, 0, 1), SOUTH_45, new GroundPoint(0, -0.86), 1));
    assertFalse(falls(tree(2, 0, 1), SOUTH_45, new GroundPoint(0, -0.88), 1));
  }

  @Test
  void aLevelSunShadesFarButNotForEver() {
    SunPath.Step sunset = SunPath.Step.of(new SunPosition(270, -0.3), 1, false);
    assertTrue(falls(post(2), sunset, new GroundPoint(1000, 0)));
    assertFalse(falls(post(2), sunset, new GroundPoint(-1, 0)));
  }

  static Building post(double heightM) {
    double half = 0.005;
    return building(heightM, -half, -half, half, -half, half, half, -half, half);
  }

  static Tree tree(double heightM, double crownBaseM, double crownRadiusM) {
    return new Tree("tree", new GroundPoint(0, 0), heightM, crownBaseM, crownRadiusM, 0.1, 0.6, false);
  }

  static Building building(double heightM, double... xAndY) {
    return new Building("building", footprint(xAndY), heightM);
  }

  static Footprint footprint(double... xAndY) {
    List<GroundPoint> corners = new ArrayList<>();
    for (int i = 0; i < xAndY.length; i += 2) {
      corners.add(new GroundPoint(xAndY[i], xAndY[i + 1]));
    }
    return Footprint.through("footprint", corners).orThrow();
  }

  static boolean falls(Obstacle obstacle, SunPath.Step step, GroundPoint on) {
    return falls(obstacle, step, on, 0);
  }

  static boolean falls(Obstacle obstacle, SunPath.Step step, GroundPoint on, double readingHeightM) {
    Shadow shadow = Shadow.of(obstacle, readingHeightM);
    return shadow.falls() && shadow.mark(step, new PointField(List.of(on)), new int[1], 0) == 1;
  }
}
