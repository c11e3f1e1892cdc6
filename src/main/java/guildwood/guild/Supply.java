package guildwood.guild;

import java.util.OptionalInt;

/**
 * What a plant costs and how many are to be had for nothing.
 *
 * @param priceCents for one plant; absent where not known
 * @param onHand plants ready to go in
 * @param toPropagate plants the owner can raise in time, as they say themselves: the library knows ways to
 *     propagate a species, but not whether there is a mother plant, seed, or somebody to do it
 */
public record Supply(OptionalInt priceCents, int onHand, int toPropagate) {
  public static final Supply UNKNOWN = new Supply(OptionalInt.empty(), 0, 0);

  public Supply {
    if (priceCents.orElse(0) < 0 || priceCents.orElse(0) > 1_000_000 || onHand < 0 || onHand > Rules.MOST_PLANTS
        || toPropagate < 0 || toPropagate > Rules.MOST_PLANTS) {
      throw new IllegalArgumentException(
          "a plant for " + priceCents + " with " + onHand + " on hand and " + toPropagate + " to propagate");
    }
  }

  /** Nothing to propagate. */
  public Supply(OptionalInt priceCents, int onHand) {
    this(priceCents, onHand, 0);
  }

  /** Plants that cost nothing. */
  public int free() {
    return onHand + toPropagate;
  }
}
