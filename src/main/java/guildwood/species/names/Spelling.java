package guildwood.species.names;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;

/** How near two spellings are. */
final class Spelling {
  private static final Pattern MARKS = Pattern.compile("\\p{M}");

  private static final Pattern SPACES = Pattern.compile("\\s+");
  private static final Pattern ENDING = Pattern.compile("(us|um|is|a|e|er|ris|re|ra|rum)$");

  private Spelling() {}

  /** Lower case, without accents, hybrid signs, ranks' dots and double spaces. */
  static String folded(String name) {
    String plain = MARKS.matcher(Normalizer.normalize(name, Normalizer.Form.NFD)).replaceAll("");
    return SPACES.matcher(plain.toLowerCase(Locale.ROOT).replace("×", " ")).replaceAll(" ").strip();
  }

  /**
   * What is left of an epithet when the differences go that the Code treats as one spelling or as easily
   * confused: gender of the ending (ICN Art. 23.5, 32.2), -i and -ii (Art. 60.8), hyphens (Art. 60.11),
   * i for j and y (Art. 60.5 and common use), ae for e.
   */
  static String stem(String epithet) {
    String text = folded(epithet).replace("-", "").replace('y', 'i').replace('j', 'i').replace("ae", "e").replace("oe", "e");
    text = text.replace("ii", "i");
    return text.length() < 4 ? text : ENDING.matcher(text).replaceFirst("");
  }

  /** The letters a to z that occur, one bit each. */
  static int letters(String folded) {
    int bits = 0;
    for (int i = 0; i < folded.length(); i++) {
      char letter = folded.charAt(i);
      bits |= letter >= 'a' && letter <= 'z' ? 1 << (letter - 'a') : 0;
    }
    return bits;
  }

  /**
   * Letters changed, missing, added or swapped with a neighbour (Damerau-Levenshtein, optimal string alignment); any
   * number above {@code most} where there are more.
   */
  static int distance(String a, String b, int most) {
    if (Math.abs(a.length() - b.length()) > most) {
      return most + 1;
    }
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      Arrays.fill(row, most + 1);
      row[0] = i;
      int least = i;
      // Cells further from the diagonal than most can only be dearer.
      for (int j = Math.max(1, i - most); j <= Math.min(b.length(), i + most); j++) {
        int change = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, Math.min(last[j], row[j - 1]) + 1);
        if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
        least = Math.min(least, row[j]);
      }
      if (least > most) {
        return most + 1;
      }
      int[] free = before;
      before = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }
}
