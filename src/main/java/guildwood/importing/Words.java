package guildwood.importing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Text reduced to what tells one word from another, and the word lists that come with the program. */
final class Words {
  private static final Pattern MARKS = Pattern.compile("\\p{M}");
  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");

  private Words() {}

  /** Lower case, without accents and signs, single spaces. */
  static String folded(String text) {
    String plain = text;
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > 127) {
        plain = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("").replace("ß", "ss");
        break;
      }
    }
    return BETWEEN.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
  }

  /** Lines of a word list beside this class, without blank ones and remarks. */
  static List<String> lines(String file) {
    try (InputStream in = Words.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("no word list " + file);
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      return reader.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the word list " + file + " cannot be read", e);
    }
  }
}
