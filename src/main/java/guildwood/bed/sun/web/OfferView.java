package guildwood.bed.sun.web;

import guildwood.bed.Bed;
import guildwood.bed.sun.BedSun;
import guildwood.bed.sun.SunOffer;
import guildwood.bed.sun.SunScenes.BedScene;
import guildwood.site.Condition;
import guildwood.site.web.ConditionView;
import guildwood.species.Axis;
import guildwood.web.Messages;
import guildwood.web.Units;

/**
 * Taking the reckoned sun over as the bed's light, in words.
 *
 * @param offer the range, with its classes
 * @param own what the bed says of its own; empty where nothing
 * @param says how the two stand to each other
 * @param contradicts whether they share neither hours nor a class
 * @param canTake whether there is something to take over and nothing measured in the way
 */
record OfferView(String offer, String own, String says, boolean contradicts, boolean canTake) {

  static OfferView of(BedScene scene, BedSun sun, Units units, Messages messages) {
    Bed bed = scene.bed();
    Condition offered = SunOffer.of(sun);
    SunOffer.Standing standing = SunOffer.standing(offered, bed);
    String offer = ConditionView.of(offered, units, messages).full();
    Condition kept = bed.conditions().get(Axis.LIGHT);
    ConditionView own = kept == null ? null : ConditionView.of(kept, units, messages);
    boolean outranked = SunOffer.isOutranked(bed);
    String key = "sun.offer." + standing.name().toLowerCase(java.util.Locale.ROOT) + (outranked ? ".measured" : "");
    if (scene.isOpen() && !outranked && standing != SunOffer.Standing.TAKEN) {
      return new OfferView(offer, own == null ? "" : own.full(),
          own == null ? messages.say("sun.offer.open") : messages.say("sun.offer.open.own", own.full(), own.basis()), false, true);
    }
    return new OfferView(offer, own == null ? "" : own.full(),
        own == null ? messages.say(key) : messages.say(key, own.full(), own.basis()),
        standing == SunOffer.Standing.CONTRADICTS, !outranked && standing != SunOffer.Standing.TAKEN);
  }
}
