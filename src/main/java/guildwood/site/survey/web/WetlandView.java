package guildwood.site.survey.web;

import guildwood.site.survey.IndicatorLibrary.Plant;
import guildwood.site.survey.PlantNames;
import guildwood.site.survey.PlotReading;
import guildwood.site.survey.WetlandRules.Dominance;
import guildwood.site.survey.WetlandRules.Rated;
import guildwood.species.WetlandRegion;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.List;
import java.util.Locale;

/**
 * The two vegetation indices, in words; both texts say what they count and decide nothing.
 *
 * @param index empty where too little is rated
 * @param dominants one line each
 */
public record WetlandView(String region, String index, String dominance, List<String> dominants) {
  /** Up to this the vegetation counts as wetland vegetation: USACE regional supplement Midwest, ERDC/EL TR-10-16. */
  private static final double WET_UP_TO = 3;

  /** @param reading one that has a dominance test */
  public static WetlandView of(PlotReading reading, WetlandRegion region, PlantNames names, Messages messages) {
    Dominance dominance = reading.dominance().orElseThrow();
    String index = reading.prevalenceIndex().isEmpty() ? "" : messages.say(
        reading.prevalenceIndex().getAsDouble() <= WET_UP_TO ? "reading.wetland.index-wet" : "reading.wetland.index-dry",
        Units.number(reading.prevalenceIndex().getAsDouble(), 2));
    String share = dominance.wetlandPercent().isEmpty() ? "" : messages.say(
        dominance.isMostlyWetland() ? "reading.wetland.dominance-wet" : "reading.wetland.dominance-dry",
        Units.number(dominance.wetlandPercent().getAsDouble(), 0), dominance.dominants().size());
    return new WetlandView(messages.say("item.wetland." + region.key()), index, share,
        dominance.dominants().stream().map(d -> line(d, names, messages)).toList());
  }

  private static String line(Rated dominant, PlantNames names, Messages messages) {
    String rating = dominant.rating().isPresent()
        ? messages.say("reading.rating." + Math.round(dominant.rating().getAsDouble())) : messages.say("reading.wetland.unrated");
    return messages.say("reading.wetland.dominant", names.plant(dominant.species()).map(Plant::commonName).orElse(dominant.species()),
        messages.say("survey.stratum." + dominant.stratum().toLowerCase(Locale.ROOT)), Units.number(dominant.coverPercent(), 1), rating);
  }
}
