package guildwood.site.climate;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Frost dates over years.
 *
 * @param lastSpring days after midwinter (see {@link #day}); over the years that had such a day
 * @param firstAutumn likewise
 * @param frostFreeDays over the years that had both
 */
public record FrostDates(
    Hemisphere hemisphere, Optional<Spread> lastSpring, Optional<Spread> firstAutumn, Optional<Spread> frostFreeDays) {
  /** The year of growth that begins here has no 29 February, north or south. */
  private static final int ORDINARY_YEAR = 2001;

  public static FrostDates of(StationRecord station, double thresholdF) {
    Hemisphere hemisphere = station.hemisphere();
    List<FrostYear> years = station.wholeYears().stream().map(year -> FrostYear.of(year, thresholdF)).toList();
    return new FrostDates(
        hemisphere,
        Spread.of(years.stream().flatMap(y -> y.lastSpring().stream()).map(d -> number(d, hemisphere)).toList()),
        Spread.of(years.stream().flatMap(y -> y.firstAutumn().stream()).map(d -> number(d, hemisphere)).toList()),
        Spread.of(years.stream().map(FrostYear::frostFreeDays).filter(OptionalLong::isPresent)
            .map(OptionalLong::getAsLong).toList()));
  }

  /** The day of the year that a number of days after midwinter, as in the two spreads of dates, falls on. */
  public MonthDay day(double daysAfterMidwinter) {
    return MonthDay.from(hemisphere.firstDay(ORDINARY_YEAR).plusDays(Math.round(daysAfterMidwinter)));
  }

  /** Counted as if no year were a leap year, so that the same date is the same number; 29 February counts as the 28th. */
  private static long number(LocalDate date, Hemisphere hemisphere) {
    LocalDate first = hemisphere.firstDay(ORDINARY_YEAR);
    int year = date.getMonthValue() >= first.getMonthValue() ? ORDINARY_YEAR : ORDINARY_YEAR + 1;
    return ChronoUnit.DAYS.between(first, MonthDay.from(date).atYear(year));
  }
}
