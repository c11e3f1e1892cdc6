package guildwood.bed.sun;

import guildwood.site.sun.Building;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Rectangle;

/** The ground plan of a building, wall or hedge. */
public record Walls(Plan plan) implements Nearby.Body {
  @Override
  public Obstacle obstacle(String label, GroundPoint at, double heightM) {
    return new Building(label, plan.around(at), heightM);
  }

  /** A ground plan, told as people told it. */
  public sealed interface Plan permits Box, Corners {
    Footprint around(GroundPoint at);
  }

  /** A rectangle around its middle. */
  public record Box(Rectangle rectangle) implements Plan {
    @Override
    public Footprint around(GroundPoint at) {
      return rectangle.around(at);
    }
  }

  /** Corner after corner, seen from the point the building's place is told from. */
  public record Corners(Footprint outline) implements Plan {
    @Override
    public Footprint around(GroundPoint at) {
      return outline.moved(at);
    }
  }
}
