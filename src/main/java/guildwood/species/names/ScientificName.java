package guildwood.species.names;

import java.util.List;

/**
 * A plant name taken apart, after the International Code of Nomenclature for algae, fungi, and plants
 * (names, ranks, hybrids) and the cultivated-plant code (cultivar and Group).
 *
 * @param intergeneric true for a named hybrid of two genera, {@code × Sorbaronia}
 * @param epithet of the species; empty where only a genus is named
 * @param hybrid true for a named hybrid of two species, {@code Quercus × bebbiana}
 * @param lower ranks below the species in the order written
 * @param cultivar without its quotes; may be empty
 * @param group cultivated-plant Group; may be empty
 * @param parents both sides of a hybrid formula as written; empty where it is none
 * @param authors author citation as written, of the last rank that has one; may be empty
 * @param reserve what the writer left open
 */
public record ScientificName(
    boolean intergeneric,
    String genus,
    String epithet,
    boolean hybrid,
    List<LowerRank> lower,
    String cultivar,
    String group,
    List<String> parents,
    String authors,
    Reserve reserve) {

  /** A rank below the species; {@code rank} is empty where none was written. */
  public record LowerRank(String rank, String epithet) {}

  /** A reservation about which plant is meant. */
  public enum Reserve {
    NONE,
    /** {@code sp.}, {@code spp.}: the species was not determined. */
    SPECIES_OPEN,
    /** {@code cf.}, {@code aff.}: like the named species, perhaps it. */
    UNCERTAIN,
    /** {@code agg.}, {@code s.l.}: the species with its close relatives. */
    WIDE,
    /** {@code s.str.}: without its close relatives. */
    NARROW
  }

  public ScientificName {
    lower = List.copyOf(lower);
    parents = List.copyOf(parents);
    if (genus.isEmpty() && parents.isEmpty()) {
      throw new IllegalArgumentException("a name needs a genus or parents");
    }
  }

  /** Name without authors: ranks abbreviated as the codes recommend, the hybrid sign set apart. */
  public String canonical() {
    if (!parents.isEmpty()) {
      return String.join(" × ", parents);
    }
    StringBuilder name = new StringBuilder(species());
    for (LowerRank rank : lower) {
      name.append(rank.rank().isEmpty() ? "" : " " + rank.rank()).append(' ').append(rank.epithet());
    }
    if (!group.isEmpty()) {
      name.append(' ').append(group).append(" Group");
    }
    if (!cultivar.isEmpty()) {
      name.append(" '").append(cultivar).append('\'');
    }
    return name.toString();
  }

  /** Genus and species epithet only; the genus alone where no species is named. */
  public String species() {
    String start = (intergeneric ? "× " : "") + genus;
    return epithet.isEmpty() ? start : start + (hybrid ? " × " : " ") + epithet;
  }

  /** Whether it names a species, and nothing narrower. */
  public boolean isSpecies() {
    return !epithet.isEmpty() && lower.isEmpty() && cultivar.isEmpty() && group.isEmpty();
  }

  /** Whether it names something narrower than a species. */
  public boolean isBelowSpecies() {
    return !epithet.isEmpty() && !isSpecies();
  }
}
