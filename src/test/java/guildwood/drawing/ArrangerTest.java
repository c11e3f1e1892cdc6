package guildwood.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Tree;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an arrangement keeps, rule by rule. */
class ArrangerTest {
  private static final BedGround BED = RandomGuilds.rectangle(10, 8);

  private static Arrangement arrange(BedGround ground, List<Spot> kept, PlantKind... kinds) {
    return new Arranger(ground, ArrangingRules.USUAL).arrange(List.of(kinds), kept, 1);
  }

  private static List<Conflict> conflicts(Arrangement arrangement) {
    return ArrangementCheck.conflicts(arrangement, ArrangingRules.USUAL);
  }

  private static PlantKind harvested(String id, Layer layer, int plants, double crownM) {
    PlantKind k = RandomGuilds.kind(id, layer, plants, crownM);
    return new PlantKind(k.speciesId(), k.name(), plants, 0, layer, crownM, k.heightM(), false, k.rate(), false, true, false, false,
        k.kinship(), k.light(), k.shadePercent());
  }

  @Test
  void tallPlantsStandOnThePoleSide() {
    PlantKind tree = RandomGuilds.kind("tree", Layer.TALL_TREE, 1, 4);
    PlantKind shrub = RandomGuilds.kind("shrub", Layer.SHRUB, 4, 1.5);
    assertTrue(arrange(BED, List.of(), tree, shrub).find("tree.1").orElseThrow().at().yM() > 1);
    BedGround southern = new BedGround(BED.outline(), true, false, List.of(), List.of());
    assertTrue(arrange(southern, List.of(), tree, shrub).find("tree.1").orElseThrow().at().yM() < -1);
  }

  @Test
  void whatNeedsSunStandsOutOfTheShadeOfTrees() {
    PlantKind tree = RandomGuilds.kind("tree", Layer.SMALL_TREE, 1, 5);
    PlantKind herb = RandomGuilds.kind("herb", Layer.HERB, 6, 0.5);
    Arrangement found = arrange(BED, List.of(), tree, herb);
    GroundPoint trunk = found.find("tree.1").orElseThrow().at();
    assertTrue(found.spots().stream().filter(s -> s.speciesId().equals("herb"))
        .allMatch(s -> Math.hypot(s.at().xM() - trunk.xM(), s.at().yM() - trunk.yM()) > 2.4), found.spots().toString());
  }

  @Test
  void theSameSeedGivesTheSameAndAnotherAnother() {
    RandomGuilds.Case guild = RandomGuilds.filled(3, 0.5);
    Arranger arranger = new Arranger(guild.ground(), ArrangingRules.USUAL);
    assertEquals(arranger.arrange(guild.kinds(), List.of(), 4), arranger.arrange(guild.kinds(), List.of(), 4));
    assertFalse(arranger.arrange(guild.kinds(), List.of(), 4).equals(arranger.arrange(guild.kinds(), List.of(), 5)));
  }

  @Test
  void keptSpotsStayAndTheRestMakesRoom() {
    PlantKind shrub = RandomGuilds.kind("shrub", Layer.SHRUB, 5, 2);
    Spot kept = new Spot("shrub", 3, new GroundPoint(0.123, -0.456), true);
    Arrangement found = arrange(BED, List.of(kept), shrub);
    assertEquals(kept, found.find("shrub.3").orElseThrow());
    assertEquals(List.of(), conflicts(found));
  }

  @Test
  void spotsOfPlantsThatLeftAreLetGo() {
    PlantKind shrub = RandomGuilds.kind("shrub", Layer.SHRUB, 1, 2);
    Arrangement found = arrange(BED, List.of(new Spot("shrub", 2, new GroundPoint(0, 0), true), new Spot("gone", 1, new GroundPoint(0, 0), true)), shrub);
    assertEquals(1, found.spots().size());
  }

  @Test
  void twoKeptTooCloseAreNamedWithHowMuch() {
    PlantKind shrub = RandomGuilds.kind("shrub", Layer.SHRUB, 2, 2);
    Arrangement found = arrange(BED, List.of(new Spot("shrub", 1, new GroundPoint(0, 0), true), new Spot("shrub", 2, new GroundPoint(1.5, 0), true)), shrub);
    List<Conflict> conflicts = conflicts(found);
    assertEquals(1, conflicts.size());
    assertEquals(Conflict.Kind.TOO_CLOSE, conflicts.get(0).kind());
    assertEquals(0.5, conflicts.get(0).byM(), 1e-9);
    assertEquals(List.of("shrub.1", "shrub.2"), conflicts.get(0).spots());
  }

  /** A shrub under a tree has a hole of its own; put to the trunk by hand, it is named. */
  @Test
  void shrubsAreNotPlantedInTheRootsOfTrees() {
    PlantKind tree = RandomGuilds.kind("tree", Layer.SMALL_TREE, 1, 4);
    PlantKind shrub = RandomGuilds.kind("shrub", Layer.SHRUB, 3, 2.1);
    assertTrue(conflicts(arrange(BED, List.of(), tree, shrub)).stream().noneMatch(c -> c.kind() == Conflict.Kind.STEMS_TOO_CLOSE));
    Arrangement byHand = arrange(BED, List.of(new Spot("tree", 1, new GroundPoint(0, 0), true), new Spot("shrub", 1, new GroundPoint(0.2, 0), true)), tree, shrub);
    Conflict named = conflicts(byHand).stream().filter(c -> c.kind() == Conflict.Kind.STEMS_TOO_CLOSE).findFirst().orElseThrow();
    assertEquals(0.5, named.byM(), 1e-9);
  }

  /** Nine shrubs of 3 m do not go into 3 m x 3 m; every one that is too close is named, none stands outside. */
  @Test
  void whatCannotBeAvoidedIsNamed() {
    BedGround small = RandomGuilds.rectangle(3, 3);
    Arrangement found = arrange(small, List.of(), RandomGuilds.kind("shrub", Layer.SHRUB, 9, 3));
    assertTrue(conflicts(found).stream().anyMatch(c -> c.kind() == Conflict.Kind.TOO_CLOSE));
    assertTrue(found.spots().stream().allMatch(s -> small.outline().holds(s.at().xM(), s.at().yM())));
  }

  @Test
  void plantsOfDifferentLayersMayStandOverOneAnother() {
    BedGround small = RandomGuilds.rectangle(2, 2);
    Arrangement found = arrange(small, List.of(), RandomGuilds.kind("tree", Layer.SMALL_TREE, 1, 2), RandomGuilds.kind("herb", Layer.HERB, 6, 0.5),
        RandomGuilds.kind("cover", Layer.GROUND_COVER, 10, 0.4));
    assertEquals(List.of(), conflicts(found));
  }

  @Test
  void groundCoversStandTogether() {
    Arrangement found = arrange(BED, List.of(), RandomGuilds.kind("cover", Layer.GROUND_COVER, 30, 0.4), RandomGuilds.kind("other", Layer.GROUND_COVER, 30, 0.4));
    for (PlantKind kind : found.kinds()) {
      List<Spot> spots = found.spots().stream().filter(s -> s.speciesId().equals(kind.speciesId())).toList();
      double x = spots.stream().mapToDouble(s -> s.at().xM()).average().orElseThrow();
      double y = spots.stream().mapToDouble(s -> s.at().yM()).average().orElseThrow();
      // Thirty circles of 0.2 m radius fill a disc of 1.2 m; a patch may be half as wide again.
      long near = spots.stream().filter(s -> Math.hypot(s.at().xM() - x, s.at().yM() - y) < 1.8).count();
      assertTrue(near >= 27, kind.name() + ": " + near + " of 30 together");
    }
  }

  @Test
  void whatIsPickedStaysInReach() {
    Arrangement found = arrange(RandomGuilds.rectangle(12, 9), List.of(), harvested("herb", Layer.HERB, 12, 0.5));
    assertEquals(List.of(), conflicts(found));
    Arrangement byHand = new Arrangement(found.ground(), List.of(harvested("herb", Layer.HERB, 1, 0.5)), List.of(new Spot("herb", 1, new GroundPoint(0, 0), true)));
    Conflict far = conflicts(byHand).get(0);
    assertEquals(Conflict.Kind.OUT_OF_REACH, far.kind());
    // 4.5 m from the nearest edge, less 0.25 m of crown and 0.6 m of arm.
    assertEquals(3.65, far.byM(), 1e-9);
  }

  @Test
  void nobodyStandsOnAPathOrInATrunk() {
    BedGround.Strip path = new BedGround.Strip("Path", List.of(new GroundPoint(-6, 0), new GroundPoint(6, 0.5)), 1);
    Tree oak = new Tree("Oak", new GroundPoint(2, 2), 12, 3, 4, 0.2, 0.6, false);
    BedGround ground = new BedGround(BED.outline(), false, false, List.of(path), List.of(oak));
    Arrangement found = arrange(ground, List.of(), RandomGuilds.kind("shrub", Layer.SHRUB, 6, 1.5), harvested("herb", Layer.HERB, 20, 0.5));
    assertEquals(List.of(), conflicts(found));
    assertEquals(Conflict.Kind.ON_PATH, conflicts(found.with(List.of(found.find("shrub.1").orElseThrow().at(new GroundPoint(0, 0.25))))).get(0).kind());
  }

  @Test
  void whereThereAreOnlyPathsToStandOnReachCountsFromThem() {
    BedGround.Strip path = new BedGround.Strip("Path", List.of(new GroundPoint(-6, 0), new GroundPoint(6, 0)), 1);
    BedGround ground = new BedGround(BED.outline(), false, false, List.of(path), List.of());
    ArrangingRules fromPaths = new ArrangingRules(0.6, 1.2, false);
    Arrangement found = new Arranger(ground, fromPaths).arrange(List.of(harvested("herb", Layer.HERB, 10, 0.5)), List.of(), 1);
    assertTrue(found.spots().stream().allMatch(s -> Math.abs(s.at().yM()) < 0.5 + 0.25 + 0.6 + 0.01), found.spots().toString());
  }

  @Test
  void tinyBedsAndSliversHoldTheirPlant() {
    for (BedGround ground : List.of(RandomGuilds.rectangle(0.3, 0.35), RandomGuilds.rectangle(20, 0.25), sliver())) {
      Arrangement found = arrange(ground, List.of(), RandomGuilds.kind("herb", Layer.HERB, 1, 0.4));
      GroundPoint at = found.spots().get(0).at();
      assertTrue(ground.outline().holds(at.xM(), at.yM()), ground.outline() + " " + at);
    }
  }

  private static BedGround sliver() {
    return BedGround.of(Footprint.through("", List.of(new GroundPoint(0, 0), new GroundPoint(9, 0.02), new GroundPoint(9, 0.12))).orThrow());
  }

  /** Two thousand plants in one bed, of real size for it. */
  @Test
  void aHugeBedIsArrangedToo() {
    List<PlantKind> kinds = new ArrayList<>();
    kinds.add(RandomGuilds.kind("tree", Layer.TALL_TREE, 10, 8));
    kinds.add(RandomGuilds.kind("shrub", Layer.SHRUB, 200, 1.6));
    kinds.add(RandomGuilds.kind("herb", Layer.HERB, 790, 0.7));
    kinds.add(RandomGuilds.kind("cover", Layer.GROUND_COVER, 1_000, 0.5));
    BedGround ground = RandomGuilds.rectangle(40, 30);
    Arrangement found = new Arranger(ground, ArrangingRules.USUAL).arrange(kinds, List.of(), 1);
    assertEquals(2_000, found.spots().size());
    assertTrue(found.spots().stream().allMatch(s -> ground.outline().holds(s.at().xM(), s.at().yM())));
    assertTrue(conflicts(found).stream().noneMatch(c -> c.kind() == Conflict.Kind.TOO_CLOSE));
  }

  @Test
  void partnersInAWideBedAreDrawnTogether() {
    PlantKind k = RandomGuilds.kind("pear", Layer.SMALL_TREE, 2, 4);
    PlantKind pear = new PlantKind("pear", "pear", 2, 0, Layer.SMALL_TREE, 4, 6, false, GrowthRate.MEDIUM, false, false, false, true, k.kinship(), k.light(), 50);
    Arrangement apart = new Arrangement(RandomGuilds.rectangle(90, 20), List.of(pear),
        List.of(new Spot("pear", 1, new GroundPoint(-20, 0), true), new Spot("pear", 2, new GroundPoint(20, 0), true)));
    Conflict far = conflicts(apart).get(0);
    assertEquals(Conflict.Kind.PARTNER_FAR, far.kind());
    assertEquals(40, far.byM(), 1e-9);
    Arrangement found = arrange(apart.ground(), List.of(new Spot("pear", 1, new GroundPoint(-40, 0), true)), pear);
    assertEquals(List.of(), conflicts(found));
  }
}
