package guildwood.species;

import java.util.OptionalInt;

/**
 * What the owner has of a species.
 *
 * @param plantsOnHand plants ready to go into the ground, in pots, beds or cuttings
 * @param priceCents what one plant costs to buy, in hundredths of the owner's currency; absent where not known
 */
public record Holding(String speciesId, int plantsOnHand, OptionalInt priceCents) {
  public static final int MOST_PLANTS = 100_000;
  public static final int MOST_CENTS = 100_000_000;

  public Holding {
    if (plantsOnHand < 0 || plantsOnHand > MOST_PLANTS) {
      throw new IllegalArgumentException(plantsOnHand + " plants of " + speciesId);
    }
    if (priceCents.isPresent() && (priceCents.getAsInt() < 0 || priceCents.getAsInt() > MOST_CENTS)) {
      throw new IllegalArgumentException("a plant of " + speciesId + " for " + priceCents.getAsInt() + " cents");
    }
  }

  /** Nothing at hand, price not known. */
  public static Holding none(String speciesId) {
    return new Holding(speciesId, 0, OptionalInt.empty());
  }
}
