package guildwood.site.water;

/** How steep the ground is. */
public record Incline(double riseM, double runM) {
  public Incline {
    if (!(Double.isFinite(riseM) && runM > 0)) {
      throw new IllegalArgumentException("a rise of " + riseM + " m over " + runM + " m");
    }
  }

  public static Incline ofPercent(double percent) {
    return new Incline(percent, 100);
  }

  /** Rise on a hundred metres on the level; 100 percent is 45 degrees. */
  public double percent() {
    return 100 * riseM / runM;
  }

  public double degrees() {
    return Math.toDegrees(Math.atan(riseM / runM));
  }
}
