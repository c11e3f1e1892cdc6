package guildwood.importing;

import java.time.Month;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Months as tables write them, put as the value reader takes them. A season is not a month. */
final class MonthWords {
  private static final Pattern WORD = Pattern.compile("\\p{L}+|\\d+|\\.\\.+|[-–—−/;,|&+]|\\S");
  /** Names of months; without them numbers are months, with them days. */
  private static final Pattern LETTERS = Pattern.compile("\\p{L}{3}");

  /**
   * Seasons as months, where the owner asks for it: our reading for northern mid-latitudes, as the shipped library
   * reads the bloom classes of the USDA, NRCS, PLANTS Database. No publication gives it.
   */
  private static final Map<String, String> SEASONS = new LinkedHashMap<>();

  /** Months as European tables write them: IV-VI. One numeral alone could be a mark, so it is none. */
  private static final Pattern ROMAN = Pattern.compile("(?:X?I{1,3}|IV|VI{0,3}|IX|X)");
  private static final Pattern ROMANS = Pattern.compile(ROMAN + "(?:\\s*[-–—/,;+]\\s*" + ROMAN + ")+");
  private static final List<String> NUMERALS = List.of("I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX", "X", "XI", "XII");

  /** A spreadsheet has made 4-May of 4-5, and May-08 of 5-8: which it was cannot be told. */
  private static final Pattern DATE = Pattern.compile("(?i)\\d{1,2}[-.]\\p{L}{3}\\.?|\\p{L}{3}-\\d{2}|\\d{1,2}[-.]\\p{L}{3}-\\d{2,4}");

  /** German and French names that do not begin as the English ones do, folded. */
  private static final List<List<String>> OTHERS = List.of(List.of("januar", "janvier", "janv", "janner"), List.of("februar", "fevrier", "fevr", "fev"),
      List.of("marz", "mars", "maerz"), List.of("avril", "avr"), List.of("mai"), List.of("juni", "juin"), List.of("juli", "juillet", "juil"),
      List.of("aout"), List.of("septembre"), List.of("oktober", "okt", "octobre"), List.of("novembre"), List.of("dezember", "dez", "decembre"));

  static {
    SEASONS.put("early spring", "3; 4");
    SEASONS.put("mid spring", "4; 5");
    SEASONS.put("late spring", "5; 6");
    SEASONS.put("spring", "4; 5");
    SEASONS.put("early summer", "6; 7");
    SEASONS.put("mid summer", "7; 8");
    SEASONS.put("late summer", "8; 9");
    SEASONS.put("summer", "6; 7; 8");
    SEASONS.put("fall", "9; 10");
    SEASONS.put("autumn", "9; 10");
  }

  private MonthWords() {}

  static Optional<Month> month(String folded) {
    if (folded.length() < 3) {
      return Optional.empty();
    }
    for (Month month : Month.values()) {
      String name = month.name().toLowerCase(Locale.ROOT);
      if (name.startsWith(folded) || folded.equals("sept") && month == Month.SEPTEMBER) {
        return Optional.of(month);
      }
    }
    return Arrays.stream(Month.values()).filter(month -> OTHERS.get(month.ordinal()).contains(folded)).findFirst();
  }

  static boolean isDate(String cell) {
    return DATE.matcher(cell.strip()).matches() && Arrays.stream(cell.split("[-.\\d\\s]+")).anyMatch(word -> month(Words.folded(word)).isPresent());
  }

  static boolean isSeason(String folded) {
    return folded.matches(".*\\b(spring|summer|fall|autumn|winter)\\b.*");
  }

  /** The months of a season by our reading. */
  static Optional<String> ofSeason(String text) {
    String folded = Words.folded(text);
    String months = SEASONS.get(folded.replace("midsummer", "mid summer").replace("midspring", "mid spring"));
    return Optional.ofNullable(months);
  }

  /**
   * A cell such as {@code May-June}, {@code Apr/May}, {@code 5–7}, {@code early May to mid June}, with words before a
   * month for its part left out; empty where it holds anything else.
   */
  static Optional<String> plain(String cell) {
    List<String> parts = new ArrayList<>();
    StringBuilder part = new StringBuilder();
    boolean ranged = false;
    boolean open = false;
    String text = ROMANS.matcher(cell.strip()).matches() ? withoutNumerals(cell) : cell;
    boolean named = LETTERS.matcher(text).find();
    Matcher words = WORD.matcher(text.toLowerCase(Locale.ROOT));
    while (words.find()) {
      String word = words.group();
      Optional<Month> month = month(Words.folded(word));
      boolean number = !named && word.matches("0?[1-9]|1[0-2]");
      if (month.isPresent() || number) {
        if (ranged && part.length() > 0) {
          part.append(" to ");
        } else if (part.length() > 0) {
          parts.add(part.toString());
          part.setLength(0);
        }
        part.append(month.map(m -> m.getValue()).orElseGet(() -> Integer.parseInt(word)));
        ranged = false;
      } else if (word.matches("[-–—−]|\\.\\.+|to|through|thru|till|until|bis")) {
        // 'Until June' does not say from when on.
        ranged = true;
        open |= part.length() == 0;
      } else if (!(named && word.matches("\\d{1,2}|st|nd|rd|th|[.()]")) && !word.matches("[/;,|&+]|and|or|early|mid|late|middle|end|of|in|beginning|from|months?|usually|about|circa")) {
        return Optional.empty();
      }
    }
    parts.add(part.toString());
    if (part.length() == 0 || ranged || open || cell.matches("(?i).*\\bfrom\\b.*") && parts.stream().noneMatch(p -> p.contains("to"))) {
      return Optional.empty();
    }
    return Optional.of(String.join("; ", parts));
  }

  private static String withoutNumerals(String cell) {
    return Pattern.compile("[IVX]+").matcher(cell).replaceAll(found -> String.valueOf(NUMERALS.indexOf(found.group()) + 1));
  }
}
