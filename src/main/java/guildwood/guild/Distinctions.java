package guildwood.guild;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToLongFunction;

/** Names what sets each of several guilds apart, from their numbers alone. */
final class Distinctions {

  /** A distinction, and the number in which its holder is first; larger is better. */
  private record Measure(Distinction name, ToLongFunction<GuildNumbers> of) {}

  private static final List<Measure> MEASURES = List.of(
      new Measure(Distinction.MOST_FOOD, GuildNumbers::foodSpecies),
      new Measure(Distinction.MOST_SOIL_BUILDING, GuildNumbers::soilSpecies),
      new Measure(Distinction.CHEAPEST, n -> -n.costCents()),
      new Measure(Distinction.FEWEST_TO_BUY, n -> -n.plantsToBuy()),
      new Measure(Distinction.MOST_FOR_POLLINATORS, GuildNumbers::pollinatorSpecies),
      new Measure(Distinction.LONGEST_BLOOM, n -> n.bloom().list().size()),
      new Measure(Distinction.LONGEST_HARVEST, n -> n.harvest().list().size()),
      new Measure(Distinction.BEST_FIT, GuildNumbers::fitPermille),
      new Measure(Distinction.FEWEST_PLANTS, n -> -n.plants()),
      new Measure(Distinction.FEWEST_SPECIES, n -> -n.species()),
      new Measure(Distinction.MOST_NATIVE, GuildNumbers::nativeSpecies));

  private Distinctions() {}

  /**
   * One distinction for each guild, the first being the best score. Each is given once, to a guild that is
   * strictly first in its number among all shown; those first in nothing are just another way.
   */
  static List<Distinction> of(List<GuildNumbers> guilds) {
    Set<Distinction> given = EnumSet.noneOf(Distinction.class);
    List<Distinction> names = new ArrayList<>();
    for (int k = 0; k < guilds.size(); k++) {
      Distinction name = k == 0 ? Distinction.BEST_SCORE : firstIn(guilds, k, given);
      given.add(name);
      names.add(name);
    }
    return names;
  }

  private static Distinction firstIn(List<GuildNumbers> guilds, int k, Set<Distinction> given) {
    for (Measure measure : MEASURES) {
      if (!given.contains(measure.name) && leads(guilds, k, measure)) {
        return measure.name;
      }
    }
    return Distinction.ANOTHER_WAY;
  }

  private static boolean leads(List<GuildNumbers> guilds, int k, Measure measure) {
    long own = measure.of.applyAsLong(guilds.get(k));
    for (int other = 0; other < guilds.size(); other++) {
      if (other != k && measure.of.applyAsLong(guilds.get(other)) >= own) {
        return false;
      }
    }
    return true;
  }
}
