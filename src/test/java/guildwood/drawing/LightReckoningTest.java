package guildwood.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.fit.Trapezoid;
import guildwood.kernel.Range;
import guildwood.site.sun.Coordinates;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Horizon;
import guildwood.site.sun.Scene;
import guildwood.site.sun.Season;
import guildwood.site.sun.SunHours;
import guildwood.site.sun.SunPath;
import guildwood.site.sun.Tree;
import guildwood.species.Layer;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Plants of a year in the sun model: the same crowns as in the drawing, taking light from what stands below them. */
class LightReckoningTest {
  private static final Scene OPEN = scene(List.of());
  private static final BedGround BED = RandomGuilds.rectangle(8, 6);

  private static Scene scene(List<guildwood.site.sun.Obstacle> obstacles) {
    return new Scene(new Coordinates(45, 0), 2026, Season.of(5, 1, 9, 30), Season.of(5, 1, 9, 30), 0, Horizon.LEVEL, obstacles);
  }

  private static Grown grown(int year, PlantKind[] kinds, Spot... spots) {
    return Grown.of(new Arrangement(BED, List.of(kinds), List.of(spots)), year, YearsToMaturity.USUAL);
  }

  private static Spot spot(String id, double x, double y) {
    return new Spot(id, 1, new GroundPoint(x, y), true);
  }

  /** A shrub leafy to the ground, a herb right under it, one in the open. */
  private static final PlantKind[] KINDS = {RandomGuilds.kind("shrub", Layer.SHRUB, 1, 3), RandomGuilds.kind("below", Layer.HERB, 1, 0.5), RandomGuilds.kind("open", Layer.HERB, 1, 0.5)};
  private static final Spot[] SPOTS = {spot("shrub", -1, 1), spot("below", -1, 1.3), spot("open", 3.5, -2.5)};

  @Test
  void withoutPlantsTheLightIsThatOfTheScene() {
    PlantKind[] none = {RandomGuilds.kind("cover", Layer.GROUND_COVER, 1, 0.5)};
    YearLight light = new LightReckoning(OPEN, Optional.empty()).of(grown(0, none, spot("cover", 0, 0)));
    assertEquals(light.openHours(), light.groundHours());
    SunHours exact = SunHours.of(OPEN, OPEN.sunPath(SunPath.USUAL_STEP_MINUTES), List.of(new GroundPoint(0, 0)));
    // Every seventh day and longer steps: within six minutes of the whole reckoning.
    assertEquals(exact.seasonMeanHours(0), light.openHours(), 0.1);
  }

  @Test
  void aGrowingShrubLeavesLessLightBelowYearByYear() {
    LightReckoning reckoning = new LightReckoning(OPEN, Optional.empty());
    double before = Double.POSITIVE_INFINITY;
    for (int year : new int[] {0, 1, 2, 4, 7}) {
      YearLight light = reckoning.of(grown(year, KINDS, SPOTS));
      double below = light.topHours().get("below").min();
      assertTrue(below <= before + 1e-9, "year " + year + ": " + below + " after " + before);
      assertTrue(light.groundHours() <= light.openHours());
      before = below;
    }
  }

  @Test
  void whoStandsUnderTheCrownIsShadedOutAndWhoStandsAsideIsNot() {
    PlantKind[] kinds = KINDS.clone();
    kinds[1] = asking(KINDS[1], 9);
    kinds[2] = asking(KINDS[2], 9);
    LightReckoning reckoning = new LightReckoning(OPEN, Optional.empty());
    Grown young = grown(0, kinds, SPOTS);
    assertEquals(List.of(), reckoning.of(young).shaded(young.arrangement()));
    Grown old = grown(7, kinds, SPOTS);
    assertEquals(List.of("below"), reckoning.of(old).shaded(old.arrangement()).stream().map(YearLight.Shaded::speciesId).toList());
  }

  private static PlantKind asking(PlantKind k, double hours) {
    return new PlantKind(k.speciesId(), k.name(), 1, 0, k.layer(), k.crownM(), k.heightM(), false, k.rate(), false, false, true, false, k.kinship(),
        Optional.of(new Trapezoid(new Range(hours, 16), new Range(hours, 16))), k.shadePercent());
  }

  /** The tallest plant is shaded by nobody, so its own crown must not count against it. */
  @Test
  void noPlantShadesItself() {
    YearLight light = new LightReckoning(OPEN, Optional.empty()).of(grown(7, KINDS, SPOTS));
    assertEquals(light.openHours(), light.topHours().get("shrub").min(), 1e-9);
  }

  /** The crown the sun model meets is the one that is drawn: as wide, as tall, as high up. */
  @Test
  void theSunModelAndTheDrawingHaveTheSameCrown() {
    for (int year : new int[] {0, 2, 7}) {
      Grown grown = grown(year, KINDS, SPOTS);
      GrownPlant body = grown.bodies().get(SPOTS[0]);
      Tree inTheSun = body.tree(SPOTS[0], KINDS[0]);
      assertEquals(body.radiusM(), inTheSun.crownRadiusM());
      assertEquals(body.heightM(), inTheSun.heightM());
      assertEquals(SPOTS[0].at(), inTheSun.foot());
      assertEquals(Math.PI * body.radiusM() * body.radiusM(), grown.patch(KINDS[0]).getArea(), 1e-9);
    }
  }

  @Test
  void aDarkerBedThanTheModelKnowsBringsAllHoursDown() {
    YearLight light = new LightReckoning(OPEN, Optional.of(new Range(3, 5))).of(grown(7, KINDS, SPOTS));
    assertEquals(5, light.openHours(), 1e-9);
    YearLight full = new LightReckoning(OPEN, Optional.empty()).of(grown(7, KINDS, SPOTS));
    assertEquals(full.groundHours() / full.openHours(), light.groundHours() / light.openHours(), 1e-9);
  }
}
