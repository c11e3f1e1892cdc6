package guildwood.site.water;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Hydrologic soil groups, from the soil that takes rain in fastest to the slowest.
 *
 * <p>Rates at which water moves within the wet soil: TR-55, Urban Hydrology for Small Watersheds (1986), appendix A: A more
 * than 0.30 inches an hour, B 0.15 to 0.30, C 0.05 to 0.15, D less.
 */
public enum SoilGroup {
  A,
  B,
  C,
  D;

  private static final double MM_IN_INCH = 25.4;
  private static final double[] BORDERS_MM = {0.30 * MM_IN_INCH, 0.15 * MM_IN_INCH, 0.05 * MM_IN_INCH};

  /** Stable name in addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<SoilGroup> ofKey(String key) {
    return Arrays.stream(values()).filter(group -> group.key().equals(key)).findFirst();
  }

  /** The least such a soil takes in when wet, millimetres an hour. */
  public double slowestMmPerHour() {
    return this == D ? 0 : BORDERS_MM[ordinal()];
  }

  /** The most, millimetres an hour; the fastest group has no upper border. */
  public OptionalDouble fastestMmPerHour() {
    return this == A ? OptionalDouble.empty() : OptionalDouble.of(BORDERS_MM[ordinal() - 1]);
  }
}
