package guildwood.importing;

import guildwood.kernel.Finding;

/**
 * A cell that cannot be read, kept as it is.
 *
 * @param row number of the row in the table
 * @param column from 0; -1 where it is about the whole row
 * @param text the whole cell, also where only part of it cannot be read
 */
public record Unread(long row, int column, String header, String text, Finding reason) {
  public static final int WHOLE_ROW = -1;
}
