package guildwood.workplan;

import guildwood.kernel.Range;
import guildwood.species.Layer;
import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How people work on a site. The minutes are common practice without a source, to be put right by whoever has
 * a watch.
 *
 * @param sessionHours how long people work at a stretch
 * @param people who work side by side
 * @param day of the week on which they come
 * @param treeMinutes to plant and stake one tree
 * @param shrubMinutes to plant one shrub or climber
 * @param herbMinutes to plant one herb or root
 * @param coverMinutes to plant one ground cover
 * @param takePercent of starts that become plants, where the owner knows better than {@link Raising}
 */
public record WorkSettings(double sessionHours, int people, DayOfWeek day, int treeMinutes, int shrubMinutes, int herbMinutes,
    int coverMinutes, Map<Raising, Integer> takePercent) {
  public static final Range SESSION_HOURS = new Range(0.5, 10);
  public static final Range PEOPLE = new Range(1, 30);
  public static final Range MINUTES = new Range(1, 480);
  public static final Range TAKE_PERCENT = new Range(1, 100);

  public static final WorkSettings USUAL = new WorkSettings(2, 1, DayOfWeek.SATURDAY, 45, 20, 6, 4, Map.of());

  public WorkSettings {
    takePercent = Collections.unmodifiableMap(takePercent.isEmpty() ? new EnumMap<>(Raising.class) : new EnumMap<>(takePercent));
    boolean minutesFit = MINUTES.contains(treeMinutes) && MINUTES.contains(shrubMinutes) && MINUTES.contains(herbMinutes)
        && MINUTES.contains(coverMinutes);
    if (!SESSION_HOURS.contains(sessionHours) || !PEOPLE.contains(people) || !minutesFit
        || !takePercent.values().stream().allMatch(TAKE_PERCENT::contains)) {
      throw new IllegalArgumentException(sessionHours + " h, " + people + " people, " + treeMinutes + ", " + shrubMinutes + ", "
          + herbMinutes + ", " + coverMinutes + " minutes, " + takePercent);
    }
  }

  /** One session of everybody together, minutes of one person. */
  public double sessionMinutes() {
    return sessionHours * 60 * people;
  }

  public int take(Raising way) {
    return takePercent.getOrDefault(way, way.usualTakePercent());
  }

  int plantingMinutes(Layer layer) {
    return switch (layer) {
      case TALL_TREE, SMALL_TREE -> treeMinutes;
      case SHRUB, CLIMBER -> shrubMinutes;
      case HERB, ROOT -> herbMinutes;
      case GROUND_COVER -> coverMinutes;
    };
  }
}
