package guildwood.drawing;

import guildwood.site.sun.GroundPoint;

/**
 * Where one plant of a guild stands.
 *
 * @param number from 1 among the plants of its species
 * @param at metres east and north of the bed's middle
 * @param locked whether it stays there when the rest is arranged anew
 */
public record Spot(String speciesId, int number, GroundPoint at, boolean locked) {
  public Spot {
    if (number < 1) {
      throw new IllegalArgumentException("plant " + number + " of " + speciesId);
    }
  }

  /** Which plant it is: {@code malus-domestica.1}. */
  public String id() {
    return speciesId + "." + number;
  }

  public Spot at(GroundPoint other) {
    return new Spot(speciesId, number, other, locked);
  }

  public Spot locked(boolean other) {
    return new Spot(speciesId, number, at, other);
  }
}
