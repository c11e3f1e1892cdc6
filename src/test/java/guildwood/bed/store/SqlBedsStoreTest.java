package guildwood.bed.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.bed.Bed.Standing;
import guildwood.bed.Beds.Belongings;
import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.store.SqlSites;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.species.Axis;
import guildwood.store.Database;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SqlBedsStoreTest {
  private static final Condition LIGHT = new Condition(Axis.LIGHT, new Range(3, 6), Basis.OBSERVED, "part shade");

  private final Database database = Database.inMemory();
  private final SqlSites sites = new SqlSites(database);
  private final SqlBeds beds = new SqlBeds(database);
  private long site;

  @BeforeEach
  void aSiteAndTwoSpecies() {
    site = sites.add(new Site(0, "Orchard edge", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
    database.change(h -> h.execute("insert into species (id, scientific_name, common_names, family, synonyms)"
        + " values ('malus-domestica', 'Malus domestica', 'apple', '', ''), ('ribes-nigrum', 'Ribes nigrum', '', '', '')"));
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void keepsEverythingOfABed() {
    Bed bed = bed("South strip").withStanding("malus-domestica", 2).withStanding("ribes-nigrum", 1);
    long id = beds.add(bed).orElseThrow();
    Bed kept = beds.find(id).orElseThrow();
    assertEquals(new Bed(id, site, "South strip", 12.5, Map.of(Axis.LIGHT, LIGHT),
        List.of(new Standing("malus-domestica", 2), new Standing("ribes-nigrum", 1)), "by the gate"), kept);
    assertEquals(List.of(kept), beds.all());
  }

  @Test
  void listsTheBedsOfOneSiteByName() {
    long other = sites.add(new Site(0, "Other", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
    beds.add(bed("wet end"));
    beds.add(bed("Dry end"));
    beds.add(new Bed(0, other, "elsewhere", 3, Map.of(), List.of(), ""));
    assertEquals(List.of("Dry end", "wet end"), beds.ofSite(site).stream().map(Bed::name).toList());
    assertEquals(3, beds.all().size());
  }

  @Test
  void keepsTheSizeAndPlaceOfABed() {
    Bed laidOut = new Bed(0, site, "Laid out", 18, Optional.of(new Rectangle(9, 2.00001, 67.5)), Optional.of(new GroundPoint(-3.25, 1 / 3.0)),
        Map.of(), List.of(), "");
    Bed kept = beds.find(beds.add(laidOut).orElseThrow()).orElseThrow();
    assertEquals(laidOut.size(), kept.size());
    assertEquals(laidOut.middle(), kept.middle());
    Bed without = beds.change(kept.id(), b -> bed(b.name())).orElseThrow();
    assertEquals(Optional.empty(), without.size());
    assertEquals(Optional.empty(), without.middle());
    Bed again = beds.change(kept.id(), b -> new Bed(0, site, b.name(), 18, Optional.empty(), laidOut.middle(), Map.of(), List.of(), "")).orElseThrow();
    assertEquals(laidOut.middle(), again.withStanding("malus-domestica", 1).withCondition(LIGHT).middle());
  }

  @Test
  void aBedNeedsASite() {
    assertEquals(OptionalLong.empty(), beds.add(new Bed(0, site + 99, "nowhere", 3, Map.of(), List.of(), "")));
    assertEquals(List.of(), beds.all());
  }

  @Test
  void aChangeThatFailsLeavesNothingBehind() {
    long id = beds.add(bed("South strip").withStanding("malus-domestica", 2)).orElseThrow();
    Bed before = beds.find(id).orElseThrow();
    assertThrows(RuntimeException.class, () -> beds.change(id, b ->
        new Bed(0, site, "Other", 99, Map.of(), List.of(new Standing("no-such-species", 1)), "")));
    assertEquals(before, beds.find(id).orElseThrow());
    assertThrows(RuntimeException.class, () -> beds.add(bed("Half").withStanding("no-such-species", 1)));
    assertEquals(1, beds.all().size());
  }

  @Test
  void changesAtOnceFollowOneAnother() throws InterruptedException {
    long id = beds.add(bed("South strip")).orElseThrow();
    ExecutorService threads = Executors.newFixedThreadPool(4);
    for (int i = 0; i < 20; i++) {
      threads.submit(() -> beds.change(id, b -> b.withStanding("malus-domestica", b.standingOf("malus-domestica") + 1)));
    }
    threads.shutdown();
    assertTrue(threads.awaitTermination(30, TimeUnit.SECONDS));
    assertEquals(20, beds.find(id).orElseThrow().standingOf("malus-domestica"));
  }

  @Test
  void whatBelongsToABedGoesWithItAndWithItsSite() {
    long id = beds.add(bed("South strip").withStanding("malus-domestica", 2)).orElseThrow();
    database.change(h -> h.execute("insert into wish (bed_id, kind, item, must, weight) values (?, 'function', 'ground-cover', true, 3)", id));
    database.change(h -> h.execute("insert into guild (bed_id, name, saved_at) values (?, 'Saved', current_timestamp)", id));
    database.change(h -> h.execute("insert into share_link (guild_id, token_hash, label, created_at)"
        + " select id, 'x', '', current_timestamp from guild"));
    assertEquals(new Belongings(1, 1, 1), beds.belongings(id));
    assertTrue(sites.remove(site));
    assertEquals(Optional.empty(), beds.find(id));
    assertEquals(new Belongings(0, 0, 0), beds.belongings(id));
    for (String table : List.of("bed", "bed_condition", "bed_standing", "wish", "guild", "share_link")) {
      int left = database.read(h -> h.createQuery("select count(*) from " + table).mapTo(Integer.class).one());
      assertEquals(0, left, table);
    }
  }

  @Test
  void unknownBedsAreAnAnswer() {
    assertEquals(Optional.empty(), beds.find(7));
    assertEquals(Optional.empty(), beds.change(7, b -> b));
    assertFalse(beds.remove(7));
    long id = beds.add(bed("South strip")).orElseThrow();
    assertTrue(beds.remove(id));
    assertFalse(beds.remove(id));
  }

  private Bed bed(String name) {
    return new Bed(0, site, name, 12.5, Map.of(Axis.LIGHT, LIGHT), List.of(), "by the gate");
  }
}
