package guildwood.site.climate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalLong;

/** Last spring and first autumn day of one year at or below a threshold; none where that half had no such day. */
public record FrostYear(Optional<LocalDate> lastSpring, Optional<LocalDate> firstAutumn) {
  public static FrostYear of(StationYear year, double thresholdF) {
    Optional<LocalDate> spring = Optional.empty();
    Optional<LocalDate> autumn = Optional.empty();
    for (DayTemperatures day : year.days()) {
      boolean isSpring = day.date().isBefore(year.split());
      if (day.minF() <= thresholdF && isSpring) {
        spring = Optional.of(day.date());
      } else if (day.minF() <= thresholdF && autumn.isEmpty()) {
        autumn = Optional.of(day.date());
      }
    }
    return new FrostYear(spring, autumn);
  }

  /** First autumn day less last spring day: 5 May to 5 October are 153 days. */
  public OptionalLong frostFreeDays() {
    return lastSpring.isPresent() && firstAutumn.isPresent()
        ? OptionalLong.of(ChronoUnit.DAYS.between(lastSpring.get(), firstAutumn.get())) : OptionalLong.empty();
  }
}
