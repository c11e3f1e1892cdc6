package guildwood.site.sun;

import guildwood.kernel.Range;

/** The height of the skyline in one direction: azimuth clockwise from north, elevation over level, degrees. */
public record HorizonPoint(double azimuthDegrees, double elevationDegrees) {
  public static final Range AZIMUTH_DEGREES = new Range(0, 360);
  public static final Range ELEVATION_DEGREES = new Range(0, 90);

  public HorizonPoint {
    if (!AZIMUTH_DEGREES.contains(azimuthDegrees) || !ELEVATION_DEGREES.contains(elevationDegrees)) {
      throw new IllegalArgumentException("no such skyline: " + elevationDegrees + " at " + azimuthDegrees);
    }
  }

  /** The azimuth with a full turn taken as north, 0. */
  double turnDegrees() {
    return azimuthDegrees % 360;
  }
}
