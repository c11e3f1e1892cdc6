package guildwood.guild.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wishes that nobody can meet: an answer with the reason, not an error and not an empty page. */
class ComposeContradictionTest {
  @TempDir
  private static Path folder;

  private static Path species;

  @BeforeAll
  static void export() throws IOException {
    species = ComposeRun.exported(folder);
  }

  @Test
  void aMustThatNobodyInTheLibraryMeets() throws IOException {
    JsonNode gap = gap(compose("\"areaM2\":20", "bloom-month:1", ""));
    assertEquals("nobody-in-library", gap.get("reason").textValue());
    assertTrue(gap.get("says").textValue().contains("No species in your library"));
  }

  @Test
  void noMoney() throws IOException {
    JsonNode answer = compose("\"areaM2\":20", "function:nitrogen-fixer", ",\"rules\":{\"budget\":0}");
    JsonNode gap = gap(answer);
    assertEquals("no-room", gap.get("reason").textValue());
    assertEquals("over-budget", gap.at("/rules/0/rule").textValue());
    assertEquals(0, gap.at("/rules/0/budget").decimalValue().signum());
    assertEquals(5, gap.at("/rules/0/cost").intValue(), "the price taken where none is known");
    assertTrue(gap.get("says").textValue().contains("the budget is 0.00"), gap::toString);
    JsonNode closer = gap.at("/closers/0");
    assertEquals("over-budget", closer.get("rule").textValue());
    assertTrue(closer.get("to").intValue() >= 5 && closer.get("gain").doubleValue() > 0, closer::toString);
    assertEquals(0, answer.at("/proposals/0/species").size());
  }

  @Test
  void aBedSmallerThanAnyCrown() throws IOException {
    JsonNode gap = gap(compose("\"areaM2\":0.1", "layer:tall-tree", ""));
    assertEquals("excluded-by-rules", gap.get("reason").textValue());
    for (JsonNode rule : gap.get("rules")) {
      assertEquals("larger-than-bed", rule.get("rule").textValue());
      assertTrue(rule.get("crownM2").doubleValue() > rule.get("bedM2").doubleValue(), rule::toString);
    }
    assertTrue(gap.get("says").textValue().contains("the bed has 0.1"), gap::toString);
  }

  @Test
  void aSiteThatNobodyBears() throws IOException {
    JsonNode gap = gap(answer("{\"areaM2\":20,\"conditions\":{\"light\":[0,0],\"moisture\":\"waterlogged\",\"coldest_winter\":-60},"
        + "\"wishes\":[{\"wish\":\"function:nitrogen-fixer\",\"must\":true}]}"));
    assertEquals("fails-on-site", gap.get("reason").textValue());
    assertTrue(gap.get("providers").intValue() >= gap.get("nearest").size() && !gap.get("nearest").isEmpty(), gap::toString);
  }

  @Test
  void onlyStockAndNothingOnHand() throws IOException {
    JsonNode gap = gap(compose("\"areaM2\":20", "harvest-part:fruit", ",\"rules\":{\"onlyStock\":true}"));
    assertEquals("excluded-by-rules", gap.get("reason").textValue());
    assertTrue(gap.get("rules").findValuesAsText("rule").contains("not-in-stock"), gap::toString);
    assertEquals("not-in-stock", gap.at("/closers/0/rule").textValue(), "buying would close it");
    assertTrue(gap.at("/closers/0/species").size() > 0, gap::toString);
  }

  @Test
  void moreGroundThanSoFewPlantsCover() throws IOException {
    JsonNode answer = compose("\"areaM2\":20", "ground:95", ",\"rules\":{\"maxPlants\":3}");
    JsonNode gap = gap(answer);
    assertEquals("ground-short", gap.get("reason").textValue());
    assertEquals(answer.at("/proposals/0/numbers/groundCovered").decimalValue(), gap.get("covered").decimalValue());
    assertTrue(gap.get("covered").doubleValue() < 0.95 && gap.get("rules").size() > 0, gap::toString);
  }

  @Test
  void whatCanBePropagatedComesInBeforeAnythingIsBought() throws IOException {
    JsonNode answer = answer("{\"areaM2\":20," + ComposeRun.GROUND + ",\"wishes\":[{\"wish\":\"ground:30\",\"must\":true}],"
        + "\"rules\":{\"plantsFrom\":\"have-or-propagate\"},"
        + "\"stock\":[{\"species\":\"trifolium-repens\",\"onHand\":4,\"canPropagate\":90}]}");
    JsonNode clover = answer.at("/proposals/0/species/0");
    assertEquals("trifolium-repens", clover.get("species").textValue());
    assertEquals(4, clover.get("fromStock").intValue());
    assertTrue(clover.get("toPropagate").intValue() > 0 && clover.get("toBuy").intValue() == 0, clover::toString);
    assertEquals(0, answer.at("/proposals/0/numbers/cost").decimalValue().signum());
  }

  private static JsonNode compose(String area, String wish, String more) throws IOException {
    return answer("{" + area + "," + ComposeRun.GROUND + ",\"wishes\":[{\"wish\":\"" + wish + "\",\"must\":true}]" + more + "}");
  }

  private static JsonNode answer(String bed) throws IOException {
    ComposeRun run = ComposeRun.of(bed, folder, species);
    assertEquals(0, run.exit(), run.complaints()::toString);
    return run.answer();
  }

  private static JsonNode gap(JsonNode answer) {
    assertEquals(1, answer.at("/proposals/0/unmetMusts").size());
    return answer.at("/gaps/0");
  }
}
