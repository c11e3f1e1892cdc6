package guildwood.species.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.kernel.Source;
import guildwood.web.Messages;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Describes a library's data package as the Data Package standard asks, so that programs of its version 1 and of
 * its version 2 take it: {@code profile} for the one, {@code $schema} and {@code type} for the other. No moment of
 * making is named: the same library gives the same bytes.
 */
final class PackageDescriptor {
  static final String FILE = "datapackage.json";
  /** Says that the package is a library of this program, and in which shape. */
  static final String LIBRARY_KEY = "guildwoodLibrary";
  static final int SHAPE = 1;

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String PROFILES = "https://datapackage.org/profiles/2.0/";

  private final Messages messages;

  PackageDescriptor(Messages messages) {
    this.messages = messages;
  }

  /** @param tables one for each of {@link PackageTable}, in their order */
  byte[] write(List<Source> sources, List<StoredZip.Measured> tables) {
    ObjectNode root = JSON.createObjectNode();
    root.put("$schema", PROFILES + "datapackage.json").put("profile", "tabular-data-package");
    root.put("name", "species-library").put("title", messages.say("package.title"));
    root.put("description", messages.say("package.description")).put(LIBRARY_KEY, SHAPE);
    root.putArray("licenses").addObject().put("name", "Apache-2.0").put("path", "https://www.apache.org/licenses/LICENSE-2.0")
        .put("title", messages.say("package.licence"));
    ArrayNode cited = root.putArray("sources");
    sources.forEach(source -> cited.addObject().put("title", citation(source)));
    ArrayNode resources = root.putArray("resources");
    for (PackageTable table : PackageTable.values()) {
      resource(resources.addObject(), table, tables.get(table.ordinal()));
    }
    return bytes(root);
  }

  private static String citation(Source source) {
    String year = source.year().isPresent() ? Integer.toString(source.year().getAsInt()) : "";
    return Stream.of(source.author(), source.title(), year, source.locator()).filter(part -> !part.isBlank())
        .collect(Collectors.joining(", "));
  }

  private void resource(ObjectNode resource, PackageTable table, StoredZip.Measured measured) {
    resource.put("name", table.key()).put("type", "table").put("profile", "tabular-data-resource").put("path", table.file());
    resource.put("title", messages.say("package." + table.key())).put("description", messages.say("package." + table.key() + ".about"));
    resource.put("format", "csv").put("mediatype", "text/csv").put("encoding", "utf-8");
    resource.put("bytes", measured.bytes()).put("hash", "sha256:" + measured.sha256());
    resource.putObject("dialect").put("delimiter", ",").put("lineTerminator", "\r\n").put("quoteChar", "\"")
        .put("doubleQuote", true).put("skipInitialSpace", false).put("header", true);
    ObjectNode schema = resource.putObject("schema");
    ArrayNode fields = schema.putArray("fields");
    table.fields().forEach(field -> field(fields.addObject(), table, field));
    schema.putArray("missingValues").add("");
    if (!table.primaryKey().isEmpty()) {
      schema.putArray("primaryKey").add(table.primaryKey());
    }
    if (!table.references().isEmpty()) {
      ArrayNode keys = schema.putArray("foreignKeys");
      table.references().forEach((field, target) -> reference(keys.addObject(), field, target.split("\\.")));
    }
  }

  private void field(ObjectNode json, PackageTable table, PackageField field) {
    json.put("name", field.name()).put("type", type(field.type()));
    json.put("description", messages.say("package." + table.key() + "." + field.name()));
    if (field.type() == PackageField.Type.YES) {
      json.putArray("trueValues").add("yes");
      json.putArray("falseValues").add("no");
    }
    ObjectNode constraints = JSON.createObjectNode();
    if (field.required()) {
      constraints.put("required", true);
    }
    if (field.unique()) {
      constraints.put("unique", true);
    }
    if (field.type() == PackageField.Type.INTEGER) {
      constraints.put("minimum", 0);
    }
    if (!field.words().isEmpty()) {
      field.words().forEach(constraints.putArray("enum")::add);
    }
    if (!constraints.isEmpty()) {
      json.set("constraints", constraints);
    }
  }

  private static String type(PackageField.Type type) {
    return type == PackageField.Type.YES ? "boolean" : type.name().toLowerCase(java.util.Locale.ROOT);
  }

  private static void reference(ObjectNode key, String field, String[] target) {
    key.putArray("fields").add(field);
    ObjectNode reference = key.putObject("reference").put("resource", target[0]);
    reference.putArray("fields").add(target[1]);
  }

  private static byte[] bytes(ObjectNode root) {
    // Line ends of its own, or the bytes would follow the machine's.
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    try {
      return (JSON.writer(printer).writeValueAsString(root) + "\n").getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  static Map<String, PackageTable> byName() {
    return Stream.of(PackageTable.values()).collect(Collectors.toMap(PackageTable::key, table -> table));
  }
}
