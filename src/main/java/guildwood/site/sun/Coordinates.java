package guildwood.site.sun;

import guildwood.kernel.Range;

/** A place on Earth: latitude in degrees, north positive; longitude in degrees, east positive. */
public record Coordinates(double latitudeDegrees, double longitudeDegrees) {
  public static final Range LATITUDE_DEGREES = new Range(-90, 90);
  public static final Range LONGITUDE_DEGREES = new Range(-180, 180);

  public Coordinates {
    if (!LATITUDE_DEGREES.contains(latitudeDegrees) || !LONGITUDE_DEGREES.contains(longitudeDegrees)) {
      throw new IllegalArgumentException("no such coordinates: " + latitudeDegrees + ", " + longitudeDegrees);
    }
  }
}
