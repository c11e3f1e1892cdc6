package guildwood.materials;

import guildwood.site.GroundShapes;
import guildwood.siteplan.PlanPath;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** The ground that each of several paths covers. */
public final class PathAreas {
  private PathAreas() {}

  /** Square metres each path adds to those before it: where paths cross, the first covers the crossing. */
  public static List<Double> inOrderM2(List<PlanPath> paths) {
    List<Double> areas = new ArrayList<>();
    List<Geometry> covered = new ArrayList<>();
    for (PlanPath path : paths) {
      Geometry added = GroundShapes.strip(path.line(), path.widthM());
      for (Geometry earlier : covered) {
        added = added.difference(earlier);
      }
      covered.add(added);
      areas.add(added.getArea());
    }
    return areas;
  }
}
