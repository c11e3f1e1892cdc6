package guildwood.drawing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.bed.store.SqlBeds;
import guildwood.drawing.ArrangingRules;
import guildwood.drawing.DrawingSettings;
import guildwood.drawing.Spot;
import guildwood.drawing.YearsToMaturity;
import guildwood.site.Site;
import guildwood.site.store.SqlSites;
import guildwood.site.sun.GroundPoint;
import guildwood.species.Layer;
import guildwood.store.Database;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Spots and settings on the real database. */
class SqlBedSpotsStoreTest {
  private final Database database = Database.inMemory();
  private final SqlBedSpots spots = new SqlBedSpots(database);
  private long bed;

  @BeforeEach
  void aBed() {
    long site = new SqlSites(database).add(new Site(0, "Site", "", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(), ""));
    bed = new SqlBeds(database).add(new Bed(0, site, "Bed", 20, Map.of(), List.of(), "")).orElseThrow();
    database.change(h -> h.execute("insert into species (id, scientific_name, common_names, family, synonyms, removed) values ('malus', 'Malus', '', '', '', false)"));
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void beforeAnythingIsKeptTheUsualSettingsHold() {
    assertEquals(List.of(), spots.ofBed(bed));
    assertEquals(DrawingSettings.USUAL, spots.settings(bed));
  }

  @Test
  void whatIsKeptComesBackAndTakesThePlaceOfWhatWasThere() {
    List<Spot> first = List.of(new Spot("malus", 1, new GroundPoint(1.25, -2.5), true), new Spot("malus", 2, new GroundPoint(0, 0), false));
    Map<Layer, List<Integer>> years = new EnumMap<>(YearsToMaturity.USUAL.byLayer());
    years.put(Layer.SHRUB, List.of(12, 7, 3));
    DrawingSettings settings = new DrawingSettings(new ArrangingRules(0.75, 0, false), new YearsToMaturity(years), 42);
    assertTrue(spots.keep(bed, first, settings));
    assertEquals(first, spots.ofBed(bed));
    assertEquals(settings, spots.settings(bed));
    assertTrue(spots.keep(bed, first.subList(1, 2), DrawingSettings.USUAL));
    assertEquals(first.subList(1, 2), spots.ofBed(bed));
    assertEquals(DrawingSettings.USUAL, spots.settings(bed));
  }

  @Test
  void aBedThatIsGoneKeepsNothingAndTakesItsSpotsAlong() {
    assertFalse(spots.keep(bed + 1, List.of(), DrawingSettings.USUAL));
    spots.keep(bed, List.of(new Spot("malus", 1, new GroundPoint(0, 0), false)), DrawingSettings.USUAL);
    database.change(h -> h.execute("delete from bed where id = ?", bed));
    assertEquals(List.of(), spots.ofBed(bed));
  }
}
