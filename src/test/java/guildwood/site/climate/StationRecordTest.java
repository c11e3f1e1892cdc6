package guildwood.site.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Days cut into years, and years into springs and autumns. */
class StationRecordTest {
  @Test
  void yearsWithGapsAreToldFromWholeOnes() {
    List<DayTemperatures> days = days("2001-01-01", "2003-07-01");
    days.removeIf(day -> day.date().equals(LocalDate.of(2002, 2, 14)));
    StationRecord station = StationRecord.of(days, Hemisphere.NORTH);
    assertEquals(List.of("2001"), station.wholeYears().stream().map(StationYear::label).toList());
    assertEquals(List.of("2002", "2003"), station.yearsWithMissingDays().stream().map(StationYear::label).toList());
    assertEquals(List.of(LocalDate.of(2002, 2, 14)), station.years().get(1).missing());
    assertEquals(184, station.years().get(2).missing().size());
  }

  @Test
  void aSouthernYearRunsFromJulyToJune() {
    StationRecord station = StationRecord.of(days("2001-01-01", "2003-01-01"), Hemisphere.SOUTH);
    assertEquals(List.of("2001/2002"), station.wholeYears().stream().map(StationYear::label).toList());
    assertEquals(365, station.wholeYears().get(0).days().size());
  }

  @Test
  void datesOfLeapAndOrdinaryYearsAreTheSameDay() {
    List<DayTemperatures> days = days("2003-01-01", "2005-01-01");
    days.replaceAll(day -> MonthDay.from(day.date()).equals(MonthDay.of(5, 5)) ? new DayTemperatures(day.date(), 30, 60) : day);
    FrostDates dates = FrostDates.of(StationRecord.of(days, Hemisphere.NORTH), 32);
    Spread spring = dates.lastSpring().orElseThrow();
    assertEquals(spring.p10(), spring.p90(), 0);
    assertEquals(MonthDay.of(5, 5), dates.day(spring.mean()));
    assertTrue(dates.firstAutumn().isEmpty() && dates.frostFreeDays().isEmpty(), "no autumn frost in either year");
  }

  @Test
  void twoEntriesForADayAreABug() {
    List<DayTemperatures> days = days("2001-01-01", "2001-01-03");
    days.add(days.get(0));
    assertThrows(IllegalArgumentException.class, () -> StationRecord.of(days, Hemisphere.NORTH));
    assertThrows(IllegalArgumentException.class, () -> new DayTemperatures(LocalDate.of(2001, 1, 1), 50, 40));
  }

  private static List<DayTemperatures> days(String first, String end) {
    return new ArrayList<>(LocalDate.parse(first).datesUntil(LocalDate.parse(end))
        .map(date -> new DayTemperatures(date, 50, 70)).toList());
  }
}
