package guildwood.species.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines of a note as they stand in cells: characters that no text file carries safely are written by their number,
 * as {@code \\u000D}, and a backslash is written twice.
 */
final class NoteLine {
  private static final Pattern ESCAPED = Pattern.compile("\\\\(\\\\|u([0-9A-F]{4}))");

  private NoteLine() {}

  static List<String> split(String text) {
    return Arrays.stream(text.split("\n", -1)).map(NoteLine::written).toList();
  }

  private static String written(String line) {
    StringBuilder written = new StringBuilder(line.length());
    for (int i = 0; i < line.length(); i++) {
      char sign = line.charAt(i);
      if (Character.isISOControl(sign)) {
        written.append(String.format("\\u%04X", (int) sign));
      } else {
        written.append(sign == '\\' ? "\\\\" : String.valueOf(sign));
      }
    }
    return written.toString();
  }

  static String read(String cell) {
    return ESCAPED.matcher(cell).replaceAll(found -> found.group(2) == null
        ? Matcher.quoteReplacement("\\")
        : Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(found.group(2), 16))));
  }
}
