package guildwood.choosing;

import java.util.List;

/**
 * The counts of one facet.
 *
 * @param remaining how many species remain now, under all that is chosen
 * @param notKnown how many species more would remain if 'not known' stayed in this facet, or fewer if it
 *     no longer did; 0 where nothing is chosen
 */
public record FacetCount(Facet facet, int remaining, List<OptionCount> options, int notKnown) {
  public FacetCount {
    options = List.copyOf(options);
  }
}
