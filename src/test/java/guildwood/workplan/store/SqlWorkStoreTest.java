package guildwood.workplan.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.bed.store.SqlBeds;
import guildwood.site.Site;
import guildwood.site.store.SqlSites;
import guildwood.species.Holding;
import guildwood.species.SpeciesNames;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.workplan.Done;
import guildwood.workplan.Raising;
import guildwood.workplan.WorkKind;
import guildwood.workplan.WorkRecords.TakenBack;
import guildwood.workplan.WorkSettings;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Work done moves plants from the list to the stock to the bed, and back. */
class SqlWorkStoreTest {
  private static final LocalDate DAY = LocalDate.of(2027, 4, 3);

  private final Database database = Database.inMemory();
  private final SqlBeds beds = new SqlBeds(database);
  private final SqlSpeciesRecords species = new SqlSpeciesRecords(database);
  private final SqlWork work = new SqlWork(database);
  private long site;
  private long bed;
  private String currant;

  @BeforeEach
  void aBed() {
    site = new SqlSites(database).add(new Site(0, "Mill lane", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
    bed = beds.add(new Bed(0, site, "North", 40, Map.of(), List.of(), "")).orElseThrow();
    currant = species.add(SpeciesNames.read("Ribes nigrum", "", "", "").orThrow()).orThrow();
  }

  @AfterEach
  void close() {
    database.close();
  }

  private Optional<Done> done(WorkKind kind, double amount) {
    return work.finish(new Done(0, site, kind.key(), kind, "in words", amount, DAY, currant, bed));
  }

  private Holding held() {
    return species.holdings().getOrDefault(currant, Holding.none(currant));
  }

  private int standing() {
    return beds.find(bed).orElseThrow().standingOf(currant);
  }

  @Test
  void boughtPlantsAreOnHandAndPlantedOnesStand() {
    done(WorkKind.BUY_PLANTS, 5).orElseThrow();
    assertEquals(5, held().plantsOnHand());
    done(WorkKind.PLANT, 3).orElseThrow();
    assertEquals(2, held().plantsOnHand());
    assertEquals(3, standing());
    List<Done> all = work.done(site);
    assertEquals(List.of(WorkKind.PLANT, WorkKind.BUY_PLANTS), all.stream().map(Done::kind).toList());
    assertEquals(TakenBack.USED_SINCE, work.takeBack(site, all.get(1).id()), "three of the five are in the ground");
    assertEquals(2, work.done(site).size());
    assertEquals(TakenBack.TAKEN_BACK, work.takeBack(site, all.get(0).id()));
    assertEquals(0, standing());
    assertEquals(TakenBack.TAKEN_BACK, work.takeBack(site, all.get(1).id()));
    assertEquals(0, held().plantsOnHand());
    assertEquals(TakenBack.NOT_THERE, work.takeBack(site, all.get(1).id()));
    assertTrue(work.done(site).isEmpty());
  }

  @Test
  void raisedPlantsComeToHandAndAreRaisedNoLonger() {
    species.keep(new Holding(currant, 1, 4, OptionalInt.of(350)));
    Done taken = done(WorkKind.TAKE_UP_PLANTS, 3).orElseThrow();
    assertEquals(new Holding(currant, 4, 1, OptionalInt.of(350)), held());
    assertEquals(TakenBack.TAKEN_BACK, work.takeBack(site, taken.id()));
    assertEquals(new Holding(currant, 1, 4, OptionalInt.of(350)), held());
    assertTrue(done(WorkKind.TAKE_UP_PLANTS, 5).isEmpty(), "only four were to be raised");
    assertEquals(new Holding(currant, 1, 4, OptionalInt.of(350)), held());
  }

  @Test
  void nothingIsKeptOfWorkWithPlantsThatAreNotThere() {
    assertTrue(done(WorkKind.PLANT, 1).isEmpty());
    assertEquals(0, standing());
    assertTrue(work.done(site).isEmpty());
    assertTrue(work.finish(new Done(0, site + 1, "ask", WorkKind.ASK_ABOUT_LINES, "", 1, DAY, "", 0)).isEmpty());
    assertTrue(work.finish(new Done(0, site, "plant", WorkKind.PLANT, "", 1, DAY, currant, bed + 1)).isEmpty());
  }

  @Test
  void keepsSettings() {
    assertEquals(WorkSettings.USUAL, work.settings(site));
    WorkSettings own = new WorkSettings(2.5, 6, DayOfWeek.TUESDAY, 60, 25, 5, 3, Map.of(Raising.SEED, 15, Raising.DIVISION, 95));
    assertTrue(work.keep(site, own));
    assertTrue(work.keep(site, own));
    assertEquals(own, work.settings(site));
    assertFalse(work.keep(site + 1, own));
  }

  @Test
  void aBedThatIsRemovedLeavesItsHistoryBehind() {
    done(WorkKind.BUY_PLANTS, 2).orElseThrow();
    beds.remove(bed);
    assertEquals(0, work.done(site).get(0).bedId());
  }
}
