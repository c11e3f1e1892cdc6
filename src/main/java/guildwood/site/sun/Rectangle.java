package guildwood.site.sun;

import guildwood.kernel.Range;
import java.util.List;

/**
 * A rectangle on the ground, wherever it lies.
 *
 * @param lengthM along the side that runs towards {@code turnDegrees}
 * @param widthM across it
 * @param turnDegrees compass direction of the length, degrees clockwise from north, below 360
 */
public record Rectangle(double lengthM, double widthM, double turnDegrees) {
  public static final Range SIDE_M = new Range(0.2, 1_000);

  public Rectangle {
    if (!SIDE_M.contains(lengthM) || !SIDE_M.contains(widthM) || !(turnDegrees >= 0 && turnDegrees < 360)) {
      throw new IllegalArgumentException("no rectangle of " + lengthM + " x " + widthM + " m, turned by " + turnDegrees);
    }
  }

  /** A square of an area, its sides along the compass. */
  public static Rectangle square(double areaM2) {
    double side = Math.sqrt(areaM2);
    return new Rectangle(side, side, 0);
  }

  public double areaM2() {
    return lengthM * widthM;
  }

  /** How many times longer than wide, whichever side is the longer. */
  public double slenderness() {
    return Math.max(lengthM, widthM) / Math.min(lengthM, widthM);
  }

  public Footprint around(GroundPoint middle) {
    GroundPoint along = Compass.step(turnDegrees, lengthM / 2);
    GroundPoint across = Compass.step(turnDegrees + 90, widthM / 2);
    return Footprint.through("", List.of(
        corner(middle, along, across, 1, 1), corner(middle, along, across, 1, -1),
        corner(middle, along, across, -1, -1), corner(middle, along, across, -1, 1))).orThrow();
  }

  private static GroundPoint corner(GroundPoint middle, GroundPoint along, GroundPoint across, int ahead, int right) {
    return new GroundPoint(middle.xM() + ahead * along.xM() + right * across.xM(), middle.yM() + ahead * along.yM() + right * across.yM());
  }
}
