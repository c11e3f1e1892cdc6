package guildwood.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.PlanPath;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PathAreasTest {
  private static PlanPath path(double widthM, double... eastNorth) {
    List<GroundPoint> line = new java.util.ArrayList<>();
    for (int i = 0; i < eastNorth.length; i += 2) {
      line.add(new GroundPoint(eastNorth[i], eastNorth[i + 1]));
    }
    return new PlanPath(1, 1, "Path", line, widthM, 0.15);
  }

  @Test
  void aCrossingBelongsToTheFirstPath() {
    PlanPath along = path(1, -10, 0, 10, 0);
    PlanPath across = path(2, 0, -10, 0, 10);
    assertEquals(List.of(20.0, 38.0), rounded(List.of(along, across)));
    assertEquals(List.of(40.0, 18.0), rounded(List.of(across, along)));
  }

  @Test
  void theSamePathTwiceIsCoveredOnce() {
    PlanPath path = path(1, 0, 0, 5, 0, 5, 5);
    List<Double> areas = PathAreas.inOrderM2(List.of(path, path));
    assertEquals(10, areas.get(0), 1e-9);
    assertEquals(0, areas.get(1), 1e-9);
  }

  @Test
  void noPathsCoverNothing() {
    assertEquals(List.of(), PathAreas.inOrderM2(List.of()));
  }

  /** A bent path that doubles back over itself, against counting random points that lie within half its width. */
  @Test
  void theAreaAgreesWithCountedPoints() {
    PlanPath path = path(2, 0, 0, 12, 0, 12, 8, 4, 8, 4, -4);
    double area = PathAreas.inOrderM2(List.of(path)).get(0);
    Random random = new Random(4);
    int hits = 0;
    int points = 200_000;
    for (int i = 0; i < points; i++) {
      double x = -2 + 16 * random.nextDouble();
      double y = -6 + 16 * random.nextDouble();
      hits += onPath(path, x, y) ? 1 : 0;
    }
    double counted = 256.0 * hits / points;
    double share = (double) hits / points;
    double error = 256 * Math.sqrt(share * (1 - share) / points);
    assertTrue(Math.abs(area - counted) < 4 * error, area + " against " + counted + " give or take " + error);
  }

  /** Within half the width of a stretch, or in the square round a right-angled bend: ends are cut square, bends mitred. */
  private static boolean onPath(PlanPath path, double x, double y) {
    double half = path.widthM() / 2;
    for (int i = 0; i + 1 < path.line().size(); i++) {
      GroundPoint a = path.line().get(i);
      GroundPoint b = path.line().get(i + 1);
      double length = Math.hypot(b.xM() - a.xM(), b.yM() - a.yM());
      double along = ((x - a.xM()) * (b.xM() - a.xM()) + (y - a.yM()) * (b.yM() - a.yM())) / length;
      double aside = Math.abs((x - a.xM()) * (b.yM() - a.yM()) - (y - a.yM()) * (b.xM() - a.xM())) / length;
      boolean bend = i > 0 && Math.max(Math.abs(x - a.xM()), Math.abs(y - a.yM())) <= half;
      if (bend || along >= 0 && along <= length && aside <= half) {
        return true;
      }
    }
    return false;
  }

  private static List<Double> rounded(List<PlanPath> paths) {
    return PathAreas.inOrderM2(paths).stream().map(area -> Math.round(area * 1e6) / 1e6).toList();
  }
}
