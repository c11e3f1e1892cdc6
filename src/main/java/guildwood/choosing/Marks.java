package guildwood.choosing;

import java.util.List;
import java.util.function.Predicate;

/**
 * What one species says to the options of one facet: yes, not known, or else no.
 *
 * @param yes bit i for option i
 * @param notKnown likewise; no bit is in both
 */
record Marks(long yes, long notKnown) {
  Marks {
    if ((yes & notKnown) != 0) {
      throw new IllegalArgumentException("yes and not known at once: " + (yes & notKnown));
    }
  }

  /** Nothing is stated. */
  static Marks silent(Facet facet) {
    return new Marks(0, all(facet));
  }

  /** Something is stated that answers every option: yes where the test holds, no elsewhere. */
  static Marks answered(Facet facet, Predicate<String> isYes) {
    return new Marks(mask(facet, isYes), 0);
  }

  /** Every option speaks for itself: yes where the first test holds, not known where only the second does. */
  static Marks each(Facet facet, Predicate<String> isYes, Predicate<String> isNotKnown) {
    long yes = mask(facet, isYes);
    return new Marks(yes, mask(facet, isNotKnown) & ~yes);
  }

  /** A stated list of options: yes for those listed, no for the others; an empty list is silence. */
  static Marks listed(Facet facet, List<String> stated) {
    return stated.isEmpty() ? silent(facet) : answered(facet, stated::contains);
  }

  private static long all(Facet facet) {
    return -1L >>> (64 - facet.options().size());
  }

  private static long mask(Facet facet, Predicate<String> holds) {
    long mask = 0;
    List<String> options = facet.options();
    for (int i = 0; i < options.size(); i++) {
      mask |= holds.test(options.get(i)) ? 1L << i : 0;
    }
    return mask;
  }
}
