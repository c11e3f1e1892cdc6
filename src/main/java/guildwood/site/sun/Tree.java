package guildwood.site.sun;

import guildwood.kernel.Range;

/**
 * A tree or shrub. Its crown is the upper half of an ellipsoid standing on the crown base: as wide as the
 * crown radius at the base, rounded off towards the top. A taller dome on the same base holds the lower
 * one whole, which a full ellipsoid would not, so growing never adds light below. A ray that meets the
 * crown anywhere is dimmed to the same share, however short its way through. The trunk casts no shadow.
 *
 * @param crownBaseM height of the lowest leafy branches; 0 for a shrub clothed to the ground
 * @param lightInLeaf share of direct sun let through in leaf, 0 to 1
 * @param lightBare the same when bare; of no matter for an evergreen, which is always in leaf
 */
public record Tree(
    String label,
    GroundPoint foot,
    double heightM,
    double crownBaseM,
    double crownRadiusM,
    double lightInLeaf,
    double lightBare,
    boolean evergreen)
    implements Obstacle {
  public static final Range CROWN_BASE_M = new Range(0, HEIGHT_M.max());
  public static final Range CROWN_RADIUS_M = new Range(0.05, 60);
  public static final Range SHARE = new Range(0, 1);

  public Tree {
    if (!HEIGHT_M.contains(heightM) || !CROWN_BASE_M.contains(crownBaseM) || !(crownBaseM < heightM)
        || !CROWN_RADIUS_M.contains(crownRadiusM) || !SHARE.contains(lightInLeaf) || !SHARE.contains(lightBare)) {
      throw new IllegalArgumentException(label + " cannot be " + heightM + " m tall with a crown from " + crownBaseM
          + " m, " + crownRadiusM + " m in radius, letting through " + lightInLeaf + " and " + lightBare);
    }
  }

  @Override
  public double letsThrough(boolean inLeaf) {
    return inLeaf || evergreen ? lightInLeaf : lightBare;
  }
}
