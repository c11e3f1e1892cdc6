package guildwood.species;

import guildwood.kernel.Months;
import guildwood.kernel.Range;
import java.util.List;
import java.util.TreeSet;

/** A value as the program reckons with it; what people typed is kept beside it in the {@link Statement}. */
public sealed interface TraitValue {

  /** Numbers in the trait's {@link Unit}. */
  record Span(Range range) implements TraitValue {}

  /** One of the trait's words. */
  record Word(String word) implements TraitValue {}

  /** Several of the trait's words, in alphabetical order. */
  record Words(List<String> words) implements TraitValue {
    public Words {
      words = List.copyOf(new TreeSet<>(words));
      if (words.isEmpty()) {
        throw new IllegalArgumentException("a set of words needs at least one");
      }
    }
  }

  /** Months of the year; none where it is only known that it happens. */
  record InMonths(Months months) implements TraitValue {}

  /** Seasons of the year; none where it is only known that it works. */
  record InSeasons(List<String> seasons) implements TraitValue {
    public InSeasons {
      seasons = List.copyOf(seasons);
    }
  }

  /** A yes or a no; not known is the absence of a statement. */
  record YesNo(boolean yes) implements TraitValue {}

  /** A short sentence. */
  record Text(String text) implements TraitValue {}
}
