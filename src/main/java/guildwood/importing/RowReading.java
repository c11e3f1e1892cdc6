package guildwood.importing;

import java.util.List;
import java.util.OptionalInt;

/**
 * One row, read. Every cell of it that is not blank is in a value, a note, the names, the unread ones, or among
 * those that say nothing.
 *
 * @param writtenName the scientific name as it stands in the row, put together where it is split; may be empty
 * @param speciesId a key of the library named in the row; may be empty
 * @param common common names; the same for the other names
 * @param used columns that went into the names, what is at hand, or the source
 * @param silent columns whose cell says that nothing is known, such as n/a, or a no where only a yes is kept
 */
public record RowReading(
    long row,
    String writtenName,
    String speciesId,
    List<String> common,
    String family,
    List<String> synonyms,
    List<ReadValue> values,
    List<Note> notes,
    List<Unread> unread,
    List<Integer> used,
    List<Integer> silent,
    OptionalInt plantsOnHand,
    OptionalInt priceCents,
    RowSource source) {
  public RowReading {
    common = List.copyOf(common);
    synonyms = List.copyOf(synonyms);
    values = List.copyOf(values);
    notes = List.copyOf(notes);
    unread = List.copyOf(unread);
    used = List.copyOf(used);
    silent = List.copyOf(silent);
  }

  /** A cell that is kept as it stands. */
  public record Note(int column, String header, String text) {}

  /** Where the row says its values come from; all empty where it does not say. */
  public record RowSource(String title, String author, String year, String place) {
    public static final RowSource NONE = new RowSource("", "", "", "");
  }

  /** The values that a column went into. */
  public List<ReadValue> valuesOf(int column) {
    return values.stream().filter(value -> value.columns().contains(column)).toList();
  }

  /** Why a cell cannot be read, or not all of it. */
  public List<Unread> unreadOf(int column) {
    return unread.stream().filter(cell -> cell.column() == column).toList();
  }
}
