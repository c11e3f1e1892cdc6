package guildwood.site.sun;

import java.util.List;

/** Draws what stands around a bed, seen from above, to check where it was said to stand. North is up. */
public final class ScenePlan {
  /** What stands farther away than this, in metres or in lengths of the bed, is left off: the bed would shrink to a dot. */
  private static final double FAR_M = 40;
  private static final double FAR_IN_BEDS = 3;

  private ScenePlan() {}

  /** What the plan of this bed can show: all that reaches into its surroundings. */
  public static List<Obstacle> shown(Footprint bed, List<Obstacle> obstacles) {
    Box near = Box.of(bed.corners()).widened(farM(bed));
    return obstacles.stream().filter(each -> near.meets(Box.of(each))).toList();
  }

  /**
   * The plan as one {@code svg} element.
   *
   * @param name of the bed
   * @param id begins with a letter and is used by nothing else on the page
   */
  public static String draw(Footprint bed, String name, List<Obstacle> obstacles, DrawingWords words, String id) {
    Box around = Box.of(bed.corners());
    Box near = around.widened(farM(bed));
    List<Obstacle> shown = shown(bed, obstacles);
    for (Obstacle each : shown) {
      around = around.with(Box.of(each).within(near));
    }
    GroundDrawing drawing = new GroundDrawing(
        new GroundPoint(around.west, around.south), around.east - around.west, around.north - around.south, 1, words, id);
    drawing.polygon(bed, "#d9d5c7", 2.5);
    drawing.obstacles(shown);
    GroundPoint middle = Box.of(bed.corners()).middle();
    drawing.text(drawing.x(middle.xM()), drawing.y(middle.yM()) + GroundDrawing.LETTERS / 3, "middle", name);
    drawing.northArrow();
    drawing.scale();
    return drawing.finished();
  }

  private static double farM(Footprint bed) {
    Box box = Box.of(bed.corners());
    return Math.max(FAR_M, FAR_IN_BEDS * Math.max(box.east - box.west, box.north - box.south));
  }

  /** A rectangle along the compass, metres. */
  private record Box(double west, double east, double south, double north) {
    static Box of(List<GroundPoint> points) {
      var across = points.stream().mapToDouble(GroundPoint::xM).summaryStatistics();
      var up = points.stream().mapToDouble(GroundPoint::yM).summaryStatistics();
      return new Box(across.getMin(), across.getMax(), up.getMin(), up.getMax());
    }

    static Box of(Obstacle obstacle) {
      if (obstacle instanceof Building building) {
        return of(building.footprint().corners());
      }
      Tree tree = (Tree) obstacle;
      return of(List.of(tree.foot())).widened(tree.crownRadiusM());
    }

    GroundPoint middle() {
      return new GroundPoint((west + east) / 2, (south + north) / 2);
    }

    Box widened(double by) {
      return new Box(west - by, east + by, south - by, north + by);
    }

    boolean meets(Box other) {
      return other.west <= east && other.east >= west && other.south <= north && other.north >= south;
    }

    Box within(Box other) {
      return new Box(Math.max(west, other.west), Math.min(east, other.east), Math.max(south, other.south), Math.min(north, other.north));
    }

    Box with(Box other) {
      return new Box(Math.min(west, other.west), Math.max(east, other.east), Math.min(south, other.south), Math.max(north, other.north));
    }
  }
}
