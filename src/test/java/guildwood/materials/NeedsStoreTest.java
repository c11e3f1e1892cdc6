package guildwood.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.bed.store.SqlBeds;
import guildwood.bed.store.SqlOutlines;
import guildwood.guild.Guild;
import guildwood.guild.store.SqlGuilds;
import guildwood.materials.store.SqlMaterialRecords;
import guildwood.site.Site;
import guildwood.site.store.SqlSites;
import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.store.SqlPlanRecords;
import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.SeedFiles;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Needs of a kept site: what is drawn, planted, set and laid comes together. */
class NeedsStoreTest {
  private final Database database = Database.inMemory();
  private final SqlBeds beds = new SqlBeds(database);
  private final SqlPlanRecords plans = new SqlPlanRecords(database, new SqlOutlines(database));
  private final SqlGuilds guilds = new SqlGuilds(database);
  private final SqlMaterialRecords records = new SqlMaterialRecords(database);
  private SpeciesLibrary library;
  private Needs needs;
  private long site;

  @BeforeEach
  void aSite() {
    SqlSpeciesRecords species = new SqlSpeciesRecords(database);
    species.addAll(SeedFiles.read("/seed-data").orThrow());
    library = species.library();
    needs = new Needs(beds, plans, guilds, () -> library, records);
    site = new SqlSites(database)
        .add(new Site(0, "Orchard edge", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
  }

  @AfterEach
  void close() {
    database.close();
  }

  private long bed(String name, double areaM2, Bed.Standing... standing) {
    return beds.add(new Bed(0, site, name, areaM2, Map.of(), List.of(standing), "")).orElseThrow();
  }

  private long path(String name, double depthM, double... eastNorth) {
    return plans.add(new PlanPath(0, site, name, List.of(new GroundPoint(eastNorth[0], eastNorth[1]),
        new GroundPoint(eastNorth[2], eastNorth[3])), 1, depthM)).orElseThrow();
  }

  private Need only(Target target) {
    return needs.ofSite(site).needs().stream().filter(need -> need.target().equals(target)).findFirst().orElseThrow();
  }

  @Test
  void trunksOfStandingAndPlannedTreesAndShrubsAreKeptFree() {
    long bed = bed("Row", 20, new Bed.Standing("malus-domestica", 2), new Bed.Standing("trifolium-repens", 9));
    assertEquals(20 - 2 * TrunkGap.USUAL.areaM2(), only(Target.bed(bed)).areaM2(), 1e-9);
    guilds.save(bed, "Guild", Guild.of(Map.of("malus-domestica", 3, "corylus-avellana", 1, "trifolium-repens", 30)), Instant.EPOCH);
    assertEquals(20 - 4 * TrunkGap.USUAL.areaM2(), only(Target.bed(bed)).areaM2(), 1e-9, "the guild counts standing plants in");
    assertEquals(0, TrunkGap.USUAL.areaM2() - Math.PI * 0.1774 * 0.1774, 1e-12, "6 inches and half a trunk of 5 cm");
  }

  @Test
  void gapsNeverTakeMoreThanTheBed() {
    long bed = bed("Pot", 0.3, new Bed.Standing("malus-domestica", 40));
    assertTrue(needs.ofSite(site).find(Target.bed(bed)).isPresent());
    assertEquals(List.of(), needs.ofSite(site).needs(), "nothing is left to cover");
  }

  @Test
  void pathsComeFirstUnlessTheOwnerSaysOtherwiseAndTheFirstOneCoversTheCrossing() {
    long bed = bed("A bed", 10);
    long along = path("Along", 0.15, -10, 0, 10, 0);
    long across = path("Across", 0.10, 0, -10, 0, 10);
    assertEquals(List.of(Target.path(along), Target.path(across), Target.bed(bed)), targets());
    assertEquals(20 * 0.15, only(Target.path(along)).amount(), 1e-9);
    assertEquals(19 * 0.10, only(Target.path(across)).amount(), 1e-9);
    records.keep(site, List.of(Target.bed(bed), Target.path(across), Target.bed(12345)));
    assertEquals(List.of(Target.bed(bed), Target.path(across), Target.path(along)), targets());
    assertEquals(20 * 0.10, only(Target.path(across)).amount(), 1e-9);
    assertEquals(19 * 0.15, only(Target.path(along)).amount(), 1e-9);
    assertEquals(1, only(Target.bed(bed)).order());
  }

  @Test
  void aPathOnWhichThePlanLaysNothingIsLeftOutUntilTheOwnerCoversIt() {
    long path = path("Grass path", 0, 0, 0, 10, 0);
    assertEquals(List.of(), needs.ofSite(site).needs());
    assertFalse(needs.ofSite(site).find(Target.path(path)).orElseThrow().covering().wanted());
    records.keep(site, Target.path(path), Optional.of(Covering.USUAL_PATH));
    assertEquals(1.5, only(Target.path(path)).amount(), 1e-9);
  }

  @Test
  void cardComesBelowTheMulch() {
    long bed = bed("Bed", 10);
    records.keep(site, Target.bed(bed), Optional.of(new Covering(Material.STRAW, 0.2, true, true)));
    assertEquals(List.of(Material.CARD, Material.STRAW), needs.ofSite(site).needs().stream().map(Need::material).toList());
    assertEquals(CardSheet.USUAL.sheets(10), needs.ofSite(site).needs().get(0).amount());
  }

  @Test
  void whatIsLaidIsNoLongerNeededAndTimeFollows() {
    long bed = bed("Bed", 100);
    records.keep(site, Target.bed(bed), Optional.of(new Covering(Material.WOOD_CHIPS, 0.1, false, true)));
    records.lay(site, only(Target.bed(bed)), 4, LocalDate.EPOCH, false);
    assertEquals(6, only(Target.bed(bed)).left(), 1e-9);
    assertEquals(360, needs.ofSite(site).minutes(only(Target.bed(bed))), 1e-6, "one cubic metre an hour");
    assertEquals(Map.of(Material.WOOD_CHIPS, 6.0), needs.ofSite(site).missing());
    records.lay(site, only(Target.bed(bed)), 1, LocalDate.EPOCH, true);
    assertTrue(only(Target.bed(bed)).done(), "the owner calls it done");
    assertEquals(Map.of(), needs.ofSite(site).missing());
  }

  private List<Target> targets() {
    return needs.ofSite(site).needs().stream().map(Need::target).toList();
  }
}
