package guildwood.bed;

import guildwood.kernel.Range;

/**
 * A species that grows near a bed, outside it.
 *
 * @param distanceM from the bed to the nearest plant of it
 */
public record Near(String speciesId, double distanceM) {
  public static final Range DISTANCE_M = new Range(0.5, 2_000);

  public Near {
    if (!DISTANCE_M.contains(distanceM)) {
      throw new IllegalArgumentException(speciesId + " at " + distanceM + " m");
    }
  }
}
