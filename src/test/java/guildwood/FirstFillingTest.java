package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.SpeciesRecords;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.web.Messages;
import org.junit.jupiter.api.Test;

/** An empty library is filled once; bad seed data stops the start and keeps nothing. */
class FirstFillingTest {
  @Test
  void fillsAnEmptyLibraryOnceOnly() {
    try (Database database = Database.inMemory()) {
      SpeciesRecords records = new SqlSpeciesRecords(database);
      FirstFilling.fill(records, new Messages(), "/seed-good");
      assertEquals(6, records.library().species().size());
      records.library().species().forEach(s -> records.remove(s.id()));
      FirstFilling.fill(records, new Messages(), "/seed-good");
      assertEquals(0, records.library().species().size());
      assertEquals(6, records.library().binned().size());
    }
  }

  @Test
  void badSeedStopsWithEveryPlaceInWords() {
    try (Database database = Database.inMemory()) {
      SpeciesRecords records = new SqlSpeciesRecords(database);
      FirstFilling.BadSeed bad = assertThrows(FirstFilling.BadSeed.class,
          () -> FirstFilling.fill(records, new Messages(), "/seed-bad"));
      assertEquals(24, bad.getMessage().lines().count(), bad.getMessage());
      assertTrue(bad.getMessage().contains("values/trees.csv, row 6, column value: Please write the unit too, one of: m, cm, mm, ft, in."),
          bad.getMessage());
      assertTrue(records.library().isEmpty());
    }
  }

  @Test
  void theProgramStartsWithTheRealSeed() {
    try (App app = App.start(Settings.demoOnFreePort())) {
      assertEquals(200, new HttpVisitor(app).get("/").status());
    }
  }
}
