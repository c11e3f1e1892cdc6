package guildwood.importing.exchange;

import java.nio.charset.Charset;

/**
 * How a text file is written.
 *
 * @param markBytes length of the mark of the encoding at its beginning
 * @param separatorLine whether the first line only names the separator ({@code sep=;}) and is no row
 */
record TextFormat(Charset charset, int markBytes, boolean separatorLine, CellStyle cells) {

  /**
   * How cells are told apart.
   *
   * @param separator {@link #NONE} where the file has one column
   * @param quotes what quote marks mean
   */
  record CellStyle(char separator, Quotes quotes) {
    /** Stands in no text that people keep. */
    static final char NONE = '\uFDD0';
  }

  /** What quote marks mean in a file. */
  enum Quotes {
    /** Marks round a cell, doubled inside it (RFC 4180). */
    DOUBLED,
    /** As above, with spaces round the marks. */
    SPACED,
    /** Marks round a cell, a backslash before one inside it. */
    BACKSLASH,
    /** Marks are text like any other. */
    PLAIN
  }
}
