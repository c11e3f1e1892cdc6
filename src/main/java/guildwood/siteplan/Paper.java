package guildwood.siteplan;

import guildwood.kernel.Range;
import guildwood.site.sun.GroundPoint;

/**
 * The ground that a plan shows at least, blank or under a picture.
 *
 * @param middle metres east and north of the site's own point
 * @param widthM from west to east
 * @param depthM from south to north
 */
public record Paper(GroundPoint middle, double widthM, double depthM) {
  public static final Range SIDE_M = new Range(2, 4_000);

  /** What a plan without anything on it shows. */
  public static final Paper USUAL = new Paper(new GroundPoint(0, 0), 40, 30);

  public Paper {
    if (!SIDE_M.contains(widthM) || !SIDE_M.contains(depthM)) {
      throw new IllegalArgumentException("no paper of " + widthM + " x " + depthM + " m");
    }
  }
}
