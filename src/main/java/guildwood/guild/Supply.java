package guildwood.guild;

import java.util.OptionalInt;

/**
 * What a plant costs and how many are to be had for nothing.
 *
 * @param priceCents for one plant; absent where not known
 * @param stock plants on hand, or cuttings and seedlings that will be ready
 */
public record Supply(OptionalInt priceCents, int stock) {
  public static final Supply UNKNOWN = new Supply(OptionalInt.empty(), 0);

  public Supply {
    if (priceCents.orElse(0) < 0 || priceCents.orElse(0) > 1_000_000 || stock < 0 || stock > Rules.MOST_PLANTS) {
      throw new IllegalArgumentException("a plant for " + priceCents + " with " + stock + " in stock");
    }
  }
}
