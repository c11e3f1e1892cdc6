package guildwood.importing.web;

import guildwood.importing.ColumnMapping;
import guildwood.importing.ColumnUnit;
import guildwood.importing.DataRows;
import guildwood.importing.Mapping;
import guildwood.importing.Meaning.Kind;
import guildwood.importing.ReadValue;
import guildwood.importing.RowReader;
import guildwood.importing.RowReading;
import guildwood.importing.Suggestion;
import guildwood.importing.TableRow;
import guildwood.importing.Unread;
import guildwood.kernel.Finding;
import guildwood.species.Trait;
import guildwood.species.web.ValueWords;
import guildwood.web.Messages;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts columns beside what is read of them, for one visitor. */
final class ColumnViews {
  private static final int CELLS = 10;
  /** Of these so many at most are cells that cannot be read, wherever in the sample they stand. */
  private static final int UNREAD_CELLS = 5;
  private static final int LONGEST_TEXT = 160;
  /** So many rows are read anew whenever something is chosen. */
  private static final int ROWS_READ = 150;
  private static final String UNIT_REASON = "reason.unit-";

  private final Messages messages;
  private final ValueWords words;
  private final Topics topics;
  private final Mapping mapping;
  private final List<Finding> findings;
  private final List<Suggestion> suggestions;
  private final List<TableRow> rows;
  private final List<RowReading> readings;

  ColumnViews(Messages messages, ValueWords words, Mapping mapping, List<Suggestion> suggestions, Sample sample) {
    this.messages = messages;
    this.words = words;
    this.topics = new Topics(messages, words);
    this.mapping = mapping;
    this.findings = mapping.findings();
    this.suggestions = suggestions;
    RowReader reader = new RowReader(mapping);
    this.rows = DataRows.of(sample, mapping.heading()).first(ROWS_READ).orThrow();
    this.readings = rows.stream().map(reader::read).toList();
  }

  Topics topics() {
    return topics;
  }

  ColumnView view(ColumnMapping column) {
    Optional<Suggestion> suggestion = suggestions.stream().filter(s -> s.column().column() == column.column()).findFirst();
    boolean asSuggested = suggestion.isPresent() && suggestion.get().column().meaning().equals(column.meaning());
    boolean sameUnit = asSuggested && suggestion.get().column().unit() == column.unit();
    List<String> reasons = asSuggested
        ? suggestion.get().reasons().stream().filter(r -> sameUnit || !r.code().contains(UNIT_REASON)).map(messages::say).toList() : List.of();
    String field = "column-" + column.column();
    String problem = findings.stream().filter(f -> f.field().equals(field)).map(messages::say).collect(Collectors.joining(" "));
    return new ColumnView(column.column(), ColumnView.letter(column.column()), column.header(), Topics.about(column.meaning()),
        column.meaning().key(), topics.details(column.meaning()), column.unit().key(), units(column), takesList(column),
        column.separator(), column.asksForUnit(), reasons, problem, cells(column));
  }

  private List<Topics.Option> units(ColumnMapping column) {
    return ColumnUnit.choices(column.meaning()).stream()
        .map(unit -> new Topics.Option(unit.key(), messages.say("import.unit." + unit.key()))).toList();
  }

  private static boolean takesList(ColumnMapping column) {
    return switch (column.meaning().kind()) {
      case COMMON_NAMES, SYNONYMS, ITEMS, CAUTIONS, USES_AND_JOBS -> true;
      case VALUE -> column.meaning().trait().map(Trait::shape)
          .filter(s -> s == Trait.Shape.WORDS || s == Trait.Shape.MONTHS || s == Trait.Shape.SEASONS).isPresent();
      default -> false;
    };
  }

  private List<ColumnView.Cell> cells(ColumnMapping column) {
    List<ColumnView.Cell> shown = new ArrayList<>();
    List<ColumnView.Cell> others = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < rows.size(); i++) {
      String text = rows.get(i).cell(column.column()).text().strip();
      if (!text.isEmpty() && seen.add(text)) {
        ColumnView.Cell cell = cell(column, rows.get(i).number(), text, readings.get(i));
        if (!cell.fate().equals("unread")) {
          others.add(cell);
        } else if (shown.size() < UNREAD_CELLS) {
          shown.add(cell);
        }
      }
    }
    others.stream().limit(CELLS - shown.size()).forEach(shown::add);
    shown.sort(Comparator.comparing(ColumnView.Cell::row));
    return List.copyOf(shown);
  }

  private ColumnView.Cell cell(ColumnMapping column, long row, String text, RowReading reading) {
    String shown = text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) + "…" : text;
    Optional<Unread> unread = reading.unreadOf(column.column()).stream().findFirst();
    List<ReadValue> values = reading.valuesOf(column.column());
    String said = values.stream().map(value -> say(column, value)).collect(Collectors.joining("; "));
    if (unread.isPresent()) {
      String reason = messages.say(unread.get().reason());
      return new ColumnView.Cell(row, shown, "unread", said.isEmpty() ? reason : said + ". " + reason);
    }
    if (!values.isEmpty()) {
      return new ColumnView.Cell(row, shown, "read", said);
    }
    return other(column, row, shown, reading);
  }

  /** Names, notes and the like, which make no value. */
  private ColumnView.Cell other(ColumnMapping column, long row, String text, RowReading reading) {
    Kind kind = column.meaning().kind();
    return switch (kind) {
      case NOTE -> new ColumnView.Cell(row, text, "note", messages.say("import.cell.note"));
      case IGNORED -> new ColumnView.Cell(row, text, "left", messages.say("import.cell.left"));
      case SCIENTIFIC_NAME, GENUS, EPITHET, LOWER_RANK, CULTIVAR -> new ColumnView.Cell(row, text, "read", reading.writtenName());
      case COMMON_NAMES -> new ColumnView.Cell(row, text, "read", String.join("; ", reading.common()));
      case SYNONYMS -> new ColumnView.Cell(row, text, "read", String.join("; ", reading.synonyms()));
      case FAMILY -> new ColumnView.Cell(row, text, "read", reading.family());
      case ON_HAND -> number(row, text, reading.plantsOnHand().isPresent(), "import.cell.on-hand", reading.plantsOnHand().orElse(0));
      case PRICE -> number(row, text, reading.priceCents().isPresent(), "import.cell.price", reading.priceCents().orElse(0) / 100.0);
      default -> reading.silent().contains(column.column()) && column.meaning().trait().isPresent()
          ? new ColumnView.Cell(row, text, "silent", messages.say("import.cell.silent"))
          : new ColumnView.Cell(row, text, "read", messages.say("import.cell.taken"));
    };
  }

  private ColumnView.Cell number(long row, String text, boolean read, String key, double number) {
    return read ? new ColumnView.Cell(row, text, "read", messages.say(key, number))
        : new ColumnView.Cell(row, text, "silent", messages.say("import.cell.silent"));
  }

  private String say(ColumnMapping column, ReadValue value) {
    String said = words.value(value.statement("import"));
    boolean named = column.meaning().trait().equals(Optional.of(value.trait())) && column.meaning().item().equals(value.item());
    return named ? said : messages.say("topic", words.topic(value.trait(), value.item()), said);
  }
}
