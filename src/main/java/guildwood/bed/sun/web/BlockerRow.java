package guildwood.bed.sun.web;

import guildwood.bed.sun.AroundBed;
import guildwood.bed.sun.BedSun;
import guildwood.bed.sun.Crown;
import guildwood.bed.sun.SunScenes.BedScene;
import guildwood.site.sun.Scene;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Something that may take sun from a bed, in words.
 *
 * @param link to where it is changed
 * @param kind what it is, and how big
 * @param takes hours a day in the mean of the bed; empty where nothing could be reckoned
 * @param back hours a day that would come back if it alone were gone; empty where that cannot be
 */
record BlockerRow(String name, String link, String kind, String where, String takes, String back) {

  /** All of them, those that take most first; in the order recorded where nothing could be reckoned. */
  static List<BlockerRow> all(BedScene scene, Optional<BedSun> sun, Units units, Messages messages) {
    Map<String, Double> lost = sun.map(BedSun::lostHours).orElse(Map.of());
    Map<String, Double> won = sun.map(BedSun::wonIfGoneHours).orElse(Map.of());
    List<AroundBed.Placed> placed = new ArrayList<>(scene.around().placed());
    placed.sort((a, b) -> Double.compare(lost.getOrDefault(b.obstacle().label(), 0.0), lost.getOrDefault(a.obstacle().label(), 0.0)));
    List<BlockerRow> rows = new ArrayList<>();
    for (AroundBed.Placed each : placed) {
      String label = each.obstacle().label();
      rows.add(new BlockerRow(label, "/beds/" + scene.bed().id() + "/sun/nearby/" + each.nearby().id(), kind(each, units, messages),
          SunWords.whereabouts(SunWords.middle(each.obstacle()), units), words(lost, label), words(won, label)));
    }
    if (!scene.skyline().isLevel()) {
      rows.add(new BlockerRow(messages.say("sun.skyline"), "/beds/" + scene.bed().id() + "/sun/horizon",
          messages.say(scene.ownSkyline() ? "sun.skyline.bed" : "sun.skyline.site"), messages.say("sun.skyline.where"), words(lost, Scene.HORIZON), ""));
    }
    return rows;
  }

  private static String words(Map<String, Double> hours, String label) {
    Double each = hours.get(label);
    return each == null ? "" : each > 0 && each < 0.05 ? "under 0.1 h" : SunWords.hours(each);
  }

  private static String kind(AroundBed.Placed placed, Units units, Messages messages) {
    String height = SunWords.metres(placed.nearby().height().metres(), units);
    if (placed.nearby().body() instanceof Crown crown) {
      return messages.say(crown.evergreen() ? "sun.kind.evergreen" : "sun.kind.tree", height,
          SunWords.metres(2 * crown.radiusM(), units), SunWords.metres(crown.baseM(), units));
    }
    return messages.say("sun.kind.building", height);
  }
}
