package guildwood.site.climate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Invented station years: mild days throughout, but for those named. */
final class Stations {
  private static final double MILD_F = 75;

  private Stations() {}

  /** A year of growth in which just the named days fall to 32 F. */
  static StationYear year(Hemisphere hemisphere, int year, String... freezing) {
    List<String> cold = List.of(freezing);
    List<DayTemperatures> days = hemisphere.firstDay(year).datesUntil(hemisphere.firstDay(year + 1))
        .map(date -> new DayTemperatures(date, cold.contains(date.toString()) ? 32 : MILD_F, 80)).toList();
    return StationRecord.of(days, hemisphere).years().get(0);
  }

  /** Northern years from 2001 on, each with one coldest day. */
  static StationRecord withMinima(double... minimaF) {
    List<DayTemperatures> days = new ArrayList<>();
    for (int i = 0; i < minimaF.length; i++) {
      LocalDate coldest = LocalDate.of(2001 + i, 1, 20);
      double minimum = minimaF[i];
      LocalDate.of(2001 + i, 1, 1).datesUntil(LocalDate.of(2002 + i, 1, 1))
          .forEach(date -> days.add(new DayTemperatures(date, date.equals(coldest) ? minimum : MILD_F, 80)));
    }
    return StationRecord.of(days, Hemisphere.NORTH);
  }
}
