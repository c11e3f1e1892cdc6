package guildwood.bed.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.bed.sun.Nearby.Height;
import guildwood.bed.sun.Skyline;
import guildwood.bed.sun.Walls;
import guildwood.site.Site;
import guildwood.site.store.SqlSites;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.PacedHeight;
import guildwood.site.sun.Rectangle;
import guildwood.store.Database;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SqlSurroundingsStoreTest {
  private static final Crown CROWN = new Crown(2.5, 3.25, 0.1, 0.6, false);
  private static final Skyline HILLS = new Skyline(List.of(0.0, 1.5, 3.0, 12.25, 20.0, 7.0, 0.0, 0.0));

  private final Database database = Database.inMemory();
  private final SqlSites sites = new SqlSites(database);
  private final SqlBeds beds = new SqlBeds(database);
  private final SqlSurroundings surroundings = new SqlSurroundings(database);
  private long site;
  private long bed;

  @BeforeEach
  void aBed() {
    site = sites.add(new Site(0, "Orchard edge", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
    bed = bedAt(Optional.empty());
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void keepsTreesAndBuildingsOfEveryShapeToTheLastDigit() {
    Footprint corners = Footprint.through("", List.of(new GroundPoint(-1.1, 0.3), new GroundPoint(7, 0.1 + 0.2), new GroundPoint(7, 9.87654321)))
        .orThrow();
    List<Nearby> all = List.of(
        nearby(OptionalLong.of(bed), new GroundPoint(3.3, -4.4), Height.told(9.75), CROWN),
        nearby(OptionalLong.empty(), new GroundPoint(1 / 3.0, -2 / 3.0), Height.of(new PacedHeight(14, 38.5, 1.62)), new Crown(0, 1, 0.05, 0.05, true)),
        nearby(OptionalLong.of(bed), new GroundPoint(0, -8), Height.told(6), new Walls(new Walls.Box(new Rectangle(18, 13, 75.5)))),
        nearby(OptionalLong.of(bed), new GroundPoint(0, 0), Height.of(new PacedHeight(20, 10, 1.6)), new Walls(new Walls.Corners(corners))));
    List<Nearby> expected = new ArrayList<>();
    for (Nearby each : all) {
      long id = surroundings.add(each).orElseThrow();
      expected.add(new Nearby(id, site, each.fromBed(), each.name(), each.at(), each.height(), each.body()));
      assertEquals(Optional.of(expected.get(expected.size() - 1)), surroundings.find(id));
    }
    assertEquals(expected, surroundings.ofSite(site));
    assertEquals(List.of(), surroundings.ofSite(site + 1));
  }

  @Test
  void aGroundPlanMayHaveAllCornersItCan() {
    List<GroundPoint> round = java.util.stream.IntStream.range(0, Footprint.MOST_CORNERS)
        .mapToObj(i -> new GroundPoint(-1234.5678901 + 100 * Math.cos(i * 2 * Math.PI / Footprint.MOST_CORNERS),
            -1234.5678901 + 100 * Math.sin(i * 2 * Math.PI / Footprint.MOST_CORNERS))).toList();
    Walls walls = new Walls(new Walls.Corners(Footprint.through("", round).orThrow()));
    long id = surroundings.add(nearby(OptionalLong.empty(), new GroundPoint(0, 0), Height.told(5), walls)).orElseThrow();
    assertEquals(walls, surroundings.find(id).orElseThrow().body());
  }

  @Test
  void aChangeReplacesAllOfItButItsSite() {
    long id = surroundings.add(nearby(OptionalLong.of(bed), new GroundPoint(3, 4), Height.of(new PacedHeight(14, 38, 1.6)), CROWN)).orElseThrow();
    Nearby after = surroundings.change(id, now -> new Nearby(0, site + 7, OptionalLong.empty(), "Shed", new GroundPoint(1, 2), Height.told(3),
        new Walls(new Walls.Box(new Rectangle(4, 3, 0))))).orElseThrow();
    assertEquals(new Nearby(id, site, OptionalLong.empty(), "Shed", new GroundPoint(1, 2), Height.told(3),
        new Walls(new Walls.Box(new Rectangle(4, 3, 0)))), after);
    assertEquals(Optional.of(after), surroundings.find(id));
  }

  @Test
  void aChangeThatFailsLeavesNothingBehind() {
    long id = surroundings.add(nearby(OptionalLong.of(bed), new GroundPoint(3, 4), Height.told(5), CROWN)).orElseThrow();
    Nearby before = surroundings.find(id).orElseThrow();
    assertThrows(RuntimeException.class, () -> surroundings.change(id, now -> nearby(OptionalLong.of(bed + 99), now.at(), now.height(), CROWN)));
    assertEquals(Optional.of(before), surroundings.find(id));
  }

  @Test
  void nothingIsKeptForASiteOrBedThatIsNotThere() {
    assertEquals(OptionalLong.empty(), surroundings.add(nearby(OptionalLong.of(bed + 99), new GroundPoint(0, 0), Height.told(5), CROWN)));
    long other = sites.add(new Site(0, "Other", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
    Nearby stray = new Nearby(0, other, OptionalLong.of(bed), "stray", new GroundPoint(0, 0), Height.told(5), CROWN);
    assertEquals(OptionalLong.empty(), surroundings.add(stray), "the bed lies on another site");
    assertEquals(OptionalLong.empty(), surroundings.add(new Nearby(0, site + 99, OptionalLong.empty(), "x", new GroundPoint(0, 0), Height.told(5), CROWN)));
    assertEquals(Optional.empty(), surroundings.change(99, now -> now));
    assertFalse(surroundings.remove(99));
    assertFalse(surroundings.keepForBed(bed + 99, HILLS));
    assertFalse(surroundings.keepForSite(other, bed, HILLS));
    assertEquals(Optional.empty(), surroundings.skylineOfSite(other));
  }

  @Test
  void aBedsOwnSkylineStandsBesideTheSitesUntilTheSitesIsToHoldThere() {
    long second = bedAt(Optional.empty());
    assertTrue(surroundings.keepForSite(site, bed, HILLS));
    assertTrue(surroundings.keepForBed(bed, Skyline.LEVEL));
    assertTrue(surroundings.keepForBed(second, HILLS));
    assertEquals(Optional.of(HILLS), surroundings.skylineOfSite(site));
    assertEquals(Optional.of(Skyline.LEVEL), surroundings.skylineOfBed(bed));
    Skyline other = new Skyline(Collections.nCopies(8, 5.5));
    assertTrue(surroundings.keepForSite(site, bed, other));
    assertEquals(Optional.of(other), surroundings.skylineOfSite(site));
    assertEquals(Optional.empty(), surroundings.skylineOfBed(bed));
    assertEquals(Optional.of(HILLS), surroundings.skylineOfBed(second));
  }

  @Test
  void whatWasMeasuredFromABedWhosePlaceIsKnownOutlivesIt() {
    long placed = bedAt(Optional.of(new GroundPoint(10, -20)));
    long lost = surroundings.add(nearby(OptionalLong.of(bed), new GroundPoint(1, 1), Height.told(5), CROWN)).orElseThrow();
    long kept = surroundings.add(nearby(OptionalLong.of(placed), new GroundPoint(3, 4), Height.told(5), CROWN)).orElseThrow();
    surroundings.keepForBed(placed, HILLS);
    assertTrue(beds.remove(placed));
    assertTrue(beds.remove(bed));
    assertEquals(Optional.empty(), surroundings.find(lost));
    Nearby after = surroundings.find(kept).orElseThrow();
    assertEquals(OptionalLong.empty(), after.fromBed());
    assertEquals(new GroundPoint(13, -16), after.at());
  }

  @Test
  void allOfItGoesWithTheSite() {
    surroundings.add(nearby(OptionalLong.of(bed), new GroundPoint(1, 1), Height.told(5), CROWN));
    surroundings.add(nearby(OptionalLong.empty(), new GroundPoint(1, 1), Height.told(5), CROWN));
    surroundings.keepForSite(site, bed, HILLS);
    surroundings.keepForBed(bed, HILLS);
    assertTrue(sites.remove(site));
    for (String table : List.of("nearby", "site_skyline", "bed_skyline")) {
      int left = database.read(h -> h.createQuery("select count(*) from " + table).mapTo(Integer.class).one());
      assertEquals(0, left, table);
    }
  }

  private long bedAt(Optional<GroundPoint> middle) {
    return beds.add(new Bed(0, site, "bed", 12, Optional.empty(), middle, Map.of(), List.of(), "")).orElseThrow();
  }

  private Nearby nearby(OptionalLong from, GroundPoint at, Height height, Nearby.Body body) {
    return new Nearby(0, site, from, "thing", at, height, body);
  }
}
