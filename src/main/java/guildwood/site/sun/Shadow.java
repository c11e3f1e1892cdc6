package guildwood.site.sun;

/**
 * The shadow of one obstacle, cast anew for each direction of the sun. Positions are told along the
 * direction to the sun (along) and square to it (across). Not for several threads.
 */
abstract sealed class Shadow permits CrownShadow, WallShadow {
  protected double east;
  protected double north;

  /** Box around the shadow cast last, in the turned directions. */
  protected double leastAlong;
  protected double mostAlong;
  protected double leastAcross;
  protected double mostAcross;

  static Shadow of(Obstacle obstacle, double readingHeightM) {
    return obstacle instanceof Tree tree
        ? new CrownShadow(tree, readingHeightM)
        : new WallShadow((Building) obstacle, readingHeightM);
  }

  /** Whether it stands above the height at which the light is read. */
  abstract boolean falls();

  /** Casts the shadow for a ray that climbs so much per metre of ground; the box is set after this. */
  protected abstract void cast(double rise);

  /** Adds those of the points from..to (by their place in the field) that lie in the shadow. */
  protected abstract int collect(PointField field, int from, int to, int[] into, int count);

  /**
   * Writes the points in the shadow into a list from {@code count} on and gives the new length. Where the
   * shadow passes a tile, or the whole field, by, its points are not looked at.
   */
  final int mark(SunPath.Step step, PointField field, int[] into, int count) {
    east = step.east();
    north = step.north();
    cast(step.rise());
    if (passesBy(field.fieldX, field.fieldY, field.fieldRadius)) {
      return count;
    }
    int found = count;
    for (int tile = 0; tile < field.tiles(); tile++) {
      if (!passesBy(field.middleX[tile], field.middleY[tile], field.radius[tile])) {
        found = collect(field, field.begins[tile], field.begins[tile + 1], into, found);
      }
    }
    return found;
  }

  private boolean passesBy(double x, double y, double radius) {
    double across = x * north - y * east;
    double along = x * east + y * north;
    return across + radius < leastAcross || across - radius > mostAcross
        || along + radius < leastAlong || along - radius > mostAlong;
  }
}
