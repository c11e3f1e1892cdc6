package guildwood.importing;

import guildwood.importing.CellReading.Refused;
import guildwood.importing.CellReading.Value;
import guildwood.importing.CellReading.Values;
import guildwood.importing.Meaning.Kind;
import guildwood.importing.RowReading.Note;
import guildwood.importing.RowReading.RowSource;
import guildwood.kernel.Finding;
import guildwood.species.Evidence;
import guildwood.species.Holding;
import guildwood.species.Statement;
import guildwood.species.Trait;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Reads rows of a table by its mapping. Whatever is not read is in the reading all the same, with the reason. */
public final class RowReader {
  private static final int MOST_SEEN = 1_000;

  private final Mapping mapping;
  private final List<MarkGroup> marks;
  private final List<EndPair> pairs;
  private final List<ColumnMapping> singles;
  /** Columns repeat themselves: readings of the cells seen last, so that the same cell is read, and kept, but once. */
  private final Map<ColumnMapping, Map<TableCell, CellReading>> seen = new HashMap<>();

  public RowReader(Mapping mapping) {
    this.mapping = mapping;
    this.marks = MarkGroup.of(mapping);
    this.pairs = EndPair.of(mapping);
    // The layer of a plain 'tree' needs its height, so layers come last.
    this.singles = mapping.columns().stream().filter(c -> c.meaning().kind() != Kind.MARK && !EndPair.isEnd(c))
        .sorted(Comparator.comparing(c -> c.meaning().trait().equals(Optional.of(Trait.LAYER)))).toList();
  }

  private CellReading once(ColumnMapping column, TableCell cell, Supplier<CellReading> reading) {
    Map<TableCell, CellReading> cells = seen.computeIfAbsent(column, c -> new HashMap<>());
    if (cells.size() > MOST_SEEN) {
      cells.clear();
    }
    return cells.computeIfAbsent(cell, c -> reading.get());
  }

  public RowReading read(TableRow row) {
    return new Reading(row).read();
  }

  /** One row while it is read. */
  private final class Reading {
    private final TableRow row;
    private final List<ReadValue> values = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();
    private final List<Integer> silent = new ArrayList<>();
    private final List<Integer> used = new ArrayList<>();
    private final List<String> common = new ArrayList<>();
    private final List<String> synonyms = new ArrayList<>();
    private String family = "";
    private OptionalInt onHand = OptionalInt.empty();
    private OptionalInt price = OptionalInt.empty();

    Reading(TableRow row) {
      this.row = row;
    }

    RowReading read() {
      if (mapping.isLong()) {
        LongValue.read(mapping, row).ifPresent(this::longValue);
      }
      pairs.forEach(pair -> take(pair.filled(row), pair.read(row), Optional.empty(), Optional.empty()));
      singles.forEach(this::single);
      marks.forEach(this::marked);
      RowName name = RowName.of(mapping, row);
      used.addAll(name.columns());
      return new RowReading(row.number(), name.written(), text(Kind.SPECIES_ID), common, family, synonyms, values, notes, unread,
          used, silent, onHand, price, source());
    }

    private void longValue(LongValue value) {
      if (value.reading() instanceof Refused refused) {
        refuse(value.columnOf(refused.reason()), refused.reason());
        value.columns().stream().filter(c -> c != value.columnOf(refused.reason())).forEach(used::add);
      } else {
        take(value.columns(), value.reading(), Optional.of(value.noteOrWritten(this::noteOf)), value.evidence());
      }
    }

    private void single(ColumnMapping column) {
      TableCell cell = row.cell(column.column());
      if (cell.isBlank()) {
        return;
      }
      Meaning meaning = column.meaning();
      List<Integer> here = List.of(column.column());
      switch (meaning.kind()) {
        case VALUE -> take(here, layered(column, cell), Optional.empty(), evidence(meaning));
        case ITEMS -> take(here, once(column, cell, () -> CellReader.items(meaning.trait().orElseThrow(), column, cell)), Optional.empty(), Optional.empty());
        case USES_AND_JOBS -> take(here, once(column, cell, () -> CellReader.usesAndJobs(column, cell)), Optional.empty(), Optional.empty());
        case CAUTIONS -> take(here, CautionReader.read(meaning.item(), column, cell), Optional.empty(), Optional.empty());
        case EVIDENCE -> evidenceAlone(column, cell);
        case COMMON_NAMES, SYNONYMS, FAMILY -> name(column, cell);
        case ON_HAND, PRICE -> holding(column, cell);
        case NOTE -> notes.add(new Note(column.column(), column.header(), cell.text().strip()));
        case SOURCE_TITLE, SOURCE_AUTHOR, SOURCE_YEAR, SOURCE_PLACE, SPECIES_ID -> used.add(column.column());
        case IGNORED -> silent.add(column.column());
        case TRAIT_NAME, ITEM_NAME, TRAIT_VALUE, VALUE_UNIT, VALUE_EVIDENCE, VALUE_NOTE -> inLongForm(column, cell);
        default -> {
          // Parts of the name are read together.
        }
      }
    }

    /** In a table that is not in long form after all such a column is a note. */
    private void inLongForm(ColumnMapping column, TableCell cell) {
      if (!mapping.isLong()) {
        notes.add(new Note(column.column(), column.header(), cell.text().strip()));
      }
    }

    private CellReading layered(ColumnMapping column, TableCell cell) {
      Trait trait = column.meaning().trait().orElseThrow();
      CellReading read = once(column, cell, () -> CellReader.value(trait, column.meaning().item(), column, cell));
      return trait == Trait.LAYER ? TreeLayer.of(column, cell, read, values) : read;
    }

    private void take(List<Integer> columns, CellReading reading, Optional<String> note, Optional<Evidence> evidence) {
      if (columns.isEmpty()) {
        return;
      }
      if (reading instanceof Refused refused) {
        columns.forEach(column -> refuse(column, refused.reason()));
      } else if (reading instanceof Values several) {
        several.values().forEach(value -> keep(value, columns, note, evidence));
        several.unread().ifPresent(reason -> columns.forEach(column -> refuse(column, reason)));
      } else {
        silent.addAll(columns);
      }
    }

    private void keep(Value value, List<Integer> columns, Optional<String> note, Optional<Evidence> evidence) {
      for (int i = 0; i < values.size(); i++) {
        ReadValue known = values.get(i);
        if (known.trait() == value.trait() && known.item().equals(value.item()) && known.value().equals(value.value())) {
          List<Integer> all = new ArrayList<>(known.columns());
          columns.stream().filter(c -> !all.contains(c)).forEach(all::add);
          values.set(i, new ReadValue(known.trait(), known.item(), known.entered(), known.value(),
              known.evidence().or(() -> evidence), known.note(), all));
          return;
        }
      }
      String asWritten = note.orElseGet(() -> noteOf(value.entered(), columns));
      values.add(new ReadValue(value.trait(), value.item(), value.entered(), value.value(),
          value.trait().carriesEvidence() ? evidence : Optional.empty(), asWritten, columns));
    }

    /** What stood in the cells, where the value as entered does not say it word for word. */
    private String noteOf(String entered, List<Integer> columns) {
      if (columns.size() == 1 && row.cell(columns.get(0)).text().strip().equals(entered)) {
        return "";
      }
      StringBuilder note = new StringBuilder();
      for (int column : columns) {
        note.append(note.isEmpty() ? "" : "; ").append(header(column)).append(": ").append(row.cell(column).text().strip());
      }
      String line = note.toString().replaceAll("\\p{Cntrl}+", " ");
      return line.length() > Statement.MOST_NOTE ? line.substring(0, Statement.MOST_NOTE - 1) + "…" : line;
    }

    private void refuse(int column, Finding reason) {
      unread.add(new Unread(row.number(), column, header(column), row.cell(column).text(), reason));
    }

    private void marked(MarkGroup group) {
      MarkGroup.Marked marked = group.read(row);
      marked.refused().forEach(this::refuse);
      silent.addAll(marked.no());
      if (!marked.yes().isEmpty()) {
        take(marked.yes(), group.value(marked.yes()), Optional.empty(), Optional.empty());
      }
    }

    private Optional<Evidence> evidence(Meaning meaning) {
      return mapping.columns().stream()
          .filter(c -> c.meaning().is(Kind.EVIDENCE) && c.meaning().trait().equals(meaning.trait()) && c.meaning().item().equals(meaning.item()))
          .findFirst().flatMap(c -> Evidence.ofKey(Words.folded(row.cell(c.column()).text())));
    }

    private void evidenceAlone(ColumnMapping column, TableCell cell) {
      boolean used = mapping.columns().stream().anyMatch(c -> c.meaning().is(Kind.VALUE)
          && c.meaning().trait().equals(column.meaning().trait()) && c.meaning().item().equals(column.meaning().item())
          && !row.cell(c.column()).isBlank());
      if (Evidence.ofKey(Words.folded(cell.text())).isEmpty()) {
        refuse(column.column(), Finding.of("evidence.unknown", "", cell.text().strip()));
      } else if (!used) {
        refuse(column.column(), Finding.of("import.evidence-alone", ""));
      } else {
        silent.add(column.column());
      }
    }

    private void name(ColumnMapping column, TableCell cell) {
      String text = cell.text().strip();
      if (YesNo.saysNothing(text)) {
        silent.add(column.column());
        return;
      }
      Optional<Finding> refused = NameCells.findings(column.meaning().kind(), text, column.separator());
      if (refused.isPresent()) {
        refuse(column.column(), refused.get());
        return;
      }
      used.add(column.column());
      switch (column.meaning().kind()) {
        case FAMILY -> family = NameCells.family(text);
        case SYNONYMS -> synonyms.addAll(NameCells.list(text, column.separator()));
        default -> common.addAll(NameCells.list(text, column.separator()));
      }
    }

    private void holding(ColumnMapping column, TableCell cell) {
      if (YesNo.saysNothing(cell.text())) {
        silent.add(column.column());
        return;
      }
      boolean isPrice = column.meaning().is(Kind.PRICE);
      String text = cell.text().strip().replaceAll("(?i)^[$€£]|[$€£]$|\\s*(usd|eur|gbp|each|ea\\.?|pcs?|plants?|x)$", "").strip();
      // 1.000 is one plant in one country and a thousand in another.
      boolean thousands = text.matches("[1-9]\\d{0,2}[.,]\\d{3}") && cell.kind() == TableCell.Kind.TEXT;
      Optional<BigDecimal> number = text.matches("\\d{1,7}([.,]\\d{1,2}0*)?") && !thousands ? Optional.of(new BigDecimal(text.replace(',', '.'))) : Optional.empty();
      Optional<Integer> whole = number.map(n -> isPrice ? n.movePointRight(2) : n)
          .filter(n -> n.stripTrailingZeros().scale() <= 0 && n.compareTo(BigDecimal.valueOf(isPrice ? Holding.MOST_CENTS : Holding.MOST_PLANTS)) <= 0)
          .map(BigDecimal::intValue);
      if (whole.isEmpty()) {
        refuse(column.column(), Finding.of(isPrice ? "import.not-a-price" : "import.not-a-count", "", cell.text().strip()));
      } else if (isPrice) {
        price = OptionalInt.of(whole.get());
        used.add(column.column());
      } else {
        onHand = OptionalInt.of(whole.get());
        used.add(column.column());
      }
    }

    private RowSource source() {
      RowSource source = new RowSource(text(Kind.SOURCE_TITLE), text(Kind.SOURCE_AUTHOR), text(Kind.SOURCE_YEAR), text(Kind.SOURCE_PLACE));
      return source.title().isEmpty() && source.author().isEmpty() && source.year().isEmpty() && source.place().isEmpty() ? RowSource.NONE : source;
    }

    private String text(Kind kind) {
      String text = mapping.first(kind).map(c -> row.cell(c.column()).text().replaceAll("\\p{Cntrl}+", " ").strip()).orElse("");
      return YesNo.saysNothing(text) ? "" : text;
    }

    private String header(int column) {
      return mapping.column(column).map(ColumnMapping::header).orElse("");
    }
  }
}
