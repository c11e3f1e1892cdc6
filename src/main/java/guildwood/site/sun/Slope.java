package guildwood.site.sun;

import guildwood.kernel.Range;
import java.util.OptionalDouble;

/**
 * Ground that is not level.
 *
 * @param steepnessDegrees angle to the level, 0 to 90
 * @param facingDegrees the direction in which the ground falls, clockwise from north
 */
public record Slope(double steepnessDegrees, double facingDegrees) {
  public static final Range STEEPNESS_DEGREES = new Range(0, 90);
  public static final Range FACING_DEGREES = new Range(0, 360);

  public Slope {
    if (!STEEPNESS_DEGREES.contains(steepnessDegrees) || !FACING_DEGREES.contains(facingDegrees)) {
      throw new IllegalArgumentException("no slope of " + steepnessDegrees + " degrees facing " + facingDegrees);
    }
  }

  /**
   * Angle between the sun and the perpendicular to the slope, degrees; beyond 90 the sun stands behind the slope. As in
   * Reda and Andreas, NREL/TP-560-34302, whose rotation of the surface is the facing here less 180 degrees.
   */
  public double incidenceDegrees(SunPosition sun) {
    return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, incidenceCosine(sun)))));
  }

  private double incidenceCosine(SunPosition sun) {
    double elevation = Math.toRadians(sun.elevationDegrees());
    double steepness = Math.toRadians(steepnessDegrees);
    double aside = Math.toRadians(sun.azimuthDegrees() - facingDegrees);
    return Math.sin(elevation) * Math.cos(steepness) + Math.cos(elevation) * Math.sin(steepness) * Math.cos(aside);
  }

  /**
   * Direct beam on the slope against that on level ground over the days of a season: the mean of cos(incidence) /
   * cos(zenith) over all minutes of open sky, each weighted by the sine of the sun's elevation. Since that sine is
   * cos(zenith), this is the sum of cos(incidence), 0 behind the slope, over the sum of sin(elevation). Neither what
   * stands around, nor the air, nor light from the sky is in it. None where the sun never rises.
   */
  public OptionalDouble directRatio(SunPath path, Season season) {
    double onSlope = 0;
    double onLevel = 0;
    for (SunPath.Day day : path.days()) {
      if (season.contains(day.date())) {
        for (SunPath.Step step : day.steps()) {
          double level = Math.sin(Math.toRadians(step.sun().elevationDegrees()));
          // Half a sun above the horizon has its centre below it: no beam on level ground yet.
          if (level > 0) {
            onLevel += step.hours() * level;
            onSlope += step.hours() * Math.max(0, incidenceCosine(step.sun()));
          }
        }
      }
    }
    return onLevel > 0 ? OptionalDouble.of(onSlope / onLevel) : OptionalDouble.empty();
  }
}
