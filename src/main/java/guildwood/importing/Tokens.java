package guildwood.importing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** The entries of a list in one cell, whatever stands between them. */
final class Tokens {
  private static final Pattern STRONG = Pattern.compile("[;,|\\n\\r\\t•·]+");
  private static final Pattern WEAK = Pattern.compile("\\s*(?:[/&+]|\\.\\.+|\\band\\b|\\bor\\b|\\bund\\b|\\s[-–—]\\s|\\bto\\b)\\s*");
  private static final Pattern ASIDE = Pattern.compile("\\([^()]*\\)|\\[[^\\[\\]]*\\]");

  private Tokens() {}

  /**
   * The entries, folded. What is known as a whole is not split further: 'forb/herb' is one word, 'sun/shade' two.
   *
   * @param separator that of the column; empty for any
   */
  static List<String> of(String cell, String separator, Predicate<String> isKnown) {
    String bare = ASIDE.matcher(cell).replaceAll(" ");
    if (isKnown.test(Words.folded(bare))) {
      return List.of(Words.folded(bare));
    }
    List<String> tokens = new ArrayList<>();
    String[] entries = separator.isEmpty() ? STRONG.split(bare) : bare.split(Pattern.quote(separator));
    for (String entry : entries) {
      String folded = Words.folded(entry);
      if (folded.isEmpty()) {
        continue;
      }
      List<String> parts = isKnown.test(folded) || !separator.isEmpty() ? List.of(folded)
          : Arrays.stream(WEAK.split(entry.toLowerCase(java.util.Locale.ROOT))).map(Words::folded).filter(t -> !t.isEmpty()).toList();
      List<String> letters = separator.isEmpty() && folded.matches("\\p{L}{1,3}( \\p{L}{1,3})+") ? List.of(folded.split(" ")) : List.of();
      // 'FS PS': abbreviations with nothing but a space between them.
      boolean abbreviated = !letters.isEmpty() && letters.stream().allMatch(isKnown);
      tokens.addAll(parts.stream().anyMatch(isKnown) ? parts : abbreviated ? letters : List.of(folded));
    }
    return tokens.stream().distinct().toList();
  }
}
