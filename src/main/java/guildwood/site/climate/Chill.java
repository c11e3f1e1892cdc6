package guildwood.site.climate;

/**
 * Winter chill from hourly temperatures.
 *
 * <p>Chill units are those of the Utah model (Richardson, Seeley and Walker 1974, HortScience 9:331): an hour adds or
 * takes away by the band its temperature lies in. The cut points in degrees C are those in the documentation of the
 * R package ChillModels; those in degrees F are known second-hand. A temperature on a cut point belongs to the band
 * below it.
 */
public final class Chill {
  private static final double[] CUTS_F = {34, 36, 48, 54, 60, 65};
  private static final double[] CUTS_C = {1.4, 2.4, 9.1, 12.4, 15.9, 18.0};
  private static final double[] UNITS = {0, 0.5, 1, 0.5, 0, -0.5, -1};

  private static final double CHILL_HOUR_FROM_F = 32;
  private static final double CHILL_HOUR_TO_F = 45;

  private Chill() {}

  /** Utah chill units of one hour at so many degrees F, by the cut points in degrees F. */
  public static double utahUnitsPerHourF(double fahrenheit) {
    return units(fahrenheit, CUTS_F);
  }

  /** The same for degrees C, by the cut points in degrees C, which are not those in F converted but rounded anew. */
  public static double utahUnitsPerHourC(double celsius) {
    return units(celsius, CUTS_C);
  }

  /** Whether an hour is a simple chill hour, from 32 to 45 degrees F: common practice, no source. */
  public static boolean isChillHour(double fahrenheit) {
    return fahrenheit >= CHILL_HOUR_FROM_F && fahrenheit <= CHILL_HOUR_TO_F;
  }

  /** Utah chill units of a series of hourly temperatures, degrees F. */
  public static double utahUnits(double[] hourlyF) {
    double sum = 0;
    for (double each : hourlyF) {
      sum += utahUnitsPerHourF(each);
    }
    return sum;
  }

  /** Simple chill hours in a series of hourly temperatures, degrees F. */
  public static int chillHours(double[] hourlyF) {
    int hours = 0;
    for (double each : hourlyF) {
      hours += isChillHour(each) ? 1 : 0;
    }
    return hours;
  }

  private static double units(double degrees, double[] cuts) {
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException("no temperature: " + degrees);
    }
    int band = 0;
    while (band < cuts.length && degrees > cuts[band]) {
      band++;
    }
    return UNITS[band];
  }
}
