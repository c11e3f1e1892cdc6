package guildwood.siteplan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.PathSlope.Warning;
import guildwood.siteplan.PlanPath.EndHeights;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Slopes against published limits. Walking: USDA Forest Service, Accessibility Guidebook for Outdoor Recreation and
 * Trails (0623-2801), technical provisions: 1:20 for any distance, 1:12 for up to 200 feet (61 meters), 1:10 for up to 30
 * feet (9 meters), 1:8 for up to 10 feet (3 meters). Washing out: IMBA, Trail Solutions, page 64: an average grade of 10
 * percent or less is most sustainable, with the example of 1,000 feet in 2 miles.
 */
class PathSlopeReferenceCheck {
  private static PathSlope slope(double lengthM, double riseM) {
    PlanPath path = new PlanPath(0, 1, "path", List.of(new GroundPoint(0, 0), new GroundPoint(lengthM, 0)), 1, 0, Optional.of(new EndHeights(3, 3 - riseM)));
    return PathSlope.of(path).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"1900, 0.05, true", "1900, 0.0501, false", "61, 0.083333, true", "61.1, 0.083333, false", "9, 0.1, true", "9.1, 0.1, false",
    "3, 0.125, true", "3.1, 0.125, false", "1, 0.126, false"})
  void aPathIsEasyToWalkUpToThePublishedLengths(double lengthM, double ratio, boolean easy) {
    assertEquals(easy, !slope(lengthM, lengthM * ratio).warnings().contains(Warning.HARD_TO_WALK));
  }

  @Test
  void theExampleOfTheTrailGuide() {
    PathSlope slope = slope(2 * 5280 * 0.3048 / 10, 1_000 * 0.3048 / 10);
    assertEquals(9.47, slope.percent(), 0.01);
    assertEquals(List.of(Warning.HARD_TO_WALK), slope.warnings());
  }

  @Test
  void overTenPercentWashesOut() {
    assertEquals(List.of(Warning.HARD_TO_WALK, Warning.WASHES_OUT), slope(50, 6).warnings());
    assertEquals(List.of(), slope(50, 0).warnings());
    assertEquals(6.84, slope(50, 6).degrees(), 0.01);
  }

  @Test
  void withoutHeightsThereIsNoSlope() {
    assertEquals(Optional.empty(), PathSlope.of(new PlanPath(0, 1, "path", List.of(new GroundPoint(0, 0), new GroundPoint(1, 0)), 1, 0)));
  }
}
