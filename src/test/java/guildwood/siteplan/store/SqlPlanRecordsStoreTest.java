package guildwood.siteplan.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.store.SqlOutlines;
import guildwood.site.Site;
import guildwood.site.store.SqlSites;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.PlanPath.EndHeights;
import guildwood.siteplan.Water;
import guildwood.store.Database;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SqlPlanRecordsStoreTest {
  private static final List<GroundPoint> LINE = List.of(new GroundPoint(1 / 3.0, -2.5), new GroundPoint(7, 0.1 + 0.2));
  private static final Footprint POND =
      Footprint.through("", List.of(new GroundPoint(0, 0), new GroundPoint(4, 0), new GroundPoint(4, 1 / 7.0))).orThrow();

  private final Database database = Database.inMemory();
  private final SqlSites sites = new SqlSites(database);
  private final SqlPlanRecords plans = new SqlPlanRecords(database, new SqlOutlines(database));
  private long site;

  @BeforeEach
  void aSite() {
    site = sites.add(new Site(0, "Orchard edge", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void keepsPathsToTheLastDigitInTheOrderDrawn() {
    PlanPath level = new PlanPath(0, site, "To the gate", LINE, 1.2, 0.15);
    PlanPath steep = new PlanPath(0, site, "Down to the ditch", LINE, 0.6, 0, Optional.of(new EndHeights(101.25, 99)));
    long first = plans.add(level).orElseThrow();
    long second = plans.add(steep).orElseThrow();
    PlanPath kept = new PlanPath(second, site, "Down to the ditch", LINE, 0.6, 0, Optional.of(new EndHeights(101.25, 99)));
    assertEquals(List.of(new PlanPath(first, site, "To the gate", LINE, 1.2, 0.15), kept), plans.paths(site));
    assertEquals(Optional.of(kept), plans.findPath(second));
    PlanPath other = new PlanPath(first, site, "Round the pond", List.of(LINE.get(1), LINE.get(0), new GroundPoint(5, 5)), 1, 0.1);
    assertTrue(plans.change(other));
    assertEquals(Optional.of(other), plans.findPath(first));
    assertTrue(plans.removePath(first));
    assertFalse(plans.removePath(first));
    assertFalse(plans.change(other));
    assertEquals(List.of(kept), plans.paths(site));
  }

  @Test
  void keepsWater() {
    long id = plans.add(new Water(0, site, "Pond", POND)).orElseThrow();
    assertEquals(List.of(new Water(id, site, "Pond", POND)), plans.waters(site));
    Water moved = new Water(id, site, "Small pond", POND.moved(new GroundPoint(1, 1)));
    assertTrue(plans.change(moved));
    assertEquals(Optional.of(moved), plans.findWater(id));
    assertTrue(plans.removeWater(id));
    assertEquals(List.of(), plans.waters(site));
  }

  @Test
  void everythingGoesWithItsSiteAndNothingIsKeptForNone() {
    plans.add(new PlanPath(0, site, "Path", LINE, 1, 0)).orElseThrow();
    plans.add(new Water(0, site, "Pond", POND)).orElseThrow();
    assertEquals(OptionalLong.empty(), plans.add(new Water(0, site + 1, "Pond", POND)));
    assertEquals(OptionalLong.empty(), plans.add(new PlanPath(0, site + 1, "Path", LINE, 1, 0)));
    assertTrue(sites.remove(site));
    assertEquals(List.of(), plans.paths(site));
    assertEquals(List.of(), plans.waters(site));
  }
}
