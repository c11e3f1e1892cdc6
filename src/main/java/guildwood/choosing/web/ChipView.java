package guildwood.choosing.web;

import guildwood.choosing.Facet;
import guildwood.choosing.Query;
import guildwood.species.Evidence;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * One active choice, with the address of the page without it.
 *
 * @param label what is chosen, for example {@code Layer: shrub}
 */
record ChipView(String label, String href) {

  static List<ChipView> of(LibraryAddress address, OptionWords words) {
    List<ChipView> chips = new ArrayList<>();
    Query asked = address.asked();
    if (!asked.text().isEmpty()) {
      chips.add(new ChipView(words.messages().say("choosing.chip.text", asked.text()), address.asking(asked.withText("")).path()));
    }
    asked.chosen().forEach((facet, options) -> {
      if (facet != Facet.WETLAND || asked.region().isPresent()) {
        options.forEach(option -> chips.add(new ChipView(label(facet, option, asked, words),
            address.asking(asked.without(facet, option)).path())));
      }
    });
    if (address.keepsAll()) {
      chips.add(new ChipView(words.messages().say("choosing.chip.keeps-all"), address.keepingAll(false).path()));
    }
    asked.keepsNotKnown().forEach(facet -> {
      Set<Facet> others = EnumSet.copyOf(asked.keepsNotKnown());
      others.remove(facet);
      chips.add(new ChipView(words.messages().say("choosing.chip.keeps", words.facet(facet)),
          address.asking(asked.keeping(others)).path()));
    });
    return chips;
  }

  private static String label(Facet facet, String option, Query asked, OptionWords words) {
    String name = words.option(facet, option);
    if (facet == Facet.FUNCTION && asked.evidence() != Evidence.FOLK) {
      name = words.messages().say("choosing.chip.evidence", name, words.messages().say("choosing.evidence." + asked.evidence().key()));
    }
    return words.messages().say("choosing.chip", words.facet(facet), name);
  }
}
