package guildwood.siteplan;

import guildwood.site.sun.GroundPoint;
import java.util.List;

/**
 * A path on a site's plan.
 *
 * @param line its middle, from one end to the other, metres east and north of the site's own point
 * @param widthM from edge to edge
 * @param depthM of what it is covered with; 0 where nothing is laid
 */
public record PlanPath(long id, long siteId, String name, List<GroundPoint> line, double widthM, double depthM) {
  public PlanPath {
    line = List.copyOf(line);
  }
}
