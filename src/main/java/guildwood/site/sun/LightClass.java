package guildwood.site.sun;

import guildwood.species.ClassWords;
import guildwood.species.Unit;

/** Classes of light by hours of direct sun a day; scheme and limits are those of {@link ClassWords#LIGHT_SCHEME}. */
public enum LightClass {
  FULL_SUN("full sun"),
  PART_SHADE("part shade"),
  FULL_SHADE("full shade");

  /** Means of many steps may fall short of a round number by less than this, in hours. */
  private static final double ROUNDING = 1e-6;

  private final String word;

  LightClass(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** The fewest hours a day in this class. */
  public double fromHours() {
    return ClassWords.range(Unit.SUN_HOURS, word).orElseThrow().min();
  }

  public static LightClass of(double sunHoursPerDay) {
    for (LightClass each : values()) {
      if (sunHoursPerDay + ROUNDING >= each.fromHours()) {
        return each;
      }
    }
    throw new IllegalArgumentException("no light class for " + sunHoursPerDay + " hours");
  }
}
