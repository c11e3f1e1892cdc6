package guildwood.site.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.site.water.CurveNumber.Part;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RunoffProperties {
  @Test
  void runoffNeverExceedsTheRainAndGrowsWithRainAndNumber() {
    for (int number = 1; number <= 100; number++) {
      CurveNumber curve = new CurveNumber(number);
      double before = 0;
      for (int rain = 0; rain <= 400; rain += 5) {
        double runoff = curve.runoffMm(rain);
        assertTrue(runoff >= before && runoff <= rain, number + " at " + rain + " mm: " + runoff);
        assertTrue(number == 1 || runoff >= new CurveNumber(number - 1).runoffMm(rain));
        before = runoff;
      }
    }
    assertEquals(37, new CurveNumber(100).runoffMm(37), 1e-12, "everything runs off sealed ground");
  }

  @Test
  void aBasinHoldsBackNoMoreThanItsRoomAndNoMoreThanRunsOff() {
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      Runoff runoff = new Runoff(0.1 + random.nextDouble() * 200,
          List.of(new Part(1 + random.nextDouble() * 5000, new CurveNumber(30 + random.nextDouble() * 70))));
      Basin basin = new Basin(1 + random.nextDouble() * 50, random.nextDouble() * 3, 0.05 + random.nextDouble(), random.nextDouble() * 4,
          1 + random.nextDouble() * 99);
      double held = runoff.heldM3(basin);
      assertTrue(held >= 0 && held <= runoff.volumeM3() && held <= basin.holdsM3());
      assertEquals(runoff.volumeM3() > 0, runoff.heldShare(basin).isPresent());
      runoff.heldShare(basin).ifPresent(share -> assertTrue(share >= 0 && share <= 1));
    }
  }

  @Test
  void theWeightedNumberLiesBetweenItsParts() {
    for (SoilGroup soil : SoilGroup.values()) {
      for (GroundCover one : GroundCover.values()) {
        for (GroundCover other : GroundCover.values()) {
          double weighted = CurveNumber.weighted(List.of(new Part(10, one.on(soil)), new Part(30, other.on(soil)))).value();
          assertEquals((one.on(soil).value() + 3 * other.on(soil).value()) / 4, weighted, 1e-9);
        }
      }
    }
  }
}
