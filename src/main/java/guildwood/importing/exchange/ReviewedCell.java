package guildwood.importing.exchange;

import guildwood.kernel.Finding;
import java.util.List;

/**
 * A cell that is kept as it is.
 *
 * @param name of the row's species
 * @param column from 0; -1 for the whole row
 * @param code of the reason, empty for a note
 * @param args of the reason
 */
public record ReviewedCell(long row, String name, int column, String header, String text, String code, List<String> args) {
  public Finding reason() {
    return new Finding(code, "", args);
  }

  public boolean isWholeRow() {
    return column < 0;
  }
}
