package guildwood.site.climate;

import java.time.LocalDate;
import java.util.List;

/**
 * A year of growth at a station, from midwinter to midwinter.
 *
 * @param split first day of its autumn side
 * @param days those measured, in order
 * @param missing those not measured, in order
 */
public record StationYear(String label, LocalDate split, List<DayTemperatures> days, List<LocalDate> missing) {
  public StationYear {
    days = List.copyOf(days);
    missing = List.copyOf(missing);
  }

  public boolean isWhole() {
    return missing.isEmpty();
  }
}
