package guildwood.site.sun;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Daylight and the sun's radiation above the atmosphere by the short formulas of FAO Irrigation and Drainage Paper 56
 * (Allen and others 1998), equations 21 to 25 and 34, as kept in woodcrafty/PyETo pyeto/fao.py. The day is that of the
 * sun's centre without air; in winter beyond 55 degrees of latitude the paper itself calls the formulas of limited use.
 */
public final class FaoDaylight {
  /** Solar constant, MJ per m2 and minute. */
  private static final double SOLAR_CONSTANT_MJ = 0.0820;
  private static final double MINUTES_PER_DAY = 24 * 60;

  private FaoDaylight() {}

  /** Inverse relative distance between Earth and sun; the day of the year counts from 1. */
  static double inverseDistance(int dayOfYear) {
    return 1 + 0.033 * Math.cos(2 * Math.PI * dayOfYear / 365);
  }

  static double declinationRad(int dayOfYear) {
    return 0.409 * Math.sin(2 * Math.PI * dayOfYear / 365 - 1.39);
  }

  /** From 0 (polar night) to pi (polar day). */
  static double sunsetHourAngleRad(double latitudeDegrees, int dayOfYear) {
    double cosine = -Math.tan(Math.toRadians(latitudeDegrees)) * Math.tan(declinationRad(dayOfYear));
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  public static double daylightHours(double latitudeDegrees, int dayOfYear) {
    return 24 / Math.PI * sunsetHourAngleRad(latitudeDegrees, dayOfYear);
  }

  /** Radiation on level ground if there were no atmosphere, MJ per m2 and day. */
  public static double aboveAtmosphereMJ(double latitudeDegrees, int dayOfYear) {
    double latitude = Math.toRadians(latitudeDegrees);
    double declination = declinationRad(dayOfYear);
    double sunset = sunsetHourAngleRad(latitudeDegrees, dayOfYear);
    double height = sunset * Math.sin(latitude) * Math.sin(declination)
        + Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset);
    return Math.max(0, MINUTES_PER_DAY / Math.PI * SOLAR_CONSTANT_MJ * inverseDistance(dayOfYear) * height);
  }

  /** January to December, each the mean over the month's days, MJ per m2 and day. */
  public static List<Double> monthlyAboveAtmosphereMJ(double latitudeDegrees, int year) {
    return IntStream.rangeClosed(1, 12).mapToObj(month -> LocalDate.of(year, month, 1))
        .map(first -> first.datesUntil(first.plusMonths(1))
            .mapToDouble(date -> aboveAtmosphereMJ(latitudeDegrees, date.getDayOfYear())).average().orElseThrow())
        .toList();
  }
}
