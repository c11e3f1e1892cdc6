package guildwood.guild;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Where the plants of one species come from: those that stand stay, then what is on hand goes in, then what can be
 * propagated, and the rest is bought.
 *
 * @param standing in the bed already
 * @param have on hand
 * @param propagate to be raised by the owner
 * @param buy to be bought
 */
public record Provision(int standing, int have, int propagate, int buy) {
  public Provision {
    if (standing < 0 || have < 0 || propagate < 0 || buy < 0) {
      throw new IllegalArgumentException(standing + " standing, " + have + ", " + propagate + ", " + buy);
    }
  }

  /**
   * @param count plants of the species in the guild, standing ones included
   * @param standing how many of it stand in the bed
   */
  public static Provision of(Supply supply, int count, int standing) {
    int stay = Math.min(count, standing);
    int have = Math.min(count - stay, supply.onHand());
    int propagate = Math.min(count - stay - have, supply.toPropagate());
    return new Provision(stay, have, propagate, count - stay - have - propagate);
  }

  /** The provision of every species of a guild that the problem knows, by species id. */
  public static SortedMap<String, Provision> of(GuildProblem problem, Guild guild) {
    SortedMap<String, Provision> provisions = new TreeMap<>();
    guild.counts().forEach((id, count) -> problem.find(id)
        .ifPresent(c -> provisions.put(id, of(c.supply(), count, problem.standing(id)))));
    return Collections.unmodifiableSortedMap(provisions);
  }

  /** Plants to put in. */
  public int added() {
    return have + propagate + buy;
  }
}
