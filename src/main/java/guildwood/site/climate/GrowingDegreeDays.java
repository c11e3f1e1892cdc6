package guildwood.site.climate;

/**
 * Growing degree days, in degrees F times days: mean of the day's high and low less a base; a negative day counts
 * nothing. Both methods as on the station pages of the Western Regional Climate Center.
 */
public final class GrowingDegreeDays {
  /** Below this temperature maize is taken not to grow, degrees F. */
  public static final double CORN_LOWEST_F = 50;

  /** Above this temperature maize is taken to grow no faster, degrees F. */
  public static final double CORN_HIGHEST_F = 86;

  private GrowingDegreeDays() {}

  /** The plain method: the mean of high and low less the base. */
  public static double plain(DayTemperatures day, double baseF) {
    return Math.max(0, (day.maxF() + day.minF()) / 2 - baseF);
  }

  /**
   * The 86/50 method for maize: the high is cut to 86 F and the low raised to 50 F, base 50. A low above 86 F is cut
   * as well, so that no day counts more than 36 (Iowa State University, Agronomy 541).
   */
  public static double corn(DayTemperatures day) {
    return (withinCorn(day.maxF()) + withinCorn(day.minF())) / 2 - CORN_LOWEST_F;
  }

  public static double plainOfYear(StationYear year, double baseF) {
    return year.days().stream().mapToDouble(day -> plain(day, baseF)).sum();
  }

  public static double cornOfYear(StationYear year) {
    return year.days().stream().mapToDouble(GrowingDegreeDays::corn).sum();
  }

  private static double withinCorn(double fahrenheit) {
    return Math.min(CORN_HIGHEST_F, Math.max(CORN_LOWEST_F, fahrenheit));
  }
}
