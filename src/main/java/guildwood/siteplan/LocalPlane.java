package guildwood.siteplan;

import guildwood.kernel.Range;
import guildwood.site.sun.GroundPoint;

/**
 * Metres on a site as degrees of WGS 84 and back: the plane that touches the ellipsoid at the site's own point, with
 * its radii of curvature there. Both ways are exact inverses of one another. A point x metres to the east lies about
 * x<sup>2</sup> tan(latitude) / 12,800,000 metres off in truth, because parallels are bent: under a centimetre within
 * 300 m at 45 degrees.
 *
 * @param latitudeDegrees of the site's own point
 * @param longitudeDegrees of the site's own point
 */
public record LocalPlane(double latitudeDegrees, double longitudeDegrees) {
  /** Nearer to the poles a degree of longitude is too short to count in. */
  public static final Range LATITUDE_DEGREES = new Range(-85, 85);

  /** The ellipsoid of WGS 84: longer half axis in metres, and flattening. NGA.STND.0036, as everybody uses it. */
  private static final double HALF_AXIS_M = 6_378_137;
  private static final double FLATTENING = 1 / 298.257223563;

  public LocalPlane {
    if (!LATITUDE_DEGREES.contains(latitudeDegrees) || !(Math.abs(longitudeDegrees) <= 180)) {
      throw new IllegalArgumentException("no plane at " + latitudeDegrees + ", " + longitudeDegrees);
    }
  }

  private double eccentricitySquared() {
    return FLATTENING * (2 - FLATTENING);
  }

  private double bend() {
    double sine = Math.sin(Math.toRadians(latitudeDegrees));
    return 1 - eccentricitySquared() * sine * sine;
  }

  /** Length of a degree of latitude. */
  double metresNorthPerDegree() {
    return Math.toRadians(HALF_AXIS_M * (1 - eccentricitySquared()) / Math.pow(bend(), 1.5));
  }

  /** Length of a degree of longitude. */
  double metresEastPerDegree() {
    return Math.toRadians(HALF_AXIS_M / Math.sqrt(bend()) * Math.cos(Math.toRadians(latitudeDegrees)));
  }

  public double latitude(GroundPoint point) {
    return latitudeDegrees + point.yM() / metresNorthPerDegree();
  }

  /** From -180 to 180. */
  public double longitude(GroundPoint point) {
    double degrees = longitudeDegrees + point.xM() / metresEastPerDegree();
    return degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;
  }

  /** Metres east of the site's own point, the short way round. */
  public double eastM(double longitude) {
    double degrees = (longitude - longitudeDegrees) % 360;
    double near = degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;
    return near * metresEastPerDegree();
  }

  public double northM(double latitude) {
    return (latitude - latitudeDegrees) * metresNorthPerDegree();
  }
}
