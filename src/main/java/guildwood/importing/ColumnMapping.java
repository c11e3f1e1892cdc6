package guildwood.importing;

/**
 * What one column of a table means.
 *
 * @param column from 0
 * @param header as it stands in the table; its rows joined by a space where there are several
 * @param separator between the entries of a list in one cell; empty where any usual one is taken
 */
public record ColumnMapping(int column, String header, Meaning meaning, ColumnUnit unit, String separator) {
  public static final int LONGEST_SEPARATOR = 5;

  public ColumnMapping {
    if (column < 0 || separator.length() > LONGEST_SEPARATOR) {
      throw new IllegalArgumentException("column " + column + ", separator '" + separator + "'");
    }
  }

  public static ColumnMapping of(int column, String header, Meaning meaning, ColumnUnit unit) {
    return new ColumnMapping(column, header, meaning, unit, "");
  }

  /** Another meaning; the unit stays where it can. */
  public ColumnMapping with(Meaning other) {
    boolean keeps = ColumnUnit.choices(other).contains(unit);
    return new ColumnMapping(column, header, other, keeps ? unit : ColumnUnit.AS_WRITTEN, separator);
  }

  public ColumnMapping with(ColumnUnit other) {
    return new ColumnMapping(column, header, meaning, other, separator);
  }

  ColumnMapping at(int place) {
    return new ColumnMapping(place, header, meaning, unit, separator);
  }

  /** Whether the column waits for somebody to name its unit. */
  public boolean asksForUnit() {
    return unit == ColumnUnit.NOT_KNOWN;
  }
}
