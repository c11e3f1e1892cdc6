package guildwood.site;

import guildwood.kernel.Range;
import guildwood.species.Axis;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;

/**
 * The named classes of soil reaction: USDA Natural Resources Conservation Service 1998, <em>Soil Quality
 * Indicators: pH</em>, as reprinted by Oregon State University.
 *
 * <p>The table is printed to one decimal, so a pH is rounded to 0.1 first, halves upward as written in
 * decimals: 5.05 is 5.1 and strongly acid. Below 3.5 that table has no class.
 */
public enum PhClass {
  EXTREMELY_ACID(35, 44),
  VERY_STRONGLY_ACID(45, 50),
  STRONGLY_ACID(51, 55),
  MODERATELY_ACID(56, 60),
  SLIGHTLY_ACID(61, 65),
  NEUTRAL(66, 73),
  SLIGHTLY_ALKALINE(74, 78),
  MODERATELY_ALKALINE(79, 84),
  STRONGLY_ALKALINE(85, 90),
  /** Printed as 'above 9.0', which is 9.1 and more after rounding; it ends where the app's scale does. */
  VERY_STRONGLY_ALKALINE(91, (int) Math.round(Axis.REACTION.highest() * 10));

  /** Name of the scheme, shown wherever one of its classes is shown. */
  public static final String SCHEME = "NRCS 1998";

  private final int lowestTenths;
  private final int highestTenths;

  PhClass(int lowestTenths, int highestTenths) {
    this.lowestTenths = lowestTenths;
    this.highestTenths = highestTenths;
  }

  /** The class of a pH; empty below the table. */
  public static Optional<PhClass> of(double ph) {
    // valueOf takes the shortest decimal that names the number: 5.05 stays 5.05 and is not 5.04999...
    int tenths = BigDecimal.valueOf(ph).setScale(1, RoundingMode.HALF_UP).unscaledValue().intValueExact();
    for (PhClass named : values()) {
      if (tenths >= named.lowestTenths && tenths <= named.highestTenths) {
        return Optional.of(named);
      }
    }
    return Optional.empty();
  }

  /** The pH values of the class as printed. */
  public Range range() {
    return new Range(lowestTenths / 10.0, highestTenths / 10.0);
  }

  /** The name in the table's words, for example {@code slightly acid}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
