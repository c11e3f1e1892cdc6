package guildwood.drawing;

import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Tree;
import java.util.List;

/**
 * The ground a guild is arranged on, metres east and north of the bed's middle.
 *
 * @param south whether it lies south of the equator, where the sun stands in the north and tall plants go to the south
 * @param traced whether the outline was traced on the site's plan; otherwise it is the bed's rectangle
 * @param paths those that run through the bed or beside it
 * @param trees those recorded around the bed, plants of the guild not among them
 */
public record BedGround(Footprint outline, boolean south, boolean traced, List<Strip> paths, List<Tree> trees) {
  public BedGround {
    paths = List.copyOf(paths);
    trees = List.copyOf(trees);
  }

  /** A bare outline north of the equator. */
  public static BedGround of(Footprint outline) {
    return new BedGround(outline, false, false, List.of(), List.of());
  }

  /** A path: its middle line and its width from edge to edge. */
  public record Strip(String name, List<GroundPoint> line, double widthM) {
    public Strip {
      line = List.copyOf(line);
      if (line.size() < 2 || !(widthM > 0)) {
        throw new IllegalArgumentException("no path " + name + " of " + line.size() + " points, " + widthM + " m wide");
      }
    }
  }

  /** Trees whose trunk stands in the bed. */
  public List<Tree> treesInside() {
    return trees.stream().filter(t -> outline.holds(t.foot().xM(), t.foot().yM())).toList();
  }
}
