package guildwood.species;

import java.util.ArrayList;
import java.util.List;

/**
 * The cautions of one kind in a cell: {@code leaves: Poisonous raw.; bark: The same.} A semicolon inside a
 * sentence has a backslash before it, and so has a backslash.
 */
public final class CautionCell {
  private CautionCell() {}

  /** A caution as it stands in a cell. */
  public record Entry(String item, String text) {}

  public static String write(List<Statement> cautions) {
    return String.join("; ", cautions.stream().map(CautionCell::write).toList());
  }

  private static String write(Statement caution) {
    String detail = CautionKind.detail(caution.item());
    String text = caution.entered().replace("\\", "\\\\").replace(";", "\\;");
    return detail.isEmpty() ? text : detail + ": " + text;
  }

  public static List<Entry> read(String kind, String cell) {
    boolean hasDetail = CautionKind.of(kind).orElseThrow().detail() != CautionKind.Detail.NONE;
    List<Entry> entries = new ArrayList<>();
    for (String part : parts(cell)) {
      int colon = hasDetail ? part.indexOf(':') : -1;
      String item = hasDetail ? kind + ":" + part.substring(0, Math.max(0, colon)).strip() : kind;
      entries.add(new Entry(item, part.substring(colon + 1).strip()));
    }
    return entries;
  }

  private static List<String> parts(String cell) {
    List<String> parts = new ArrayList<>();
    StringBuilder part = new StringBuilder();
    for (int i = 0; i < cell.length(); i++) {
      char sign = cell.charAt(i);
      if (sign == '\\' && i + 1 < cell.length()) {
        part.append(cell.charAt(++i));
      } else if (sign == ';') {
        parts.add(part.toString().strip());
        part.setLength(0);
      } else {
        part.append(sign);
      }
    }
    parts.add(part.toString().strip());
    parts.removeIf(String::isEmpty);
    return parts;
  }
}
