package guildwood.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Carbon to nitrogen: wood chips 100 to 500, straw of small grains 80 to 150, grass clippings 20 (USDA ARS and NRCS,
 * Akron, Colorado); leaves 40 to 80 (Cornell Composting, fact sheet 2); rotted manure 20 (NRCS 2011, C:N Ratios in
 * Cropping Systems).
 */
class CarbonReferenceCheck {
  @Test
  void ratiosAsPublished() {
    assertEquals(Optional.of(new Range(100, 500)), Material.WOOD_CHIPS.carbonToNitrogen());
    assertEquals(Optional.of(new Range(80, 150)), Material.STRAW.carbonToNitrogen());
    assertEquals(Optional.of(Range.of(20)), Material.GRASS_CLIPPINGS.carbonToNitrogen());
    assertEquals(Optional.of(new Range(40, 80)), Material.LEAVES.carbonToNitrogen());
    assertEquals(Optional.of(Range.of(20)), Material.ROTTED_MANURE.carbonToNitrogen());
  }

  /** Above about 30, Cornell's ideal mix, what is dug in ties nitrogen up. */
  @Test
  void whatMustNotBeDugIn() {
    assertTrue(Material.WOOD_CHIPS.tiesUpNitrogenDugIn());
    assertTrue(Material.STRAW.tiesUpNitrogenDugIn());
    assertTrue(Material.LEAVES.tiesUpNitrogenDugIn());
    assertFalse(Material.GRASS_CLIPPINGS.tiesUpNitrogenDugIn());
    assertFalse(Material.ROTTED_MANURE.tiesUpNitrogenDugIn());
  }
}
