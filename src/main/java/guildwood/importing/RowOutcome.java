package guildwood.importing;

import guildwood.species.SpeciesNames;
import java.util.List;

/**
 * What an import does with one row.
 *
 * @param speciesId the species its values go to; empty where it is not brought
 * @param names of a new species, or those of the known one with what the row adds to them; null where not brought
 * @param namesChange whether a species that is there by then gets names that it has not yet
 * @param near ids of species of the library with nearly the same name
 * @param notes cells kept as they stand, the name where it is kept without its authors among them
 * @param unread every cell that stays out, with the reason; the whole row where it is refused
 */
public record RowOutcome(
    RowReading reading,
    RowFate fate,
    String speciesId,
    SpeciesNames names,
    boolean namesChange,
    List<String> near,
    List<ValueOutcome> values,
    List<RowReading.Note> notes,
    List<Unread> unread) {
  public RowOutcome {
    near = List.copyOf(near);
    values = List.copyOf(values);
    notes = List.copyOf(notes);
    unread = List.copyOf(unread);
  }

  public long row() {
    return reading.row();
  }

  /** The name to show: the one it is kept under, otherwise as it is written. */
  public String name() {
    return names == null ? reading.writtenName() : names.scientificName();
  }
}
