package guildwood.guild.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import guildwood.guild.Candidate;
import guildwood.guild.Distinction;
import guildwood.guild.GuildRule;
import guildwood.guild.ScoreBreakdown;
import guildwood.guild.WishKind;
import guildwood.site.Basis;
import guildwood.species.Axis;
import guildwood.species.CautionKind;
import guildwood.species.Layer;
import guildwood.species.Trait;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The two schemas (JSON Schema 2020-12) against what the command reads, what it prints, and the words of the engine. */
class SchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir
  private static Path folder;

  private static Path species;

  @BeforeAll
  static void export() throws IOException {
    species = ComposeRun.exported(folder);
  }

  @ParameterizedTest
  @ValueSource(strings = {"bed", "composition"})
  void areSchemasThemselves(String name) throws IOException {
    JsonSchema meta = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(java.net.URI.create("https://json-schema.org/draft/2020-12/schema"));
    assertEquals(List.of(), problems(meta, tree(name)));
  }

  @Test
  void theExampleAndItsAnswerKeepThem() throws IOException {
    Path example = ComposeRun.example(folder);
    assertEquals(List.of(), problems(schema("bed"), JSON.readTree(Files.readAllBytes(example))));
    assertEquals(List.of(), problems(schema("composition"), ComposeRun.of(example, species).answer()));
  }

  /** Beds that between them lead to every kind of gap and to broken rules. */
  @ParameterizedTest
  @ValueSource(strings = {
    "{'areaM2':20,GROUND,'rules':{'budget':0},'wishes':[{'wish':'function:nitrogen-fixer','must':true}]}",
    "{'areaM2':0.1,GROUND,'wishes':[{'wish':'layer:tall-tree','must':true},{'wish':'function:nitrogen-fixer'},{'wish':'bloom-month:1'}]}",
    "{'areaM2':20,'conditions':{'light':[0,0],'moisture':5},'wishes':[{'wish':'function:nitrogen-fixer'}]}",
    "{'areaM2':20,GROUND,'rules':{'maxSpecies':1},'wishes':[{'wish':'harvest-part:nut'},{'wish':'harvest-part:fruit'},{'wish':'layer:shrub'},{'wish':'function:nitrogen-fixer'}]}",
    "{'areaM2':20,GROUND,'rules':{'nativeTo':'maine','withoutCautions':['toxic','thorns']},'wishes':[{'wish':'harvest-part:bulb'},{'wish':'harvest-part:nut'}]}",
    "{'areaM2':9,'conditions':{'light':1,'ph':4},'rules':{'pinned':[{'species':'malus-domestica','count':3}]},'standing':[{'species':'Malus domestica','count':1}],'unheard':1}",
    "{'areaM2':20}"
  })
  void everyAnswerKeepsItsSchema(String bed) throws IOException {
    ComposeRun run = ComposeRun.of(bed.replace("GROUND", ComposeRun.GROUND).replace('\'', '"'), folder, species, "--proposals", "2");
    assertEquals(0, run.exit(), run.complaints()::toString);
    assertEquals(List.of(), problems(schema("composition"), run.answer()));
  }

  /** The schema refuses what the command refuses, so a bed can be checked before it is sent. */
  @ParameterizedTest
  @ValueSource(strings = {
    "{}", "{'areaM2':0}", "{'areaM2':'20'}", "{'areaM2':20,'place':'Wisconsin'}", "{'areaM2':20,'conditions':{'ph':15}}",
    "{'areaM2':20,'conditions':{'light':[6]}}", "{'areaM2':20,'conditions':{'light':[6,'8']}}", "{'areaM2':20,'conditions':{'texture':[1.5,2]}}",
    "{'areaM2':20,'conditions':{'moisture':2.5}}", "{'areaM2':20,'conditions':{'light':{'basis':'measured'}}}",
    "{'areaM2':20,'conditions':{'light':{'range':[6,8],'basis':'guess'}}}", "{'areaM2':20,'wishes':[{'wish':'function:magic'}]}",
    "{'areaM2':20,'wishes':[{'wish':'layer:herb','weight':11}]}", "{'areaM2':20,'wishes':[{'wish':'layer:herb','must':'yes'}]}",
    "{'areaM2':20,'rules':{'budget':-1}}", "{'areaM2':20,'rules':{'maxSpecies':41}}", "{'areaM2':20,'rules':{'nativeTo':'mars'}}",
    "{'areaM2':20,'rules':{'withoutCautions':['fear']}}", "{'areaM2':20,'standing':[{'species':'malus-domestica'}]}",
    "{'areaM2':20,'stock':[{'species':'malus-domestica','onHand':-1}]}", "{'areaM2':20,'partnersNear':'pear'}", "[]"
  })
  void refusesWhatTheCommandRefuses(String bed) throws IOException {
    String json = bed.replace('\'', '"');
    assertFalse(problems(schema("bed"), JSON.readTree(json)).isEmpty());
    assertEquals(2, ComposeRun.of(json, folder, species).exit());
  }

  @Test
  void wordsOfTheSchemasAreThoseOfTheEngine() throws IOException {
    JsonNode bed = tree("bed");
    List<String> wishes = Arrays.stream(WishKind.values()).filter(k -> k != WishKind.GROUND).flatMap(k -> k.items().stream().map(i -> k.key() + ":" + i)).toList();
    assertEquals(wishes, words(bed, "/properties/wishes/items/properties/wish/anyOf/0/enum"));
    assertEquals(keys(Axis.values(), Axis::key), fields(bed.at("/properties/conditions/properties")));
    assertEquals(keys(Basis.values(), Basis::key), words(bed, "/$defs/basis/enum"));
    assertEquals(CautionKind.keys(), words(bed, "/properties/rules/properties/withoutCautions/items/enum"));
    assertEquals(Trait.NATIVITY.items(), words(bed, "/properties/rules/properties/nativeTo/enum"));
    for (Axis axis : Axis.values()) {
      JsonNode number = bed.at("/$defs/" + axis.key() + "/anyOf/3");
      assertEquals(axis.lowest(), number.get("minimum").doubleValue());
      assertEquals(axis.highest(), number.get("maximum").doubleValue());
    }
    JsonNode answer = tree("composition");
    assertEquals(wishes, words(answer, "/$defs/wish/anyOf/0/enum"));
    for (String pattern : List.of(bed.at("/properties/wishes/items/properties/wish/anyOf/1/pattern").textValue(),
        answer.at("/$defs/wish/anyOf/1/pattern").textValue())) {
      List<String> shares = WishKind.GROUND.items().stream().map(i -> "ground:" + i).toList();
      assertTrue(shares.stream().allMatch(share -> share.matches(pattern)));
      assertTrue(Stream.of("ground:0", "ground:101", "ground:07", "ground:", "ground:7.5").noneMatch(w -> w.matches(pattern)));
    }
    assertEquals(keys(GuildRule.values(), GuildRule::key), words(answer, "/$defs/brokenRule/properties/rule/enum"));
    assertEquals(keys(Distinction.values(), Distinction::key), words(answer, "/$defs/proposal/properties/character/enum"));
    assertEquals(keys(ScoreBreakdown.Subject.values(), ScoreBreakdown.Subject::key),
        words(answer, "/$defs/proposal/properties/parts/items/properties/part/enum"));
    assertEquals(keys(Candidate.Assumption.values(), Candidate.Assumption::key),
        words(answer, "/properties/candidates/items/properties/assumed/items/enum"));
    assertEquals(keys(Layer.values(), Layer::key), words(answer, "/$defs/brokenRule/properties/layer/enum"));
  }

  private static <T> List<String> keys(T[] values, Function<T, String> key) {
    return Stream.of(values).map(key).toList();
  }

  private static List<String> words(JsonNode schema, String pointer) {
    List<String> words = new ArrayList<>();
    schema.at(pointer).forEach(word -> words.add(word.textValue()));
    assertTrue(!words.isEmpty(), () -> "nothing at " + pointer);
    return words;
  }

  private static List<String> fields(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static List<String> problems(JsonSchema schema, JsonNode json) {
    return schema.validate(json).stream().map(Object::toString).toList();
  }

  private static JsonSchema schema(String name) throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(tree(name));
  }

  private static JsonNode tree(String name) throws IOException {
    try (InputStream in = SchemaTest.class.getResourceAsStream("/guildwood/schema/" + name + ".schema.json")) {
      return JSON.readTree(in);
    }
  }
}
