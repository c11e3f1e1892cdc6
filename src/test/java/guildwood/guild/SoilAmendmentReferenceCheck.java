package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Amounts against their source where there is one. The lime rates have none that we know of and are held to
 * reason only.
 */
class SoilAmendmentReferenceCheck {
  private static final Range LOAM = Range.of(2);
  private static final Range ANY = new Range(1, 3);

  /** Clemson University: at most 5 to 10 lb of sulfur a 1,000 square feet at a time, 2 to 3 months apart. */
  @Test
  void sulfurAtATime() {
    double poundsAThousandSquareFeet = 92.90304 / 453.59237;
    assertEquals(5, SoilAmendment.SULFUR_AT_A_TIME_G_M2.min() * poundsAThousandSquareFeet, 1e-9);
    assertEquals(10, SoilAmendment.SULFUR_AT_A_TIME_G_M2.max() * poundsAThousandSquareFeet, 1e-9);
    assertEquals(new Range(2, 3), SoilAmendment.SULFUR_MONTHS_APART);
  }

  @Test
  void moreLimeForALongerWayAndForFinerSoil() {
    for (double from = 4; from < 6.4; from += 0.1) {
      for (double to = from + 0.1; to <= 6.45; to += 0.1) {
        Range way = SoilAmendment.limeGramsM2(from, to, LOAM).orElseThrow();
        assertTrue(way.min() > 0 && way.max() >= way.min());
        Range longer = SoilAmendment.limeGramsM2(from, Math.min(6.5, to + 0.05), LOAM).orElseThrow();
        assertTrue(longer.min() > way.min() && longer.max() > way.max(), from + " to " + to);
        Range fine = SoilAmendment.limeGramsM2(from, to, Range.of(3)).orElseThrow();
        Range coarse = SoilAmendment.limeGramsM2(from, to, Range.of(1)).orElseThrow();
        assertTrue(coarse.min() < fine.min() && coarse.max() < fine.max());
        assertEquals(coarse.hull(way).hull(fine), SoilAmendment.limeGramsM2(from, to, ANY).orElseThrow());
      }
    }
  }

  @Test
  void nothingIsSaidBeyondTheTableOrDownwards() {
    assertEquals(Optional.empty(), SoilAmendment.limeGramsM2(3.9, 5, LOAM));
    assertEquals(Optional.empty(), SoilAmendment.limeGramsM2(6, 6.6, LOAM));
    assertEquals(Optional.empty(), SoilAmendment.limeGramsM2(6, 6, LOAM));
    assertEquals(Optional.empty(), SoilAmendment.limeGramsM2(6.5, 5.5, LOAM));
    assertTrue(SoilAmendment.limeGramsM2(4, 6.5, LOAM).isPresent());
  }
}
