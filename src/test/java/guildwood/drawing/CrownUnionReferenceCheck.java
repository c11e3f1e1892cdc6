package guildwood.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.site.sun.GroundPoint;
import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Crown cover by geometry: plane geometry worked out by hand, and a count of random points. */
class CrownUnionReferenceCheck {
  private static final int POINTS = 15_000;

  /** Two crowns of 4 m, trunks 2 m apart: each 12.566 m2, overlap 4.913, union 20.219, sum 25.133 m2 (plane geometry). */
  @Test
  void twoCrownsOfFourMetres() {
    var one = Shapes.circle(0, 0, 2);
    var other = Shapes.circle(2, 0, 2);
    assertEquals(12.566, one.getArea(), 0.001);
    assertEquals(25.133, one.getArea() + other.getArea(), 0.001);
    assertEquals(4.913, one.intersection(other).getArea(), 0.02);
    assertEquals(20.219, Shapes.union(List.of(one, other)).getArea(), 0.02);
  }

  /** FIAstemmap (cf7c7fba): one crown 33.94113 ft wide in a plot of 24 ft radius covers 50 %. */
  @Test
  void oneCrownOverHalfAPlot() {
    double foot = 0.3048;
    var plot = Shapes.circle(0, 0, 24 * foot);
    assertEquals(0.5, Shapes.circle(0, 0, 33.94113 / 2 * foot).intersection(plot).getArea() / plot.getArea(), 1e-4);
  }

  /** The union of crowns equals the share of random points under a crown, within four standard errors of that count. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void theUnionEqualsACountOfRandomPoints(long seed) {
    RandomGuilds.Case guild = RandomGuilds.filled(seed, 0.6);
    Arrangement arrangement = new Arranger(guild.ground(), ArrangingRules.USUAL).arrange(guild.kinds(), List.of(), seed);
    Grown grown = Grown.of(arrangement, 5, YearsToMaturity.USUAL);
    Random dice = new Random(seed);
    var box = guildwood.site.GroundShapes.polygon(guild.ground().outline()).getEnvelopeInternal();
    int inside = 0;
    int covered = 0;
    for (int i = 0; i < POINTS; i++) {
      double x = box.getMinX() + dice.nextDouble() * box.getWidth();
      double y = box.getMinY() + dice.nextDouble() * box.getHeight();
      if (guild.ground().outline().holds(x, y)) {
        inside++;
        covered += grown.bodies().entrySet().stream().anyMatch(e ->
            Math.hypot(e.getKey().at().xM() - x, e.getKey().at().yM() - y) <= e.getValue().radiusM()) ? 1 : 0;
      }
    }
    double share = (double) covered / inside;
    double error = Math.sqrt(share * (1 - share) / inside);
    assertEquals(share, grown.cover().any(), 4 * error + 1e-3);
    assertTrue(share > 0.05 && share < 1, "a case that says something: " + share);
  }

  /** Cover within a layer never passes the sum of its crowns, and all of it together never passes the bed. */
  @Test
  void coverGrowsAndNeverPassesTheBed() {
    RandomGuilds.Case guild = RandomGuilds.filled(9, 0.7);
    Arrangement arrangement = new Arranger(guild.ground(), ArrangingRules.USUAL).arrange(guild.kinds(), List.of(), 1);
    List<Double> shares = new ArrayList<>();
    for (int year : Years.told(arrangement, YearsToMaturity.USUAL)) {
      Grown.Cover cover = Grown.of(arrangement, year, YearsToMaturity.USUAL).cover();
      assertTrue(cover.any() <= 1 + 1e-9);
      for (Layer layer : cover.byLayer().keySet()) {
        double sum = guild.kinds().stream().filter(k -> k.layer() == layer).mapToDouble(PlantKind::crownAreaM2).sum();
        assertTrue(cover.byLayer().get(layer) * cover.bedM2() <= sum + 1e-6, layer + " in year " + year);
      }
      shares.add(cover.any());
    }
    assertEquals(shares.stream().sorted().toList(), shares, "cover never falls");
  }

  @Test
  void crownsBeyondTheEdgeCoverNoGroundOfTheBed() {
    BedGround ground = RandomGuilds.rectangle(4, 4);
    PlantKind tree = RandomGuilds.kind("tree", Layer.SMALL_TREE, 1, 8);
    Arrangement corner = new Arrangement(ground, List.of(tree), List.of(new Spot("tree", 1, new GroundPoint(-2, -2), false)));
    // A quarter of the crown of 4 m radius over a bed of 4 m: pi * 16 / 4 of 16 m2.
    assertEquals(Math.PI / 4, Grown.of(corner, 99, YearsToMaturity.USUAL).cover().any(), 0.002);
  }
}
