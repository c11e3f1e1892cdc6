package guildwood.drawing;

import guildwood.kernel.Range;

/**
 * What the owner sets for arranging a bed.
 *
 * @param reachM how far an arm reaches from a path or the bed's edge into a crown; the usual 0.6 m (2 ft) is common
 *     practice, no source
 * @param overhangM how far a grown crown may reach over the bed's edge; the usual 1.2 m is a choice of ours
 * @param walkableEdge whether people can stand all around the bed, not only on its paths
 */
public record ArrangingRules(double reachM, double overhangM, boolean walkableEdge) {
  public static final Range REACH_M = new Range(0.1, 5);
  public static final Range OVERHANG_M = new Range(0, 20);
  public static final ArrangingRules USUAL = new ArrangingRules(0.6, 1.2, true);

  public ArrangingRules {
    if (!REACH_M.contains(reachM) || !OVERHANG_M.contains(overhangM)) {
      throw new IllegalArgumentException("an arm of " + reachM + " m, crowns " + overhangM + " m over the edge");
    }
  }
}
