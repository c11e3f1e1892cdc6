package guildwood.siteplan;

import guildwood.site.GroundShapes;
import guildwood.site.sun.Footprint;

/**
 * A pond, ditch or other water on a site's plan.
 *
 * @param outline metres east and north of the site's own point
 */
public record Water(long id, long siteId, String name, Footprint outline) {
  public static final int LONGEST_NAME = 120;

  public double areaM2() {
    return GroundShapes.areaM2(outline);
  }
}
