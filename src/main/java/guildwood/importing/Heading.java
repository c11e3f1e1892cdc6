package guildwood.importing;

import java.util.List;

/**
 * The rows of a table that say what is in its columns. What stands above them is a title, what stands below
 * them are the rows to bring in.
 *
 * @param firstRow number of the first header row
 * @param lastRow number of the last row of the heading, the row of units included
 * @param headers one for each column; empty where a column has none
 * @param units the row of units below the header, one for each column; empty strings where there is none
 */
public record Heading(long firstRow, long lastRow, List<String> headers, List<String> units) {
  public Heading {
    headers = List.copyOf(headers);
    units = List.copyOf(units);
    if (firstRow < 0 || lastRow < firstRow || units.size() != headers.size()) {
      throw new IllegalArgumentException("heading from row " + firstRow + " to " + lastRow + ", " + headers.size() + " columns");
    }
  }

  public int columns() {
    return headers.size();
  }
}
