package guildwood.site.sun;

/**
 * Shadow of a crown: the upper half of the ellipsoid |d|²/R² + z²/H² = 1 on the crown base, d being the
 * distance from the axis and z the height over the base.
 *
 * <p>A ray from a point climbs to the base (or starts inside the crown's height), and from there on meets the
 * dome where the quadratic f(s) = |d + s·u|²/R² + (z + s·rise)²/H² - 1 falls to 0 for some s at or after 0; its
 * least value lies at s = -(along/R² + z·rise/H²) / (1/R² + rise²/H²), or at 0 where that is behind.
 */
final class CrownShadow extends Shadow {
  private final double x;
  private final double y;
  private final double radius;
  private final double crownHeight;

  /** Height from the reading plane up to where the ray can first meet the crown. */
  private final double climb;

  /** How high in the crown that is, as a share of its height; 0 unless the light is read within it. */
  private final double started;

  private final double perRadius2;
  private double climbed;
  private double riseShare;

  CrownShadow(Tree tree, double readingHeightM) {
    x = tree.foot().xM();
    y = tree.foot().yM();
    radius = tree.crownRadiusM();
    crownHeight = tree.heightM() - tree.crownBaseM();
    climb = Math.max(0, tree.crownBaseM() - readingHeightM);
    started = Math.max(0, readingHeightM - tree.crownBaseM()) / crownHeight;
    perRadius2 = 1 / (radius * radius);
  }

  @Override
  boolean falls() {
    return started < 1;
  }

  @Override
  protected void cast(double rise) {
    climbed = climb / rise;
    riseShare = rise / crownHeight;
    double across = x * north - y * east;
    double along = x * east + y * north - climbed;
    leastAcross = across - radius;
    mostAcross = across + radius;
    leastAlong = along - radius - crownHeight * (1 - started) / rise;
    mostAlong = along + radius;
  }

  @Override
  protected int collect(PointField field, int from, int to, int[] into, int count) {
    double slope = perRadius2 + riseShare * riseShare;
    int found = count;
    for (int i = from; i < to; i++) {
      double dx = field.xM[i] - x;
      double dy = field.yM[i] - y;
      double across = dx * north - dy * east;
      if (across > radius || across < -radius) {
        continue;
      }
      double along = dx * east + dy * north + climbed;
      double s = Math.max(0, -(along * perRadius2 + started * riseShare) / slope);
      double level = started + s * riseShare;
      double reach = along + s;
      if ((across * across + reach * reach) * perRadius2 + level * level <= 1) {
        into[found++] = i;
      }
    }
    return found;
  }
}
