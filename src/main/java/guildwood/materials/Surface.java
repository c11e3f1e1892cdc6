package guildwood.materials;

import java.util.Optional;

/**
 * A bed or path as it lies there.
 *
 * @param wholeM2 of the bed, or of the path without what earlier paths cover already
 * @param keptFreeM2 round trunks; never more than the whole
 * @param trunks how many trees and shrubs the gaps are kept round
 * @param planned how the plan says it is covered; empty where it says nothing
 */
public record Surface(Target target, String name, double wholeM2, double keptFreeM2, int trunks, Optional<Covering> planned) {
  public Surface {
    if (!(wholeM2 >= 0 && keptFreeM2 >= 0 && keptFreeM2 <= wholeM2)) {
      throw new IllegalArgumentException(keptFreeM2 + " m2 kept free of " + wholeM2 + " m2 of " + name);
    }
  }

  /** To be covered, square metres. */
  public double areaM2() {
    return wholeM2 - keptFreeM2;
  }
}
