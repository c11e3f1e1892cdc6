package guildwood.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * A ring of mulch of 4 ft radius that keeps 6 in (the least Iowa State University Extension gives) off a trunk of 6 in,
 * so that it begins 0.75 ft from the middle: pi (16 - 0.5625) = 48.50 sq ft; 3 in deep 0.449 cubic yards. Worked out by hand.
 */
class TrunkGapReferenceCheck {
  private static final double FOOT_M = 0.3048;
  private static final TrunkGap GAP = new TrunkGap(0.5 * FOOT_M, 0.5 * FOOT_M);

  @Test
  void theRing() {
    assertEquals(0.75 * FOOT_M, GAP.innerRadiusM(), 1e-12);
    double ringM2 = GAP.ringM2(4 * FOOT_M);
    assertEquals(48.50, ringM2 / (FOOT_M * FOOT_M), 0.005);
    assertEquals(0.449, Volume.cubicYards(Volume.looseM3(ringM2, 0.25 * FOOT_M, 0)), 0.0005);
  }

  @Test
  void nothingIsLeftOfARingWithinTheGap() {
    assertEquals(0, GAP.ringM2(0.5 * FOOT_M));
  }
}
