package guildwood.species;

import java.util.OptionalInt;

/**
 * What the owner has of a species.
 *
 * @param plantsOnHand plants ready to go into the ground, in pots, beds or cuttings
 * @param plantsToPropagate plants the owner can raise in time, from seed, cuttings or division
 * @param priceCents what one plant costs to buy, in hundredths of the owner's currency; absent where not known
 */
public record Holding(String speciesId, int plantsOnHand, int plantsToPropagate, OptionalInt priceCents) {
  public static final int MOST_PLANTS = 100_000;
  public static final int MOST_CENTS = 100_000_000;

  public Holding {
    if (plantsOnHand < 0 || plantsOnHand > MOST_PLANTS || plantsToPropagate < 0 || plantsToPropagate > MOST_PLANTS) {
      throw new IllegalArgumentException(plantsOnHand + " and " + plantsToPropagate + " plants of " + speciesId);
    }
    if (priceCents.isPresent() && (priceCents.getAsInt() < 0 || priceCents.getAsInt() > MOST_CENTS)) {
      throw new IllegalArgumentException("a plant of " + speciesId + " for " + priceCents.getAsInt() + " cents");
    }
  }

  /** Nothing to propagate. */
  public Holding(String speciesId, int plantsOnHand, OptionalInt priceCents) {
    this(speciesId, plantsOnHand, 0, priceCents);
  }

  /** Nothing at hand, price not known. */
  public static Holding none(String speciesId) {
    return new Holding(speciesId, 0, 0, OptionalInt.empty());
  }
}
