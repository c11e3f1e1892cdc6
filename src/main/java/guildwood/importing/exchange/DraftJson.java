package guildwood.importing.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.importing.Decisions;
import guildwood.importing.Decisions.Place;
import guildwood.importing.ImportSource;
import guildwood.importing.NameDecision;
import guildwood.kernel.Source;
import guildwood.site.exchange.JsonFile;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** The source and the decisions of an import in progress as JSON, for its draft in the database. */
public final class DraftJson {
  private DraftJson() {}

  public static String write(ImportSource source) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("kind", source.kind().key()).put("title", source.title()).put("author", source.author());
    source.year().ifPresent(year -> json.put("year", year));
    return json.toString();
  }

  /** Reads what {@link #write(ImportSource)} wrote. */
  public static ImportSource source(String json) {
    JsonNode root = parse(json);
    return new ImportSource(Source.Kind.ofKey(root.get("kind").textValue()).orElseThrow(), root.get("title").textValue(),
        root.get("author").textValue(), root.has("year") ? OptionalInt.of(root.get("year").intValue()) : OptionalInt.empty());
  }

  public static String write(Decisions decisions) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode names = json.putArray("names");
    decisions.names().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(e -> names.addObject()
        .put("name", e.getKey()).put("choice", e.getValue().choice().name()).put("species", e.getValue().speciesId()));
    ArrayNode cells = json.putArray("cells");
    decisions.cells().entrySet().stream()
        .sorted(Comparator.comparing((Map.Entry<Place, String> e) -> e.getKey().row()).thenComparing(e -> e.getKey().column()))
        .forEach(e -> cells.addObject().put("row", e.getKey().row()).put("column", e.getKey().column()).put("text", e.getValue()));
    ArrayNode leftOut = json.putArray("leftOut");
    decisions.leftOut().stream().sorted().forEach(leftOut::add);
    json.put("importRules", decisions.importRules());
    return json.toString();
  }

  /** Reads what {@link #write(Decisions)} wrote. */
  public static Decisions decisions(String json) {
    JsonNode root = parse(json);
    Map<String, NameDecision> names = new HashMap<>();
    root.get("names").forEach(n -> names.put(n.get("name").textValue(),
        new NameDecision(NameDecision.Choice.valueOf(n.get("choice").textValue()), n.get("species").textValue())));
    Map<Place, String> cells = new HashMap<>();
    root.get("cells").forEach(c -> cells.put(new Place(c.get("row").longValue(), c.get("column").intValue()), c.get("text").textValue()));
    Set<Long> leftOut = new HashSet<>();
    root.get("leftOut").forEach(row -> leftOut.add(row.longValue()));
    return new Decisions(names, cells, leftOut, root.get("importRules").booleanValue());
  }

  private static JsonNode parse(String json) {
    return JsonFile.parse(json.getBytes(StandardCharsets.UTF_8)).orThrow();
  }
}
