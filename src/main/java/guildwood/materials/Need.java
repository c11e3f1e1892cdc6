package guildwood.materials;

import java.util.Optional;

/**
 * One layer of one material that a bed or path needs.
 *
 * @param name of the bed or path
 * @param order from 1, as the owner set it; a layer that lies below another comes first
 * @param areaM2 to be covered, without the gaps round trunks
 * @param depthM of the layer once settled; 0 for card
 * @param amount to bring in all: loose cubic metres, or sheets of card
 * @param laid of that so far
 * @param finished whether the owner called it done, whatever was laid
 */
public record Need(Target target, String name, int order, Material material, double areaM2, double depthM, double amount,
    double laid, boolean finished) {
  public Need {
    if (!(areaM2 >= 0 && depthM >= 0 && amount >= 0 && laid >= 0)) {
      throw new IllegalArgumentException(amount + " of " + material + " for " + areaM2 + " m2 of " + name + ", " + laid + " laid");
    }
  }

  /** Still to lay, cubic metres or sheets; nothing once it is done. */
  public double left() {
    double left = amount - laid;
    return finished || left < Volume.CLOSE_ENOUGH_M3 ? 0 : left;
  }

  public boolean done() {
    return left() == 0;
  }

  /** Stable name in addresses and calendars: {@code bed-3.wood-chips}. */
  public String key() {
    return target.key() + "." + material.key();
  }

  /** The need of a name, among others. */
  public static Optional<Need> ofKey(Iterable<Need> needs, String key) {
    for (Need need : needs) {
      if (need.key().equals(key)) {
        return Optional.of(need);
      }
    }
    return Optional.empty();
  }
}
