package guildwood.importing;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.species.SpeciesLibrary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Proposes what the columns of a table mean, from their headers and from what stands in them. */
public final class MappingSuggester {
  /** Rows looked at. */
  static final int SAMPLE = 300;

  private static final double EPITHETS = 0.75;

  private final SpeciesLibrary library;

  /** @param library whose species help to tell feet from metres, where the table names some of them */
  public MappingSuggester(SpeciesLibrary library) {
    this.library = library;
  }

  /** A suggestion for every column of a table. */
  public Checked<MappingSuggestion> suggest(Table table, Heading heading) {
    return DataRows.of(table, heading).first(SAMPLE).map(rows -> suggest(heading, titleOf(table, heading), rows));
  }

  /** What stands above the heading, and the name of the sheet: months without a word of their own may be told by it. */
  private static String titleOf(Table table, Heading heading) {
    StringBuilder title = new StringBuilder(table.name());
    table.rows(row -> {
      boolean above = row.number() < heading.firstRow();
      if (above) {
        row.cells().forEach(cell -> title.append(' ').append(cell.text()));
      }
      return above && title.length() < 2000;
    });
    return title.toString();
  }

  private MappingSuggestion suggest(Heading heading, String title, List<TableRow> rows) {
    List<Suggestion> columns = new ArrayList<>();
    for (int column = 0; column < heading.columns(); column++) {
      columns.add(new ColumnGuess(heading, column, title, rows).best());
    }
    namesApart(columns, heading, title, rows);
    pairsOnly(columns);
    onceOnly(columns);
    longFormOnly(columns);
    List<Suggestion> settled = new UnitGuess(library, rows).settle(columns);
    return new MappingSuggestion(heading, new NeighbourColumns(rows).settle(settled));
  }

  /** Where no column is headed as the scientific name, the one whose cells look most like it is. */
  private static void namesApart(List<Suggestion> columns, Heading heading, String title, List<TableRow> rows) {
    boolean named = columns.stream().anyMatch(s -> s.column().meaning().is(Meaning.Kind.SCIENTIFIC_NAME))
        || columns.stream().anyMatch(s -> s.column().meaning().is(Meaning.Kind.GENUS))
            && columns.stream().anyMatch(s -> s.column().meaning().is(Meaning.Kind.EPITHET));
    if (named) {
      return;
    }
    for (int i = 0; i + 1 < columns.size(); i++) {
      if (columns.get(i).column().meaning().is(Meaning.Kind.GENUS) && NameShape.shareOfEpithets(rows, i + 1) > EPITHETS) {
        ColumnMapping beside = columns.get(i + 1).column();
        columns.set(i + 1, new Suggestion(beside.with(Meaning.of(Meaning.Kind.EPITHET)), 80, List.of(Finding.of("import.reason.beside-genus", ""))));
        return;
      }
    }
    int best = -1;
    double most = 0.6;
    for (int i = 0; i < columns.size(); i++) {
      double share = NameShape.shareOfScientific(rows, i);
      if (share > most) {
        most = share;
        best = i;
      }
    }
    if (best >= 0) {
      ColumnMapping old = columns.get(best).column();
      columns.set(best, new Suggestion(old.with(Meaning.NAME), (int) Math.round(most * 80),
          List.of(Finding.of("import.reason.looks-like-names", "", (int) Math.round(most * 100)))));
    }
  }

  /** An end without its other end is a whole value where it can be one. */
  private static void pairsOnly(List<Suggestion> columns) {
    for (int i = 0; i < columns.size(); i++) {
      Meaning meaning = columns.get(i).column().meaning();
      if (!EndPair.isEnd(columns.get(i).column())) {
        continue;
      }
      Meaning.Kind other = meaning.is(Meaning.Kind.LOWEST) ? Meaning.Kind.HIGHEST : Meaning.Kind.LOWEST;
      boolean paired = columns.stream().anyMatch(s -> s.column().meaning().is(other) && s.column().meaning().trait().equals(meaning.trait()));
      boolean whole = columns.stream().anyMatch(s -> s.column().meaning().is(Meaning.Kind.VALUE) && s.column().meaning().trait().equals(meaning.trait()));
      if (!paired && whole) {
        columns.set(i, note(columns.get(i), "import.reason.other-end-missing"));
      }
    }
  }

  /** What only one column can say stays with the surest; the others become notes. */
  private static void onceOnly(List<Suggestion> columns) {
    boolean whole = columns.stream().anyMatch(s -> s.column().meaning().is(Meaning.Kind.SCIENTIFIC_NAME));
    Set<Meaning> taken = new HashSet<>();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      order.add(i);
    }
    order.sort((a, b) -> columns.get(b).certainty() - columns.get(a).certainty());
    for (int i : order) {
      Meaning meaning = columns.get(i).column().meaning();
      boolean part = whole && (meaning.is(Meaning.Kind.GENUS) || meaning.is(Meaning.Kind.EPITHET));
      boolean end = EndPair.isEnd(columns.get(i).column());
      if (part) {
        columns.set(i, note(columns.get(i), "import.reason.part-of-name"));
      } else if ((meaning.kind().onlyOnce() || end) && !taken.add(meaning)) {
        columns.set(i, note(columns.get(i), "import.reason.another-column"));
      }
    }
  }

  /** One value a row: only where both the trait and the value have a column. */
  private static void longFormOnly(List<Suggestion> columns) {
    boolean isLong = new Mapping(new Heading(0, 0, List.of(), List.of()), columns.stream().map(Suggestion::column).toList()).isLong();
    boolean hasNote = columns.stream().anyMatch(s -> s.column().meaning().is(Meaning.Kind.VALUE_NOTE));
    for (int i = 0; i < columns.size(); i++) {
      Suggestion suggestion = columns.get(i);
      Meaning.Kind kind = suggestion.column().meaning().kind();
      boolean partOfLong = kind.ordinal() >= Meaning.Kind.TRAIT_NAME.ordinal() && kind.ordinal() <= Meaning.Kind.VALUE_NOTE.ordinal();
      if (!isLong && partOfLong) {
        columns.set(i, note(suggestion, "import.reason.nothing"));
      } else if (isLong && !hasNote && kind == Meaning.Kind.NOTE && Words.folded(suggestion.column().header()).matches("notes?|remarks?|comments?")) {
        columns.set(i, new Suggestion(suggestion.column().with(Meaning.of(Meaning.Kind.VALUE_NOTE)), suggestion.certainty(), suggestion.reasons()));
        hasNote = true;
      }
    }
  }

  private static Suggestion note(Suggestion suggestion, String reason) {
    return new Suggestion(suggestion.column().with(Meaning.NOTE), suggestion.certainty(), List.of(Finding.of(reason, "")));
  }

  /** The mapping to start from: a saved one where it fits, otherwise what is suggested. */
  public static Mapping start(MappingSuggestion suggestion, Optional<Mapping> saved) {
    return saved.map(mapping -> mapping.onto(suggestion.mapping())).orElse(suggestion.mapping());
  }
}
