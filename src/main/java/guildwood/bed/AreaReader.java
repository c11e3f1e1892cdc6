package guildwood.bed;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the area of a bed: a number in the visitor's unit, or with a unit of its own. */
public final class AreaReader {
  /** Square metres in a square foot: the international foot of 0.3048 m. */
  public static final double SQUARE_FOOT_M2 = 0.3048 * 0.3048;

  private static final Pattern AREA = Pattern.compile("(\\d{1,12}(?:[.,]\\d{1,6})?)\\s*([a-z][a-z0-9² .]*)?");
  private static final int LONGEST = 40;

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
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return Checked.refused(Finding.of("value.missing", field));
    }
    Matcher matcher = AREA.matcher(text);
    if (text.length() > LONGEST || !matcher.matches()) {
      return Checked.refused(Finding.of("area.unreadable", field));
    }
    // A comma before exactly three digits may part thousands or decimals; a wrong guess is a thousandfold error.
    if (matcher.group(1).matches("\\d{1,3},\\d{3}")) {
      return Checked.refused(Finding.of("area.comma", field, matcher.group(1).replace(",", ""), matcher.group(1).replace(',', '.')));
    }
    double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
    String unit = matcher.group(2) == null ? squareFeet ? "sqft" : "m2" : matcher.group(2).replaceAll("[ .]", "");
    double areaM2;
    switch (unit) {
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
