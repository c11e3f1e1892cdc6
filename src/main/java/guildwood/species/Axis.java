package guildwood.species;

/**
 * The axes on which a site is read and a species is judged.
 *
 * <p>{@code scale} is the whole range on which values make sense; input outside it is refused.
 */
public enum Axis {
  /** Hours of direct sun a day, mean over the growing season. */
  LIGHT("light", 0, 24),
  /** Moisture class: 1 very dry, 2 dry, 3 moist, 4 wet, 5 waterlogged. */
  MOISTURE("moisture", 1, 5),
  /** Soil reaction, pH in water. */
  REACTION("ph", 2.5, 11),
  /** Fertility class: 1 poor, 2 medium, 3 rich. */
  FERTILITY("fertility", 1, 3),
  /** Texture classes coarse, medium, fine as 1, 2, 3; a set rather than an interval. */
  TEXTURE("texture", 1, 3),
  /** Mean annual extreme minimum temperature, degrees C; a species has the coldest it survives. */
  WINTER_COLD("coldest_winter", -60, 25),
  /** Frost-free days a year; a species has the least it needs. */
  SEASON("frost_free_days", 0, 366);

  private final String key;
  private final double lowest;
  private final double highest;

  Axis(String key, double lowest, double highest) {
    this.key = key;
    this.lowest = lowest;
    this.highest = highest;
  }

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return key;
  }

  public double lowest() {
    return lowest;
  }

  public double highest() {
    return highest;
  }

  /**
   * Half the width of a class where the axis is counted in classes that run into each other: class 3 of
   * moisture stands for everything from 2.5 to 3.5. 0 where the axis is measured.
   */
  public double halfClass() {
    return this == MOISTURE || this == FERTILITY ? 0.5 : 0;
  }

  public static Axis ofKey(String key) {
    for (Axis axis : values()) {
      if (axis.key.equals(key)) {
        return axis;
      }
    }
    throw new IllegalArgumentException("no axis " + key);
  }
}
