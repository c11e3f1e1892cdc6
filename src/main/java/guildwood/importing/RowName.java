package guildwood.importing;

import guildwood.importing.Meaning.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The scientific name in a row, put together where it stands in several columns.
 *
 * @param written empty where the row names none
 * @param columns where it stood
 */
record RowName(String written, List<Integer> columns) {
  private static final List<Kind> PARTS = List.of(Kind.GENUS, Kind.EPITHET, Kind.LOWER_RANK, Kind.CULTIVAR);

  RowName {
    columns = List.copyOf(columns);
  }

  static RowName of(Mapping mapping, TableRow row) {
    List<Integer> columns = new ArrayList<>();
    String whole = part(mapping, row, Kind.SCIENTIFIC_NAME, columns);
    String genus = part(mapping, row, Kind.GENUS, columns);
    String epithet = part(mapping, row, Kind.EPITHET, columns);
    String lower = part(mapping, row, Kind.LOWER_RANK, columns);
    String cultivar = part(mapping, row, Kind.CULTIVAR, columns);
    String name = whole.isEmpty() ? joined(genus, epithet) : whole;
    if (name.isEmpty()) {
      return new RowName("", columns);
    }
    if (!lower.isEmpty() && !Words.folded(name).contains(Words.folded(lower))) {
      name += " " + (lower.matches("(?i)(var|subsp|ssp|f|forma)\\.? .*") ? lower : rank(mapping, row) + lower);
    }
    if (!cultivar.isEmpty() && !Words.folded(name).contains(Words.folded(cultivar))) {
      name += " '" + cultivar.replaceAll("^['‘’\"]|['‘’\"]$", "") + "'";
    }
    return new RowName(name.strip(), columns);
  }

  static boolean isPart(Kind kind) {
    return kind == Kind.SCIENTIFIC_NAME || PARTS.contains(kind);
  }

  /** As a column of ranks or the header says; without either a variety, as in tables of gardeners. */
  private static String rank(Mapping mapping, TableRow row) {
    for (ColumnMapping column : mapping.columns()) {
      String cell = row.cell(column.column()).text().strip();
      if (Words.folded(column.header()).matches("(infra ?)?(specific )?rank( type)?") && cell.matches("(?i)(var|subsp|ssp|f)\\.?|variety|subspecies|forma?")) {
        return cell.toLowerCase(Locale.ROOT).replaceAll("^variety$", "var").replaceAll("^(subspecies|ssp\\.?)$", "subsp").replaceAll("^forma?$", "f")
            .replaceAll("\\.$", "") + ". ";
      }
    }
    String header = mapping.first(Kind.LOWER_RANK).map(c -> Words.folded(c.header())).orElse("");
    return header.matches(".*\\b(subspecies|subsp|ssp)\\b.*") && !header.contains("var") ? "subsp. " : "var. ";
  }

  private static String joined(String genus, String epithet) {
    boolean repeats = !genus.isEmpty() && Words.folded(epithet).startsWith(Words.folded(genus) + " ");
    return repeats ? epithet : (genus + " " + epithet).strip();
  }

  private static String part(Mapping mapping, TableRow row, Kind kind, List<Integer> columns) {
    Optional<ColumnMapping> column = mapping.first(kind);
    String text = column.map(c -> row.cell(c.column()).text().replaceAll("\\p{Cntrl}+", " ").strip()).orElse("");
    if (!text.isEmpty()) {
      columns.add(column.orElseThrow().column());
    }
    return YesNo.saysNothing(text) ? "" : text;
  }
}
