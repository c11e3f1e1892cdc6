package guildwood.materials;

import guildwood.kernel.Range;

/**
 * Ground kept bare round the foot of a tree or shrub: mulch against the bark rots it. At least 6 inches from the
 * trunk, Iowa State University Extension.
 *
 * @param gapM from the bark to the mulch
 * @param trunkM width of the trunk
 */
public record TrunkGap(double gapM, double trunkM) {
  public static final Range GAP_M = new Range(0, 1);
  public static final Range TRUNK_M = new Range(0, 2);
  /** Six inches, the least Iowa State University Extension gives; a young plant's stem, our own choice. */
  public static final TrunkGap USUAL = new TrunkGap(6 * 0.0254, 0.05);

  public TrunkGap {
    if (!GAP_M.contains(gapM) || !TRUNK_M.contains(trunkM)) {
      throw new IllegalArgumentException("a gap of " + gapM + " m round a trunk of " + trunkM + " m");
    }
  }

  /** From the middle of the trunk to the mulch, metres. */
  public double innerRadiusM() {
    return gapM + trunkM / 2;
  }

  /** Ground under the trunk and its gap, square metres. */
  public double areaM2() {
    return Math.PI * innerRadiusM() * innerRadiusM();
  }

  /** A ring of mulch round one trunk, square metres; nothing where the gap reaches beyond it. */
  public double ringM2(double outerRadiusM) {
    return Math.max(0, Math.PI * outerRadiusM * outerRadiusM - areaM2());
  }
}
