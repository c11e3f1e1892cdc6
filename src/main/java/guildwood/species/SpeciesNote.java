package guildwood.species;

/**
 * Something kept with a species that no trait takes, as it stood in a table: one line a cell, its header before a colon.
 *
 * @param id key in the library
 */
public record SpeciesNote(long id, String speciesId, String text, String sourceId) {
  public static final int LONGEST = 1_000_000;
}
