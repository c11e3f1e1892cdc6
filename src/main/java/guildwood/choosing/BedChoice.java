package guildwood.choosing;

import guildwood.site.Condition;
import guildwood.species.Axis;
import java.util.Map;

/**
 * A bed for which species can be chosen.
 *
 * @param conditions that hold in it, its site's included
 */
public record BedChoice(long id, String name, String siteName, Map<Axis, Condition> conditions) {
  public BedChoice {
    conditions = Map.copyOf(conditions);
  }
}
