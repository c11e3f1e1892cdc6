package guildwood.guild.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.web.SharedDemo;
import guildwood.web.Tokens;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Why any species is not in a guild, over HTTP. */
class WhyHttpTest {
  private static final String ASPARAGUS = "asparagus-officinalis";
  private static final String CLOVER = "trifolium-repens";
  private static final Pattern POINTS =
      Pattern.compile("(?:would (cost|bring) ([0-9.]+) points: ([0-9.]+) instead of ([0-9.]+)|points would stay the same, ([0-9.]+))\\.");

  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());

  /** Every answer about a good part of the library is one of six, and what it promises is what the draft then has. */
  @Test
  void everySpeciesHasAnAnswerAndTheAnswerIsTrue() {
    TestBed bed = planted("Everybody");
    Map<String, Integer> answers = new HashMap<>();
    List<String> ids = visitor.get(bed.path() + "/guild/edit").html().lines().filter(l -> l.contains("<option value=\""))
        .map(l -> l.replaceAll(".*<option value=\"([^\"]*)\".*", "$1")).filter(id -> !id.isEmpty()).toList();
    assertTrue(ids.size() > 100);
    for (int k = 0; k < ids.size(); k += 7) {
      Page page = why(bed, "saved", ids.get(k));
      assertEquals(200, page.status());
      Matcher points = POINTS.matcher(page.text());
      Optional<String> guild = page.first("name=\"guild\" value=\"([^\"]*)\"");
      if (points.find()) {
        answers.merge("comes", 1, Integer::sum);
        if (answers.get("comes") % 4 == 1) {
          int promised = TestBed.milli(points.group(3) == null ? points.group(5) : points.group(3));
          Page draft = visitor.submit(bed.path() + "/guild/draft", "guild", guild.orElseThrow());
          assertEquals(promised, total(draft), ids.get(k));
          assertTrue(TestBed.counts(draft).containsKey(ids.get(k)));
          assertEquals(303, visitor.post(bed.path() + "/guild/edit", "do", "discard").status());
        }
      } else if (page.says("cannot come into the saved guild, whatever else is in it.")) {
        answers.merge("excluded", 1, Integer::sum);
        assertTrue(guild.isEmpty());
        assertTrue(page.says("What keeps it out:"));
      } else {
        answers.merge("else", 1, Integer::sum);
        assertTrue(page.says("there is no place for it") || page.says("is in the saved guild already"), page.text());
      }
    }
    assertTrue(answers.get("comes") > 3 && answers.get("excluded") > 3, answers.toString());
  }

  @Test
  void theRuleOrTheConditionIsNamedWithWhatIsShort() {
    TestBed bed = planted("Named");
    Page wet = why(bed, "saved", "vaccinium-macrocarpon");
    assertTrue(wet.text().matches(".*What keeps it out: .*does not fit this bed \\(.*(needed)\\).*"), wet.text());
    assertTrue(wet.says("The bed offers") && wet.says("It bears") && wet.says("does not fit"));
    bed.ask("wish.function:nitrogen-fixer", "must", "without.listed", "on", "ban.corylus-americana", "on", "banAdd", "corylus-americana");
    assertTrue(why(bed, "saved", "corylus-americana").says("American hazelnut: you do not want it in this bed."));
    assertTrue(why(bed, "saved", CLOVER).says("White clover is in the saved guild already: 30 plants."));
    assertTrue(why(bed, "", "asparagus").says("Asparagus is in the saved guild already"), "by a common name, of the saved guild where none is named");
  }

  @Test
  void aLimitOfOnesOwnCanBeEasedAndThenKeepsItsPromise() {
    TestBed bed = TestBed.laidOut(visitor, "Easing");
    bed.ask("wish.harvest-part:fruit", "nice", "without.listed", "on", "without.thorns", "on");
    bed.plant("Ours", ASPARAGUS, "5");
    String id = "rosa-rugosa";
    Page out = why(bed, "saved", id);
    assertTrue(out.says("carries a caution you leave out:"));
    Matcher then = Pattern.compile("If plants were allowed that carry the caution “([^”]*)” ?: it could come in, and would (bring|cost) ([0-9.]+) points").matcher(out.text());
    assertTrue(then.find());
    int before = total(visitor.get(bed.path() + "/guild"));
    String address = out.first("href=\"([^\"]*ease=caution[^\"]*)\"").orElseThrow().replace("&amp;", "&");
    Map<String, String> fields = TestBed.fields(visitor.get(address));
    fields.put("do", "draft");
    Page draft = visitor.get(visitor.post(bed.path() + "/wishes", fields).location());
    int change = TestBed.milli(then.group(3)) * (then.group(2).equals("bring") ? 1 : -1);
    assertEquals(before + change, total(draft));
    assertTrue(TestBed.counts(draft).containsKey(id));
    assertTrue(draft.says("It keeps all your rules."));
  }

  @Test
  void itIsAskedOfTheDraftAndOfAProposalToo() {
    TestBed bed = planted("Of all");
    visitor.submit(bed.path() + "/guild/edit", "name", "x", "count." + ASPARAGUS, "5", "count." + CLOVER, "0", "do", "compute");
    assertTrue(why(bed, "draft", CLOVER).says("come in"), "it is in the saved guild, not in the draft");
    assertTrue(visitor.get(bed.path() + "/guild/edit").html().contains("name=\"of\" value=\"draft\""));
    String run = visitor.post(bed.path() + "/guild/compose").location();
    TestBed.proposals(visitor, run);
    String key = run.substring(run.lastIndexOf('/') + 1) + ".1";
    assertTrue(visitor.get(run + "/1").html().contains("name=\"of\" value=\"" + key + "\""));
    Page proposal = why(bed, key, CLOVER);
    assertEquals(200, proposal.status());
    assertTrue(proposal.says("proposal 1 (Best score)"));
    assertTrue(proposal.links().contains(run + "/1"), "and leads back");
    assertEquals(404, why(bed, key.replace(".1", ".9"), CLOVER).status());
    assertEquals(404, why(bed, key.replace(".1", ".x"), CLOVER).status());
    Page gone = why(bed, Tokens.fresh() + ".1", CLOVER);
    assertEquals(303, gone.status());
    assertTrue(visitor.get(gone.location()).says("Those proposals are no longer kept."));
  }

  @Test
  void withoutAGuildItIsAskedOfWhatStandsThere() {
    TestBed bed = TestBed.laidOut(visitor, "Bare");
    assertTrue(why(bed, "", CLOVER).says("what stands in the bed"));
    assertEquals(404, why(bed, "saved", CLOVER).status());
    assertTrue(visitor.get("/library/" + CLOVER + "?bed=" + bed.path().replaceAll("\\D", "")).links()
        .contains(bed.path() + "/guild/why?species=" + CLOVER), "the species’ own page asks too");
    assertFalse(visitor.get("/library/" + CLOVER).html().contains("/guild/why"));
    assertFalse(visitor.get("/library/" + CLOVER + "?bed=x%22").html().contains("/guild/why"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"no such plant", "<b>x</b>", "'; drop table species; --", "\u0007", "-1"})
  void whatIsNoSpeciesIsSaidBesideTheField(String typed) {
    TestBed bed = planted("No species");
    Page page = why(bed, "saved", typed);
    assertEquals(422, page.status());
    assertFalse(page.messageOf("species").isEmpty());
    assertEquals(typed, page.valueOf("species"));
    assertFalse(page.html().contains("<b>x"));
  }

  @Test
  void anOverlongNameIsRefusedAndAPartOfANameOffersChoices() {
    TestBed bed = planted("Names");
    assertEquals("Too long: at most 200 characters.", why(bed, "saved", "x".repeat(201)).messageOf("species"));
    Page several = why(bed, "saved", "hazel");
    assertEquals(422, several.status());
    assertEquals("Which one is meant by “hazel”? Choose below.", several.messageOf("species"));
    String link = several.links().stream().filter(l -> l.contains("species=corylus-americana")).findFirst().orElseThrow();
    assertEquals(200, visitor.get(link).status());
    assertEquals(200, visitor.get(bed.path() + "/guild/why?of=saved&species=").status());
    assertEquals(404, visitor.get("/beds/999999/guild/why?species=" + CLOVER).status());
    assertEquals(404, visitor.get("/beds/x/guild/why").status());
    assertEquals(404, visitor.get(bed.path() + "/guild/why?of=nobody&species=" + CLOVER).status());
  }

  private TestBed planted(String name) {
    TestBed bed = TestBed.laidOut(visitor, name);
    bed.ask("wish.function:nitrogen-fixer", "must", "wish.harvest-part:nut", "nice", "without.listed", "on");
    bed.plant("Ours", ASPARAGUS, "5", CLOVER, "30");
    return bed;
  }

  private Page why(TestBed bed, String of, String species) {
    return visitor.get(bed.path() + "/guild/why?of=" + of + "&species=" + URLEncoder.encode(species, StandardCharsets.UTF_8));
  }

  private static int total(Page page) {
    List<String> points = TestBed.points(page);
    return TestBed.milli(points.get(points.size() - 1));
  }
}
