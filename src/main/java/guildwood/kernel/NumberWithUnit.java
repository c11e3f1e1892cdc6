package guildwood.kernel;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as people type it, with whatever unit stands behind it.
 *
 * @param number never below 0
 * @param unit in lower case without spaces and dots; empty where none was typed
 */
public record NumberWithUnit(double number, String unit) {
  private static final Pattern WRITTEN = Pattern.compile("(\\d{1,12}(?:[.,]\\d{1,6})?)\\s*([a-z][a-z0-9²³ .]*)?");
  private static final int LONGEST = 40;

  /**
   * Reads a number that must be there.
   *
   * @param unreadable code of the finding where it is none
   */
  public static Checked<NumberWithUnit> read(String typed, String field, String unreadable) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    if (text.isEmpty()) {
      return Checked.refused(Finding.of("value.missing", field));
    }
    Matcher matcher = WRITTEN.matcher(text);
    if (text.length() > LONGEST || !matcher.matches()) {
      return Checked.refused(Finding.of(unreadable, field));
    }
    // A comma before exactly three digits may part thousands or decimals; a wrong guess is a thousandfold error.
    if (matcher.group(1).matches("\\d{1,3},\\d{3}")) {
      return Checked.refused(Finding.of("area.comma", field, matcher.group(1).replace(",", ""), matcher.group(1).replace(',', '.')));
    }
    double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
    return Checked.of(new NumberWithUnit(number, matcher.group(2) == null ? "" : matcher.group(2).replaceAll("[ .]", "")));
  }
}
