package guildwood.choosing;

import guildwood.species.Species;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds species by the beginnings of words in their scientific names, common names and synonyms. */
final class NameIndex {
  private final int size;
  private final String[] words;
  private final int[][] bearers;

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
