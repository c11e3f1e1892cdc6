package guildwood.importing;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Finds the rows that say what is in the columns: below titles and blank rows, over one row or two, with or without a
 * row of units.
 */
public final class HeaderFinder {
  /** So far down a header is looked for, rows. */
  static final int LOOKED_AT = 40;

  private static final Pattern NUMBER = Pattern.compile("[-−+~<>]?\\s*\\d.*");

  /** What else stands in a row of units. */
  private static final Pattern OTHER_UNITS = Pattern.compile("(?i)ph|text|name|latin|months?|yes/no|y/n|usd|eur|[$€°#%]|°c|°f|class|words?|list|number");

  private HeaderFinder() {}

  /** The heading of a table; a finding where it has no row that could be one. */
  public static Checked<Heading> find(Table table) {
    Checked<List<TableRow>> rows = firstRows(table);
    return rows.isRefused() ? Checked.refused(rows.findings()) : found(rows.orThrow());
  }

  /** The heading of a table without headers. */
  private static Heading none(int width) {
    return new Heading(0, 0, Collections.nCopies(width, ""), Collections.nCopies(width, ""));
  }

  private static Checked<Heading> found(List<TableRow> rows) {
    Optional<Heading> best = best(rows);
    if (best.isEmpty() || isTurned(rows, best.get())) {
      return Checked.refused(Finding.of(best.isEmpty() ? "import.no-header" : "import.turned", ""));
    }
    return Checked.of(best.get());
  }

  /** The heading that stands in the rows a person names, both included; row 0 where the table has none. */
  public static Checked<Heading> at(Table table, long firstRow, long lastRow) {
    Checked<List<TableRow>> rows = firstRows(table, Math.max(lastRow, LOOKED_AT));
    if (rows.isRefused()) {
      return Checked.refused(rows.findings());
    }
    if (lastRow == 0) {
      return Checked.of(none(width(rows.orThrow())));
    }
    List<TableRow> header = rows.orThrow().stream()
        .filter(r -> r.number() >= firstRow && r.number() <= lastRow && !r.isBlank()).toList();
    if (header.isEmpty() || lastRow - firstRow > 3) {
      return Checked.refused(Finding.of("import.no-header", "header"));
    }
    TableRow last = header.get(header.size() - 1);
    boolean units = header.size() > 1 && isUnits(last);
    List<TableRow> names = units ? header.subList(0, header.size() - 1) : header;
    return Checked.of(heading(names, units ? last : null, width(rows.orThrow())));
  }

  private static Checked<List<TableRow>> firstRows(Table table) {
    return firstRows(table, LOOKED_AT);
  }

  private static Checked<List<TableRow>> firstRows(Table table, long most) {
    List<TableRow> rows = new ArrayList<>();
    return table.rows(row -> {
      rows.add(row);
      return row.number() < most + 20 && rows.size() < most + 20;
    }).map(read -> List.copyOf(rows));
  }

  private static Optional<Heading> best(List<TableRow> rows) {
    int best = -1;
    double most = 0;
    int width = width(rows);
    for (int i = 0; i < Math.min(rows.size(), LOOKED_AT); i++) {
      double score = score(rows, i, width);
      if (score > most) {
        most = score;
        best = i;
      }
    }
    if (best >= 0 && isData(rows, best, width)) {
      return Optional.of(none(width));
    }
    return best < 0 ? Optional.empty() : Optional.of(around(rows, best, width));
  }

  /** Headers are words, mostly known ones, each but once, in most of the columns, with rows below them. */
  private static double score(List<TableRow> rows, int at, int width) {
    TableRow row = rows.get(at);
    List<String> texts = row.cells().stream().map(TableCell::text).map(String::strip).filter(t -> !t.isEmpty()).toList();
    if (texts.isEmpty() || texts.size() == 1 && width > 1) {
      return 0;
    }
    long known = texts.stream().filter(HeaderFinder::isKnown).count();
    long numbers = texts.stream().filter(t -> NUMBER.matcher(t).matches()).count();
    long longs = texts.stream().filter(t -> t.length() > 60).count();
    long distinct = texts.stream().map(Words::folded).distinct().count();
    double filled = (double) texts.size() / width;
    double score = filled + 3.0 * known / texts.size() + (known > 0 ? 1 : 0)
        - 2.0 * numbers / texts.size() - 1.0 * longs / texts.size() - (distinct < texts.size() ? 0.3 : 0);
    // Titles have a cell or two; what has more is a row that must not get lost above a header found too far down.
    long full = width < 3 ? 0 : rows.subList(0, at).stream().filter(r -> !isGroupRow(r, row))
        .filter(r -> r.cells().stream().filter(c -> !c.isBlank()).count() * 2 > width).count();
    // Of rows that could all be headers the first one is: what looks like one further down is data.
    return score - 0.02 * at - full;
  }

  /** A table without headers: its first row holds a name as those below it do, so it must not be taken for one and get lost. */
  private static boolean isData(List<TableRow> rows, int at, int width) {
    if (rows.subList(0, at).stream().anyMatch(r -> !r.isBlank())) {
      return false;
    }
    boolean measured = rows.get(at).cells().stream().map(c -> SpanText.read(c.text())).flatMap(Optional::stream).anyMatch(SpanText::hasUnit);
    for (int column = 0; column < width; column++) {
      String text = rows.get(at).cell(column).text().strip();
      boolean name = !isKnown(text) && (NameShape.isScientific(text) || measured && NameShape.isBinomial(text));
      if (name && NameShape.shareOfScientific(rows.subList(at + 1, rows.size()), column) > 0.5) {
        return true;
      }
    }
    return false;
  }

  /** Whether the species stand beside one another, and what is known of them below one another. */
  private static boolean isTurned(List<TableRow> rows, Heading heading) {
    long names = heading.headers().stream().skip(1).filter(NameShape::isScientific).count();
    long traits = rows.stream().map(r -> r.cell(0).text()).filter(t -> !t.isBlank() && isKnown(t)).count();
    return heading.columns() > 2 && names * 2 > heading.columns() - 1 && traits > 2;
  }

  private static Heading around(List<TableRow> rows, int at, int width) {
    List<TableRow> header = new ArrayList<>();
    if (at > 0 && isGroupRow(rows.get(at - 1), rows.get(at))) {
      header.add(rows.get(at - 1));
    }
    header.add(rows.get(at));
    int next = at + 1;
    if (next < rows.size() && isEnds(rows.get(next))) {
      header.add(rows.get(next));
      next++;
    }
    TableRow units = next < rows.size() && isUnits(rows.get(next)) ? rows.get(next) : null;
    return heading(header, units, width);
  }

  /** A row of groups stands directly above, has fewer texts than the header, no numbers, and not only a title. */
  private static boolean isGroupRow(TableRow above, TableRow header) {
    List<Integer> filled = new ArrayList<>();
    for (int i = 0; i < above.cells().size(); i++) {
      if (!above.cell(i).isBlank()) {
        filled.add(i);
      }
    }
    boolean onlyTitle = filled.size() == 1 && filled.get(0) == 0;
    boolean words = filled.stream().noneMatch(i -> NUMBER.matcher(above.cell(i).text().strip()).matches());
    long headers = header.cells().stream().filter(c -> !c.isBlank()).count();
    boolean known = filled.stream().anyMatch(i -> isKnown(above.cell(i).text()));
    return header.number() == above.number() + 1 && !filled.isEmpty() && !onlyTitle && words && known && filled.size() < headers;
  }

  /** Nothing but the two ends of ranges, the lower one among them: 'min' and 'max' below 'Height'. */
  private static boolean isEnds(TableRow row) {
    List<String> texts = row.cells().stream().map(c -> Words.folded(c.text())).filter(t -> !t.isEmpty()).toList();
    return texts.size() > 1 && texts.stream().allMatch(t -> ColumnGuess.isLow(t) || ColumnGuess.isHigh(t))
        && texts.stream().anyMatch(ColumnGuess::isLow) && texts.stream().anyMatch(ColumnGuess::isHigh);
  }

  /** Nothing but units, at the least one of them: a row of data has a name. */
  private static boolean isUnits(TableRow row) {
    List<String> texts = row.cells().stream().map(TableCell::text).map(String::strip).filter(t -> !t.isEmpty()).toList();
    List<String> bare = texts.stream().map(t -> t.replaceAll("[()\\[\\]]", "").strip()).toList();
    return bare.stream().anyMatch(t -> HeaderText.unitOf(t).isPresent())
        && bare.stream().allMatch(t -> HeaderText.unitOf(t).isPresent() || OTHER_UNITS.matcher(t).matches());
  }

  /** Whether the text heads a column of names, and could not be a name itself. */
  static boolean isNameHeader(String text) {
    return HeaderWords.meanings(Words.folded(text)).stream()
        .anyMatch(m -> m.is(Meaning.Kind.SCIENTIFIC_NAME) || m.is(Meaning.Kind.COMMON_NAMES) || m.is(Meaning.Kind.GENUS));
  }

  static boolean isKnown(String header) {
    HeaderText text = HeaderText.read(header);
    return text.phrases().stream().anyMatch(p -> !HeaderWords.meanings(p).isEmpty())
        || MonthWords.month(Words.folded(header)).isPresent() && !NUMBER.matcher(header.strip()).matches();
  }

  private static int width(List<TableRow> rows) {
    int width = 0;
    for (TableRow row : rows) {
      for (int i = row.cells().size(); i > width; i--) {
        if (!row.cell(i - 1).isBlank()) {
          width = i;
        }
      }
    }
    return Math.max(1, width);
  }

  /** Where a group stands over several columns, spreadsheets keep it in the first of them only. */
  private static Heading heading(List<TableRow> rows, TableRow units, int width) {
    List<String> headers = new ArrayList<>();
    String[] carried = new String[rows.size()];
    Arrays.fill(carried, "");
    for (int column = 0; column < width; column++) {
      List<String> parts = new ArrayList<>();
      int lowest = -1;
      for (int i = 0; i < rows.size(); i++) {
        String text = rows.get(i).cell(column).text().strip();
        lowest = text.isEmpty() ? lowest : i;
        if (!text.isEmpty()) {
          // A new group ends those below it.
          Arrays.fill(carried, i, rows.size(), "");
          carried[i] = text;
        }
      }
      for (int i = 0; i <= lowest; i++) {
        String own = rows.get(i).cell(column).text().strip();
        parts.add(own.isEmpty() && i < lowest ? carried[i] : own);
      }
      headers.add(oneLine(String.join(" ", parts)));
    }
    List<String> below = new ArrayList<>(Collections.nCopies(width, ""));
    for (int column = 0; units != null && column < width; column++) {
      below.set(column, oneLine(units.cell(column).text().replaceAll("[()\\[\\]]", "")));
    }
    long last = units == null ? rows.get(rows.size() - 1).number() : units.number();
    return new Heading(rows.get(0).number(), last, headers, below);
  }

  private static String oneLine(String text) {
    String line = text.replaceAll("(?<=\\p{Ll})-\\s*\\n\\s*(?=\\p{Ll})", "").replaceAll("\\s+", " ").strip();
    return line.length() > 120 ? line.substring(0, 120) : line;
  }
}
