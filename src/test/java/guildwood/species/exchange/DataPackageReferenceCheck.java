package guildwood.species.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import guildwood.species.LibraryExtract;
import guildwood.species.SpeciesLibrary;
import guildwood.web.Messages;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The shipped library as a data package against the Data Package standard: its descriptor against the profiles of
 * version 1 and 2 (named in {@code datapackage/README.md} of the test resources), and its tables against the rules of
 * Data Resource and Table Schema (datapackage.org/standard, read 2026-11-25), read as a program would that knows the
 * descriptor alone.
 */
class DataPackageReferenceCheck {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Map<String, byte[]> FILES = new LinkedHashMap<>();
  private static JsonNode descriptor;

  @BeforeAll
  static void write() throws IOException {
    SpeciesLibrary library = ShippedLibrary.read("/seed-data").orThrow();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DataPackageWriter.write(LibraryExtract.whole(library, LibraryExtract.Beside.NOTHING), new Messages(), out);
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        FILES.put(entry.getName(), zip.readAllBytes());
      }
    }
    descriptor = JSON.readTree(FILES.get("datapackage.json"));
  }

  @ParameterizedTest
  @CsvSource({"tabular-data-package-1.json, V4", "data-package-2.0.json, V7"})
  void theDescriptorKeepsThePublishedProfile(String profile, VersionFlag version) throws IOException {
    assertEquals(List.of(), problems(profile, version, descriptor));
  }

  /** A profile that let everything pass would prove nothing. */
  @ParameterizedTest
  @CsvSource({"tabular-data-package-1.json, V4", "data-package-2.0.json, V7"})
  void theProfilesRefuseWhatIsWrong(String profile, VersionFlag version) throws IOException {
    ObjectNode noResources = descriptor.deepCopy();
    noResources.remove("resources");
    assertFalse(problems(profile, version, noResources).isEmpty());
    ObjectNode badHash = descriptor.deepCopy();
    ((ObjectNode) badHash.get("resources").get(0)).put("hash", "not a sum");
    assertFalse(problems(profile, version, badHash).isEmpty());
    ObjectNode badType = descriptor.deepCopy();
    ((ObjectNode) badType.at("/resources/0/schema/fields/0")).put("type", "words");
    assertFalse(problems(profile, version, badType).isEmpty());
  }

  @Test
  void theDescriptorStandsFirstAndEveryTableIsThere() {
    List<String> names = new ArrayList<>(List.of("datapackage.json"));
    descriptor.get("resources").forEach(resource -> names.add(resource.get("path").asText()));
    assertEquals(names, List.copyOf(FILES.keySet()));
    assertEquals(List.of("species.csv", "sources.csv", "traits.csv", "values.csv", "unread.csv", "notes.csv", "holdings.csv"), names.subList(1, names.size()));
  }

  @ParameterizedTest
  @EnumSource(PackageTable.class)
  void sizeAndSumAreThoseOfTheFile(PackageTable table) throws GeneralSecurityException {
    JsonNode resource = resource(table.key());
    byte[] bytes = FILES.get(resource.get("path").asText());
    assertEquals(bytes.length, resource.get("bytes").asLong());
    assertEquals("sha256:" + HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)), resource.get("hash").asText());
    assertEquals("utf-8", resource.get("encoding").asText());
  }

  @ParameterizedTest
  @ValueSource(strings = {"species", "sources", "traits", "values"})
  void everyCellKeepsTypeAndConstraintsOfItsField(String name) throws IOException {
    List<CSVRecord> rows = rows(name);
    JsonNode schema = resource(name).get("schema");
    int column = 0;
    for (JsonNode field : schema.get("fields")) {
      assertEquals(field.get("name").asText(), rows.get(0).get(column));
      Set<String> seen = new HashSet<>();
      for (CSVRecord row : rows.subList(1, rows.size())) {
        assertTrue(keeps(field, row.get(column), seen), name + ": " + row);
      }
      column++;
    }
    assertTrue(rows.size() > 20 && rows.get(0).size() == column, rows.size() + " rows");
    for (JsonNode key : schema.path("foreignKeys")) {
      Set<String> targets = column(key.at("/reference/resource").asText(), key.at("/reference/fields/0").asText());
      assertTrue(targets.containsAll(column(name, key.at("/fields/0").asText())), name + " " + key);
    }
  }

  private static boolean keeps(JsonNode field, String cell, Set<String> seen) {
    JsonNode constraints = field.path("constraints");
    if (cell.isEmpty()) {
      return !constraints.path("required").asBoolean();
    }
    boolean typed = switch (field.get("type").asText()) {
      case "string" -> true;
      case "number" -> new BigDecimal(cell).scale() >= -400;
      case "integer" -> cell.matches("\\d+");
      case "year" -> cell.matches("\\d{4}");
      case "boolean" -> field.get("trueValues").get(0).asText().equals(cell) || field.get("falseValues").get(0).asText().equals(cell);
      default -> false;
    };
    List<String> words = new ArrayList<>();
    constraints.path("enum").forEach(word -> words.add(word.asText()));
    return typed && (words.isEmpty() || words.contains(cell)) && (!constraints.path("unique").asBoolean() || seen.add(cell));
  }

  /** Numbers beside the values as entered, for programs that cannot read them: those of the library. */
  @Test
  void rangesStandInTheUnitNamed() throws IOException {
    List<CSVRecord> rows = rows("values");
    List<String> header = rows.get(0).toList();
    CSVRecord feet = rows.stream().filter(r -> r.get(header.indexOf("trait")).equals("height") && r.get(header.indexOf("value")).equals("40 ft"))
        .findFirst().orElseThrow();
    assertEquals("12.192 12.192 m", feet.get(header.indexOf("low")) + " " + feet.get(header.indexOf("high")) + " " + feet.get(header.indexOf("unit")));
  }

  private static Set<String> column(String table, String name) throws IOException {
    List<CSVRecord> rows = rows(table);
    int column = rows.get(0).toList().indexOf(name);
    Set<String> cells = new HashSet<>();
    rows.subList(1, rows.size()).forEach(row -> cells.add(row.get(column)));
    return cells;
  }

  private static JsonNode resource(String name) {
    for (JsonNode resource : descriptor.get("resources")) {
      if (resource.get("name").asText().equals(name)) {
        return resource;
      }
    }
    throw new AssertionError("no resource " + name);
  }

  private static List<CSVRecord> rows(String table) throws IOException {
    String text = new String(FILES.get(table + ".csv"), StandardCharsets.UTF_8);
    return CSVFormat.RFC4180.parse(new StringReader(text)).getRecords();
  }

  private static List<String> problems(String profile, VersionFlag version, JsonNode json) throws IOException {
    try (InputStream in = DataPackageReferenceCheck.class.getResourceAsStream("/datapackage/" + profile)) {
      JsonSchema schema = JsonSchemaFactory.getInstance(version).getSchema(JSON.readTree(in));
      return schema.validate(json).stream().map(Object::toString).toList();
    }
  }
}
