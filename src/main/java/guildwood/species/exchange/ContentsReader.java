package guildwood.species.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Source;
import guildwood.species.Holding;
import guildwood.species.LibraryContents;
import guildwood.species.SpeciesNames;
import guildwood.species.Statement;
import guildwood.species.WrittenStatement;
import guildwood.species.exchange.CsvTable.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * Takes the rows of sources, species and values one by one and checks them into the contents of a library.
 * All findings are gathered, each with file, row and column, so that the whole of it can be put right at once.
 */
final class ContentsReader {
  static final List<String> SOURCE_COLUMNS = List.of("id", "kind", "author", "title", "year", "locator");
  static final List<String> SPECIES_COLUMNS = List.of("id", "scientific_name", "common_names", "family", "synonyms");

  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final int LONGEST_SOURCE_ID = 60;
  private static final int LONGEST_SPECIES_ID = 120;

  /** How tidy the rows must be. */
  enum Tidiness {
    /** What comes with the program: ids made from the names, no value twice, one that rules where values compete. */
    SHIPPED,
    /** What people keep: a species renamed since keeps its id, and nobody need have chosen between two values. */
    KEPT
  }

  private final Tidiness tidiness;
  private final List<Finding> findings;
  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final Map<String, SpeciesNames> species = new LinkedHashMap<>();
  private final Map<String, String> idsByName = new HashMap<>();
  private final List<WrittenStatement> statements = new ArrayList<>();
  private final Map<String, Holding> holdings = new LinkedHashMap<>();
  private final NoteLines notes = new NoteLines();
  private final Map<List<String>, Topic> topics = new LinkedHashMap<>();

  ContentsReader(Tidiness tidiness, List<Finding> findings) {
    this.tidiness = tidiness;
    this.findings = findings;
  }

  /** What was read; anything but whole where there are findings. */
  LibraryContents contents() {
    return new LibraryContents(List.copyOf(sources.values()), species, statements, List.copyOf(holdings.values()), notes.all());
  }

  void source(Row row) {
    String id = row.cell("id");
    int before = findings.size();
    boolean reserved = tidiness == Tidiness.SHIPPED && id.equals(Source.OWN_EXPERIENCE);
    if (!ID.matcher(id).matches() || id.length() > LONGEST_SOURCE_ID || reserved) {
      findings.add(row.finding("seed.id", "id", id));
    } else if (sources.containsKey(id)) {
      findings.add(row.finding("seed.twice", "id", id));
    }
    if (Source.Kind.ofKey(row.cell("kind")).isEmpty()) {
      findings.add(row.finding("seed.kind", "kind", row.cell("kind")));
    }
    if (row.cell("title").isBlank()) {
      findings.add(row.finding("value.missing", "title"));
    }
    if (!row.cell("year").matches("|[12]\\d{3}")) {
      findings.add(row.finding("number.unreadable", "year", row.cell("year")));
    }
    text(row, "author", Source.LONGEST_AUTHOR);
    text(row, "title", Source.LONGEST_TITLE);
    text(row, "locator", Source.LONGEST_LOCATOR);
    if (findings.size() == before) {
      OptionalInt year = row.cell("year").isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(row.cell("year")));
      sources.put(id, new Source(id, Source.Kind.ofKey(row.cell("kind")).orElseThrow(), row.cell("author"),
          row.cell("title"), year, row.cell("locator")));
    }
  }

  void species(Row row) {
    String id = row.cell("id");
    Checked<SpeciesNames> names = SpeciesNames.read(
        row.cell("scientific_name"), row.cell("common_names"), row.cell("family"), row.cell("synonyms"));
    names.findings().forEach(f -> findings.add(row.moved(f, f.field())));
    if (species.containsKey(id)) {
      findings.add(row.finding("seed.twice", "id", id));
      return;
    }
    names.value().ifPresent(n -> {
      if (tidiness == Tidiness.SHIPPED && !id.equals(n.id())) {
        findings.add(row.finding("seed.species-id", "id", id, n.id()));
      } else if (!ID.matcher(id).matches() || id.length() > LONGEST_SPECIES_ID) {
        findings.add(row.finding("seed.id", "id", id));
      }
      String other = idsByName.putIfAbsent(SpeciesNames.folded(n.scientificName()), id);
      if (other != null) {
        findings.add(row.finding("seed.twice", "scientific_name", n.scientificName()));
      }
      species.put(id, n);
    });
  }

  /** A value of a trait; it must be readable. */
  void value(Row row) {
    references(row);
    if (!row.cell("rules").matches("|yes")) {
      findings.add(row.finding("seed.rules", "rules", row.cell("rules")));
    }
    WrittenStatement written = written(row);
    Checked<Statement> read = written.read();
    read.findings().forEach(f -> findings.add(row.moved(f, f.field())));
    read.value().ifPresent(statement -> {
      statements.add(written);
      topics.computeIfAbsent(List.of(written.speciesId(), written.trait(), written.item()), t -> new Topic())
          .add(row, statement, tidiness == Tidiness.SHIPPED, findings);
    });
  }

  /** A value that a library keeps although it can no longer be read; it must only fit where it is kept. */
  void unread(Row row) {
    int before = findings.size();
    references(row);
    text(row, "trait", WrittenStatement.LONGEST_TRAIT);
    text(row, "item", WrittenStatement.LONGEST_ITEM);
    text(row, "value", guildwood.species.TraitReader.LONGEST);
    text(row, "evidence", WrittenStatement.LONGEST_EVIDENCE);
    text(row, "note", Statement.MOST_NOTE);
    if (findings.size() == before) {
      statements.add(written(row));
    }
  }

  /** What the owner has of a species. The price is in the owner's currency, with at most two decimals. */
  void holding(Row row) {
    String id = row.cell("species");
    int before = findings.size();
    known(row, "species", species.keySet(), "seed.no-species");
    if (holdings.containsKey(id)) {
      findings.add(row.finding("seed.twice", "species", id));
    }
    int onHand = HoldingCells.plants(row, "plants_on_hand", findings);
    int toPropagate = HoldingCells.plants(row, "plants_to_propagate", findings);
    OptionalInt cents = HoldingCells.cents(row, "price", findings);
    if (findings.size() == before) {
      holdings.put(id, new Holding(id, onHand, toPropagate, cents));
    }
  }

  /** One line of a note; rows with the same number, one after another, are its lines. */
  void note(Row row) {
    int before = findings.size();
    references(row);
    if (!row.cell("note").matches("\\d{1,9}")) {
      findings.add(row.finding("number.not-whole", "note", row.cell("note")));
    }
    if (findings.size() == before) {
      notes.add(row, findings);
    }
  }

  private void references(Row row) {
    known(row, "species", species.keySet(), "seed.no-species");
    known(row, "source", sources.keySet(), "seed.no-source");
  }

  private void known(Row row, String column, java.util.Set<String> ids, String code) {
    if (!ids.contains(row.cell(column))) {
      findings.add(row.finding(code, column, row.cell(column)));
    }
  }

  private void text(Row row, String column, int longest) {
    if (row.cell(column).length() > longest) {
      findings.add(row.finding("text.too-long", column, longest));
    } else if (row.cell(column).chars().anyMatch(Character::isISOControl)) {
      findings.add(row.finding("text.control-characters", column));
    }
  }

  static WrittenStatement written(Row row) {
    return new WrittenStatement(0, row.cell("species"), row.cell("trait"), row.cell("item"), row.cell("value"),
        row.cell("source"), row.cell("evidence"), row.cell("rules").equals("yes"), row.cell("note"));
  }

  /** Looks at the values about each topic together, once all rows are in. */
  void finish() {
    topics.values().forEach(this::disagreement);
  }

  /**
   * Several values about one topic: at most one of them may rule, and of what is shipped exactly one where
   * they compete.
   */
  private void disagreement(Topic topic) {
    long rulers = topic.statements.stream().filter(Statement::chosen).count();
    boolean compete = tidiness == Tidiness.SHIPPED && !topic.statements.get(0).trait().addsUp()
        && topic.statements.stream().map(Statement::value).distinct().count() > 1;
    if (rulers > 1 || (compete && rulers == 0)) {
      findings.add(topic.rows.get(topic.rows.size() - 1).finding("seed.rulers", "rules", topic.rows.size(), rulers));
    }
  }

  private static final class Topic {
    private final List<Row> rows = new ArrayList<>(1);
    private final List<Statement> statements = new ArrayList<>(1);

    void add(Row row, Statement statement, boolean onlyOnce, List<Finding> findings) {
      if (onlyOnce && statements.stream().anyMatch(statement::saysTheSameAs)) {
        findings.add(row.finding("statement.twice", "value"));
      }
      rows.add(row);
      statements.add(statement);
    }
  }
}
