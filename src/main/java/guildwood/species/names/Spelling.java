package guildwood.species.names;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** How near two spellings are. */
final class Spelling {
  private static final Pattern MARKS = Pattern.compile("\\p{M}");

  private Spelling() {}

  /** Lower case, without accents, hybrid signs, ranks' dots and double spaces. */
  static String folded(String name) {
    String plain = MARKS.matcher(Normalizer.normalize(name, Normalizer.Form.NFD)).replaceAll("");
    return plain.toLowerCase(Locale.ROOT).replace("×", " ").replaceAll("\\s+", " ").strip();
  }

  /**
   * What is left of an epithet when the differences go that the Code treats as one spelling or as easily
   * confused: gender of the ending (ICN Art. 23.5, 32.2), -i and -ii (Art. 60.8), hyphens (Art. 60.11),
   * i for j and y (Art. 60.5 and common use), ae for e.
   */
  static String stem(String epithet) {
    String text = folded(epithet).replace("-", "").replace('y', 'i').replace('j', 'i').replace("ae", "e").replace("oe", "e");
    text = text.replace("ii", "i");
    return text.length() < 4 ? text : text.replaceFirst("(us|um|is|a|e|er|ris|re|ra|rum)$", "");
  }

  /** Damerau-Levenshtein distance: letters changed, missing, added or swapped; stops counting above {@code most}. */
  static int distance(String a, String b, int most) {
    if (Math.abs(a.length() - b.length()) > most) {
      return most + 1;
    }
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      cost[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      cost[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int best = Math.min(cost[i - 1][j - 1] + (same ? 0 : 1), Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        cost[i][j] = swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
      }
    }
    return cost[a.length()][b.length()];
  }
}
