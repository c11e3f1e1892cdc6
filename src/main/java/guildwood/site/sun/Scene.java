package guildwood.site.sun;

import guildwood.kernel.Range;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What decides how much sun reaches the ground somewhere.
 *
 * @param season the days over which the mean is taken
 * @param inLeaf the days on which trees that shed their leaves have them; usually the season
 * @param readingHeightM height above ground at which the light is read: 0 for the soil, or the height of a
 *     plant to learn what reaches its top
 * @param obstacles labels all different, none called {@code horizon}
 */
public record Scene(
    Coordinates place, int year, Season season, Season inLeaf, double readingHeightM, Horizon horizon, List<Obstacle> obstacles) {
  public static final Range READING_HEIGHT_M = new Range(0, Obstacle.HEIGHT_M.max());

  /** Key of the skyline among what takes sun. */
  public static final String HORIZON = "horizon";

  public Scene {
    obstacles = List.copyOf(obstacles);
    if (!SunPath.YEARS.contains(year) || season.daysIn(year) == 0 || !READING_HEIGHT_M.contains(readingHeightM)) {
      throw new IllegalArgumentException("no scene for " + year + ", " + season + ", " + readingHeightM + " m up");
    }
    Set<String> labels = new HashSet<>(Set.of(HORIZON));
    for (Obstacle obstacle : obstacles) {
      if (!labels.add(obstacle.label())) {
        throw new IllegalArgumentException("two obstacles called " + obstacle.label());
      }
    }
  }

  /** The sun's path that belongs to this scene. */
  public SunPath sunPath(double stepMinutes) {
    return SunPath.of(place, year, stepMinutes);
  }
}
