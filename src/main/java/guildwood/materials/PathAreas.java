package guildwood.materials;

import guildwood.siteplan.PlanPath;
import guildwood.site.sun.GroundPoint;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** The ground of paths: each line widened to both sides, ends cut square. */
public final class PathAreas {
  /** Corners are rounded by this many steps a quarter turn: 0.2 % off the true arc at most. */
  private static final BufferParameters WIDENING =
      new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_ROUND, BufferParameters.DEFAULT_MITRE_LIMIT);
  private static final GeometryFactory GROUND = new GeometryFactory();

  private PathAreas() {}

  /** Square metres each path adds to those before it: where paths cross, the first covers the crossing. */
  public static List<Double> inOrderM2(List<PlanPath> paths) {
    List<Double> areas = new ArrayList<>();
    Geometry covered = GROUND.createPolygon();
    for (PlanPath path : paths) {
      Geometry both = covered.union(ground(path));
      areas.add(Math.max(0, both.getArea() - covered.getArea()));
      covered = both;
    }
    return areas;
  }

  private static Geometry ground(PlanPath path) {
    Coordinate[] line = path.line().stream().map(PathAreas::coordinate).toArray(Coordinate[]::new);
    return BufferOp.bufferOp(GROUND.createLineString(line), path.widthM() / 2, WIDENING);
  }

  private static Coordinate coordinate(GroundPoint point) {
    return new Coordinate(point.xM(), point.yM());
  }
}
