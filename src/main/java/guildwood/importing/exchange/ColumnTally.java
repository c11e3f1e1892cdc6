package guildwood.importing.exchange;

/**
 * What became of the cells of a column that are not blank.
 *
 * @param column from 0
 * @param read into values or names
 * @param silent that say nothing is known
 */
public record ColumnTally(int column, long read, long notes, long unread, long silent) {}
