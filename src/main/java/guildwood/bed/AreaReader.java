package guildwood.bed;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.NumberWithUnit;

/** Reads the area of a bed: a number in the visitor's unit, or with a unit of its own. */
public final class AreaReader {
  /** Square metres in a square foot: the international foot of 0.3048 m. */
  public static final double SQUARE_FOOT_M2 = 0.3048 * 0.3048;

  private AreaReader() {}

  /**
   * Reads an area into square metres.
   *
   * @param squareFeet whether a number without a unit is in square feet
   */
  public static Checked<Double> read(String typed, boolean squareFeet, String field) {
    return read(typed, squareFeet, field, Bed.SMALLEST_AREA_M2, Bed.LARGEST_AREA_M2, "area.out-of-scale");
  }

  /**
   * Reads an area that is not a bed's, with limits of its own.
   *
   * @param outOfScale code of the finding where it lies outside the limits
   */
  public static Checked<Double> read(
      String typed, boolean squareFeet, String field, double leastM2, double mostM2, String outOfScale) {
    Checked<NumberWithUnit> read = NumberWithUnit.read(typed, field, "area.unreadable");
    if (read.isRefused()) {
      return Checked.refused(read.findings());
    }
    double number = read.orThrow().number();
    double areaM2;
    switch (read.orThrow().unit()) {
      case "" -> areaM2 = squareFeet ? number * SQUARE_FOOT_M2 : number;
      case "m2", "m²", "sqm" -> areaM2 = number;
      case "sqft", "ft2", "ft²", "squarefeet" -> areaM2 = number * SQUARE_FOOT_M2;
      default -> {
        return Checked.refused(Finding.of("area.unreadable", field));
      }
    }
    if (areaM2 < leastM2 || areaM2 > mostM2) {
      return Checked.refused(Finding.of(outOfScale, field));
    }
    return Checked.of(areaM2);
  }
}
