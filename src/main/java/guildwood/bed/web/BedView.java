package guildwood.bed.web;

import guildwood.bed.Bed;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.web.ConditionView;
import guildwood.site.web.SiteView;
import guildwood.species.Axis;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A bed in words.
 *
 * @param conditions one for every axis, whether anything is known or not
 * @param plants how many stand there already
 * @param ready whether light and moisture are known, without which narrowing says little
 */
record BedView(long id, String name, String area, List<ConditionView> conditions, int plants, boolean ready, String note) {

  static BedView of(Bed bed, Site site, Units units, Messages messages) {
    Map<Axis, Condition> holding = bed.conditionsIn(site);
    List<ConditionView> conditions = new ArrayList<>();
    for (Axis axis : Axis.values()) {
      conditions.add(condition(axis, bed, site, holding, units, messages));
    }
    int plants = bed.standing().stream().mapToInt(Bed.Standing::count).sum();
    boolean ready = holding.containsKey(Axis.LIGHT) && holding.containsKey(Axis.MOISTURE);
    return new BedView(bed.id(), bed.name(), units.area(bed.areaM2()), List.copyOf(conditions), plants, ready, bed.note());
  }

  private static ConditionView condition(Axis axis, Bed bed, Site site, Map<Axis, Condition> holding, Units units, Messages messages) {
    if (bed.conditions().containsKey(axis) && !bed.yieldsToSite(axis, site)) {
      return ConditionView.of(bed.conditions().get(axis), units, messages);
    }
    if (site.conditions().containsKey(axis)) {
      return ConditionView.inherited(site.conditions().get(axis), units, messages);
    }
    return holding.containsKey(axis)
        ? ConditionView.fromFrostDates(holding.get(axis), SiteView.frostDates(site), messages)
        : ConditionView.unknown(axis, messages);
  }

  /** What is known of light, moisture and soil, shortest first read. */
  public List<ConditionView> known() {
    return conditions.stream().filter(c -> c.known() && isOfGround(c)).toList();
  }

  /** Names of what is not known yet. */
  public String unknown() {
    return String.join(", ", conditions.stream().filter(c -> !c.known()).map(c -> c.label().toLowerCase(java.util.Locale.ROOT)).toList());
  }

  private static boolean isOfGround(ConditionView condition) {
    return !condition.axis().equals(Axis.WINTER_COLD.key()) && !condition.axis().equals(Axis.SEASON.key());
  }
}
