package guildwood.site.survey;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Ways to write how much of the ground a species covers, with the percentage each class stands for.
 *
 * <p>Mid-points of the Braun-Blanquet, Daubenmire and Carolina Vegetation Survey classes as coded in the
 * public repository ifoxfoot/fqacalc, {@code R/accepted_entries.R}. The seven-step Braun-Blanquet scale nearly
 * doubles the error of direct estimates (Dengler & Dembicz 2023, Vegetation Classification and Survey 98379),
 * so percent come first.
 */
public enum CoverScale {
  PERCENT(Map.of()),
  BRAUN_BLANQUET(Map.of("+", 0.1, "1", 2.5, "2", 15.0, "3", 37.5, "4", 62.5, "5", 87.5)),
  DAUBENMIRE(Map.of("1", 2.5, "2", 15.0, "3", 37.5, "4", 62.5, "5", 85.0, "6", 97.5)),
  CAROLINA(Map.of("1", 0.1, "2", 0.5, "3", 1.5, "4", 3.5, "5", 7.5, "6", 17.5, "7", 37.5, "8", 62.5, "9", 85.0,
      "10", 97.5)),
  /** Ordinal values 1 to 9 by {@link #ordinalToPercent}. */
  VAN_DER_MAAREL(Map.of());

  /** Slope of the ordinal transform: van der Maarel 2007, Journal of Vegetation Science 18:767. */
  private static final double ORDINAL_SLOPE = 1.415;

  private final Map<String, Double> midPoints;

  CoverScale(Map<String, Double> midPoints) {
    this.midPoints = midPoints;
  }

  /** Stable name in files and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The classes, smallest first; empty for percent. */
  public List<String> classes() {
    if (this == VAN_DER_MAAREL) {
      return List.of("1", "2", "3", "4", "5", "6", "7", "8", "9");
    }
    return midPoints.entrySet().stream().sorted(Map.Entry.comparingByValue()).map(Map.Entry::getKey).toList();
  }

  /** Percent cover a written class stands for; empty where the scale has no such class. */
  public OptionalDouble percent(String written) {
    String text = written.strip();
    if (this == PERCENT) {
      return number(text);
    }
    if (this == VAN_DER_MAAREL) {
      return classes().contains(text) ? OptionalDouble.of(ordinalToPercent(Integer.parseInt(text))) : OptionalDouble.empty();
    }
    Double middle = midPoints.get(text);
    return middle == null ? OptionalDouble.empty() : OptionalDouble.of(middle);
  }

  /** Percent cover of an ordinal value from 1 to 9: ln C = (value - 2) / 1.415. */
  static double ordinalToPercent(int ordinal) {
    return StrictMath.exp((ordinal - 2) / ORDINAL_SLOPE);
  }

  private static OptionalDouble number(String text) {
    try {
      double value = Double.parseDouble(text.endsWith("%") ? text.substring(0, text.length() - 1).strip() : text);
      return Double.isFinite(value) && value >= 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }
}
