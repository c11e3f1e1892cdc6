package guildwood.choosing.web;

import guildwood.choosing.Facet;
import guildwood.choosing.PlaceBands;
import guildwood.kernel.Range;
import guildwood.species.Trait;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.Locale;

/** The names of facets and their options, in the visitor's units. */
record OptionWords(Units units, Messages messages) {

  String facet(Facet facet) {
    return messages.say("facet." + facet.key());
  }

  String option(Facet facet, String option) {
    return switch (facet) {
      case VERDICT -> messages.say("term.verdict." + option);
      case WINTER -> messages.say("facet.winter.option", option, units.temperature(PlaceBands.winter(option).min()));
      case LIGHT, MOISTURE -> messages.say("facet." + facet.key() + "." + option);
      case PH -> messages.say("facet.ph.option", messages.say("facet.ph." + option), ph(PlaceBands.reaction(option)));
      case LAYER -> messages.say("term.layer." + option);
      case FUNCTION -> messages.say("term.function." + option);
      case BLOOM, HARVEST_MONTH -> messages.say("term.month.short." + (facet.options().indexOf(option) + 1));
      case HARVEST -> messages.say("term.part." + option);
      case USE -> word(Trait.USE, option);
      case WITHOUT -> messages.say("term.caution." + option);
      case HEIGHT -> height(PlaceBands.height(option));
      case GROWTH_RATE -> word(Trait.GROWTH_RATE, option);
      case DURATION -> word(Trait.DURATION, option);
      case ROOT_FORM -> word(Trait.ROOT_FORM, option);
      case SPREAD -> word(Trait.SPREAD, option);
      case POLLINATION -> word(Trait.POLLINATION, option);
      case PROPAGATION -> messages.say("item.propagation." + option).toLowerCase(Locale.ROOT);
      case NATIVE -> messages.say("term.region." + option);
      case WETLAND -> word(Trait.WETLAND, option.toUpperCase(Locale.ROOT));
    };
  }

  private String word(Trait trait, String word) {
    return messages.say("word." + trait.key() + "." + word);
  }

  private static String ph(Range range) {
    return String.format(Locale.ROOT, "%.1f–%.1f", range.min(), range.max());
  }

  private String height(Range band) {
    if (band.min() == 0) {
      return messages.say("facet.height.under", units.length(band.max()));
    }
    return band.max() >= 1000 ? messages.say("facet.height.over", units.length(band.min())) : units.length(band);
  }
}
