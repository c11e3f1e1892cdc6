package guildwood.guild.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the command {@code compose} says to files it cannot use: exit 2 and one plain sentence for each problem. */
class ComposeRefusalTest {
  @TempDir
  private Path folder;

  private Path species;

  @BeforeEach
  void write() throws IOException {
    species = folder.resolve("species.csv");
    Files.writeString(species, "scientific_name,layer,synonyms\nMalus domestica,small-tree,Malus pumila\nMalus baccata,small-tree,\n");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
    "{} | areaM2: is missing.",
    "{`areaM2`:null} | areaM2: is missing.",
    "{`areaM2`:0} | areaM2: is 0 and must lie between 0.1 and 100000.",
    "{`areaM2`:-3} | areaM2: is -3 and must lie between 0.1 and 100000.",
    "{`areaM2`:1e300} | areaM2: is 1000",
    "{`areaM2`:1e999} | areaM2: must be a number.",
    "{`areaM2`:`20`} | areaM2: must be a number.",
    "{`areaM2`:NaN} | not JSON that can be read, line 1, column",
    "{`areaM2`:Infinity} | not JSON that can be read, line 1, column",
    "{`areaM2`:20 | not JSON that can be read, line 1, column",
    "{`areaM2`:20,`areaM2`:21} | not JSON that can be read, line 1, column",
    "{`areaM2`:20} {} | not JSON that can be read",
    "[20] | must be an object in braces with named values.",
    "{`areaM2`:20,`name`:``} | name: must have from 1 to 120 characters.",
    "{`areaM2`:20,`place`:`Wisconsin`} | place: A code of two letters",
    "{`areaM2`:20,`place`:`US-ZZ`} | place: ZZ is not the code of a state of the USA.",
    "{`areaM2`:20,`place`:7} | place: must be text in quotes.",
    "{`areaM2`:20,`conditions`:[]} | conditions: must be an object in braces with named values.",
    "{`areaM2`:20,`conditions`:{`ph`:15}} | conditions.ph: is 15 and must lie between 2.5 and 11.",
    "{`areaM2`:20,`conditions`:{`ph`:[6,15]}} | conditions.ph[1]: is 15 and must lie between 2.5 and 11.",
    "{`areaM2`:20,`conditions`:{`light`:[8,6]}} | conditions.light: The first number (8) is larger than the second (6).",
    "{`areaM2`:20,`conditions`:{`light`:[6]}} | conditions.light: must be a list of the lowest and the highest number",
    "{`areaM2`:20,`conditions`:{`light`:[6,`8`]}} | conditions.light: must be a list of the lowest and the highest number",
    "{`areaM2`:20,`conditions`:{`light`:true}} | conditions.light: must be a list of the lowest and the highest number",
    "{`areaM2`:20,`conditions`:{`light`:``}} | conditions.light: must be a list of the lowest and the highest number",
    "{`areaM2`:20,`conditions`:{`light`:{`basis`:`measured`}}} | conditions.light.range: is missing.",
    "{`areaM2`:20,`conditions`:{`light`:{`range`:[6,8],`basis`:`guess`}}} | conditions.light.basis: \"guess\" is not one of: measured",
    "{`areaM2`:20,`conditions`:{`moisture`:`damp`}} | conditions.moisture: \"damp\" is not a word used here.",
    "{`areaM2`:20,`conditions`:{`moisture`:2.5}} | conditions.moisture: A whole class from 1 to 5",
    "{`areaM2`:20,`conditions`:{`texture`:[1.5,2]}} | conditions.texture: texture classes are whole numbers",
    "{`areaM2`:20,`conditions`:{`coldest_winter`:`-28`}} | conditions.coldest_winter: Is -28 in degrees C or F?",
    "{`areaM2`:20,`conditions`:{`coldest_winter`:`zone 14`}} | conditions.coldest_winter: Hardiness zones run from 1a to 13b.",
    "{`areaM2`:20,`conditions`:{`frost_free_days`:400}} | conditions.frost_free_days: is 400 and must lie between 0 and 366.",
    "{`areaM2`:20,`wishes`:{}} | wishes: must be a list in square brackets.",
    "{`areaM2`:20,`wishes`:[`function:fodder`]} | wishes[0]: must be an object in braces with named values.",
    "{`areaM2`:20,`wishes`:[{}]} | wishes[0].wish: is missing.",
    "{`areaM2`:20,`wishes`:[{`wish`:`fodder`}]} | wishes[0].wish: \"fodder\" is no wish: it begins with a kind and a colon",
    "{`areaM2`:20,`wishes`:[{`wish`:`function:magic`}]} | wishes[0].wish: \"function:magic\" is no wish: after \"function:\" comes one of:",
    "{`areaM2`:20,`wishes`:[{`wish`:`bloom-month:13`}]} | wishes[0].wish: \"bloom-month:13\" is no wish",
    "{`areaM2`:20,`wishes`:[{`wish`:`layer:herb`,`weight`:11}]} | wishes[0].weight: is 11 and must lie between 1 and 10.",
    "{`areaM2`:20,`wishes`:[{`wish`:`layer:herb`,`weight`:0}]} | wishes[0].weight: is 0 and must lie between 1 and 10.",
    "{`areaM2`:20,`wishes`:[{`wish`:`layer:herb`,`weight`:2.5}]} | wishes[0].weight: must be a whole number.",
    "{`areaM2`:20,`wishes`:[{`wish`:`layer:herb`,`must`:`yes`}]} | wishes[0].must: must be true or false.",
    "{`areaM2`:20,`wishes`:[{`wish`:`layer:herb`},{`wish`:`layer:herb`,`must`:true}]} | wishes[1].wish: \"layer:herb\" is wished for twice.",
    "{`areaM2`:20,`rules`:3} | rules: must be an object in braces with named values.",
    "{`areaM2`:20,`rules`:{`budget`:-1}} | rules.budget: is -1 and must lie between 0 and 1000000.",
    "{`areaM2`:20,`rules`:{`budget`:1.234}} | rules.budget: an amount of money has at most two decimals.",
    "{`areaM2`:20,`rules`:{`maxSpecies`:41}} | rules.maxSpecies: is 41 and must lie between 0 and 40.",
    "{`areaM2`:20,`rules`:{`maxPlants`:1.5}} | rules.maxPlants: must be a whole number.",
    "{`areaM2`:20,`rules`:{`onlyStock`:1}} | rules.onlyStock: must be true or false.",
    "{`areaM2`:20,`rules`:{`plantsFrom`:`shop`}} | rules.plantsFrom: \"shop\" is not one of: anywhere, have-or-propagate, on-hand.",
    "{`areaM2`:20,`wishes`:[{`wish`:`ground:0`}]} | wishes[0].wish: \"ground:0\" is no wish: after \"ground:\" comes one of: 1, 2, ... 100.",
    "{`areaM2`:20,`rules`:{`nativeTo`:`mars`}} | rules.nativeTo: \"mars\" is not one of: north-america",
    "{`areaM2`:20,`rules`:{`withoutCautions`:[`fear`]}} | rules.withoutCautions[0]: \"fear\" is not one of: listed",
    "{`areaM2`:20,`rules`:{`withoutCautions`:[`toxic:leaves`]}} | rules.withoutCautions[0]: \"toxic:leaves\" is not one of: listed",
    "{`areaM2`:20,`rules`:{`banned`:[7]}} | rules.banned[0]: must be text in quotes.",
    "{`areaM2`:20,`rules`:{`pinned`:[{`species`:`malus-domestica`,`count`:0}]}} | rules.pinned[0].count: is 0 and must lie between 1 and 2000.",
    "{`areaM2`:20,`rules`:{`banned`:[`Malus pumila`],`pinned`:[{`species`:`malus-domestica`,`count`:1}]}} | rules.pinned: \"malus-domestica\" is pinned and banned at once.",
    "{`areaM2`:20,`standing`:[{`species`:`malus-domestica`,`count`:3}],`rules`:{`pinned`:[{`species`:`malus-domestica`,`count`:1}]}} | rules.pinned: \"malus-domestica\": 1 pinned, but 3 stand there already and stay.",
    "{`areaM2`:20,`standing`:[{`species`:`quercus-magica`,`count`:1}]} | standing[0].species: no species of the species file is called \"quercus-magica\".",
    "{`areaM2`:20,`standing`:[{`species`:`Malus`,`count`:1}]} | standing[0].species: no species of the species file is called \"Malus\". Maybe one of: malus-baccata, malus-domestica.",
    "{`areaM2`:20,`standing`:[{`species`:`malus-domestica`}]} | standing[0].count: is missing.",
    "{`areaM2`:20,`standing`:[{`species`:`malus-domestica`,`count`:6000},{`species`:`malus-domestica`,`count`:6000}]} | standing[1].count: is 12000 and must lie between 1 and 10000.",
    "{`areaM2`:20,`stock`:[{`species`:`malus-domestica`,`price`:-2}]} | stock[0].price: is -2 and must lie between 0 and 10000.",
    "{`areaM2`:20,`stock`:[{`species`:`malus-domestica`,`onHand`:1},{`species`:`Malus domestica`,`onHand`:2}]} | stock[1].species: \"malus-domestica\" stands in this list already.",
    "{`areaM2`:20,`partnersNear`:[`pear`]} | partnersNear[0]: no species of the species file is called \"pear\"."
  })
  void eachProblemIsOneSentenceWithItsPlace(String bed, String sentence) throws IOException {
    ComposeRun run = ComposeRun.of(bed.replace('`', '"'), folder, species);
    assertEquals(2, run.exit());
    assertEquals("", run.out());
    assertEquals(1, run.complaints().size(), run.complaints()::toString);
    String start = "guildwood: " + folder.resolve("bed.json") + ": ";
    assertTrue(run.complaints().get(0).startsWith(start + sentence), run.complaints().get(0));
  }

  @Test
  void everyProblemIsNamedAtOnceAndUnknownKeysToo() throws IOException {
    ComposeRun run = ComposeRun.of("{\"area\":20,\"conditions\":{\"ph\":99},\"wishes\":[{\"wish\":\"x\"}]}", folder, species);
    assertEquals(List.of("areaM2: is missing.", "conditions.ph: is 99", "wishes[0].wish: \"x\"", "area means nothing here"),
        run.complaints().stream().map(c -> c.replaceAll("^guildwood: .*?bed\\.json: ", "")
            .replaceAll("( and must| is no wish| and was).*", "")).toList());
  }

  @Test
  void aFileThatIsNotThere() {
    ComposeRun bed = ComposeRun.of(folder.resolve("none.json"), species);
    assertEquals(2, bed.exit());
    assertEquals(List.of("guildwood: " + folder.resolve("none.json") + ": there is no such file."), bed.complaints());
    ComposeRun table = ComposeRun.of(folder.resolve("bed.json"), folder.resolve("none.csv"));
    assertEquals(2, table.exit());
    assertEquals(List.of("guildwood: " + folder.resolve("none.csv") + ": there is no such file."), table.complaints());
    assertEquals(2, ComposeRun.of(folder, species).exit(), "a folder");
  }

  @Test
  void anEmptyFileAndOneThatIsNoText() throws IOException {
    assertEquals(2, ComposeRun.of("", folder, species).exit());
    Path binary = folder.resolve("binary");
    Files.write(binary, new byte[] {(byte) 0xFF, (byte) 0xD8, 0, 1, 2, 3});
    ComposeRun bed = ComposeRun.of(binary, species);
    assertEquals(2, bed.exit());
    assertEquals(1, bed.complaints().size(), bed.complaints()::toString);
    ComposeRun table = ComposeRun.of("{\"areaM2\":20}", folder, binary);
    assertEquals(2, table.exit());
    assertTrue(table.complaints().get(0).endsWith("the file is not UTF-8"), table.complaints()::toString);
  }

  @Test
  void deepNestingIsRefusedAndNoReasonToFallOver() throws IOException {
    ComposeRun run = ComposeRun.of("{\"areaM2\":20,\"x\":" + "[".repeat(100_000) + "]".repeat(100_000) + "}", folder, species);
    assertEquals(2, run.exit());
    assertEquals(1, run.complaints().size(), run.complaints()::toString);
  }

  @Test
  void badCellsOfTheSpeciesFileAreNamed() throws IOException {
    Files.writeString(species, "scientific_name,ph,layer\nMalus domestica,15,tree\n", StandardCharsets.UTF_8);
    ComposeRun run = ComposeRun.of("{\"areaM2\":20}", folder, species);
    assertEquals(2, run.exit());
    assertEquals(2, run.complaints().size(), run.complaints()::toString);
    assertTrue(run.complaints().get(0).startsWith("guildwood: " + species + ": row 2, column ph: Must lie between 2.5 and 11."));
    assertTrue(run.complaints().get(1).startsWith("guildwood: " + species + ": row 2, column layer: \"tree\" is not one of: tall-tree"));
  }

  @ParameterizedTest
  @CsvSource({"--proposals,0", "--proposals,21", "--proposals,many", "--seed,1.5", "--seed,NaN", "--effort,all"})
  void optionsThatMakeNoSense(String option, String value) throws IOException {
    ComposeRun run = ComposeRun.of("{\"areaM2\":20}", folder, species, option, value);
    assertEquals(2, run.exit());
    assertTrue(run.complaints().get(0).contains(option), run.complaints()::toString);
    assertEquals("", run.out());
  }

  @Test
  void manyProblemsAreCounted() throws IOException {
    ComposeRun run = ComposeRun.of("{\"areaM2\":20,\"rules\":{\"banned\":[" + "\"nobody\",".repeat(69) + "\"nobody\"]}}", folder, species);
    assertEquals(51, run.complaints().size());
    assertTrue(run.complaints().get(50).endsWith("and 20 more."));
  }
}
