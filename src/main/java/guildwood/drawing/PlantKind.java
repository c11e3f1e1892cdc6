package guildwood.drawing;

import guildwood.fit.Tolerance;
import guildwood.guild.Kinship;
import guildwood.species.Layer;
import java.util.Optional;

/**
 * A species of a guild as it is drawn.
 *
 * @param plants how many of it, standing ones included
 * @param standing how many of them stand there already; the first ones by number
 * @param crownM mature crown width
 * @param heightM mature height, the usual one of the layer where {@code heightAssumed}
 * @param rateAssumed whether nobody states how fast it grows, so that medium is taken
 * @param harvested whether people come to it to pick
 * @param needsSun whether it must not stand under the crowns of others
 * @param needsPartner whether it sets no fruit without a partner in reach of pollen, and none is known outside the bed
 * @param light what it bears; absent where not known
 * @param shadePercent share of the light over its crown that it takes from what stands below
 */
public record PlantKind(
    String speciesId,
    String name,
    int plants,
    int standing,
    Layer layer,
    double crownM,
    double heightM,
    boolean heightAssumed,
    GrowthRate rate,
    boolean rateAssumed,
    boolean harvested,
    boolean needsSun,
    boolean needsPartner,
    Kinship kinship,
    Optional<Tolerance> light,
    int shadePercent) {

  public PlantKind {
    if (plants < 1 || !(crownM > 0) || !(heightM > 0)) {
      throw new IllegalArgumentException(plants + " plants of " + speciesId + ", " + crownM + " m wide, " + heightM + " m tall");
    }
  }

  /** Whether it is a tree or a shrub; climbers may stand at the foot of what they climb. */
  boolean isWoody() {
    return layer.compareTo(Layer.CLIMBER) < 0;
  }

  /** Whether it is planted in groups that belong together: patches of ground cover, drifts of herbs and roots. */
  public boolean isGrouped() {
    return layer.compareTo(Layer.HERB) >= 0;
  }

  /** How much shade harms it, 0 to 1: by the hours of sun it asks for, six and more for 1. */
  double needOfLight() {
    return needsSun ? 1 : light.map(l -> Math.min(1, (l.tolerated().min() + l.preferred().min()) / 2 / 6)).orElse(0.3);
  }

  /** Ground under all its mature crowns, overlaps counted twice, m2. */
  public double crownAreaM2() {
    return plants * Math.PI * crownM * crownM / 4;
  }
}
