package guildwood.site.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import guildwood.site.water.CurveNumber.Part;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Runoff by the equations of TR-55, Urban Hydrology for Small Watersheds (1986), chapter 2. Depths in inches are worked
 * out by hand from these equations for the storms and curve numbers of its examples 2-1 to 2-4 and five more.
 */
class RunoffReferenceCheck {
  private static final double INCH_MM = 25.4;

  @ParameterizedTest
  @CsvSource({"6.0, 70, 2.805", "6.0, 75, 3.282", "6.0, 77, 3.479", "6.0, 74, 3.185", "5, 75, 2.449", "0.5, 70, 0", "3, 70, 0.714",
      "3, 55, 0.195"})
  void depthOfRunoff(double rainIn, double number, double runoffIn) {
    assertEquals(runoffIn, new CurveNumber(number).runoffMm(rainIn * INCH_MM) / INCH_MM, 0.0006);
  }

  @Test
  void depthOfRunoffFromAlmostSealedGround() {
    assertEquals(8.38, new CurveNumber(94.82).runoffMm(9 * INCH_MM) / INCH_MM, 0.006);
  }

  /** The examples' ground: 250 acres, 70 % on group C, 30 % on group B; pasture in good condition, 74 and 61. */
  @Test
  void weightingByArea() {
    CurveNumber weighted = CurveNumber.weighted(List.of(
        new Part(175, GroundCover.GRASS.on(SoilGroup.C)), new Part(75, GroundCover.GRASS.on(SoilGroup.B))));
    assertEquals(70.1, weighted.value(), 1e-9);
  }

  /** TR-55, table 2-2c, as reprinted in the Low Impact Development Manual for Michigan (SEMCOG 2008), table 9.2. */
  @ParameterizedTest
  @CsvSource({"WOODS, 30, 55, 70, 77", "WOODS_WITHOUT_LITTER, 45, 66, 77, 83", "ORCHARD, 32, 58, 72, 79", "BRUSH, 30, 48, 65, 73",
      "MEADOW, 30, 58, 71, 78", "GRASS, 39, 61, 74, 80", "GRASS_WORN, 49, 69, 79, 84", "GRASS_THIN, 68, 79, 86, 89"})
  void curveNumbersOfGreenGround(GroundCover cover, int a, int b, int c, int d) {
    assertEquals(List.of((double) a, (double) b, (double) c, (double) d),
        List.of(SoilGroup.values()).stream().map(soil -> cover.on(soil).value()).toList());
  }

  /** TR-55, table 2-2a, as adapted in Mathematics and Statistics for the Environment, table 25.5A. */
  @ParameterizedTest
  @CsvSource({"BARE_SOIL, 77, 86, 91, 94", "EARTH_PATH, 72, 82, 87, 89", "GRAVEL, 76, 85, 89, 91", "ROOF_OR_PAVING, 98, 98, 98, 98"})
  void curveNumbersOfOpenGround(GroundCover cover, int a, int b, int c, int d) {
    curveNumbersOfGreenGround(cover, a, b, c, d);
  }

  /** TR-55, appendix A: more than 0.30, 0.15 to 0.30 and 0.05 to 0.15 inches an hour. */
  @Test
  void ratesOfTheSoilGroups() {
    assertEquals(0.30 * INCH_MM, SoilGroup.A.slowestMmPerHour(), 1e-12);
    assertFalse(SoilGroup.A.fastestMmPerHour().isPresent());
    assertEquals(0.15 * INCH_MM, SoilGroup.B.slowestMmPerHour(), 1e-12);
    assertEquals(0.30 * INCH_MM, SoilGroup.B.fastestMmPerHour().orElseThrow(), 1e-12);
    assertEquals(0.05 * INCH_MM, SoilGroup.C.slowestMmPerHour(), 1e-12);
    assertEquals(0.15 * INCH_MM, SoilGroup.C.fastestMmPerHour().orElseThrow(), 1e-12);
    assertEquals(0.05 * INCH_MM, SoilGroup.D.fastestMmPerHour().orElseThrow(), 1e-12);
  }

  /** 1,000 m2, 40 mm, curve number 70: S 108.9 mm, Ia 21.8 mm, Q 2.61 mm, 2.6 m3. The same equations by hand. */
  @Test
  void oneCatchmentInMetres() {
    CurveNumber number = new CurveNumber(70);
    assertEquals(108.9, number.retentionMm(), 0.05);
    assertEquals(21.8, number.initialLossMm(), 0.05);
    assertEquals(2.61, number.runoffMm(40), 0.005);
    Runoff runoff = new Runoff(40, List.of(new Part(1000, number)));
    assertEquals(2.6, runoff.volumeM3(), 0.05);
    assertEquals(40, runoff.rainM3(), 1e-9);
  }

  /** Volume L (b + z d) d: 20 m long, 0.5 m wide at the bottom, 0.3 m deep, sides 1 to 3: 8.4 m3. Plane geometry. */
  @Test
  void volumeOfABasin() {
    Basin basin = new Basin(20, 0.5, 0.3, 3, 100);
    assertEquals(8.4, basin.holdsM3(), 1e-12);
    assertEquals(2.3, basin.topM(), 1e-12);
    assertEquals(60, basin.hoursToEmpty(5).orElseThrow(), 1e-12);
    assertFalse(basin.hoursToEmpty(0).isPresent());
  }

  /**
   * Rational method, GISHydro, University of Maryland: C 0.4, 2.87 in/h, 0.20 square miles or 128 acres are 146.94 cubic
   * feet a second where k = 1 is taken for 1.008. C 0.35, 50 mm/h, 0.1 ha: 0.00486 m3/s, worked out by hand.
   */
  @Test
  void theMostAtOneMoment() {
    double acreM2 = 43_560 * 0.3048 * 0.3048;
    double cubicFeet = new PeakFlow(0.4, 2.87 * INCH_MM).m3PerSecond(128 * acreM2) / (0.3048 * 0.3048 * 0.3048);
    assertEquals(146.94 * 1.008, cubicFeet, 0.08);
    assertEquals(0.00486, new PeakFlow(0.35, 50).m3PerSecond(1000), 5e-6);
  }

  /** 100 % is 45 degrees, 8.75 % is 5 degrees. Plane geometry. */
  @Test
  void slopes() {
    assertEquals(45, new Incline(3, 3).degrees(), 1e-12);
    assertEquals(5, Incline.ofPercent(8.75).degrees(), 0.005);
    assertEquals(8.75, new Incline(1.75, 20).percent(), 1e-12);
  }
}
