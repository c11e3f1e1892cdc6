package guildwood.siteplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import guildwood.site.sun.GroundPoint;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Metres against degrees, held against the definition of WGS 84 itself: the ellipsoid with a = 6,378,137 m and
 * 1/f = 298.257223563 in earth-centred coordinates, east and north by the local frame there.
 */
class LocalPlaneReferenceCheck {
  private static final double A = 6_378_137;
  private static final double F = 1 / 298.257223563;
  private static final double E2 = F * (2 - F);

  /** Earth-centred x, y, z of a point on the ellipsoid. */
  private static double[] earth(double latitude, double longitude) {
    double phi = Math.toRadians(latitude);
    double lambda = Math.toRadians(longitude);
    double n = A / Math.sqrt(1 - E2 * Math.sin(phi) * Math.sin(phi));
    return new double[] {n * Math.cos(phi) * Math.cos(lambda), n * Math.cos(phi) * Math.sin(lambda), n * (1 - E2) * Math.sin(phi)};
  }

  /** Metres east and north of one point to another, in the first one's tangent plane. */
  private static double[] eastNorth(double latitude, double longitude, double toLatitude, double toLongitude) {
    double[] from = earth(latitude, longitude);
    double[] to = earth(toLatitude, toLongitude);
    double phi = Math.toRadians(latitude);
    double lambda = Math.toRadians(longitude);
    double dx = to[0] - from[0];
    double dy = to[1] - from[1];
    double dz = to[2] - from[2];
    return new double[] {-Math.sin(lambda) * dx + Math.cos(lambda) * dy,
        -Math.sin(phi) * Math.cos(lambda) * dx - Math.sin(phi) * Math.sin(lambda) * dy + Math.cos(phi) * dz};
  }

  @ParameterizedTest
  @ValueSource(doubles = {-55, -33.9, 0, 12.5, 44.3, 45})
  void withinThreeHundredMetresAPlaceIsRightToACentimetreAndAHalf(double latitude) {
    LocalPlane plane = new LocalPlane(latitude, -88.4);
    for (int i = 0; i < 8; i++) {
      GroundPoint point = new GroundPoint(300 * Math.sin(i * Math.PI / 4), 300 * Math.cos(i * Math.PI / 4));
      double[] found = eastNorth(latitude, -88.4, plane.latitude(point), plane.longitude(point));
      assertEquals(point.xM(), found[0], 0.015, "east at " + latitude);
      assertEquals(point.yM(), found[1], 0.015, "north at " + latitude);
    }
  }

  /** The error named in the class: x2 tan(latitude) / 12,800,000. */
  @Test
  void fartherOutItIsOffByWhatIsSaid() {
    LocalPlane plane = new LocalPlane(45, 7);
    double[] found = eastNorth(45, 7, plane.latitude(new GroundPoint(2_000, 0)), plane.longitude(new GroundPoint(2_000, 0)));
    assertEquals(2_000 * 2_000 / 12_800_000.0, found[1], 0.02);
    assertEquals(2_000, found[0], 0.02);
  }

  @Test
  void bothWaysAreInverse() {
    Random random = new Random(1);
    for (int i = 0; i < 1_000; i++) {
      LocalPlane plane = new LocalPlane(random.nextDouble() * 170 - 85, random.nextDouble() * 360 - 180);
      GroundPoint point = new GroundPoint(random.nextDouble() * 4_000 - 2_000, random.nextDouble() * 4_000 - 2_000);
      assertEquals(point.xM(), plane.eastM(plane.longitude(point)), 1e-6, plane::toString);
      assertEquals(point.yM(), plane.northM(plane.latitude(point)), 1e-6, plane::toString);
    }
  }

  @Test
  void theDateLineIsNoEdge() {
    LocalPlane plane = new LocalPlane(-17, 179.999);
    double longitude = plane.longitude(new GroundPoint(1_000, 0));
    assertEquals(-179.99, longitude, 0.01);
    assertEquals(1_000, plane.eastM(longitude), 1e-6);
    assertThrows(IllegalArgumentException.class, () -> new LocalPlane(90, 0));
  }
}
