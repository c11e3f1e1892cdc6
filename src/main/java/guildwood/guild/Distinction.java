package guildwood.guild;

import java.util.Locale;

/** What sets one proposal apart from the others shown beside it, told from its own numbers. */
public enum Distinction {
  BEST_SCORE,
  MOST_FOOD,
  MOST_SOIL_BUILDING,
  MOST_FOR_POLLINATORS,
  LONGEST_BLOOM,
  LONGEST_HARVEST,
  CHEAPEST,
  FEWEST_TO_BUY,
  FEWEST_PLANTS,
  FEWEST_SPECIES,
  BEST_FIT,
  MOST_NATIVE,
  /** Not first in any number; a different set of species all the same. */
  ANOTHER_WAY;

  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
