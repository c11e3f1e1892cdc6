package guildwood.materials;

import guildwood.kernel.Range;
import java.time.LocalDate;

/**
 * Material that came.
 *
 * @param amount cubic metres, or sheets of card
 */
public record Delivery(long id, long siteId, Material material, double amount, LocalDate on, String note) {
  public static final Range M3 = new Range(0.01, 1000);
  public static final Range SHEETS = new Range(1, 10_000);
  public static final int LONGEST_NOTE = 200;

  public Delivery {
    if (!scale(material).contains(amount)) {
      throw new IllegalArgumentException("a delivery of " + amount + " of " + material);
    }
    if (note.length() > LONGEST_NOTE) {
      throw new IllegalArgumentException("a note of " + note.length() + " characters");
    }
  }

  public static Range scale(Material material) {
    return material.inSheets() ? SHEETS : M3;
  }
}
