package guildwood.choosing;

import guildwood.species.Species;
import guildwood.species.names.NearSpellings;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds species by the beginnings of words in their scientific names, common names and synonyms. */
final class NameIndex {
  private static final int MOST_NEAR = 3;

  private final int size;
  private final String[] words;
  private final int[][] bearers;
  private NearSpellings spellings;

  NameIndex(List<Species> species) {
    this.size = species.size();
    Map<String, Bearers> byWord = new HashMap<>();
    for (int i = 0; i < size; i++) {
      for (String word : wordsOf(species.get(i))) {
        byWord.computeIfAbsent(word, w -> new Bearers()).add(i);
      }
    }
    this.words = byWord.keySet().toArray(String[]::new);
    Arrays.sort(words);
    this.bearers = Arrays.stream(words).map(word -> byWord.get(word).list()).toArray(int[][]::new);
  }

  private static Set<String> wordsOf(Species species) {
    Set<String> words = new LinkedHashSet<>(Folding.wordsOfName(species.scientificName()));
    species.commonNames().forEach(name -> words.addAll(Folding.wordsOfName(name)));
    species.synonyms().forEach(name -> words.addAll(Folding.wordsOfName(name)));
    return words;
  }

  /** Takes from a row every species without a name word that begins with each word of the text. */
  void narrow(long[] row, String text) {
    for (String start : Folding.wordsAsked(text)) {
      BitRow.and(row, startingWith(start));
    }
  }

  /**
   * What somebody may have meant who finds nothing: the text with each word that begins no name exchanged for one spelt
   * nearly so. Empty where a word is like nothing, or where every word begins a name, though not of one species.
   */
  List<String> nearTexts(String text) {
    List<String> asked = Folding.wordsAsked(text);
    if (asked.stream().allMatch(this::begins)) {
      return List.of();
    }
    List<List<String>> choices = asked.stream().map(word -> begins(word) ? List.of(word) : near(word)).toList();
    int most = choices.stream().anyMatch(List::isEmpty) ? 0 : choices.stream().mapToInt(List::size).max().orElse(0);
    return IntStream.range(0, most)
        .mapToObj(n -> choices.stream().map(words -> words.get(Math.min(n, words.size() - 1))).collect(Collectors.joining(" ")))
        .toList();
  }

  private boolean begins(String start) {
    int at = Arrays.binarySearch(words, start);
    int next = at < 0 ? -at - 1 : at;
    return next < words.length && words[next].startsWith(start);
  }

  /** Laid out when first asked for: most searches find something. */
  private synchronized List<String> near(String word) {
    if (spellings == null) {
      spellings = new NearSpellings();
      Arrays.stream(words).forEach(known -> spellings.add(known, known));
    }
    return spellings.nearBeginnings(word, MOST_NEAR);
  }

  private long[] startingWith(String start) {
    long[] row = BitRow.none(size);
    int at = Arrays.binarySearch(words, start);
    for (int w = at < 0 ? -at - 1 : at; w < words.length && words[w].startsWith(start); w++) {
      for (int i : bearers[w]) {
        BitRow.set(row, i);
      }
    }
    return row;
  }

  private static final class Bearers {
    private int[] list = new int[2];
    private int size;

    void add(int i) {
      if (size == list.length) {
        list = Arrays.copyOf(list, size * 2);
      }
      list[size++] = i;
    }

    int[] list() {
      return Arrays.copyOf(list, size);
    }
  }
}
