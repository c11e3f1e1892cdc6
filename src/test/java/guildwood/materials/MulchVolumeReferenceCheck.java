package guildwood.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.PlanPath;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Volumes of mulch against printed tables.
 *
 * <p>The table of whole and half cubic yards: University of Maine Extension, gardening manual, mulch and compost. The
 * exact figures are the same arithmetic, square feet times inches over 324.
 */
class MulchVolumeReferenceCheck {
  private static final double FOOT_M = 0.3048;
  private static final double INCH_M = 0.0254;

  private static double cubicYards(double squareFeet, double inches) {
    return Volume.cubicYards(Volume.looseM3(squareFeet * FOOT_M * FOOT_M, inches * INCH_M, 0));
  }

  /** The manual's worked example: 50 by 20 ft at 3 in are 9 cubic yards. */
  @Test
  void theManualsExample() {
    assertEquals(9, cubicYards(50 * 20, 3), 0.5);
  }

  @ParameterizedTest
  @CsvSource({"650, 4, 6, 8, 12, 16, 24", "950, 6, 9, 12, 17.5, 23, 35", "1000, 6, 9, 12, 18.5, 25, 37"})
  void theManualsTable(double squareFeet, double in2, double in3, double in4, double in6, double in8, double in12) {
    double[] inches = {2, 3, 4, 6, 8, 12};
    double[] printed = {in2, in3, in4, in6, in8, in12};
    for (int i = 0; i < inches.length; i++) {
      assertEquals(printed[i], cubicYards(squareFeet, inches[i]), 0.5, squareFeet + " sq ft at " + inches[i] + " in");
    }
  }

  @ParameterizedTest
  @CsvSource({"1000, 3, 9.259", "1000, 6, 18.519", "500, 3, 4.630"})
  void exactly(double squareFeet, double inches, double yards) {
    assertEquals(yards, cubicYards(squareFeet, inches), 1e-3);
  }

  /** One cubic yard covers 324 sq ft an inch deep, and in proportion. */
  @ParameterizedTest
  @CsvSource({"1, 324", "2, 162", "3, 108", "4, 81", "5, 64.8", "6, 54"})
  void whatOneCubicYardCovers(double inches, double squareFeet) {
    assertEquals(1, cubicYards(squareFeet, inches), 1e-9);
  }

  /** 100 m2 at 10 cm are 10 m3 or 13.08 cubic yards of 0.764555 m3. */
  @Test
  void inMetres() {
    assertEquals(10, Volume.looseM3(100, 0.10, 0), 1e-12);
    assertEquals(13.08, Volume.cubicYards(10), 0.005);
    assertEquals(0.764555, Volume.CUBIC_YARD_M3, 5e-7);
  }

  /** A path 30 m long, 0.9 m wide, 15 cm deep: 4.05 m3. The area comes from the drawn line. */
  @Test
  void thePath() {
    PlanPath path = new PlanPath(1, 1, "Path", List.of(new GroundPoint(3, 4), new GroundPoint(21, 28)), 0.9, 0.15);
    assertEquals(4.05, Volume.looseM3(PathAreas.inOrderM2(List.of(path)).get(0), 0.15, 0), 1e-9);
  }

  /** A fifth of the loose depth lost: a quarter more to bring. */
  @Test
  void settlingIsMadeUpFor() {
    assertEquals(12.5, Volume.looseM3(100, 0.10, 20), 1e-12);
  }
}
