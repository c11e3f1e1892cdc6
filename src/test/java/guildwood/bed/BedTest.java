package guildwood.bed;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import guildwood.bed.Bed.Standing;
import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.species.Axis;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BedTest {
  private static final Condition SITE_LIGHT = new Condition(Axis.LIGHT, new Range(6, 16), Basis.OBSERVED, "full sun");
  private static final Condition SITE_PH = new Condition(Axis.REACTION, new Range(6, 6.4), Basis.MEASURED, "6.2");
  private static final Condition BED_LIGHT = new Condition(Axis.LIGHT, new Range(3, 6), Basis.MEASURED, "part shade");
  private static final Site SITE = new Site(1, "Orchard edge", "US-WI", OptionalDouble.of(44.9),
      Optional.of(MonthDay.of(5, 5)), Optional.of(MonthDay.of(10, 5)),
      Map.of(Axis.LIGHT, SITE_LIGHT, Axis.REACTION, SITE_PH), "");

  @Test
  void whatTheBedSaysHoldsAndTheRestIsInherited() {
    Map<Axis, Condition> conditions = bed(Map.of(Axis.LIGHT, BED_LIGHT)).conditionsIn(SITE);
    assertEquals(BED_LIGHT, conditions.get(Axis.LIGHT));
    assertEquals(new Condition(Axis.REACTION, new Range(6, 6.4), Basis.INHERITED, "6.2"), conditions.get(Axis.REACTION));
    assertFalse(conditions.containsKey(Axis.MOISTURE));
  }

  @Test
  void theSeasonComesFromTheFrostDatesUnlessStated() {
    assertEquals(Range.of(153), bed(Map.of()).conditionsIn(SITE).get(Axis.SEASON).range());
    Condition stated = new Condition(Axis.SEASON, new Range(130, 140), Basis.OBSERVED, "130 to 140");
    assertEquals(stated, bed(Map.of(Axis.SEASON, stated)).conditionsIn(SITE).get(Axis.SEASON));
  }

  @Test
  void plantsAreCountedBySpecies() {
    Bed bed = bed(Map.of()).withStanding("malus-domestica", 2).withStanding("ribes-nigrum", 1);
    assertEquals(2, bed.standingOf("malus-domestica"));
    assertEquals(0, bed.standingOf("prunus-persica"));
    assertEquals(List.of(new Standing("ribes-nigrum", 1)), bed.withStanding("malus-domestica", 0).standing());
    assertEquals(5, bed.withStanding("malus-domestica", 5).standingOf("malus-domestica"));
  }

  @Test
  void aBedThatCannotBeIsABug() {
    assertThrows(IllegalArgumentException.class, () -> new Bed(1, 1, "x", 0, Map.of(), List.of(), ""));
    assertThrows(IllegalArgumentException.class, () -> new Bed(1, 1, "x", Double.NaN, Map.of(), List.of(), ""));
    assertThrows(IllegalArgumentException.class, () -> new Bed(1, 1, " ", 5, Map.of(), List.of(), ""));
    assertThrows(IllegalArgumentException.class, () -> new Standing("malus-domestica", 10_001));
  }

  private static Bed bed(Map<Axis, Condition> conditions) {
    return new Bed(1, 1, "South strip", 12, conditions, List.of(), "");
  }
}
