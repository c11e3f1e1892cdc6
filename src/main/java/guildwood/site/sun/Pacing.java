package guildwood.site.sun;

import guildwood.kernel.Range;

/** Measuring heights in the field with paces and an angle. */
public final class Pacing {
  public static final Range DISTANCE_M = new Range(0.5, 500);
  public static final Range ANGLE_DEGREES = new Range(-45, 85);
  public static final Range EYE_HEIGHT_M = new Range(0, 3);

  private Pacing() {}

  /**
   * Height of a tree or house in metres from the distance to its foot on level ground, the angle at which
   * its top is seen over level, and the height of the eye: plain trigonometry.
   */
  public static double heightM(double distanceM, double angleDegrees, double eyeHeightM) {
    if (!DISTANCE_M.contains(distanceM) || !ANGLE_DEGREES.contains(angleDegrees) || !EYE_HEIGHT_M.contains(eyeHeightM)) {
      throw new IllegalArgumentException("not paced: " + distanceM + " m, " + angleDegrees + " degrees, eye at " + eyeHeightM);
    }
    return distanceM * Math.tan(Math.toRadians(angleDegrees)) + eyeHeightM;
  }
}
