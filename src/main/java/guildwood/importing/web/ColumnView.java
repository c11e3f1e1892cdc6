package guildwood.importing.web;

import java.util.List;

/**
 * One column of the table, what it is taken for, and what is read of it.
 *
 * @param letter as a spreadsheet names the column
 * @param about key of what it is about
 * @param details what it can say of that; one only where there is nothing to choose
 * @param units to choose from; one only where it has none
 * @param takesList whether a cell can hold several entries
 * @param asks whether the unit must be named before the column is brought in
 * @param reasons why it is taken for this; empty where a person said so
 * @param problem what is wrong with it; empty where nothing is
 */
record ColumnView(int column, String letter, String header, String about, String detail, List<Topics.Option> details, String unit,
    List<Topics.Option> units, boolean takesList, String separator, boolean asks, List<String> reasons, String problem, List<Cell> cells) {

  /** The column's place as a spreadsheet writes it: A to Z, then AA. */
  static String letter(int column) {
    String last = String.valueOf((char) ('A' + column % 26));
    return column < 26 ? last : letter(column / 26 - 1) + last;
  }

  /**
   * A cell beside what is made of it.
   *
   * @param fate key: {@code read}, {@code unread}, {@code silent}, {@code note}, {@code left}
   * @param reading the value in words, or why there is none
   */
  record Cell(long row, String text, String fate, String reading) {}
}
