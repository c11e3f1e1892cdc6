package guildwood.drawing;

/** Which plants can pollinate one another: two seedlings of a species, or two different entries of it; never one clone. */
final class Partners {
  private Partners() {}

  static boolean serve(PlantKind one, PlantKind other) {
    return one.kinship().species().equals(other.kinship().species())
        && (!one.speciesId().equals(other.speciesId()) || !one.kinship().cultivar());
  }
}
