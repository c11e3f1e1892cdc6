package guildwood.bed;

import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.species.Axis;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * One bed of a site.
 *
 * @param areaM2 ground area, square metres
 * @param conditions what the bed says itself; the rest is inherited from its site
 * @param standing plants already there, which stay
 */
public record Bed(
    long id, long siteId, String name, double areaM2, Map<Axis, Condition> conditions, List<Standing> standing, String note) {
  public static final double SMALLEST_AREA_M2 = 0.1;
  public static final double LARGEST_AREA_M2 = 100_000;

  public Bed {
    conditions = Map.copyOf(conditions);
    standing = List.copyOf(standing);
    if (name.isBlank()) {
      throw new IllegalArgumentException("a bed needs a name");
    }
    if (!(areaM2 >= SMALLEST_AREA_M2 && areaM2 <= LARGEST_AREA_M2)) {
      throw new IllegalArgumentException("a bed of " + areaM2 + " m2");
    }
  }

  /**
   * The conditions that hold in the bed: its own, and the site's where it says nothing. The length of the
   * season comes from the site's frost dates where nobody states it.
   */
  public Map<Axis, Condition> conditionsIn(Site site) {
    Map<Axis, Condition> all = new EnumMap<>(Axis.class);
    site.frostFreeDays().ifPresent(days -> all.put(Axis.SEASON,
        new Condition(Axis.SEASON, Range.of(days), Basis.INHERITED, days + " days")));
    site.conditions().forEach((axis, condition) -> all.put(axis, condition.inherited()));
    all.putAll(conditions);
    return all;
  }

  /**
   * A plant that already stands in the bed.
   *
   * @param count how many of it
   */
  public record Standing(String speciesId, int count) {
    public Standing {
      if (count < 1) {
        throw new IllegalArgumentException(count + " plants of " + speciesId);
      }
    }
  }
}
