package guildwood.importing.exchange;

import guildwood.importing.TableCell;
import guildwood.importing.TableCell.Kind;
import guildwood.species.exchange.PlainNumber;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What a number format of a spreadsheet makes of a number: a date, a percentage, or a number with a unit written
 * beside it, which the reader of the sheet sees and which must not get lost ({@code 0.0" ft"}). How many digits are
 * shown and signs of currency do not matter here: the number is taken as it was typed.
 *
 * @param before unit or word before the number
 * @param after unit or word behind the number
 */
record CellFormat(Sort sort, String before, String after) {
  static final CellFormat NUMBER = new CellFormat(Sort.NUMBER, "", "");

  private static final Pattern SHORT_DECIMAL = Pattern.compile("0|-?[1-9]\\d{0,9}|-?(0|[1-9]\\d{0,9})\\.\\d{0,4}[1-9]");
  private static final Pattern UNIT = Pattern.compile(".*[\\p{L}°'\"′″%].*", Pattern.DOTALL);

  /** What the number stands for. */
  enum Sort { NUMBER, PERCENT, DATE, TIME }

  /** A number as it stands in a file, which may write it with an exponent. */
  TableCell cell(String written, boolean from1904) {
    double number;
    try {
      number = Double.parseDouble(written.strip());
    } catch (NumberFormatException e) {
      return TableCell.text(written);
    }
    if (!Double.isFinite(number)) {
      return TableCell.text(written);
    }
    if (sort == Sort.DATE || sort == Sort.TIME) {
      return SerialDates.cell(number, sort == Sort.TIME, from1904);
    }
    return sort == Sort.PERCENT ? percent(number) : withUnit(before, plain(written, number), after);
  }

  private static String plain(String written, double number) {
    // Already the shortest; finding that out anew would be the slowest part of reading a sheet.
    return SHORT_DECIMAL.matcher(written).matches() ? written : shortest(number);
  }

  /** A number without an exponent. */
  static String shortest(double number) {
    return number == 0 ? "0" : PlainNumber.of(number);
  }

  /** A share as people see it: 0.07 is 7%. */
  static TableCell percent(double share) {
    BigDecimal hundredfold = new BigDecimal(shortest(share)).movePointRight(2);
    return TableCell.text((hundredfold.signum() == 0 ? "0" : hundredfold.stripTrailingZeros().toPlainString()) + "%");
  }

  /** A number with what stands beside it, where that is a unit or a word. */
  static TableCell withUnit(String before, String plain, String after) {
    boolean unit = isUnit(before) || isUnit(after);
    return unit ? TableCell.text((isUnit(before) ? before : "") + plain + (isUnit(after) ? after : "")) : new TableCell(plain, Kind.NUMBER);
  }

  static boolean isUnit(String text) {
    return UNIT.matcher(text).matches();
  }

  /** By the number of a format that every spreadsheet knows without its code (ECMA-376 part 1, 18.8.30). */
  static CellFormat builtIn(int id) {
    if (id == 9 || id == 10) {
      return new CellFormat(Sort.PERCENT, "", "");
    }
    if (id >= 14 && id <= 17 || id == 22 || id >= 27 && id <= 31 || id == 36 || id >= 50 && id <= 58) {
      return new CellFormat(Sort.DATE, "", "");
    }
    return id >= 18 && id <= 21 || id >= 32 && id <= 35 || id >= 45 && id <= 47 ? new CellFormat(Sort.TIME, "", "") : NUMBER;
  }

  /** By a format's code (ECMA-376 part 1, 18.8.31). */
  static CellFormat ofCode(String code) {
    return new Code(code).read();
  }

  /** Reads the first section of a code, which is that of positive numbers. */
  private static final class Code {
    private final String code;
    private final StringBuilder before = new StringBuilder();
    private final StringBuilder after = new StringBuilder();
    private final StringBuilder letters = new StringBuilder();
    private boolean digits;
    private boolean percent;
    private boolean elapsed;
    private boolean unclear;
    private int at;

    Code(String code) {
      this.code = code;
    }

    CellFormat read() {
      while (at < code.length() && code.charAt(at) != ';') {
        char sign = code.charAt(at);
        switch (sign) {
          case '"' -> literal(upTo('"'));
          case '[' -> bracket(upTo(']'));
          case '\\' -> {
            at = Math.min(at + 2, code.length());
            literal(code.substring(at - 1, at));
          }
          case '_', '*' -> at = Math.min(at + 2, code.length());
          default -> plain(sign);
        }
      }
      return decide();
    }

    private String upTo(char end) {
      int from = at + 1;
      int to = code.indexOf(end, from);
      to = to < 0 ? code.length() : to;
      at = Math.min(to + 1, code.length());
      return code.substring(from, to);
    }

    private void literal(String text) {
      (digits ? after : before).append(text);
    }

    private void bracket(String text) {
      elapsed |= text.matches("(?i)h+|m+|s+");
      // A unit that hangs on the size of the number, or signs of a currency.
      unclear |= text.matches("[<>=].*");
    }

    private void plain(char sign) {
      at++;
      if (code.regionMatches(true, at - 1, "General", 0, 7)) {
        at += 6;
        digits = true;
      } else if ("0#?".indexOf(sign) >= 0) {
        // A word between the digits, as in feet and inches, is no unit of the whole.
        unclear |= isUnit(after.toString());
        digits = true;
        after.setLength(0);
      } else if (sign == '%') {
        percent = true;
      } else if (sign == ',' && digits && !code.substring(at).matches("(?s),*[0#?].*")) {
        // Shown in thousands: the words beside it are not those of the number itself.
        unclear = true;
      } else if ((sign == 'E' || sign == 'e') && code.regionMatches(at, "+", 0, 1) | code.regionMatches(at, "-", 0, 1)) {
        at++;
      } else if (Character.isLetter(sign)) {
        letters.append(sign);
      } else if (sign == ' ') {
        literal(" ");
      } else if ("°'".indexOf(sign) >= 0) {
        literal(String.valueOf(sign));
      }
    }

    private CellFormat decide() {
      String date = letters.toString().toLowerCase(Locale.ROOT);
      if (!digits || elapsed || date.matches(".*[ydhms].*")) {
        boolean day = date.matches(".*[yd].*") || date.matches("m+");
        if (day && !elapsed) {
          return new CellFormat(Sort.DATE, "", "");
        }
        if (elapsed || date.matches(".*[hs].*")) {
          return new CellFormat(Sort.TIME, "", "");
        }
      }
      if (percent) {
        return new CellFormat(Sort.PERCENT, "", "");
      }
      return unclear ? NUMBER : new CellFormat(Sort.NUMBER, before.toString(), after.toString());
    }
  }
}
