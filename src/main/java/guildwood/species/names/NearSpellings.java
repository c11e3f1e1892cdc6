package guildwood.species.names;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Known spellings to look for near ones in: of long words three letters may be wrong, of short ones one. */
public final class NearSpellings {
  private static final int SHORTEST_BEGINNING = 4;

  private final Map<String, Spelt> spellings = new LinkedHashMap<>();

  private record Spelt(String name, int letters) {}

  private record Near(String name, int distance) {}

  /**
   * Adds a spelling, unless it is there already.
   *
   * @param spelling in lower case, without accents
   * @param name what it stands for
   */
  public void add(String spelling, String name) {
    spellings.putIfAbsent(spelling, new Spelt(name, Spelling.letters(spelling)));
  }

  /** What the nearest spellings stand for, nearest first. */
  public List<String> near(String written, int mostNames) {
    return near(written, false, mostNames);
  }

  /** The same, where only the beginning need be written. */
  public List<String> nearBeginnings(String written, int mostNames) {
    return near(written, written.length() >= SHORTEST_BEGINNING, mostNames);
  }

  private List<String> near(String written, boolean beginning, int mostNames) {
    int most = written.length() < 8 ? 1 : written.length() < 16 ? 2 : 3;
    int letters = Spelling.letters(written);
    List<Near> found = new ArrayList<>();
    spellings.forEach((spelling, spelt) -> {
      boolean cut = beginning && spelling.length() > written.length();
      // Every changed letter can add one to either set of letters and take one away.
      int differing = cut ? 2 * Integer.bitCount(letters & ~spelt.letters()) : Integer.bitCount(letters ^ spelt.letters());
      if (differing <= 2 * most) {
        int distance = Spelling.distance(written, cut ? spelling.substring(0, written.length()) : spelling, most);
        if (distance <= most) {
          found.add(new Near(spelt.name(), distance));
        }
      }
    });
    return found.stream().sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
        .map(Near::name).distinct().limit(mostNames).toList();
  }
}
