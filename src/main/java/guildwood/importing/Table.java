package guildwood.importing;

import guildwood.kernel.Checked;

/** One sheet of a file, read row by row; it can be read again and again. */
public interface Table {
  /** Name of the sheet; of the file where it has only one. */
  String name();

  /**
   * Hands over the rows in their order until the taker has enough. Rows with nothing in them are left out; the numbers
   * of the others tell where they were.
   *
   * @return how many rows were handed over, or why the file cannot be read further
   */
  Checked<Long> rows(RowTaker taker);

  /** Takes rows as they are read. */
  interface RowTaker {
    /** Whether to go on. */
    boolean take(TableRow row);
  }
}
