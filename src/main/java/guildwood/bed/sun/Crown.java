package guildwood.bed.sun;

import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Tree;

/**
 * The crown of a tree or shrub.
 *
 * @param baseM height of the lowest leafy branches
 * @param lightInLeaf share of direct sun let through in leaf, 0 to 1
 * @param lightBare the same when bare
 */
public record Crown(double baseM, double radiusM, double lightInLeaf, double lightBare, boolean evergreen) implements Nearby.Body {
  /** Shares of light a crown lets through where nobody says otherwise. Our own choice, no publication. */
  public static final double USUAL_LIGHT_IN_LEAF = 0.1;
  public static final double USUAL_LIGHT_BARE = 0.6;

  @Override
  public Obstacle obstacle(String label, GroundPoint at, double heightM) {
    return new Tree(label, at, heightM, baseM, radiusM, lightInLeaf, lightBare, evergreen);
  }
}
