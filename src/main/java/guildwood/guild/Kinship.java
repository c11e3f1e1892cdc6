package guildwood.guild;

/**
 * Where a candidate stands among its relatives.
 *
 * @param genus first word of the name
 * @param species the name without a cultivar's epithet; plants that share it can pollinate each other
 * @param cultivar true for a named clone, of which two plants are one and the same
 */
public record Kinship(String genus, String species, boolean cultivar) {
  static Kinship of(guildwood.species.Species species) {
    String name = species.scientificName();
    int quote = name.indexOf('\'') >= 0 ? name.indexOf('\'') : name.indexOf('‘');
    String bare = quote < 0 ? name : name.substring(0, quote).strip();
    return new Kinship(species.genus(), bare, quote >= 0);
  }
}
