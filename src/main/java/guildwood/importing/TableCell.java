package guildwood.importing;

/**
 * One cell as it stands in a file.
 *
 * @param text what a reader of the file sees; numbers as plain decimals with a point, dates as {@code 2026-04-08}
 */
public record TableCell(String text, Kind kind) {
  public static final TableCell EMPTY = new TableCell("", Kind.TEXT);

  /** What the file says the cell holds. Text files know only text. */
  public enum Kind {
    TEXT,
    NUMBER,
    /** A spreadsheet may have made a date of a range such as 4-8; the reader of the value must be told. */
    DATE,
    YES_NO,
    /** A formula that came to no value. */
    ERROR
  }

  public static TableCell text(String text) {
    return text.isEmpty() ? EMPTY : new TableCell(text, Kind.TEXT);
  }

  public boolean isBlank() {
    return text.isBlank();
  }
}
