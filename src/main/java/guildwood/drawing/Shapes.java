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

  /** Corners of a crown. */
  private static final int CORNERS = 64;

  /** A polygon of so many corners with the area of the unit circle reaches out so far. */
  private static final double REACH = Math.sqrt(2 * Math.PI / CORNERS / Math.sin(2 * Math.PI / CORNERS));

  private Shapes() {}

  /** A round crown, as a polygon of exactly its area. */
  static Polygon circle(double x, double y, double radiusM) {
    Coordinate[] ring = new Coordinate[CORNERS + 1];
    for (int i = 0; i < CORNERS; i++) {
      double turn = 2 * Math.PI * i / CORNERS;
      ring[i] = new Coordinate(x + radiusM * REACH * Math.cos(turn), y + radiusM * REACH * Math.sin(turn));
    }
    ring[CORNERS] = ring[0];
    return MAKE.createPolygon(ring);
  }

  /** All of them together, ground under several counted once. */
  static Geometry union(Collection<? extends Geometry> shapes) {
    Geometry together = shapes.isEmpty() ? null : UnaryUnionOp.union(shapes);
    return together == null ? MAKE.createPolygon() : together;
  }
}
