package guildwood.choosing.web;

import guildwood.choosing.Facet;
import guildwood.choosing.FacetCount;
import guildwood.choosing.OptionCount;
import guildwood.choosing.Query;
import guildwood.web.Messages;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One facet on the page.
 *
 * @param chosen how many options are chosen, in words; empty for none
 * @param open whether its options show at once
 * @param narrow whether its labels are short enough for two columns
 * @param keeps whether 'not known' was chosen to stay in this facet
 * @param keepable whether that can be chosen at all
 * @param notKnown what keeping it would bring, in words; empty while nothing is chosen
 */
record FacetView(
    String key,
    String title,
    String chosen,
    boolean open,
    boolean narrow,
    boolean keepable,
    boolean keeps,
    String notKnown,
    List<Option> options) {

  /**
   * One option.
   *
   * @param count as shown beside it
   * @param spoken the same in words
   * @param empty whether choosing it would bring nothing
   */
  record Option(String id, String value, String label, boolean ticked, String count, String spoken, boolean empty) {}

  /** @param keeps whether 'not known' was chosen to stay here, rather than everywhere */
  static FacetView of(
      Facet facet, Query query, boolean keeps, Map<Facet, FacetCount> counts, boolean open, OptionWords words) {
    Messages messages = words.messages();
    Optional<FacetCount> count = Optional.ofNullable(counts.get(facet));
    int chosen = query.chosen(facet).size();
    int remaining = count.map(FacetCount::remaining).orElse(0);
    List<Option> options = facet.options().stream().map(option -> {
      Optional<OptionCount> found =
          count.flatMap(c -> c.options().stream().filter(o -> o.option().equals(option)).findFirst());
      return option(facet, option, query.has(facet, option), found, chosen > 0, remaining, words);
    }).toList();
    String notKnown = chosen == 0 || count.isEmpty() ? ""
        : messages.say(query.keeps(facet) ? "choosing.not-known.kept" : "choosing.not-known.more", count.get().notKnown());
    return new FacetView(facet.key(), words.facet(facet), chosen == 0 ? "" : messages.say("choosing.chosen", chosen),
        open || chosen > 0, isNarrow(facet), !facet.leavesOut(), keeps, notKnown, options);
  }

  private static Option option(Facet facet, String option, boolean ticked, Optional<OptionCount> count,
      boolean widens, int remaining, OptionWords words) {
    String id = facet.key() + "-" + option;
    String label = words.option(facet, option);
    if (count.isEmpty()) {
      return new Option(id, option, label, ticked, "", "", false);
    }
    int species = count.get().species();
    Messages messages = words.messages();
    if (widens && !facet.leavesOut() && !ticked) {
      int more = species - remaining;
      return new Option(id, option, label, false, "+" + more, messages.say("choosing.spoken.more", more), more == 0);
    }
    String spoken = messages.say(ticked ? "choosing.spoken.now" : "choosing.spoken.would-remain", species);
    return new Option(id, option, label, ticked, Integer.toString(species), spoken, !ticked && species == 0);
  }

  private static boolean isNarrow(Facet facet) {
    return facet == Facet.BLOOM || facet == Facet.HARVEST_MONTH;
  }
}
