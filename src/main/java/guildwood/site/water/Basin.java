package guildwood.site.water;

import guildwood.kernel.Range;
import java.util.OptionalDouble;

/**
 * A shallow level basin along a contour, a trapezoid in section.
 *
 * @param lengthM along the contour
 * @param bottomM width of its level bottom
 * @param depthM to the overflow
 * @param sideRun how far each side goes out for a metre up: 3 is gentle, 0 upright
 * @param openPercent share of its room that is free for water: 100 where it is open, less where it is filled with chips
 */
public record Basin(double lengthM, double bottomM, double depthM, double sideRun, double openPercent) {
  public static final Range LENGTH_M = new Range(0.5, 500);
  public static final Range BOTTOM_M = new Range(0, 20);
  public static final Range DEPTH_M = new Range(0.02, 2);
  public static final Range SIDE_RUN = new Range(0, 10);
  public static final Range OPEN_PERCENT = new Range(1, 100);

  public Basin {
    if (!LENGTH_M.contains(lengthM) || !BOTTOM_M.contains(bottomM) || !DEPTH_M.contains(depthM) || !SIDE_RUN.contains(sideRun)
        || !OPEN_PERCENT.contains(openPercent)) {
      throw new IllegalArgumentException("a basin " + lengthM + " m long, " + bottomM + " m wide, " + depthM + " m deep, sides 1 to "
          + sideRun + ", " + openPercent + " percent open");
    }
  }

  /** Water it holds when full, cubic metres. */
  public double holdsM3() {
    return lengthM * (bottomM + sideRun * depthM) * depthM * openPercent / 100;
  }

  /** Width of the water's surface when full, metres. */
  public double topM() {
    return bottomM + 2 * sideRun * depthM;
  }

  /** Hours until a full basin has soaked away: its water's depth over the rate; never where nothing soaks in. */
  public OptionalDouble hoursToEmpty(double soakMmPerHour) {
    return soakMmPerHour > 0 ? OptionalDouble.of(depthM * 1000 * openPercent / 100 / soakMmPerHour) : OptionalDouble.empty();
  }
}
