package guildwood.species.exchange;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from taking text for a formula, as the OWASP page on CSV injection advises: text that
 * begins with one of its signs gets an apostrophe in front. Plain numbers, negative ones too, stay numbers.
 */
public final class SafeCell {
  private static final String SIGNS = "[=+\\-@\\t\\r＝＋－＠]";
  private static final Pattern RISKY = Pattern.compile("'*" + SIGNS + ".*", Pattern.DOTALL);
  private static final Pattern MARKED = Pattern.compile("'+" + SIGNS + ".*", Pattern.DOTALL);
  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  private SafeCell() {}

  public static String mark(String text) {
    return RISKY.matcher(text).matches() && !NUMBER.matcher(text).matches() ? "'" + text : text;
  }

  /** Takes back {@link #mark}; cells that never went through it stay as they are. */
  public static String unmark(String cell) {
    return MARKED.matcher(cell).matches() ? cell.substring(1) : cell;
  }
}
