package guildwood.site.climate;

import java.time.LocalDate;

/** The lowest and the highest temperature of one day, degrees F. */
public record DayTemperatures(LocalDate date, double minF, double maxF) {
  public DayTemperatures {
    if (!Double.isFinite(minF) || !Double.isFinite(maxF) || minF > maxF) {
      throw new IllegalArgumentException("no temperatures of a day: " + minF + " to " + maxF + " F on " + date);
    }
  }
}
