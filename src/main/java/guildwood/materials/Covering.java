package guildwood.materials;

import guildwood.kernel.Range;

/**
 * How a bed or a path is to be covered.
 *
 * @param material of the layer on top; never card, which lies below
 * @param depthM of the layer once settled
 * @param card whether sheets of card lie under it
 * @param wanted whether it is to be covered at all
 */
public record Covering(Material material, double depthM, boolean card, boolean wanted) {
  public static final Range DEPTH_M = new Range(0.01, 0.6);

  /**
   * Planting mulch: 3 to 4 inches where water drains well, 2 to 3 on heavy soil (Iowa State University Extension), so
   * 3 inches where nobody says which.
   */
  public static final Covering USUAL_BED = new Covering(Material.WOOD_CHIPS, 3 * 0.0254, false, true);
  /** A path of chips 13 to 15 cm, 5 to 6 inches deep: common practice, no source. */
  public static final Covering USUAL_PATH = new Covering(Material.WOOD_CHIPS, 0.15, false, true);

  public Covering {
    if (material.inSheets()) {
      throw new IllegalArgumentException("card lies under a covering, it is none");
    }
    if (!DEPTH_M.contains(depthM)) {
      throw new IllegalArgumentException("a layer of " + depthM + " m");
    }
  }

  public Covering withDepth(double depth) {
    return new Covering(material, depth, card, wanted);
  }

  public Covering unwanted() {
    return new Covering(material, depthM, card, false);
  }
}
