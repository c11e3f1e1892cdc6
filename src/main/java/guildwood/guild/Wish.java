package guildwood.guild;

import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import java.time.Month;

/**
 * Something the bed's owner asks of the guild.
 *
 * @param item what of its kind, one of {@link WishKind#items()}
 * @param must true where a guild without it will not do; false where it would be nice
 * @param weight how much it counts against the other wishes, 1 to 10
 */
public record Wish(WishKind kind, String item, boolean must, int weight) {
  public static final int LEAST_WEIGHT = 1;
  public static final int MOST_WEIGHT = 10;

  public Wish {
    if (!kind.items().contains(item)) {
      throw new IllegalArgumentException("no wish for " + kind + " '" + item + "'. Maybe one of " + kind.items());
    }
    if (weight < LEAST_WEIGHT || weight > MOST_WEIGHT) {
      throw new IllegalArgumentException("weight " + weight + " of the wish for " + kind + " " + item);
    }
  }

  public static Wish function(GuildFunction function, int weight) {
    return new Wish(WishKind.FUNCTION, function.key(), false, weight);
  }

  public static Wish layer(Layer layer, int weight) {
    return new Wish(WishKind.LAYER, layer.key(), false, weight);
  }

  public static Wish bloom(Month month, int weight) {
    return new Wish(WishKind.BLOOM_MONTH, Integer.toString(month.getValue()), false, weight);
  }

  public static Wish harvest(String part, int weight) {
    return new Wish(WishKind.HARVEST_PART, part, false, weight);
  }

  public static Wish harvestIn(Month month, int weight) {
    return new Wish(WishKind.HARVEST_MONTH, Integer.toString(month.getValue()), false, weight);
  }

  /** So much of the bed's ground covered by plants. */
  public static Wish ground(int percent, int weight) {
    return new Wish(WishKind.GROUND, Integer.toString(percent), false, weight);
  }

  /** The share of the ground that is to be covered. */
  int percent() {
    return Integer.parseInt(item);
  }

  public Wish asMust() {
    return new Wish(kind, item, true, weight);
  }

  public Wish asNice() {
    return new Wish(kind, item, false, weight);
  }

  /** Kind and item, which name the wish in files and addresses: {@code function:nitrogen-fixer}. */
  public String key() {
    return kind.key() + ":" + item;
  }

  /** Whether two wishes ask for the same thing, however much; every share of the ground is the same thing. */
  public boolean asksSameAs(Wish other) {
    return kind == other.kind && (item.equals(other.item) || kind == WishKind.GROUND);
  }
}
