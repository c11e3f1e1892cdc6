package guildwood.siteplan;

import guildwood.site.GroundShapes;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * Something on a plan, as it is drawn.
 *
 * @param id of the bed, path, water, tree or building
 * @param points around it, along it, or the one where it stands; metres east and north of the site's own point
 * @param breadthM width of a path, or of a tree's crown; 0 for areas
 * @param traced false for a bed of which only its rectangle is known
 */
public record PlanShape(ShapeKind kind, long id, String name, List<GroundPoint> points, double breadthM, boolean traced) {
  public PlanShape {
    points = List.copyOf(points);
  }

  static PlanShape area(ShapeKind kind, long id, String name, Footprint outline) {
    return new PlanShape(kind, id, name, outline.corners(), 0, true);
  }

  static PlanShape of(PlanPath path) {
    return new PlanShape(ShapeKind.PATH, path.id(), path.name(), path.line(), path.widthM(), true);
  }

  /** The ground it covers on the plan, square metres; for a tree that of its crown. */
  public double areaM2() {
    return switch (kind) {
      case PATH -> GroundShapes.strip(points, breadthM).getArea();
      case TREE -> Math.PI * breadthM * breadthM / 4;
      default -> GroundShapes.polygon(points).getArea();
    };
  }

  /** Length of a path, or once around an area; 0 for a tree. */
  public double lengthM() {
    return switch (kind) {
      case PATH -> GroundShapes.line(points).getLength();
      case TREE -> 0;
      default -> GroundShapes.polygon(points).getLength();
    };
  }

  /** A point on it where its name is best written: well inside an area, half way along a path. */
  public GroundPoint heart() {
    Coordinate at = switch (kind) {
      case PATH -> new LengthIndexedLine(GroundShapes.line(points)).extractPoint(lengthM() / 2);
      case TREE -> new Coordinate(points.get(0).xM(), points.get(0).yM());
      default -> GroundShapes.polygon(points).getInteriorPoint().getCoordinate();
    };
    return new GroundPoint(at.x, at.y);
  }
}
