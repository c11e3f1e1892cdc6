package guildwood.site.sun;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * Days of the year from a first to a last one, both included. Where the last comes before the first the
 * season runs over the new year, as it does for growers south of the equator; within one calendar year it
 * is then the days up to the last together with those from the first.
 */
public record Season(MonthDay first, MonthDay last) {
  public static Season of(int firstMonth, int firstDay, int lastMonth, int lastDay) {
    return new Season(MonthDay.of(firstMonth, firstDay), MonthDay.of(lastMonth, lastDay));
  }

  public boolean contains(LocalDate date) {
    MonthDay day = MonthDay.from(date);
    boolean begun = !day.isBefore(first);
    boolean notOver = !day.isAfter(last);
    return first.isAfter(last) ? begun || notOver : begun && notOver;
  }

  /** How many days of a calendar year are in the season; 0 for 29 February alone in an ordinary year. */
  public int daysIn(int year) {
    LocalDate newYear = LocalDate.of(year, 1, 1);
    return (int) newYear.datesUntil(newYear.plusYears(1)).filter(this::contains).count();
  }
}
