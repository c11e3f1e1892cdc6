package guildwood.importing;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number or a range of numbers as people write it in a cell: {@code 4-8}, {@code 6,0–7,5}, {@code 3'-6'},
 * {@code 5 ft 6 in}, {@code up to 3 m}, {@code 10+}, {@code ~2}.
 *
 * @param bound whether the cell gives the value or only one end of it
 * @param low the first number; the only one where there is no second
 * @param lowUnit as {@link guildwood.species.TraitReader} reads it; empty where none is written
 */
record SpanText(Bound bound, BigDecimal low, String lowUnit, Optional<BigDecimal> high, String highUnit) {

  /** What the number says. */
  enum Bound {
    GIVEN,
    UP_TO,
    FROM
  }

  private static final String NUMBER = "[-+]?\\d{1,9}(?:[.,]\\d{1,25})?|[-+]?[.,]\\d{1,9}";
  private static final String UNIT = "millimet(?:er|re)s?|mm|centimet(?:er|re)s?|cms?|met(?:er|re)s?|mtrs?|mts?|m|feet|foot|ft|'|inches|inch|ins|in|\""
      + "|(?:°|º|deg(?:rees?)?)?\\s*(?:fahrenheit|celsius|f|c)|°|hours?|hrs?|h|days?|d|ph";
  private static final Pattern THOUSANDS_OR_DECIMALS = Pattern.compile("(?<![\\d.,])[1-9]\\d{0,2},\\d{3}(?![\\d.,])");
  private static final Pattern QUANTITY = Pattern.compile("(" + NUMBER + ")(?:\\s+(\\d{1,2})/(\\d{1,2}))?\\s*(" + UNIT + ")?(?![a-z])(?:\\.(?!\\.))?");
  private static final Pattern FRACTION = Pattern.compile("(\\d{1,2})/(\\d{1,2})\\s*(" + UNIT + ")?(?![a-z])(?:\\.(?!\\.))?");
  private static final Pattern FEET_INCHES = Pattern.compile(
      "(\\d{1,3})\\s*(?:feet|foot|ft\\.?|')\\s*(\\d{1,2}(?:[.,]\\d{1,3})?)\\s*(?:inches|inch|ins?\\.?|\")?(?![a-z])");
  private static final Pattern TO = Pattern.compile("\\s*(?:\\.\\.\\.?|-|\\bto\\b|\\bthrough\\b|\\bbis\\b|/|\\band\\b|\\bup to\\b)\\s*");
  private static final Pattern ABOUT = Pattern.compile("^(?:~|≈|±|c\\.|ca\\.?|circa|approx\\.?|approximately|about|around|ph\\b|roughly|usually|mostly)\\s*");
  private static final Pattern UP_TO = Pattern.compile("^(?:up to|upto|max\\.?|maximum|at most|under|less than|below|<=?|≤|to|bis|no more than)\\s*");
  private static final Pattern FROM = Pattern.compile("^(?:at least|min\\.?|minimum|over|more than|above|from|>=?|≥|down to|hardy to|ab|mind\\.?)\\s*");
  private static final Pattern PLUS = Pattern.compile("\\s*(?:\\+|or more|and more|plus|and above|and up|or over)$");
  private static final Pattern PLUS_INSIDE = Pattern.compile("^(\\d[\\d.,]*)\\s*\\+\\s*(?=[a-z'\"])");
  private static final Pattern LESS = Pattern.compile("\\s*(?:or less|or under|and below|and under|max\\.?|maximum)$");
  private static final Pattern TAIL = Pattern.compile("\\s*(?:tall|high|wide|across|spread|of sun|of direct sun|direct sun|sun|a day|per day|/day|/d|daily|frost free|ph|approx\\.?)$");
  private static final BigDecimal TWELVE = BigDecimal.valueOf(12);

  /** Reads a cell; empty where it holds anything but a number or a range with units. */
  static Optional<SpanText> read(String cell) {
    String text = tidy(cell);
    for (int i = 0; i < 2; i++) {
      text = ABOUT.matcher(TAIL.matcher(text).replaceFirst("")).replaceFirst("");
    }
    Bound bound = Bound.GIVEN;
    Matcher inside = PLUS_INSIDE.matcher(text);
    if (inside.find()) {
      bound = Bound.FROM;
      text = inside.replaceFirst("$1 ");
    } else if (UP_TO.matcher(text).find() || LESS.matcher(text).find()) {
      bound = Bound.UP_TO;
      text = LESS.matcher(UP_TO.matcher(text).replaceFirst("")).replaceFirst("");
    } else if (FROM.matcher(text).find() || PLUS.matcher(text).find()) {
      bound = Bound.FROM;
      text = PLUS.matcher(FROM.matcher(text).replaceFirst("")).replaceFirst("");
    }
    return quantities(TAIL.matcher(text).replaceFirst("").strip(), bound);
  }

  private static Optional<SpanText> quantities(String text, Bound bound) {
    Reader first = Reader.at(text, 0);
    if (first == null) {
      return Optional.empty();
    }
    if (first.end == text.length()) {
      return Optional.of(new SpanText(bound, first.number, first.unit, Optional.empty(), ""));
    }
    Matcher to = TO.matcher(text).region(first.end, text.length());
    if (!to.lookingAt() || bound == Bound.UP_TO && !text.substring(to.start(), to.end()).contains("-")) {
      return Optional.empty();
    }
    Reader second = Reader.at(text, to.end());
    return second == null || second.end != text.length()
        ? Optional.empty()
        : Optional.of(new SpanText(bound, first.number, first.unit.isEmpty() ? second.unit : first.unit, Optional.of(second.number), second.unit));
  }

  private static String tidy(String cell) {
    String text = cell.toLowerCase(Locale.ROOT).strip().replaceAll("\\s+", " ");
    text = text.replaceAll("[‐‑‒–—−]", "-").replaceAll("[’‘′´`]", "'").replaceAll("[”“″]|''", "\"");
    return text.replace("½", " 1/2").replace("¼", " 1/4").replace("¾", " 3/4").replace("⅓", " 1/3").strip();
  }

  /** Whether a comma parts thousands or decimals cannot be told: 1,200. */
  static boolean isAmbiguous(String cell) {
    return THOUSANDS_OR_DECIMALS.matcher(cell).find();
  }

  boolean hasUnit() {
    return !lowUnit.isEmpty() || !highUnit.isEmpty();
  }

  double middle() {
    return high.map(h -> h.add(low).doubleValue() / 2).orElse(low.doubleValue());
  }

  /** The cell as the value reader takes it, bare numbers in the given unit. */
  String entered(String unitIfNone) {
    String first = low.toPlainString() + spaced(lowUnit.isEmpty() ? highUnit.isEmpty() ? unitIfNone : highUnit : lowUnit);
    return high.map(h -> first + " to " + h.toPlainString() + spaced(highUnit.isEmpty() ? lowUnit.isEmpty() ? unitIfNone : lowUnit : highUnit))
        .orElse(first);
  }

  private static String spaced(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }

  /** One number with its unit, at a place of the text. */
  private record Reader(BigDecimal number, String unit, int end) {
    static Reader at(String text, int start) {
      Matcher both = FEET_INCHES.matcher(text).region(start, text.length());
      if (both.lookingAt()) {
        BigDecimal inches = new BigDecimal(both.group(1)).multiply(TWELVE).add(decimal(both.group(2)));
        return new Reader(inches, "in", both.end());
      }
      Matcher fraction = FRACTION.matcher(text).region(start, text.length());
      if (fraction.lookingAt() && isFraction(fraction.group(1), fraction.group(2))) {
        return new Reader(part(fraction.group(1), fraction.group(2)), unit(fraction.group(3)), fraction.end());
      }
      Matcher one = QUANTITY.matcher(text).region(start, text.length());
      if (!one.lookingAt()) {
        return null;
      }
      BigDecimal number = decimal(one.group(1));
      if (one.group(2) != null) {
        if (!isFraction(one.group(2), one.group(3))) {
          return null;
        }
        number = number.add(part(one.group(2), one.group(3)));
      }
      return new Reader(number, unit(one.group(4)), one.end());
    }

    /** 1/2 is a half; 4/5 is a range. */
    private static boolean isFraction(String over, String under) {
      return under.matches("2|4|8|16") && Integer.parseInt(over) < Integer.parseInt(under);
    }

    private static BigDecimal part(String over, String under) {
      return new BigDecimal(over).divide(new BigDecimal(under), java.math.MathContext.DECIMAL64);
    }

    private static BigDecimal decimal(String text) {
      return new BigDecimal(text.replace(',', '.').replace("+", ""));
    }

    private static String unit(String written) {
      if (written == null) {
        return "";
      }
      String bare = written.replaceAll("[°º\\s]|deg(rees?)?", "");
      return switch (bare) {
        case "", "ph" -> "";
        case "'" -> "ft";
        case "\"", "ins" -> "in";
        case "mts", "mt", "mtr", "mtrs" -> "m";
        default -> bare.startsWith("mm") || bare.startsWith("milli") ? "mm"
            : bare.startsWith("cm") || bare.startsWith("centi") ? "cm"
            : bare.startsWith("met") || bare.equals("m") ? "m"
            : bare.startsWith("f") && !bare.startsWith("fah") && bare.length() > 1 ? "ft"
            : bare.startsWith("in") ? "in"
            : bare.startsWith("f") ? "f" : bare.startsWith("c") ? "c" : bare.startsWith("h") ? "h" : "days";
      };
    }
  }
}
