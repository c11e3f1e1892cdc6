package guildwood.choosing;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Brings names down to what people type: no accents, no capitals, no hybrid sign, no punctuation. */
final class Folding {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern APOSTROPHES = Pattern.compile("['’‘ʼ`´]");
  private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Pattern HYPHENATED = Pattern.compile("(?<=\\p{L})[-‐‑](?=\\p{L})");

  private Folding() {}

  /** Lower case without accents; letters that do not decompose are written as they are mostly typed. */
  static String fold(String text) {
    String lower = text.toLowerCase(Locale.ROOT)
        .replace("ß", "ss").replace("æ", "ae").replace("œ", "oe").replace("ø", "o").replace("ł", "l").replace("đ", "d");
    return MARKS.matcher(Normalizer.normalize(lower, Normalizer.Form.NFKD)).replaceAll("");
  }

  /** The words of a name; a hyphenated one also as it is written without its hyphen. */
  static Set<String> wordsOfName(String name) {
    String folded = APOSTROPHES.matcher(fold(name)).replaceAll("");
    Set<String> words = new LinkedHashSet<>(words(folded));
    words.addAll(words(HYPHENATED.matcher(folded).replaceAll("")));
    return words;
  }

  /** The words somebody searches for; all must be found. */
  static List<String> wordsAsked(String text) {
    return words(APOSTROPHES.matcher(fold(text)).replaceAll(""));
  }

  /** A lone x between words is the hybrid sign as people type it; alone it may be the start of a word. */
  private static List<String> words(String folded) {
    List<String> words = new ArrayList<>();
    for (String word : NO_WORD.split(folded.replace('×', ' '))) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    if (words.size() > 1) {
      words.removeIf("x"::equals);
    }
    return words;
  }
}
