package guildwood.site.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.species.Axis;
import guildwood.store.Database;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SqlSitesStoreTest {
  private static final Condition LIGHT = new Condition(Axis.LIGHT, new Range(3, 6), Basis.OBSERVED, "part shade");
  private static final Condition PH = new Condition(Axis.REACTION, new Range(6, 6.4), Basis.MEASURED, "6.2");

  private final Database database = Database.inMemory();
  private final SqlSites sites = new SqlSites(database);

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void keepsEverythingOfASite() {
    Site site = site("Orchard edge", Map.of(Axis.LIGHT, LIGHT, Axis.REACTION, PH));
    long id = sites.add(site);
    assertEquals(withId(id, site), sites.find(id).orElseThrow());
  }

  @Test
  void keepsASiteThatSaysNothingButItsName() {
    Site bare = new Site(0, "Bare", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), "");
    long id = sites.add(bare);
    assertEquals(withId(id, bare), sites.find(id).orElseThrow());
  }

  @Test
  void listsByNameWithoutRegardToCase() {
    sites.add(site("west", Map.of()));
    sites.add(site("East", Map.of(Axis.LIGHT, LIGHT)));
    assertEquals(List.of("East", "west"), sites.all().stream().map(Site::name).toList());
    assertEquals(Map.of(Axis.LIGHT, LIGHT), sites.all().get(0).conditions());
  }

  @Test
  void aChangeReplacesAllOfIt() {
    long id = sites.add(site("Orchard edge", Map.of(Axis.LIGHT, LIGHT)));
    Site changed = sites.change(id, s -> site(s.name() + " north", Map.of(Axis.REACTION, PH))).orElseThrow();
    assertEquals("Orchard edge north", changed.name());
    assertEquals(Map.of(Axis.REACTION, PH), changed.conditions());
    assertEquals(changed, sites.find(id).orElseThrow());
  }

  @Test
  void aChangeThatFailsLeavesNothingBehind() {
    Site before = sites.find(sites.add(site("Orchard edge", Map.of(Axis.LIGHT, LIGHT)))).orElseThrow();
    // The conditions are written last; a place too long for its column fails before them, a condition after the row.
    Condition tooLong = new Condition(Axis.MOISTURE, Range.of(3), Basis.OBSERVED, "x".repeat(121));
    assertThrows(RuntimeException.class, () -> sites.change(before.id(), s -> site("Other", Map.of(Axis.MOISTURE, tooLong))));
    assertEquals(before, sites.find(before.id()).orElseThrow());
    assertThrows(RuntimeException.class, () -> sites.add(site("New", Map.of(Axis.MOISTURE, tooLong))));
    assertEquals(1, sites.all().size());
  }

  @Test
  void unknownSitesAreAnAnswer() {
    assertEquals(Optional.empty(), sites.find(7));
    assertEquals(Optional.empty(), sites.change(7, s -> s));
    assertFalse(sites.remove(7));
  }

  @Test
  void removesASiteWithItsConditions() {
    long id = sites.add(site("Orchard edge", Map.of(Axis.LIGHT, LIGHT)));
    assertTrue(sites.remove(id));
    assertEquals(List.of(), sites.all());
    int left = database.read(h -> h.createQuery("select count(*) from site_condition").mapTo(Integer.class).one());
    assertEquals(0, left);
  }

  private static Site site(String name, Map<Axis, Condition> conditions) {
    return new Site(0, name, "US-WI", OptionalDouble.of(44.9), OptionalDouble.of(-89.6), Optional.of(MonthDay.of(5, 5)),
        Optional.of(MonthDay.of(10, 5)), conditions, "two lines\nof notes");
  }

  private static Site withId(long id, Site site) {
    return new Site(id, site.name(), site.place(), site.latitudeDegrees(), site.longitudeDegrees(), site.lastSpringFrost(),
        site.firstAutumnFrost(), site.conditions(), site.note());
  }
}
