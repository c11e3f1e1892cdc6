package guildwood.importing;

import guildwood.species.Trait;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Words that people and tables write, and the words of the library they are taken for: one table, in
 * {@code class-words.txt}, with the basis of every reading.
 */
public final class ClassTable {
  private static final List<Line> LINES = new ArrayList<>();
  private static final Map<String, Map<String, String>> BY_TOPIC = new HashMap<>();

  static {
    read();
  }

  private ClassTable() {}

  /**
   * One line of the table.
   *
   * @param topic key of a trait; {@code items:} before it where the words name its items
   * @param basis key of where the reading comes from: {@code common-practice}, {@code our-reading}, {@code same}, {@code usda}
   * @param value as the library writes it
   * @param words that are read so
   */
  public record Line(String topic, String basis, String value, List<String> words) {
    public Line {
      words = List.copyOf(words);
    }
  }

  /** All of it, to be shown. */
  public static List<Line> lines() {
    return List.copyOf(LINES);
  }

  /** The value a word stands for. */
  static Optional<String> value(Trait trait, String folded) {
    return lookUp(topicOf(trait), folded);
  }

  /** The item a word names. */
  static Optional<String> item(Trait trait, String folded) {
    return lookUp("items:" + trait.key(), folded);
  }

  private static String topicOf(Trait trait) {
    return switch (trait) {
      case LIGHT_PREFERRED -> Trait.LIGHT.key();
      case MOISTURE_PREFERRED -> Trait.MOISTURE.key();
      default -> trait.key();
    };
  }

  private static Optional<String> lookUp(String topic, String folded) {
    return Optional.ofNullable(BY_TOPIC.getOrDefault(topic, Map.of()).get(folded));
  }

  private static void read() {
    String topic = "";
    String basis = "";
    for (String line : Words.lines("class-words.txt")) {
      if (line.startsWith("[")) {
        topic = line.substring(1, line.indexOf(']'));
        basis = line.substring(line.indexOf(']') + 1).strip();
      } else {
        String value = line.substring(0, line.indexOf('=')).strip();
        List<String> words = List.of(line.substring(line.indexOf('=') + 1).strip().split("\\s*;\\s*"));
        LINES.add(new Line(topic, basis, value, words));
        Map<String, String> known = BY_TOPIC.computeIfAbsent(topic, t -> new HashMap<>());
        words.forEach(word -> known.putIfAbsent(Words.folded(word), value));
        known.putIfAbsent(Words.folded(value), value);
      }
    }
  }
}
