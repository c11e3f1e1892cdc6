package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Crown cover. The formula is that of Crookston and Stage 1999, USDA Forest Service, RMRS-GTR-24; the
 * worked plots are those kept with ctoney/FIAstemmap (cf7c7fba), which codes it.
 */
class CrownCoverReferenceCheck {
  private static final double ACRE_FT2 = 43_560;

  /** Worked out from the formula. */
  @ParameterizedTest
  @CsvSource({"0, 0", "25, 22.1", "50, 39.3", "100, 63.2", "150, 77.7", "200, 86.5"})
  void sumAndUnion(double sumPercent, double unionPercent) {
    assertEquals(unionPercent, CrownCover.unionPercent(sumPercent), 0.05);
  }

  /** FIAstemmap: four saplings of 9.616652 ft crown, 74.96528 to the acre each: sum 50 %, at random 39.3 % (39.35 worked out). */
  @Test
  void fourSaplingsEachHalfItsMicroplot() {
    double sum = CrownCover.sumPercent(9.616652, 4 * 74.96528, ACRE_FT2);
    assertEquals(50, sum, 0.001);
    assertEquals(39.35, CrownCover.unionPercent(sum), 0.005);
  }

  /** FIAstemmap: one crown of 33.94113 ft in a plot of 24 ft radius covers half of it. */
  @Test
  void oneCrownOverHalfAPlot() {
    assertEquals(50, CrownCover.sumPercent(33.94113, 1, Math.PI * 24 * 24), 0.0001);
  }

  /** Two crowns of 4 m on 25.133 m2 are a sum of 100 %: each has 12.566 m2. */
  @Test
  void twoCrownsOfFourMetres() {
    assertEquals(100, CrownCover.sumPercent(4, 2, 25.133), 0.01);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> CrownCover.unionPercent(-1));
    assertThrows(IllegalArgumentException.class, () -> CrownCover.unionPercent(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> CrownCover.sumPercent(4, 2, 0));
    assertThrows(IllegalArgumentException.class, () -> CrownCover.sumPercent(-4, 2, 10));
  }
}
