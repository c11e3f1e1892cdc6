package guildwood.site.climate;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Daily temperatures of one station, cut into years of growth. */
public record StationRecord(Hemisphere hemisphere, List<StationYear> years) {
  /** Near the equator January and July differ by less, and neither is winter. */
  private static final double CLEARLY_F = 9;

  public StationRecord {
    years = List.copyOf(years);
  }

  /** Takes the days in any order; all years from the first to the last day come out, those with gaps among them. */
  public static StationRecord of(List<DayTemperatures> days, Hemisphere hemisphere) {
    TreeMap<LocalDate, DayTemperatures> byDate = new TreeMap<>();
    for (DayTemperatures day : days) {
      if (byDate.put(day.date(), day) != null) {
        throw new IllegalArgumentException("two entries for " + day.date());
      }
    }
    List<StationYear> years = new ArrayList<>();
    if (!byDate.isEmpty()) {
      int last = hemisphere.yearOf(byDate.lastKey());
      for (int year = hemisphere.yearOf(byDate.firstKey()); year <= last; year++) {
        years.add(year(byDate, hemisphere, year));
      }
    }
    return new StationRecord(hemisphere, years);
  }

  private static StationYear year(TreeMap<LocalDate, DayTemperatures> byDate, Hemisphere hemisphere, int year) {
    LocalDate first = hemisphere.firstDay(year);
    LocalDate end = hemisphere.firstDay(year + 1);
    Map<LocalDate, DayTemperatures> measured = byDate.subMap(first, end);
    List<LocalDate> missing = first.datesUntil(end).filter(date -> !measured.containsKey(date)).toList();
    return new StationYear(hemisphere.label(year), hemisphere.split(year), List.copyOf(measured.values()), missing);
  }

  /** Years without a gap: the only ones from which dates and sums are taken. */
  public List<StationYear> wholeYears() {
    return years.stream().filter(StationYear::isWhole).toList();
  }

  public List<StationYear> yearsWithMissingDays() {
    return years.stream().filter(year -> !year.isWhole()).toList();
  }

  /** Whether the month of midwinter is clearly warmer than that of midsummer: then the other half of the Earth was meant. */
  public boolean isWarmerInWinter() {
    return meanF(Month.JANUARY) * sign() > meanF(Month.JULY) * sign() + CLEARLY_F;
  }

  private int sign() {
    return hemisphere == Hemisphere.NORTH ? 1 : -1;
  }

  /** Over the whole years; not a number where there is none. */
  private double meanF(Month month) {
    return wholeYears().stream().flatMap(year -> year.days().stream()).filter(day -> day.date().getMonth() == month)
        .mapToDouble(day -> (day.minF() + day.maxF()) / 2).average().orElse(Double.NaN);
  }
}
