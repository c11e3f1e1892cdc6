package guildwood.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** The sides of polygons on the ground: how far a point is from the nearest, and whether it lies within. */
final class Segments {
  private final double[] ax;
  private final double[] ay;
  private final double[] bx;
  private final double[] by;

  private Segments(List<double[]> all) {
    ax = all.stream().mapToDouble(s -> s[0]).toArray();
    ay = all.stream().mapToDouble(s -> s[1]).toArray();
    bx = all.stream().mapToDouble(s -> s[2]).toArray();
    by = all.stream().mapToDouble(s -> s[3]).toArray();
  }

  /** All rings of polygons, holes included. */
  static Segments around(Geometry area) {
    List<double[]> all = new ArrayList<>();
    for (int i = 0; i < area.getNumGeometries(); i++) {
      if (area.getGeometryN(i) instanceof Polygon polygon) {
        add(polygon.getExteriorRing(), all);
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          add(polygon.getInteriorRingN(hole), all);
        }
      }
    }
    return new Segments(all);
  }

  private static void add(LinearRing ring, List<double[]> all) {
    Coordinate[] c = ring.getCoordinates();
    for (int i = 1; i < c.length; i++) {
      all.add(new double[] {c[i - 1].x, c[i - 1].y, c[i].x, c[i].y});
    }
  }

  /** Whether closed rings hold a point. */
  boolean hold(double x, double y) {
    boolean inside = false;
    for (int i = 0; i < ax.length; i++) {
      if (ay[i] > y != by[i] > y && x < ax[i] + (y - ay[i]) * (bx[i] - ax[i]) / (by[i] - ay[i])) {
        inside = !inside;
      }
    }
    return inside;
  }

  double distanceM(double x, double y) {
    double[] near = nearest(x, y);
    return near == null ? Double.POSITIVE_INFINITY : Math.sqrt((near[0] - x) * (near[0] - x) + (near[1] - y) * (near[1] - y));
  }

  /** The nearest point on any of them; null where there is none. */
  double[] nearest(double x, double y) {
    double best = Double.POSITIVE_INFINITY;
    double[] at = null;
    for (int i = 0; i < ax.length; i++) {
      double dx = bx[i] - ax[i];
      double dy = by[i] - ay[i];
      double length2 = dx * dx + dy * dy;
      double t = length2 == 0 ? 0 : Math.max(0, Math.min(1, ((x - ax[i]) * dx + (y - ay[i]) * dy) / length2));
      double px = ax[i] + t * dx;
      double py = ay[i] + t * dy;
      double away = (px - x) * (px - x) + (py - y) * (py - y);
      if (away < best) {
        best = away;
        at = new double[] {px, py};
      }
    }
    return at;
  }
}
