package guildwood.importing.exchange;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.importing.ColumnMapping;
import guildwood.importing.ColumnUnit;
import guildwood.importing.Heading;
import guildwood.importing.Mapping;
import guildwood.importing.Meaning;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.exchange.JsonEntry;
import guildwood.site.exchange.JsonFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A mapping as a file, to be kept, handed on and used again: a JSON object with {@code format}, the rows of the
 * {@code heading}, and {@code columns}, each with its {@code header}, {@code meaning}, {@code unit} and {@code separator}.
 * Another table takes it by the headers, wherever its columns stand.
 */
public final class MappingFile {
  public static final String FORMAT = "guildwood-mapping-1";

  private static final int MOST_COLUMNS = 1_000;
  private static final int LONGEST_HEADER = 250;
  private static final Range ROWS = new Range(0, 2_000_000);
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final List<Finding> findings = new ArrayList<>();

  private MappingFile() {}

  /** The text of the file, keys always in the same order. */
  public static String write(Mapping mapping) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT);
    ObjectNode heading = root.putObject("heading");
    heading.put("firstRow", mapping.heading().firstRow());
    heading.put("lastRow", mapping.heading().lastRow());
    ArrayNode columns = root.putArray("columns");
    for (ColumnMapping column : mapping.columns()) {
      ObjectNode each = columns.addObject();
      each.put("column", column.column());
      each.put("header", column.header());
      each.put("meaning", column.meaning().key());
      each.put("unit", column.unit().key());
      each.put("separator", column.separator());
    }
    try {
      DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
      return JSON.writer(printer).writeValueAsString(root) + "\n";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads a file; everything wrong with it is named at once, each with its place. */
  public static Checked<Mapping> read(byte[] json) {
    Checked<JsonNode> root = JsonFile.parse(json);
    return root.isRefused() ? Checked.refused(root.findings()) : new MappingFile().mapping(root.orThrow());
  }

  private Checked<Mapping> mapping(JsonNode root) {
    JsonEntry entry = new JsonEntry(root, "", findings);
    if (!root.isObject() || !entry.given("format") || !FORMAT.equals(root.get("format").textValue())) {
      return Checked.refused(Finding.of("import.mapping-format", "format", FORMAT));
    }
    List<JsonNode> nodes = entry.list("columns");
    if (findings.isEmpty() && (nodes.isEmpty() || nodes.size() > MOST_COLUMNS)) {
      findings.add(Finding.of("import.mapping-columns", "columns", MOST_COLUMNS));
    }
    List<ColumnMapping> columns = new ArrayList<>();
    for (int i = 0; i < nodes.size() && i < MOST_COLUMNS; i++) {
      column(i, new JsonEntry(nodes.get(i), "columns[" + i + "]", findings)).ifPresent(columns::add);
    }
    Optional<Heading> heading = heading(entry, columns.stream().map(ColumnMapping::header).toList());
    return findings.isEmpty() ? Checked.of(new Mapping(heading.orElseThrow(), columns)) : Checked.refused(findings);
  }

  private Optional<Heading> heading(JsonEntry entry, List<String> headers) {
    List<String> units = Collections.nCopies(headers.size(), "");
    Optional<JsonNode> node = entry.given("heading") ? entry.node("heading") : Optional.empty();
    if (node.isEmpty()) {
      return Optional.of(new Heading(1, 1, headers, units));
    }
    JsonEntry heading = new JsonEntry(node.get(), "heading", findings);
    Optional<Integer> first = heading.wholeNumber("firstRow", ROWS);
    Optional<Integer> last = heading.wholeNumber("lastRow", ROWS);
    if (first.isPresent() && last.isPresent() && last.get() < first.get()) {
      findings.add(Finding.of("range.backwards", "heading", first.get(), last.get()));
      return Optional.empty();
    }
    return first.isPresent() && last.isPresent() ? Optional.of(new Heading(first.get(), last.get(), headers, units)) : Optional.empty();
  }

  private Optional<ColumnMapping> column(int at, JsonEntry entry) {
    Optional<String> header = entry.text("header");
    Optional<String> key = entry.text("meaning");
    String unitKey = entry.given("unit") ? entry.text("unit").orElse("") : ColumnUnit.AS_WRITTEN.key();
    String separator = entry.given("separator") ? entry.text("separator").orElse("") : "";
    int place = entry.given("column") ? entry.wholeNumber("column", new Range(0, MOST_COLUMNS)).orElse(at) : at;
    if (header.isEmpty() || key.isEmpty()) {
      return Optional.empty();
    }
    Optional<Meaning> meaning = Meaning.ofKey(key.get());
    Optional<ColumnUnit> unit = meaning.flatMap(m -> ColumnUnit.ofKey(unitKey).filter(u -> ColumnUnit.choices(m).contains(u)));
    int before = findings.size();
    if (header.get().length() > LONGEST_HEADER) {
      entry.refuse(Finding.of("import.mapping-header", entry.at("header"), at + 1, LONGEST_HEADER));
    }
    if (meaning.isEmpty()) {
      entry.refuse(Finding.of("import.mapping-meaning", entry.at("meaning"), at + 1, cut(key.get())));
    } else if (unit.isEmpty()) {
      entry.refuse(Finding.of("import.mapping-unit", entry.at("unit"), at + 1, cut(unitKey)));
    }
    if (separator.length() > ColumnMapping.LONGEST_SEPARATOR) {
      entry.refuse(Finding.of("import.mapping-separator", entry.at("separator"), at + 1, ColumnMapping.LONGEST_SEPARATOR));
    }
    return findings.size() > before ? Optional.empty()
        : Optional.of(new ColumnMapping(place, header.get(), meaning.orElseThrow(), unit.orElseThrow(), separator));
  }

  private static String cut(String text) {
    return text.length() <= 60 ? text : text.substring(0, 60) + "…";
  }
}
