package guildwood.site;

import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** What lies on the ground as shapes of the geometry library, in metres: x is east, y is north. */
public final class GroundShapes {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Eight chords to a quarter of a circle, within 0.5 % of its radius. */
  private static final int CHORDS = 8;

  private GroundShapes() {}

  public static Polygon polygon(Footprint outline) {
    return polygon(outline.corners());
  }

  /** @param corners of something already known to be simple */
  public static Polygon polygon(List<GroundPoint> corners) {
    return FACTORY.createPolygon(Stream.concat(corners.stream(), Stream.of(corners.get(0)))
        .map(GroundShapes::coordinate).toArray(Coordinate[]::new));
  }

  public static LineString line(List<GroundPoint> points) {
    return FACTORY.createLineString(points.stream().map(GroundShapes::coordinate).toArray(Coordinate[]::new));
  }

  /** The ground that a line of this width covers: cut off straight at its ends, mitred at its bends. */
  public static Geometry strip(List<GroundPoint> middle, double widthM) {
    return BufferOp.bufferOp(line(middle), widthM / 2,
        new BufferParameters(CHORDS, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, BufferParameters.DEFAULT_MITRE_LIMIT));
  }

  public static double areaM2(Footprint outline) {
    return polygon(outline).getArea();
  }

  private static Coordinate coordinate(GroundPoint point) {
    return new Coordinate(point.xM(), point.yM());
  }
}
