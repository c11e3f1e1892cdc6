package guildwood.guild;

import guildwood.species.Layer;
import java.util.OptionalDouble;

/**
 * The room a plant takes when grown.
 *
 * @param layer the uppermost layer it can fill
 * @param crownDm2 ground under its mature crown, square decimetres
 * @param heightM mature height; absent where not known
 */
public record Stature(Layer layer, int crownDm2, OptionalDouble heightM) {
  public Stature {
    if (crownDm2 < 1 || crownDm2 > 2_000_000) {
      throw new IllegalArgumentException("a crown of " + crownDm2 + " dm2");
    }
  }

  /**
   * Share of the light over its crown that it takes from what stands below, percent. A rule of thumb of
   * ours, falling with height; no publication.
   */
  public int shadePercent() {
    return switch (layer) {
      case TALL_TREE -> 60;
      case SMALL_TREE -> 50;
      case SHRUB -> 40;
      case CLIMBER -> 20;
      case HERB -> 10;
      case GROUND_COVER, ROOT -> 0;
    };
  }

  /** Crown width where nobody states one, metres. Common practice, no source; the candidate says so. */
  static double usualCrownM(Layer layer) {
    return switch (layer) {
      case TALL_TREE -> 10;
      case SMALL_TREE -> 5;
      case SHRUB -> 1.8;
      case CLIMBER -> 1.5;
      case HERB -> 0.6;
      case GROUND_COVER -> 0.5;
      case ROOT -> 0.3;
    };
  }

  static int crownDm2(double widthM) {
    return (int) Math.max(1, Math.round(StrictMath.PI * widthM * widthM / 4 * 100));
  }
}
