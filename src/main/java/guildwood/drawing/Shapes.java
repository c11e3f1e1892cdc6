package guildwood.drawing;

import java.util.Collection;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Crowns as shapes to cut and join. */
final class Shapes {
  private static final GeometryFactory MAKE = new GeometryFactory();

  /** Corners of a crown, and of one among so many that fewer do. */
  private static final int CORNERS = 64;

  private static final int FEW_CORNERS = 16;

  private Shapes() {}

  /** A round crown, as a polygon of exactly its area. */
  static Polygon circle(double x, double y, double radiusM) {
    return circle(x, y, radiusM, CORNERS);
  }

  /** One of very many round crowns: its area is exact, its edge up to a hundredth of its radius beside the circle. */
  static Polygon roughCircle(double x, double y, double radiusM) {
    return circle(x, y, radiusM, FEW_CORNERS);
  }

  private static Polygon circle(double x, double y, double radiusM, int corners) {
    double reach = radiusM * Math.sqrt(2 * Math.PI / corners / Math.sin(2 * Math.PI / corners));
    Coordinate[] ring = new Coordinate[corners + 1];
    for (int i = 0; i < corners; i++) {
      double turn = 2 * Math.PI * i / corners;
      ring[i] = new Coordinate(x + reach * Math.cos(turn), y + reach * Math.sin(turn));
    }
    ring[corners] = ring[0];
    return MAKE.createPolygon(ring);
  }

  /** All of them together, ground under several counted once. */
  static Geometry union(Collection<? extends Geometry> shapes) {
    Geometry together = shapes.isEmpty() ? null : UnaryUnionOp.union(shapes);
    return together == null ? MAKE.createPolygon() : together;
  }
}
