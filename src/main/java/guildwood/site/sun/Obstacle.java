package guildwood.site.sun;

import guildwood.kernel.Range;

/** Something near the bed that takes sun from parts of it. */
public sealed interface Obstacle permits Tree, Building {
  /** Anything outside is taken for a slip of the pen. */
  Range HEIGHT_M = new Range(0.05, 200);

  /** What people call it; no two in a scene alike. */
  String label();

  /** Share of direct sun it lets through, 0 to 1, on a day with leaves or without. */
  double letsThrough(boolean inLeaf);
}
