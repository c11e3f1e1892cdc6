package guildwood.bed.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.bed.Near;
import guildwood.site.Site;
import guildwood.site.store.SqlSites;
import guildwood.store.Database;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class SqlNearPlantsStoreTest {
  private final Database database = Database.inMemory();
  private final SqlBeds beds = new SqlBeds(database);
  private final SqlNearPlants nearPlants = new SqlNearPlants(database);
  private long bed;

  @BeforeEach
  void aBedAndTwoSpecies() {
    long site = new SqlSites(database)
        .add(new Site(0, "Orchard edge", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
    bed = beds.add(new Bed(0, site, "Strip", 20, Map.of(), List.of(), "")).orElseThrow();
    for (String id : List.of("apple", "pear")) {
      database.change(h -> h.execute("insert into species (id, scientific_name, common_names, family, synonyms) values (?, ?, '', '', '')", id, id));
    }
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void keepsTheNearestPlantOfEachSpeciesToTheLastDigit() {
    assertTrue(nearPlants.keep(bed, new Near("apple", 100 / 3.0)));
    assertTrue(nearPlants.keep(bed, new Near("pear", 0.5)));
    assertEquals(List.of(new Near("pear", 0.5), new Near("apple", 100 / 3.0)), nearPlants.ofBed(bed));
    assertTrue(nearPlants.keep(bed, new Near("pear", 2000)));
    assertEquals(List.of(new Near("apple", 100 / 3.0), new Near("pear", 2000)), nearPlants.ofBed(bed));
    assertEquals(2, beds.belongings(bed).near());
  }

  @Test
  void forgetsWhatIsRemovedAndWhatBelongedToARemovedBed() {
    nearPlants.keep(bed, new Near("apple", 12));
    assertFalse(nearPlants.remove(bed, "pear"));
    assertTrue(nearPlants.remove(bed, "apple"));
    assertEquals(List.of(), nearPlants.ofBed(bed));
    nearPlants.keep(bed, new Near("apple", 12));
    beds.remove(bed);
    assertEquals(List.of(), nearPlants.ofBed(bed));
    assertFalse(nearPlants.keep(bed, new Near("apple", 12)));
  }

  @Test
  void refusesDistancesAndSpeciesThatCannotBe() {
    for (double distanceM : new double[] {0.49, 2000.1, -1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> new Near("apple", distanceM), () -> "" + distanceM);
    }
    assertThrows(RuntimeException.class, () -> nearPlants.keep(bed, new Near("nobody", 12)));
  }
}
