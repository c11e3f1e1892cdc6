package guildwood.materials;

/**
 * Plants that a saved guild still needs and that neither stand, lie ready nor can be raised.
 *
 * @param bed the bed they are for
 */
public record PlantsToBuy(String name, String scientificName, int count, String bed) {
  public PlantsToBuy {
    if (count < 1) {
      throw new IllegalArgumentException(count + " plants of " + scientificName);
    }
  }
}
