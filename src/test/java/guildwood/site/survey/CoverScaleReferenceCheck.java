package guildwood.site.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mid-points as coded in ifoxfoot/fqacalc, R/accepted_entries.R; ordinal transform of van der Maarel 2007. */
class CoverScaleReferenceCheck {
  @ParameterizedTest
  @CsvSource({
      "BRAUN_BLANQUET, +, 0.1", "BRAUN_BLANQUET, 1, 2.5", "BRAUN_BLANQUET, 2, 15", "BRAUN_BLANQUET, 3, 37.5",
      "BRAUN_BLANQUET, 4, 62.5", "BRAUN_BLANQUET, 5, 87.5",
      "DAUBENMIRE, 1, 2.5", "DAUBENMIRE, 2, 15", "DAUBENMIRE, 3, 37.5", "DAUBENMIRE, 4, 62.5", "DAUBENMIRE, 5, 85",
      "DAUBENMIRE, 6, 97.5",
      "CAROLINA, 1, 0.1", "CAROLINA, 2, 0.5", "CAROLINA, 3, 1.5", "CAROLINA, 4, 3.5", "CAROLINA, 5, 7.5",
      "CAROLINA, 6, 17.5", "CAROLINA, 7, 37.5", "CAROLINA, 8, 62.5", "CAROLINA, 9, 85", "CAROLINA, 10, 97.5",
      "PERCENT, 12.5, 12.5", "PERCENT, 12.5 %, 12.5"})
  void classesStandForTheirMidPoints(CoverScale scale, String written, double percent) {
    assertEquals(percent, scale.percent(written).orElseThrow());
  }

  /** The paper gives 0.5 % at 1 and 140 % at 9; the formula, to two digits, 0.49 and 140.8. */
  @Test
  void ordinalValuesFollowVanDerMaarel() {
    assertEquals(0.49, CoverScale.VAN_DER_MAAREL.percent("1").orElseThrow(), 0.005);
    assertEquals(140.8, CoverScale.VAN_DER_MAAREL.percent("9").orElseThrow(), 0.05);
    assertEquals(1, CoverScale.VAN_DER_MAAREL.percent("2").orElseThrow(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"BRAUN_BLANQUET, 6", "DAUBENMIRE, 0", "CAROLINA, 11", "VAN_DER_MAAREL, 10", "PERCENT, -1", "PERCENT, much",
      "PERCENT, NaN"})
  void otherClassesAreNotGuessed(CoverScale scale, String written) {
    assertTrue(scale.percent(written).isEmpty());
  }
}
