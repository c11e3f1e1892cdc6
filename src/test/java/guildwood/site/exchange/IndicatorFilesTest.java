package guildwood.site.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.site.survey.IndicatorLibrary;
import guildwood.site.survey.IndicatorLibrary.Fact;
import guildwood.site.survey.IndicatorLibrary.Plant;
import guildwood.site.survey.IndicatorLibrary.Region;
import guildwood.site.survey.IndicatorTable;
import guildwood.site.survey.SurveyAxis;
import guildwood.species.WetlandRegion;
import guildwood.species.names.NameReader;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class IndicatorFilesTest {
  private static final IndicatorLibrary LIBRARY = IndicatorFiles.read();

  @Test
  void hasManyWildPlantsOfBothRegions() {
    assertTrue(LIBRARY.plants().size() >= 150);
    assertTrue(LIBRARY.plants().stream().filter(p -> p.regions().contains(Region.EASTERN_NORTH_AMERICA)).count() >= 150);
    assertTrue(LIBRARY.plants().stream().filter(p -> p.regions().contains(Region.NORTH_WEST_EUROPE)).count() >= 80);
  }

  @Test
  void everyPlantCanBeKnownAndSpeaksOnSomeAxis() {
    Set<String> seen = new HashSet<>();
    for (Plant plant : LIBRARY.plants()) {
      assertTrue(seen.add(plant.species()), plant.species());
      assertEquals(plant.species(), NameReader.read(plant.species()).orThrow().canonical());
      assertFalse(plant.commonName().isBlank(), plant.species());
      assertTrue(plant.description().length() >= 30 && plant.description().endsWith("."), plant.species());
      assertFalse(LIBRARY.about(plant.species()).isEmpty(), plant.species());
    }
  }

  @Test
  void everyFactLiesOnItsScaleAndSaysWhatTheSourceSays() {
    Set<List<Object>> seen = new HashSet<>();
    for (Fact fact : LIBRARY.facts()) {
      String system = fact.axis() == SurveyAxis.WETNESS ? SurveyAxis.WETLAND_RATING : SurveyAxis.OWN_AXES;
      assertTrue(fact.axis().knownScale(system).orElseThrow().overlaps(fact.range()), fact.toString());
      assertFalse(fact.note().isBlank(), fact.toString());
      fact.preferred().ifPresent(p -> assertTrue(fact.range().contains(p), fact.toString()));
      assertTrue(seen.add(List.of(fact.species(), fact.axis(), fact.region())), "twice: " + fact);
    }
  }

  @Test
  void wetlandRatingsNeedARegion() {
    assertTrue(LIBRARY.tables(Optional.empty()).stream().noneMatch(t -> t.axis() == SurveyAxis.WETNESS));
    List<IndicatorTable> tables = LIBRARY.tables(Optional.of(WetlandRegion.MIDWEST));
    IndicatorTable ratings = tables.stream().filter(t -> t.axis() == SurveyAxis.WETNESS).findFirst().orElseThrow();
    // FACW in the Midwest: ERDC/EL TR-10-16, Table 3.
    assertEquals(2, ratings.value("Quercus bicolor").centre());
    assertEquals(2, ratings.value("Fraxinus pennsylvanica").centre());
  }

  @Test
  void synonymsOfTheSourcesFindThePlant() {
    IndicatorTable moisture = LIBRARY.tables(Optional.empty()).stream()
        .filter(t -> t.axis() == SurveyAxis.MOISTURE).findFirst().orElseThrow();
    assertEquals(Optional.of("Rhododendron groenlandicum"), moisture.match("Ledum groenlandicum Oeder").flatMap(m -> m.name()));
  }
}
