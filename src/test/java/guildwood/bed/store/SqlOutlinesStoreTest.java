package guildwood.bed.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.bed.BedOutline;
import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.site.Site;
import guildwood.site.store.SqlSites;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.store.Database;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Outlines go with their beds and never say something else than they do. */
class SqlOutlinesStoreTest {
  /** An L of 4 x 3 m with a corner of 2 x 2 m taken out: 8 m2. */
  private static final Footprint ELL = footprint(10, 20, 14, 20, 14, 21, 12, 21, 12, 23, 10, 23);

  private final Database database = Database.inMemory();
  private final SqlSites sites = new SqlSites(database);
  private final SqlBeds beds = new SqlBeds(database);
  private final SqlOutlines outlines = new SqlOutlines(database);
  private final SqlSurroundings surroundings = new SqlSurroundings(database);
  private long site;
  private long bed;

  @BeforeEach
  void aBed() {
    site = sites.add(new Site(0, "Orchard edge", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
    bed = beds.add(new Bed(0, site, "Strip", 30, Map.of(), List.of(), "")).orElseThrow();
  }

  @AfterEach
  void close() {
    database.close();
  }

  private static Footprint footprint(double... eastNorth) {
    return Footprint.through("", java.util.stream.IntStream.range(0, eastNorth.length / 2)
        .mapToObj(i -> new GroundPoint(eastNorth[2 * i], eastNorth[2 * i + 1])).toList()).orThrow();
  }

  private void keep(Footprint corners) {
    assertTrue(outlines.keep(bed, BedOutline.of(corners, "").orThrow()));
  }

  @Test
  void theBedTakesAreaRectangleAndPlaceFromItsOutline() {
    keep(ELL);
    assertEquals(Optional.of(ELL), outlines.ofBed(bed));
    assertEquals(Map.of(bed, ELL), outlines.ofSite(site));
    Bed kept = beds.find(bed).orElseThrow();
    assertEquals(8, kept.areaM2(), 1e-9);
    assertEquals(4, kept.ground().lengthM(), 1e-9);
    assertEquals(3, kept.ground().widthM(), 1e-9);
    assertEquals(90, kept.ground().turnDegrees(), 1e-9);
    assertEquals(12, kept.middle().orElseThrow().xM(), 1e-9);
    assertEquals(21.5, kept.middle().orElseThrow().yM(), 1e-9);
  }

  @Test
  void aMovedBedTakesItsOutlineAlongAndAnotherSizeLetsGoOfIt() {
    keep(ELL);
    beds.change(bed, now -> new Bed(now.id(), site, "Renamed", now.areaM2(), now.size(), Optional.of(new GroundPoint(22, 11.5)),
        Map.of(), List.of(), ""));
    Footprint moved = outlines.ofBed(bed).orElseThrow();
    assertEquals(20, moved.corners().get(0).xM(), 1e-9);
    assertEquals(10, moved.corners().get(0).yM(), 1e-9);
    beds.change(bed, now -> new Bed(now.id(), site, now.name(), 9, Optional.of(new Rectangle(3, 3, 0)), now.middle(), Map.of(), List.of(), ""));
    assertEquals(Optional.empty(), outlines.ofBed(bed));
    keep(ELL);
    beds.change(bed, now -> new Bed(now.id(), site, now.name(), now.areaM2(), now.size(), Optional.empty(), Map.of(), List.of(), ""));
    assertEquals(Map.of(), outlines.ofSite(site));
  }

  @Test
  void treesTheBedWasMeasuredFromStayWhereTheyAreOnTheSite() {
    keep(ELL);
    long tree = surroundings.add(new Nearby(0, site, OptionalLong.of(bed), "Oak", new GroundPoint(3, 4), Nearby.Height.told(9),
        new Crown(2, 3, 0.1, 0.6, false))).orElseThrow();
    keep(footprint(0, 0, 4, 0, 4, 2, 0, 2));
    GroundPoint at = surroundings.find(tree).orElseThrow().from(beds.find(bed).orElseThrow().middle().orElseThrow());
    assertEquals(15, at.xM(), 1e-9);
    assertEquals(25.5, at.yM(), 1e-9);
  }

  @Test
  void aBedGoesBackToWhatItWasAndTreesStay() {
    beds.change(bed, now -> new Bed(now.id(), site, now.name(), 12, Optional.of(new Rectangle(4, 3, 10)), Optional.of(new GroundPoint(1, 2)),
        Map.of(), List.of(), ""));
    Bed before = beds.find(bed).orElseThrow();
    long tree = surroundings.add(new Nearby(0, site, OptionalLong.of(bed), "Oak", new GroundPoint(3, 4), Nearby.Height.told(9),
        new Crown(2, 3, 0.1, 0.6, false))).orElseThrow();
    keep(ELL);
    assertTrue(outlines.restore(before));
    assertEquals(Optional.of(before), beds.find(bed));
    assertEquals(Optional.empty(), outlines.ofBed(bed));
    GroundPoint at = surroundings.find(tree).orElseThrow().at();
    assertEquals(3, at.xM(), 1e-9);
    assertEquals(4, at.yM(), 1e-9);
  }

  @Test
  void whatIsGoneHasNoOutline() {
    assertFalse(outlines.keep(bed + 9, BedOutline.of(ELL, "").orThrow()));
    keep(ELL);
    assertTrue(outlines.remove(bed));
    assertFalse(outlines.remove(bed));
    assertEquals(8, beds.find(bed).orElseThrow().areaM2(), 1e-9);
    keep(ELL);
    assertTrue(beds.remove(bed));
    assertEquals(Optional.empty(), outlines.ofBed(bed));
  }

  @Test
  void aBedThatCannotBeIsRefused() {
    assertTrue(BedOutline.of(footprint(0, 0, 0.2, 0, 0.2, 0.2), "corners").isRefused());
    assertTrue(BedOutline.of(footprint(0, 0, 900, 0, 900, 900, 0, 900), "corners").isRefused());
    assertTrue(BedOutline.of(footprint(0, 0, 300, 0, 300, 1, 0, 1), "corners").isRefused());
    assertTrue(BedOutline.of(footprint(3000, 0, 3010, 0, 3010, 10, 3000, 10), "corners").isRefused());
  }
}
