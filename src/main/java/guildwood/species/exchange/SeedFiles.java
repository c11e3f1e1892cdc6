package guildwood.species.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Source;
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
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * Reads the library that comes with the program: {@code sources.csv}, then for each group of plants its
 * names under {@code species/} and its values under {@code values/}. All findings are gathered, each with
 * file, row and column, so that the whole of it can be put right at once.
 */
public final class SeedFiles {
  static final List<String> GROUPS = List.of("trees", "shrubs", "climbers", "herbs", "ground-covers", "roots");
  static final List<String> SOURCE_COLUMNS = List.of("id", "kind", "author", "title", "year", "locator");
  static final List<String> SPECIES_COLUMNS = List.of("id", "scientific_name", "common_names", "family", "synonyms");
  static final List<String> VALUE_COLUMNS =
      List.of("species", "trait", "item", "value", "source", "evidence", "rules", "note");

  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final int LONGEST_SOURCE_ID = 60;

  private final String root;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final Map<String, SpeciesNames> species = new LinkedHashMap<>();
  private final Map<String, String> idsByName = new HashMap<>();
  private final List<WrittenStatement> statements = new ArrayList<>();
  private final Map<List<String>, Topic> topics = new LinkedHashMap<>();

  private SeedFiles(String root) {
    this.root = root;
  }

  /** @param root folder on the class path, such as {@code /seed-data} */
  public static Checked<LibraryContents> read(String root) {
    SeedFiles files = new SeedFiles(root);
    files.table("sources.csv", SOURCE_COLUMNS).forEach(files::source);
    for (String group : GROUPS) {
      files.table("species/" + group + ".csv", SPECIES_COLUMNS).forEach(files::species);
    }
    for (String group : GROUPS) {
      files.table("values/" + group + ".csv", VALUE_COLUMNS).forEach(files::value);
    }
    files.topics.values().forEach(files::disagreement);
    return files.findings.isEmpty()
        ? Checked.of(new LibraryContents(List.copyOf(files.sources.values()), files.species, files.statements))
        : Checked.refused(files.findings);
  }

  private List<Row> table(String name, List<String> columns) {
    Supplier<java.io.InputStream> open = () -> SeedFiles.class.getResourceAsStream(root + "/" + name);
    return CsvTable.read(name, open, columns, findings);
  }

  private void source(Row row) {
    String id = row.cell("id");
    int before = findings.size();
    if (!ID.matcher(id).matches() || id.length() > LONGEST_SOURCE_ID || id.equals(Source.OWN_EXPERIENCE)) {
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
    for (String column : List.of("author", "title", "locator")) {
      int longest = column.equals("title") ? Source.LONGEST_TITLE : Source.LONGEST_AUTHOR;
      if (row.cell(column).length() > longest) {
        findings.add(row.finding("text.too-long", column, longest));
      }
    }
    if (findings.size() == before) {
      OptionalInt year = row.cell("year").isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(row.cell("year")));
      sources.put(id, new Source(id, Source.Kind.ofKey(row.cell("kind")).orElseThrow(), row.cell("author"),
          row.cell("title"), year, row.cell("locator")));
    }
  }

  private void species(Row row) {
    String id = row.cell("id");
    Checked<SpeciesNames> names = SpeciesNames.read(
        row.cell("scientific_name"), row.cell("common_names"), row.cell("family"), row.cell("synonyms"));
    names.findings().forEach(f -> findings.add(row.moved(f, f.field())));
    if (species.containsKey(id)) {
      findings.add(row.finding("seed.twice", "id", id));
      return;
    }
    names.value().ifPresent(n -> {
      if (!id.equals(n.id())) {
        findings.add(row.finding("seed.species-id", "id", id, n.id()));
      }
      String other = idsByName.putIfAbsent(SpeciesNames.folded(n.scientificName()), id);
      if (other != null) {
        findings.add(row.finding("seed.twice", "scientific_name", n.scientificName()));
      }
      species.put(id, n);
    });
  }

  private void value(Row row) {
    if (!species.containsKey(row.cell("species"))) {
      findings.add(row.finding("seed.no-species", "species", row.cell("species")));
    }
    if (!sources.containsKey(row.cell("source"))) {
      findings.add(row.finding("seed.no-source", "source", row.cell("source")));
    }
    if (!row.cell("rules").matches("|yes")) {
      findings.add(row.finding("seed.rules", "rules", row.cell("rules")));
    }
    WrittenStatement written = new WrittenStatement(0, row.cell("species"), row.cell("trait"), row.cell("item"),
        row.cell("value"), row.cell("source"), row.cell("evidence"), row.cell("rules").equals("yes"), row.cell("note"));
    Checked<Statement> read = written.read();
    read.findings().forEach(f -> findings.add(row.moved(f, f.field())));
    read.value().ifPresent(statement -> {
      statements.add(written);
      topics.computeIfAbsent(List.of(written.speciesId(), written.trait(), written.item()), t -> new Topic())
          .add(row, statement, findings);
    });
  }

  /**
   * Several values about one topic: exactly one of them must rule where they compete, at most one elsewhere.
   */
  private void disagreement(Topic topic) {
    long rulers = topic.statements.stream().filter(Statement::chosen).count();
    boolean compete = !topic.statements.get(0).trait().addsUp()
        && topic.statements.stream().map(Statement::value).distinct().count() > 1;
    if (rulers > 1 || (compete && rulers == 0)) {
      findings.add(topic.rows.get(topic.rows.size() - 1).finding("seed.rulers", "rules", topic.rows.size(), rulers));
    }
  }

  private static final class Topic {
    private final List<Row> rows = new ArrayList<>();
    private final List<Statement> statements = new ArrayList<>();

    void add(Row row, Statement statement, List<Finding> findings) {
      if (statements.stream().anyMatch(statement::saysTheSameAs)) {
        findings.add(row.finding("statement.twice", "value"));
      }
      rows.add(row);
      statements.add(statement);
    }
  }
}
