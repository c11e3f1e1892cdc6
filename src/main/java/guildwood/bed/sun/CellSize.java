package guildwood.bed.sun;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.sun.Rectangle;
import java.util.stream.IntStream;

/** How finely a bed is cut into square cells for its sun map, so that a map is worked out within a request. */
public final class CellSize {
  /** No map has more cells. */
  public static final int MOST_CELLS = 2_500;

  /** Nor more cells times obstacles; a bed of 1,600 cells with 22 obstacles takes well under a second (SunBenchmark). */
  private static final int MOST_PAIRS = 60_000;

  /** As many are drawn unless somebody asks for another size. */
  private static final int USUAL_CELLS = 1_200;

  private static final double SMALLEST_M = 0.1;

  private CellSize() {}

  /** How many cells a map may have with so many trees and buildings. */
  public static int most(int obstacles) {
    return Math.min(MOST_CELLS, MOST_PAIRS / Math.max(1, obstacles));
  }

  /** The usual side of a cell: the finest round one (1, 2, 2.5, 5, 10 and so on) that keeps within the usual number. */
  public static double usualM(Rectangle ground, int obstacles) {
    double finest = finestM(ground, Math.min(USUAL_CELLS, most(obstacles)));
    return IntStream.rangeClosed(-1, 4).boxed()
        .flatMap(power -> IntStream.of(10, 20, 25, 50).mapToObj(tenths -> tenths / 10.0 * Math.pow(10, power)))
        .filter(size -> size >= Math.max(SMALLEST_M, finest)).findFirst().orElseThrow();
  }

  /** Whether cells of this size are neither too many nor wider than the bed. */
  public static Checked<Double> check(Rectangle ground, int obstacles, double cellM, String field) {
    double widest = Math.min(ground.lengthM(), ground.widthM());
    double finest = Math.max(SMALLEST_M / 2, finestM(ground, most(obstacles)));
    if (cellM < finest) {
      long cells = Math.round(ground.areaM2() / (cellM * cellM));
      return Checked.refused(Finding.of("sun.cells-too-many", field, cells, most(obstacles), finest));
    }
    return cellM > widest ? Checked.refused(Finding.of("sun.cells-too-wide", field, widest)) : Checked.of(cellM);
  }

  private static double finestM(Rectangle ground, int cells) {
    return Math.sqrt(ground.areaM2() / cells);
  }
}
