package guildwood.drawing;

import guildwood.site.GroundShapes;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Tree;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** A bed's ground made ready for many questions: where a stem may stand, how far from the edge, how far from where people stand. */
final class Plot {
  /** Stems keep this far from the bed's edge, less in beds too narrow for it, metres. Our own choice. */
  static final double EDGE_M = 0.1;

  /** And this far from the trunk of a tree that stands there already, metres. Our own choice. */
  static final double TRUNK_M = 0.4;

  private final Segments edge;
  private final Segments free;
  private final Envelope reach;
  private final boolean south;
  private final boolean walkable;
  private final List<Segments> paths = new ArrayList<>();
  private final double areaM2;

  Plot(BedGround ground, ArrangingRules rules) {
    Geometry outline = GroundShapes.polygon(ground.outline());
    edge = Segments.around(outline);
    reach = outline.getEnvelopeInternal();
    south = ground.south();
    areaM2 = outline.getArea();
    for (BedGround.Strip path : ground.paths()) {
      paths.add(Segments.around(GroundShapes.strip(path.line(), path.widthM())));
    }
    walkable = rules.walkableEdge() || paths.isEmpty();
    free = Segments.around(standing(ground, outline));
  }

  /** Ground where stems may stand: within the edge, beside paths and trunks. Where that leaves nothing, the whole bed. */
  private static Geometry standing(BedGround ground, Geometry outline) {
    Geometry taken = outline;
    for (BedGround.Strip path : ground.paths()) {
      taken = taken.difference(GroundShapes.strip(path.line(), path.widthM()));
    }
    for (Tree tree : ground.treesInside()) {
      taken = taken.difference(Shapes.circle(tree.foot().xM(), tree.foot().yM(), TRUNK_M));
    }
    Geometry whole = taken.isEmpty() ? outline : taken;
    for (double margin = EDGE_M; margin > 0.001; margin /= 2) {
      Geometry within = whole.buffer(-margin);
      if (within.getArea() > 0.4 * whole.getArea()) {
        return within;
      }
    }
    return whole;
  }

  /** An empty register of so many plants; plants may be held outside the bed, they are then in its outermost squares. */
  Neighbourhood neighbourhood(int plants, double sideM) {
    return new Neighbourhood(plants, reach.getMinX(), reach.getMinY(), reach.getWidth(), reach.getHeight(), sideM);
  }

  /** Its greatest extent. */
  double longM() {
    return reach.getDiameter();
  }

  boolean isFree(double x, double y) {
    return free.hold(x, y);
  }

  /** The nearest place where a stem may stand. */
  double[] nearestFree(double x, double y) {
    return free.hold(x, y) ? new double[] {x, y} : free.nearest(x, y);
  }

  /** Distance to the edge, negative outside. */
  double insideM(double x, double y) {
    double away = edge.distanceM(x, y);
    return edge.hold(x, y) ? away : -away;
  }

  /** How far people stand from it at the nearest: on a path or, where they can walk there, at the edge. */
  double accessM(double x, double y) {
    double least = walkable ? edge.distanceM(x, y) : Double.POSITIVE_INFINITY;
    for (Segments path : paths) {
      least = path.hold(x, y) ? 0 : Math.min(least, path.distanceM(x, y));
    }
    return least;
  }

  /** How deep into a path a point lies; 0 beside all of them. */
  double onPathM(double x, double y) {
    double deepest = 0;
    for (Segments path : paths) {
      deepest = path.hold(x, y) ? Math.max(deepest, path.distanceM(x, y)) : deepest;
    }
    return deepest;
  }

  /** How far a point lies from the end of the bed that is turned to the pole. */
  double fromPoleM(double y) {
    return south ? y - reach.getMinY() : reach.getMaxY() - y;
  }

  /** Towards the pole: 1 northwards, -1 southwards. */
  int poleward() {
    return south ? -1 : 1;
  }

  /** Free points on a lattice of triangles, at most about so many; at least one. */
  List<GroundPoint> lattice(int most) {
    double pitch = Math.sqrt(areaM2 / most * 2 / Math.sqrt(3));
    List<GroundPoint> points = new ArrayList<>();
    int rows = (int) Math.ceil(reach.getHeight() / (pitch * Math.sqrt(3) / 2)) + 1;
    int columns = (int) Math.ceil(reach.getWidth() / pitch) + 1;
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        double x = reach.getMinX() + (column + (row % 2) / 2.0) * pitch;
        double y = reach.getMinY() + row * pitch * Math.sqrt(3) / 2;
        if (free.hold(x, y)) {
          points.add(new GroundPoint(x, y));
        }
      }
    }
    double[] middle = nearestFree(reach.centre().x, reach.centre().y);
    points.add(new GroundPoint(middle[0], middle[1]));
    return points;
  }
}
