package guildwood.web;

import guildwood.kernel.Range;
import guildwood.kernel.Temperature;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** The visitor's units, and numbers written in them. */
public enum Units {
  METRIC,
  US;

  static final String COOKIE = "guildwood_units";
  private static final double FEET_IN_METRE = 1 / 0.3048;

  /** The units the visitor chose; metric where none were. */
  public static Units of(Context ctx) {
    return "us".equals(ctx.cookie(COOKIE)) ? US : METRIC;
  }

  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** A length such as {@code 1.2 m} or {@code 4 ft}; small ones in centimetres or inches. */
  public String length(double metres) {
    return length(Range.of(metres));
  }

  /** A range of lengths, both ends in the same unit. */
  public String length(Range metres) {
    // Rounded before the unit is chosen, so that nothing reads 100 cm or 36 in.
    boolean small = this == METRIC ? Math.round(metres.max() * 100) < 100 : Math.round(metres.max() * FEET_IN_METRE * 12) < 36;
    String unit = this == METRIC ? (small ? " cm" : " m") : small ? " in" : " ft";
    double scale = this == METRIC ? (small ? 100 : 1) : small ? FEET_IN_METRE * 12 : FEET_IN_METRE;
    int decimals = small || (this == US && metres.max() * FEET_IN_METRE >= 10) ? 0 : 1;
    String low = number(metres.min() * scale, decimals);
    String high = number(metres.max() * scale, decimals);
    return low.equals(high) ? low + unit : low + " – " + high + unit;
  }

  public String area(double squareMetres) {
    return this == METRIC
        ? number(squareMetres, squareMetres < 10 ? 1 : 0) + " m²"
        : number(squareMetres * FEET_IN_METRE * FEET_IN_METRE, 0) + " sq ft";
  }

  /** A volume of loose material, always both ways: {@code 4.05 m³ (5.3 yd³)}, the visitor's own first. */
  public String volume(double cubicMetres) {
    double cubicYards = cubicMetres / Math.pow(3 / FEET_IN_METRE, 3);
    String metric = number(cubicMetres, cubicMetres < 10 ? 2 : 1) + " m³";
    String us = number(cubicYards, cubicYards < 1 ? 2 : 1) + " yd³";
    return this == METRIC ? metric + " (" + us + ")" : us + " (" + metric + ")";
  }

  public String temperature(double celsius) {
    return this == METRIC ? number(celsius, 1) + " °C" : number(Temperature.toFahrenheit(celsius), 0) + " °F";
  }

  /** A number with at most the given decimals and no trailing zeros. */
  public static String number(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return (rounded.signum() < 0 ? "−" : "") + rounded.abs().toPlainString();
  }
}
