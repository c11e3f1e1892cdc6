package guildwood.guild.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.DeserializationFeature;
import guildwood.guild.Composer;
import guildwood.guild.Composition;
import guildwood.guild.Effort;
import guildwood.guild.Progress;
import guildwood.guild.Proposal;
import guildwood.species.SpeciesLibrary;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code compose}: what it prints for a bed that can be read. */
class ComposeCommandTest {
  @TempDir
  private static Path folder;

  private static Path species;
  private static ComposeRun example;
  private static JsonNode answer;

  @BeforeAll
  static void compose() throws IOException {
    species = ComposeRun.exported(folder);
    example = ComposeRun.of(ComposeRun.example(folder), species);
    answer = new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).readTree(example.out());
  }

  @Test
  void theExampleComposesWithoutAWord() {
    assertEquals(0, example.exit(), example.complaints()::toString);
    assertEquals(List.of(), example.complaints());
    assertEquals(List.of("bed", "seed", "proposals", "gaps", "candidates", "warnings", "note"), keys(answer));
    assertEquals(5, answer.get("proposals").size());
  }

  /** What the engine says of the library itself, not of the file, is what the command prints. */
  @Test
  void saysWhatTheEngineSaysOfTheLibraryItself() throws IOException {
    SpeciesLibrary library = ComposeRun.shipped();
    byte[] bed = Files.readAllBytes(ComposeRun.example(folder));
    BedFile file = BedFileReader.read(bed, library, new ArrayList<>()).orThrow();
    Composition found = new Composer(Effort.USUAL).compose(file.problem(), 1, 5, Progress.UNWATCHED);
    assertEquals(found.proposals().size(), answer.get("proposals").size());
    for (int i = 0; i < found.proposals().size(); i++) {
      Proposal proposal = found.proposals().get(i);
      JsonNode printed = answer.get("proposals").get(i);
      assertEquals(proposal.guild().counts(), counts(printed.get("species")));
      assertEquals(proposal.score().totalMilli(), milli(printed.get("score")));
      assertEquals(proposal.upperBoundMilli(), milli(printed.get("upperBound")));
      assertEquals(proposal.provenBest(), printed.get("provenBest").booleanValue());
      assertEquals(proposal.character().key(), printed.get("character").textValue());
    }
    assertEquals(found.gaps().stream().map(g -> g.wish().key()).toList(), texts(answer.get("gaps"), "wish"));
    assertEquals(library.species().stream().map(guildwood.species.Species::id).sorted().toList(),
        texts(answer.get("candidates"), "species"));
  }

  @Test
  void partsAddUpToTheScoreExactly() {
    for (JsonNode proposal : answer.get("proposals")) {
      BigDecimal sum = BigDecimal.ZERO;
      for (JsonNode part : proposal.get("parts")) {
        sum = sum.add(part.get("earned").decimalValue());
      }
      assertEquals(0, sum.compareTo(proposal.get("score").decimalValue()), sum + " against " + proposal.get("score"));
      assertTrue(proposal.get("score").decimalValue().compareTo(proposal.get("upperBound").decimalValue()) <= 0);
    }
  }

  @Test
  void keepsTheRulesTheStandingTreeAndTheStock() {
    for (JsonNode proposal : answer.get("proposals")) {
      Map<String, Integer> counts = counts(proposal.get("species"));
      assertTrue(counts.get("malus-domestica") >= 1, counts::toString);
      assertTrue(counts.size() <= 9, "eight species beside the apple: " + counts);
      assertTrue(!counts.containsKey("mentha-spicata"));
      assertEquals(0, proposal.get("brokenRules").size());
      assertTrue(proposal.get("numbers").get("cost").decimalValue().compareTo(BigDecimal.valueOf(80)) <= 0);
      for (JsonNode each : proposal.get("species")) {
        int added = each.get("count").intValue() - each.get("standing").intValue();
        assertEquals(added, each.get("fromStock").intValue() + each.get("toPropagate").intValue() + each.get("toBuy").intValue(), each::toString);
        assertTrue(each.get("cautions").findValuesAsText("caution").stream().noneMatch("thorns"::equals), each::toString);
      }
    }
  }

  @Test
  void proposalsAreAtLeastThreeSpeciesApart() {
    for (JsonNode one : answer.get("proposals")) {
      for (JsonNode other : answer.get("proposals")) {
        Set<String> apart = new HashSet<>(counts(one.get("species")).keySet());
        Set<String> both = new HashSet<>(apart);
        both.retainAll(counts(other.get("species")).keySet());
        apart.addAll(counts(other.get("species")).keySet());
        apart.removeAll(both);
        assertTrue(one == other || apart.size() >= 3, apart::toString);
      }
    }
  }

  @Test
  void aPlantThatPeopleMightEatCarriesItsCautions() {
    SpeciesLibrary library = ComposeRun.shipped();
    int cautions = 0;
    for (JsonNode proposal : answer.get("proposals")) {
      for (JsonNode each : proposal.get("species")) {
        List<String> stated = library.find(each.get("species").textValue()).orElseThrow().cautions().stream()
            .map(guildwood.species.Statement::entered).toList();
        assertEquals(stated, texts(each.get("cautions"), "says"));
        cautions += stated.size();
      }
    }
    assertTrue(cautions > 0, "no caution in any proposal: this test saw nothing");
    assertTrue(answer.get("note").textValue().contains("local authority"));
  }

  @Test
  void everyCandidateHasAVerdictAndWhatIsNotKnown() {
    Set<String> verdicts = new HashSet<>();
    for (JsonNode candidate : answer.get("candidates")) {
      String verdict = candidate.get("verdict").textValue();
      verdicts.add(verdict);
      if (verdict.equals("does-not-fit")) {
        assertTrue(candidate.get("limitingAxis").isTextual() && candidate.get("fit").doubleValue() < 0.2, candidate::toString);
        assertEquals("does-not-fit", candidate.get("keptOutBy").get(0).get("rule").textValue());
      }
      if (verdict.equals("not-known")) {
        assertTrue(candidate.get("notKnown").size() > 0, candidate::toString);
      }
    }
    assertEquals(Set.of("fits", "borderline", "does-not-fit", "not-known"), verdicts);
  }

  /** USDA Plant Hardiness Zone Map, 2023: zone 5a is -20 to -15 degrees F, that is -28.9 to -26.1 degrees C. */
  @Test
  void theBedComesBackAsItWasUnderstood() {
    JsonNode bed = answer.get("bed");
    assertEquals("[6,6.8]", bed.at("/conditions/ph/range").toString());
    assertEquals("measured", bed.at("/conditions/ph/basis").textValue());
    assertEquals("[2,3]", bed.at("/conditions/fertility/range").toString());
    assertEquals("[2,2]", bed.at("/conditions/texture/range").toString());
    assertEquals("[-28.889,-26.111]", bed.at("/conditions/coldest_winter/range").toString());
    assertEquals(0, bed.get("notKnown").size());
  }

  @Test
  void aSingleNumberIsWidenedAndAListIsNot() throws IOException {
    JsonNode bed = ComposeRun.of("{\"areaM2\":5,\"conditions\":{\"ph\":6.5,\"light\":[4,4],\"coldest_winter\":-28}}",
        folder, species).answer().get("bed");
    assertEquals("[6,7]", bed.at("/conditions/ph/range").toString());
    assertEquals("[4,4]", bed.at("/conditions/light/range").toString());
    assertEquals("[-28,-28]", bed.at("/conditions/coldest_winter/range").toString());
    assertEquals(List.of("moisture", "fertility", "texture", "frost_free_days"), texts(bed.get("notKnown"), ""));
  }

  @Test
  void theSameFilesGiveTheSameBytes() throws IOException {
    ComposeRun again = ComposeRun.of(ComposeRun.example(folder), species);
    assertEquals(example.out(), again.out());
  }

  @Test
  void plainAsciiNoFloatNoiseNoExponent() {
    assertTrue(StandardCharsets.US_ASCII.newEncoder().canEncode(example.out()), "readable in any terminal");
    assertEquals(-1, example.out().indexOf('\r'));
    assertTrue(example.out().endsWith("}\n"));
    String unquoted = example.out().replaceAll("\"(?:[^\"\\\\]|\\\\.)*\"", "");
    assertTrue(Pattern.compile("\\d\\.\\d").matcher(unquoted).find(), "no decimals at all");
    assertTrue(!Pattern.compile("\\d\\.\\d{4,}|\\d[eE]|\\.\\d*0\\b").matcher(unquoted).find(), "numbers beyond thousandths");
  }

  @Test
  void seedAndNumberOfProposalsAreHeard() throws IOException {
    Path bed = ComposeRun.example(folder);
    JsonNode other = ComposeRun.of(bed, species, "--seed", "-7", "--proposals", "2").answer();
    assertEquals(-7, other.get("seed").longValue());
    assertEquals(2, other.get("proposals").size());
    assertEquals(milli(answer.at("/proposals/0/upperBound")), milli(other.at("/proposals/0/upperBound")), "a bound knows no seed");
  }

  @Test
  void aPartnerInReachLeavesTheAppleItsFruit() throws IOException {
    String alone = Files.readString(ComposeRun.example(folder)).replace("\"partnersNear\": [\"malus-domestica\"]", "\"partnersNear\": []");
    String remark = "apple stands without a partner";
    assertTrue(ComposeRun.of(alone, folder, species).out().contains(remark));
    assertTrue(!example.out().contains(remark));
  }

  @Test
  void pinnedPlantsThatDoNotFitAreInAndSaidToBreakARule() throws IOException {
    JsonNode forced = ComposeRun.of("{\"areaM2\":20," + ComposeRun.GROUND.replace("[6,8]", "[0,0.5]")
        + ",\"rules\":{\"pinned\":[{\"species\":\"Malus domestica\",\"count\":2}]}}", folder, species).answer();
    JsonNode best = forced.at("/proposals/0");
    assertEquals(2, counts(best.get("species")).get("malus-domestica"));
    assertTrue(texts(best.get("brokenRules"), "rule").contains("does-not-fit"), best::toString);
  }

  @Test
  void onlyWhatIsOnHand() throws IOException {
    JsonNode few = ComposeRun.of("{\"areaM2\":20," + ComposeRun.GROUND + ",\"rules\":{\"onlyStock\":true},"
        + "\"stock\":[{\"species\":\"trifolium-repens\",\"onHand\":12}]}", folder, species).answer();
    assertEquals(Set.of("trifolium-repens"), counts(few.at("/proposals/0/species")).keySet());
    assertEquals(0, few.at("/proposals/0/numbers/cost").intValue());
  }

  @Test
  void unknownKeysAndColumnsAreNamedAndLeftOut() throws IOException {
    Path table = folder.resolve("odd.csv");
    Files.writeString(table, "scientific_name,hieght,layer\nMalus domestica,3,small-tree\n");
    ComposeRun run = ComposeRun.of(
        "{\"areaM2\":20," + ComposeRun.GROUND + ",\"hedge\":1,\"rules\":{\"maxHeight\":3},\"wishes\":[{\"wish\":\"layer:herb\",\"much\":2}]}",
        folder, table);
    assertEquals(0, run.exit());
    assertEquals(List.of("hieght", "wishes[0].much", "rules.maxHeight", "hedge"), run.complaints().stream()
        .map(c -> c.replaceAll(".*(?:\"(.*)\"|: (\\S+)) means nothing here.*", "$1$2")).toList());
    assertEquals(4, run.answer().get("warnings").size());
  }

  @Test
  void aBedOfWhichNothingIsKnownSaysSo() throws IOException {
    ComposeRun run = ComposeRun.of("{\"areaM2\":20,\"conditions\":{\"texture\":\"loam\"}}", folder, species);
    assertEquals(0, run.exit());
    assertTrue(run.complaints().get(0).contains("no species it can be said that it fits"), run.complaints()::toString);
    assertNotEquals(0, run.answer().get("warnings").size());
  }

  @Test
  void aLibraryWithoutSpeciesLeavesEveryWishOpen() throws IOException {
    Path none = folder.resolve("none.csv");
    Files.writeString(none, "scientific_name\n");
    JsonNode empty = ComposeRun.of("{\"areaM2\":20," + ComposeRun.GROUND + ",\"wishes\":[{\"wish\":\"layer:herb\",\"must\":true}]}",
        folder, none).answer();
    assertEquals("nobody-in-library", empty.at("/gaps/0/reason").textValue());
    assertEquals(0, empty.at("/proposals/0/species").size());
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  private static List<String> texts(JsonNode list, String key) {
    List<String> texts = new ArrayList<>();
    list.forEach(each -> texts.add(key.isEmpty() ? each.textValue() : each.get(key).textValue()));
    return texts;
  }

  private static Map<String, Integer> counts(JsonNode species) {
    Map<String, Integer> counts = new TreeMap<>();
    species.forEach(each -> counts.put(each.get("species").textValue(), each.get("count").intValue()));
    return counts;
  }

  private static int milli(JsonNode number) {
    return number.decimalValue().movePointRight(3).intValueExact();
  }
}
