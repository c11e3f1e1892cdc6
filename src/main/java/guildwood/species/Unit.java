package guildwood.species;

/** The unit in which a trait's numbers are kept, with the range outside which a number is nonsense. */
public enum Unit {
  NONE(0, 0),
  SUN_HOURS(0, 24),
  MOISTURE_CLASS(1, 5),
  PH(2.5, 11),
  FERTILITY_CLASS(1, 3),
  CELSIUS(-60, 25),
  DAYS(0, 366),
  METRES(0.01, 120);

  private final double lowest;
  private final double highest;

  Unit(double lowest, double highest) {
    this.lowest = lowest;
    this.highest = highest;
  }

  public double lowest() {
    return lowest;
  }

  public double highest() {
    return highest;
  }
}
