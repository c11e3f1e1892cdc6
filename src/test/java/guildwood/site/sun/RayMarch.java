package guildwood.site.sun;

/**
 * An independent answer to 'does this stand in the way?': follows the ray towards the sun in small steps and asks at
 * each whether it is inside the solid. Slow, and right up to the length of a step.
 */
final class RayMarch {
  private static final double STEP_M = 0.01;

  private RayMarch() {}

  /** Whether the ray meets the obstacle made larger (or smaller) by a margin on all sides. */
  static boolean meets(Obstacle obstacle, SunPath.Step step, GroundPoint from, double readingHeightM, double marginM) {
    double top = obstacle instanceof Tree tree ? tree.heightM() : ((Building) obstacle).heightM();
    double along = 0;
    while (readingHeightM + along * step.rise() <= top + marginM) {
      double x = from.xM() + along * step.east();
      double y = from.yM() + along * step.north();
      double z = readingHeightM + along * step.rise();
      if (obstacle instanceof Tree tree ? inside(tree, x, y, z, marginM) : inside((Building) obstacle, x, y, z, marginM)) {
        return true;
      }
      along += STEP_M / Math.hypot(1, step.rise());
    }
    return false;
  }

  private static boolean inside(Tree tree, double x, double y, double z, double marginM) {
    double radius = tree.crownRadiusM() + marginM;
    double height = tree.heightM() - tree.crownBaseM() + 2 * marginM;
    double up = z - tree.crownBaseM() + marginM;
    double share = up / height;
    double outwards = Math.hypot(x - tree.foot().xM(), y - tree.foot().yM()) / radius;
    return radius > 0 && height > 0 && up >= 0 && outwards * outwards + share * share <= 1;
  }

  private static boolean inside(Building building, double x, double y, double z, double marginM) {
    if (z > building.heightM() + marginM) {
      return false;
    }
    boolean holds = building.footprint().holds(x, y);
    if (marginM == 0) {
      return holds;
    }
    for (double turn = 0; turn < 2 * Math.PI; turn += Math.PI / 4) {
      boolean there = building.footprint().holds(x + marginM * Math.cos(turn), y + marginM * Math.sin(turn));
      if (marginM > 0 && there) {
        return true;
      }
    }
    return holds;
  }
}
