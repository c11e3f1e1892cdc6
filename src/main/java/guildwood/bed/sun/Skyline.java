package guildwood.bed.sun;

import guildwood.site.sun.Horizon;
import guildwood.site.sun.HorizonPoint;
import java.util.Collections;
import java.util.List;

/**
 * What stands far away all around, measured in eight compass directions.
 *
 * @param degrees over level: north, north-east, east and so on, clockwise
 */
public record Skyline(List<Double> degrees) {
  /** The directions, in order. */
  public static final List<String> DIRECTIONS = List.of("n", "ne", "e", "se", "s", "sw", "w", "nw");

  public static final Skyline LEVEL = new Skyline(Collections.nCopies(8, 0.0));

  public Skyline {
    degrees = List.copyOf(degrees);
    if (degrees.size() != DIRECTIONS.size() || !degrees.stream().allMatch(HorizonPoint.ELEVATION_DEGREES::contains)) {
      throw new IllegalArgumentException("not a skyline: " + degrees);
    }
  }

  public boolean isLevel() {
    return equals(LEVEL);
  }

  public Horizon horizon() {
    return isLevel() ? Horizon.LEVEL : Horizon.ofCompass(degrees);
  }
}
