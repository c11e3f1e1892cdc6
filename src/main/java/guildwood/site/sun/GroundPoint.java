package guildwood.site.sun;

import guildwood.kernel.Range;

/** A point on the ground: metres east and north of the scene's origin. */
public record GroundPoint(double xM, double yM) {
  /** How far from the origin things may stand; beyond it the ground cannot be taken as flat. */
  public static final Range REACH_M = new Range(-20_000, 20_000);

  public GroundPoint {
    if (!REACH_M.contains(xM) || !REACH_M.contains(yM)) {
      throw new IllegalArgumentException("not near the origin: " + xM + ", " + yM);
    }
  }
}
