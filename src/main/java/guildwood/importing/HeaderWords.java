package guildwood.importing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What words in headers mean; the list is {@code header-words.txt}. One phrase can have several meanings. */
final class HeaderWords {
  private static final Map<String, List<Meaning>> BY_PHRASE = new HashMap<>();

  static {
    read();
  }

  private HeaderWords() {}

  /** A header reduced to its letters and digits, for telling whether two are the same. */
  static String folded(String header) {
    return Words.folded(header);
  }

  /** The meanings of a folded phrase, the first listed first. */
  static List<Meaning> meanings(String phrase) {
    return BY_PHRASE.getOrDefault(phrase, List.of());
  }

  private static void read() {
    for (String line : Words.lines("header-words.txt")) {
      String key = line.substring(0, line.indexOf(" = "));
      Meaning meaning = Meaning.ofKey(key).orElseThrow(() -> new IllegalStateException("no meaning " + key));
      for (String phrase : line.substring(line.indexOf(" = ") + 3).split("\\s*;\\s*")) {
        List<Meaning> known = BY_PHRASE.computeIfAbsent(Words.folded(phrase), p -> new ArrayList<>());
        if (!known.contains(meaning)) {
          known.add(meaning);
        }
      }
    }
  }
}
