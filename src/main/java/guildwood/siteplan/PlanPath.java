package guildwood.siteplan;

import guildwood.kernel.Range;
import guildwood.site.GroundShapes;
import guildwood.site.sun.GroundPoint;
import java.util.List;
import java.util.Optional;

/**
 * A path on a site's plan.
 *
 * @param line its middle, from one end to the other, metres east and north of the site's own point
 * @param widthM from edge to edge
 * @param depthM of what it is covered with; 0 where nothing is laid
 * @param heights of its two ends; absent where nobody measured them
 */
public record PlanPath(
    long id, long siteId, String name, List<GroundPoint> line, double widthM, double depthM, Optional<EndHeights> heights) {
  public static final int LONGEST_NAME = 120;
  public static final Range WIDTH_M = new Range(0.1, 30);
  public static final Range DEPTH_M = new Range(0, 2);

  public PlanPath {
    line = List.copyOf(line);
    if (line.size() < 2 || !WIDTH_M.contains(widthM) || !DEPTH_M.contains(depthM)) {
      throw new IllegalArgumentException("no path " + name + " of " + line.size() + " points, " + widthM + " m wide, " + depthM + " m deep");
    }
  }

  /** A path of whose slope nothing is known. */
  public PlanPath(long id, long siteId, String name, List<GroundPoint> line, double widthM, double depthM) {
    this(id, siteId, name, line, widthM, depthM, Optional.empty());
  }

  /** Along its middle, on the plan: a sloping path is a little longer underfoot. */
  public double lengthM() {
    return GroundShapes.line(line).getLength();
  }

  /** The ground it covers; where it crosses itself that is counted once. */
  public double areaM2() {
    return GroundShapes.strip(line, widthM).getArea();
  }

  /**
   * Heights of the ends over any one level.
   *
   * @param startM at the first point of the line
   * @param endM at its last point
   */
  public record EndHeights(double startM, double endM) {
    public static final Range HEIGHT_M = new Range(-500, 9_000);

    public EndHeights {
      if (!HEIGHT_M.contains(startM) || !HEIGHT_M.contains(endM)) {
        throw new IllegalArgumentException("no path between heights of " + startM + " and " + endM + " m");
      }
    }
  }
}
