package guildwood.materials.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.materials.CardSheet;
import guildwood.materials.Covering;
import guildwood.materials.Delivery;
import guildwood.materials.Laid;
import guildwood.materials.Material;
import guildwood.materials.MaterialRecords.Removal;
import guildwood.materials.MaterialSettings;
import guildwood.materials.Need;
import guildwood.materials.Stock;
import guildwood.materials.Target;
import guildwood.materials.TrunkGap;
import guildwood.site.Site;
import guildwood.site.store.SqlSites;
import guildwood.store.Database;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SqlMaterialRecordsStoreTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 4);

  private final Database database = Database.inMemory();
  private final SqlSites sites = new SqlSites(database);
  private final SqlMaterialRecords records = new SqlMaterialRecords(database);
  private long site;

  @BeforeEach
  void aSite() {
    site = sites.add(new Site(0, "Orchard edge", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
  }

  @AfterEach
  void close() {
    database.close();
  }

  private static Need need(double amount) {
    return new Need(Target.bed(7), "Strip", 1, Material.WOOD_CHIPS, 40, 0.1, amount, 0, false);
  }

  private Delivery chips(double m3) {
    return new Delivery(0, site, Material.WOOD_CHIPS, m3, DAY, "from the park");
  }

  private double stock() {
    return Stock.of(records.deliveries(site), records.laid(site)).of(Material.WOOD_CHIPS);
  }

  @Test
  void keepsSettingsToTheLastDigit() {
    assertEquals(MaterialSettings.USUAL, records.settings(site));
    MaterialSettings own = new MaterialSettings(new Covering(Material.STRAW, 0.1 / 3, true, true),
        new Covering(Material.LEAVES, 0.2, false, true), 12.5, 20 / 3.0, 90, 0.7, new TrunkGap(0.2, 0.1),
        new CardSheet(1.1, 0.9, 0.07), 25);
    assertTrue(records.keep(site, own));
    assertTrue(records.keep(site, own));
    assertEquals(own, records.settings(site));
    assertFalse(records.keep(site + 1, own));
  }

  @Test
  void keepsCoveringsAndTheirOrder() {
    Covering straw = new Covering(Material.STRAW, 0.18, true, true);
    assertTrue(records.keep(site, Target.bed(7), Optional.of(straw)));
    assertTrue(records.keep(site, Target.path(7), Optional.of(straw.unwanted())));
    assertEquals(Map.of(Target.bed(7), straw, Target.path(7), straw.unwanted()), records.coverings(site));
    assertTrue(records.keep(site, Target.bed(7), Optional.empty()));
    assertEquals(Map.of(Target.path(7), straw.unwanted()), records.coverings(site));
    List<Target> order = List.of(Target.path(7), Target.bed(7), Target.bed(3));
    assertTrue(records.keep(site, order));
    assertEquals(order, records.order(site));
    assertTrue(records.keep(site, List.of(Target.bed(3))));
    assertEquals(List.of(Target.bed(3)), records.order(site));
    assertFalse(records.keep(site + 1, order));
    assertFalse(records.keep(site + 1, Target.bed(7), Optional.empty()));
  }

  @Test
  void takesFromTheStockOnlyWhatIsThere() {
    records.add(chips(5)).orElseThrow();
    Laid first = records.lay(site, need(4), 4, DAY, true).orElseThrow();
    assertEquals(4, first.fromStock());
    Laid second = records.lay(site, need(4), 3, DAY.plusDays(1), false).orElseThrow();
    assertEquals(1, second.fromStock(), "the rest came from elsewhere");
    assertEquals(0, stock());
    assertEquals(List.of(second, first), records.laid(site));
    assertTrue(records.takeBack(site, second.id()));
    assertEquals(1, stock());
    assertFalse(records.takeBack(site, second.id()));
    assertFalse(records.takeBack(site + 1, first.id()));
  }

  @Test
  void aDeliveryThatWasLaidStays() {
    long load = records.add(chips(5)).orElseThrow();
    long small = records.add(chips(1)).orElseThrow();
    Laid work = records.lay(site, need(4), 4, DAY, true).orElseThrow();
    assertEquals(Removal.LAID_ALREADY, records.removeDelivery(site, load));
    assertEquals(Removal.REMOVED, records.removeDelivery(site, small));
    records.takeBack(site, work.id());
    assertEquals(Removal.REMOVED, records.removeDelivery(site, load));
    assertEquals(Removal.NOT_THERE, records.removeDelivery(site, load));
    assertEquals(List.of(), records.deliveries(site));
  }

  @Test
  void allGoesWithTheSite() {
    records.keep(site, MaterialSettings.USUAL);
    records.keep(site, Target.bed(7), Optional.of(Covering.USUAL_BED));
    records.keep(site, List.of(Target.bed(7)));
    records.add(chips(5));
    records.lay(site, need(4), 4, DAY, true);
    assertTrue(sites.remove(site));
    assertEquals(Map.of(), records.coverings(site));
    assertEquals(List.of(), records.deliveries(site));
    assertEquals(List.of(), records.laid(site));
    assertEquals(List.of(), records.order(site));
    assertEquals(OptionalLong.empty(), records.add(chips(5)));
    assertEquals(Optional.empty(), records.lay(site, need(4), 4, DAY, true));
  }
}
