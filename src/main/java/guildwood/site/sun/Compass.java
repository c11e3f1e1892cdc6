package guildwood.site.sun;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.List;
import java.util.Locale;

/** Directions as degrees clockwise from north, and as the sixteen points of the compass. */
public final class Compass {
  /** The sixteen points, clockwise from north. */
  public static final List<String> POINTS = List.of(
      "N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW");

  private static final int LONGEST = 40;

  private Compass() {}

  /** Reads a point of the compass or degrees from north: 'SW', 'south-west', '225', '225°'. From 0, below 360. */
  public static Checked<Double> read(String typed, String field) {
    String text = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s*(?:°|deg|degrees)$", "");
    if (text.isEmpty()) {
      return Checked.refused(Finding.of("value.missing", field));
    }
    if (text.length() <= LONGEST && text.matches("\\d{1,3}(?:[.,]\\d{1,6})?")) {
      double degrees = Double.parseDouble(text.replace(',', '.'));
      return degrees <= 360 ? Checked.of(degrees % 360) : Checked.refused(Finding.of("compass.out-of-scale", field));
    }
    String letters = text.replace("north", "n").replace("east", "e").replace("south", "s").replace("west", "w")
        .replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    int point = POINTS.indexOf(letters);
    return point < 0 ? Checked.refused(Finding.of("compass.unreadable", field)) : Checked.of(22.5 * point);
  }

  /** The nearest of the sixteen points. */
  public static String nearest(double degrees) {
    return POINTS.get((int) Math.floorMod(Math.round(degrees / 22.5), 16L));
  }

  /** The point so many metres away in a direction. */
  public static GroundPoint step(double degrees, double distanceM) {
    double turn = Math.toRadians(degrees);
    return new GroundPoint(distanceM * Math.sin(turn), distanceM * Math.cos(turn));
  }

  /** The direction in which a point lies, from 0, below 360; north for the origin itself. */
  public static double towards(GroundPoint point) {
    return (Math.toDegrees(Math.atan2(point.xM(), point.yM())) + 360) % 360;
  }
}
