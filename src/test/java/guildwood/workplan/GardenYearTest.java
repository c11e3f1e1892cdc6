package guildwood.workplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.site.Site;
import guildwood.site.climate.Hemisphere;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Seasons of work from frost dates: dates counted by the calendar, by hand. */
class GardenYearTest {
  private static GardenYear year(int springMonth, int springDay, int autumnMonth, int autumnDay) {
    return GardenYear.of(new Site(1, "Mill lane", "", OptionalDouble.empty(), Optional.of(MonthDay.of(springMonth, springDay)),
        Optional.of(MonthDay.of(autumnMonth, autumnDay)), Map.of(), ""));
  }

  @Test
  void tenderPlantsGoOutTenDaysAfterTheLastFrost() {
    GardenYear year = year(5, 10, 9, 28);
    assertEquals(new Window(LocalDate.of(2027, 5, 20), LocalDate.of(2027, 6, 29)), year.next(InSeason.TENDER, LocalDate.of(2027, 1, 1)));
    assertEquals(new Window(LocalDate.of(2027, 6, 1), LocalDate.of(2027, 6, 29)), year.next(InSeason.TENDER, LocalDate.of(2027, 6, 1)));
    assertEquals(LocalDate.of(2028, 5, 20), year.next(InSeason.TENDER, LocalDate.of(2027, 6, 30)).from());
  }

  @Test
  void winterRunsOverTheNewYear() {
    GardenYear year = year(5, 10, 9, 28);
    Window winter = year.next(InSeason.WINTER, LocalDate.of(2027, 9, 1));
    assertEquals(LocalDate.of(2027, 10, 27), winter.from());
    assertEquals(LocalDate.of(2028, 3, 28), winter.to());
    assertEquals(LocalDate.of(2027, 1, 15), year.next(InSeason.WINTER, LocalDate.of(2027, 1, 15)).from());
  }

  @Test
  void woodyPlantsHaveASpringAndAnAutumn() {
    GardenYear year = year(5, 10, 9, 28);
    assertEquals(LocalDate.of(2027, 3, 29), year.next(InSeason.DORMANT, LocalDate.of(2027, 2, 1)).from());
    assertEquals(LocalDate.of(2027, 9, 14), year.next(InSeason.DORMANT, LocalDate.of(2027, 6, 1)).from());
  }

  @Test
  void theSouthHasItsSpringInSeptember() {
    GardenYear year = year(10, 15, 4, 20);
    assertEquals(Hemisphere.SOUTH, year.hemisphere());
    assertEquals(LocalDate.of(2027, 4, 20), year.firstAutumnFrost(2026));
    assertEquals(new Window(LocalDate.of(2026, 10, 25), LocalDate.of(2026, 12, 4)), year.next(InSeason.TENDER, LocalDate.of(2026, 7, 1)));
  }

  @Test
  void withoutFrostDatesUsualOnesStandInAndItIsSaid() {
    GardenYear south = GardenYear.of(new Site(1, "Mill lane", "", OptionalDouble.of(-41), Optional.empty(), Optional.empty(), Map.of(), ""));
    assertTrue(south.assumed());
    assertEquals(Hemisphere.SOUTH, south.hemisphere());
    assertFalse(year(5, 10, 9, 28).assumed());
  }

  /** A season of forty days is shorter than what is counted off at both its ends. */
  @Test
  void everySeasonComesRoundHoweverShortTheSummer() {
    for (GardenYear year : List.of(year(6, 20, 7, 30), year(5, 10, 9, 28), year(2, 1, 12, 20), year(10, 15, 4, 20), year(12, 20, 1, 25))) {
      for (InSeason season : InSeason.values()) {
        for (int day = 0; day < 366; day += 5) {
          LocalDate from = LocalDate.of(2027, 1, 1).plusDays(day);
          Window window = year.next(season, from);
          assertFalse(window.from().isBefore(from), season + " after " + from);
          assertTrue(window.from().isBefore(from.plusDays(370)), season + " after " + from + ": " + window);
        }
      }
    }
  }
}
