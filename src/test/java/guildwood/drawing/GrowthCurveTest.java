package guildwood.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.Layer;
import org.junit.jupiter.api.Test;

/** Growth never falls, begins at nothing and ends at the whole; what is drawn is never wider than the mature crown. */
class GrowthCurveTest {
  @Test
  void growsFromNothingToTheWholeAndNeverShrinks() {
    for (int maturity : new int[] {1, 4, 28, 80}) {
      assertEquals(0, GrowthCurve.share(0, maturity));
      assertEquals(1, GrowthCurve.share(maturity, maturity), 1e-9);
      assertEquals(1, GrowthCurve.share(10 * maturity, maturity));
      double before = 0;
      for (double year = 0; year <= 2 * maturity; year += maturity / 40.0) {
        double now = GrowthCurve.share(year, maturity);
        assertTrue(now >= before && now <= 1, year + " of " + maturity);
        before = now;
      }
    }
  }

  /** Slow at first: the first tenth of the time brings less than the second. */
  @Test
  void startsSlowly() {
    double first = GrowthCurve.share(2, 20);
    double second = GrowthCurve.share(4, 20) - first;
    assertTrue(first < second, first + " and " + second);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> GrowthCurve.share(-1, 5));
    assertThrows(IllegalArgumentException.class, () -> GrowthCurve.share(1, 0));
    assertThrows(IllegalArgumentException.class, () -> GrowthCurve.share(Double.NaN, 5));
  }

  @Test
  void fasterGrowersAreGrownSooner() {
    for (Layer layer : Layer.values()) {
      assertTrue(YearsToMaturity.USUAL.of(layer, GrowthRate.FAST) <= YearsToMaturity.USUAL.of(layer, GrowthRate.MEDIUM));
      assertTrue(YearsToMaturity.USUAL.of(layer, GrowthRate.MEDIUM) <= YearsToMaturity.USUAL.of(layer, GrowthRate.SLOW));
    }
  }

  @Test
  void aYoungPlantHasTheSizeItIsSetOutWithAndAStandingOneIsGrown() {
    PlantKind tree = RandomGuilds.kind("oak", Layer.TALL_TREE, 2, 10);
    GrownPlant young = GrownPlant.of(tree, false, 0, YearsToMaturity.USUAL);
    assertEquals(0.15, young.radiusM(), 1e-9);
    assertEquals(0.4, young.heightM(), 1e-9);
    assertEquals(5, GrownPlant.of(tree, true, 0, YearsToMaturity.USUAL).radiusM(), 1e-9);
    PlantKind thyme = RandomGuilds.kind("thyme", Layer.GROUND_COVER, 2, 0.2);
    assertEquals(0.1, GrownPlant.of(thyme, false, 0, YearsToMaturity.USUAL).radiusM(), 1e-9);
  }
}
