package guildwood.materials;

import java.time.LocalDate;

/**
 * Material that was laid.
 *
 * @param name of the bed or path as it was called then
 * @param amount cubic metres, or sheets of card
 * @param fromStock how much of it came out of what was recorded as delivered; the rest was brought from elsewhere
 * @param finished whether the owner called the layer done with it
 */
public record Laid(long id, long siteId, Target target, String name, Material material, double amount, double fromStock,
    LocalDate on, boolean finished) {
  public Laid {
    if (!(amount >= 0 && fromStock >= 0 && fromStock <= amount)) {
      throw new IllegalArgumentException(fromStock + " from stock of " + amount + " laid");
    }
  }
}
