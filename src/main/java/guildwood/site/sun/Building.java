package guildwood.site.sun;

/**
 * A house, shed, wall or hedge that lets no sun through: upright walls on a footprint, flat on top. Ground
 * inside the footprint gets none.
 */
public record Building(String label, Footprint footprint, double heightM) implements Obstacle {
  public Building {
    if (!HEIGHT_M.contains(heightM)) {
      throw new IllegalArgumentException(label + " cannot be " + heightM + " m tall");
    }
  }

  @Override
  public double letsThrough(boolean inLeaf) {
    return 0;
  }
}
