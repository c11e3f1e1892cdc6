package guildwood.guild.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.web.SharedDemo;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A draft over HTTP: steps taken back and done again, species kept and banned, the rest filled up. */
class DraftHttpTest {
  private static final String ASPARAGUS = "asparagus-officinalis";
  private static final String CLOVER = "trifolium-repens";
  private static final String HAZEL = "corylus-americana";

  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());

  @Test
  void everyStepIsTakenBackAndDoneAgain() {
    TestBed bed = TestBed.laidOut(visitor, "Steps");
    bed.plant("Ours", ASPARAGUS, "5");
    step(bed, "compute", Map.of("count." + ASPARAGUS, "7"));
    step(bed, "compute", Map.of("add", CLOVER, "addCount", "30"));
    Page third = step(bed, "never:" + ASPARAGUS, Map.of());
    assertEquals(Map.of(CLOVER, "30"), TestBed.counts(third));
    assertTrue(third.says("Never in this bed: asparagus."));
    List<Map<String, String>> states = List.of(Map.of(ASPARAGUS, "7", CLOVER, "30"), Map.of(ASPARAGUS, "7"), Map.of(ASPARAGUS, "5"));
    for (Map<String, String> state : states) {
      assertEquals(state, TestBed.counts(step(bed, "undo", Map.of())));
    }
    Page start = visitor.get(edit(bed));
    assertFalse(canBePressed(start, "undo"));
    assertTrue(canBePressed(start, "redo"));
    assertTrue(start.says("Scores the same as the saved guild, part by part."));
    assertEquals(states.get(2), TestBed.counts(step(bed, "undo", Map.of())), "nothing lies before the first step");
    step(bed, "redo", Map.of());
    step(bed, "redo", Map.of());
    assertEquals(Map.of(CLOVER, "30"), TestBed.counts(step(bed, "redo", Map.of())));
    step(bed, "undo", Map.of());
    Page other = step(bed, "compute", Map.of("count." + CLOVER, "31"));
    assertFalse(canBePressed(other, "redo"), "a new step forgets what was taken back");
    assertEquals(Map.of(ASPARAGUS, 5), TestBed.plants(visitor.get(bed.path() + "/guild")), "nothing was saved on the way");
  }

  @Test
  void aDraftStaysUntilItIsSavedOrDiscarded() {
    TestBed bed = TestBed.laidOut(visitor, "Staying");
    TestBed other = TestBed.laidOut(visitor, "Another");
    bed.plant("Ours", ASPARAGUS, "5");
    assertFalse(visitor.get(bed.path() + "/guild").says("a draft that is not saved yet"));
    step(bed, "compute", Map.of("count." + ASPARAGUS, "9"));
    assertTrue(visitor.get(bed.path() + "/guild").says("You are working on a draft that is not saved yet."));
    assertEquals(Map.of(ASPARAGUS, "9"), TestBed.counts(visitor.get(edit(bed))));
    assertEquals(Map.of(), TestBed.counts(visitor.get(edit(other))), "every bed has its own");
    assertEquals(Map.of(ASPARAGUS, "5"), TestBed.counts(new HttpVisitor(SharedDemo.app()).get(edit(bed))), "and every person");
    assertTrue(step(bed, "discard", Map.of()).says("The draft is discarded; the saved guild is as it was."));
    assertEquals(Map.of(ASPARAGUS, "5"), TestBed.counts(visitor.get(edit(bed))));
    assertFalse(visitor.get(edit(bed)).says("Discard the draft"), "there is nothing left to discard");
    assertEquals(Map.of(ASPARAGUS, "9"), TestBed.counts(step(bed, "undo", Map.of())), "discarding is a step like any other");
    assertEquals(Map.of(ASPARAGUS, 9), TestBed.plants(step(bed, "save", Map.of())));
    assertFalse(visitor.get(bed.path() + "/guild").says("a draft that is not saved yet"));
    assertFalse(canBePressed(visitor.get(edit(bed)), "undo"), "saving ends the draft");
  }

  @Test
  void theDifferenceToTheSavedGuildIsToldInWords() {
    TestBed bed = TestBed.laidOut(visitor, "In words");
    bed.ask("wish.harvest-part:shoot", "nice", "without.listed", "on");
    bed.plant("Ours", ASPARAGUS, "5", CLOVER, "30");
    Page draft = step(bed, "compute", Map.of("count." + ASPARAGUS, "0", "count." + CLOVER, "40", "add", HAZEL, "addCount", "1"));
    assertTrue(draft.says("Joins: 1 × American hazelnut. Leaves: 5 × asparagus. Other counts: white clover 40 instead of 30."), draft.text());
  }

  @Test
  void whatIsKeptIsKeptExactlyAndWhatIsBannedStaysOut() {
    TestBed bed = TestBed.laidOut(visitor, "Decided");
    bed.ask("wish.function:nitrogen-fixer", "must", "wish.harvest-part:nut", "nice", "without.listed", "on");
    step(bed, "compute", Map.of("add", CLOVER, "addCount", "30"));
    Page kept = step(bed, "compute", Map.of("keep." + CLOVER, "on", "add", ASPARAGUS, "addCount", "4"));
    assertTrue(kept.first("<input type=\"checkbox\"[^>]*name=\"keep." + CLOVER + "\"[^>]*>").orElseThrow().contains("checked"));
    step(bed, "never:" + ASPARAGUS, Map.of());
    Page wishes = visitor.get(bed.path() + "/wishes");
    assertEquals("", wishes.valueOf("pin." + CLOVER), "a draft decides nothing for good");
    step(bed, "save", Map.of("name", "Ours"));
    Page limits = visitor.get(bed.path() + "/wishes");
    assertEquals("30", limits.valueOf("pin." + CLOVER));
    assertTrue(limits.html().contains("name=\"ban." + ASPARAGUS + "\""));
    assertEquals("must", limits.valueOf("wish.function:nitrogen-fixer"), "the wishes stay");
    Page more = step(bed, "compute", Map.of("count." + CLOVER, "33"));
    assertTrue(more.says("It keeps all your rules."), "what is kept is kept at the count the draft gives it");
    assertFalse(step(bed, "free:" + ASPARAGUS, Map.of()).says("Never in this bed"));
    Page let = step(bed, "compute", without(TestBed.fields(visitor.get(edit(bed))), "keep." + CLOVER));
    assertFalse(let.first("<input type=\"checkbox\"[^>]*name=\"keep." + CLOVER + "\"[^>]*>").orElseThrow().contains("checked"));
    step(bed, "save", Map.of());
    Page freed = visitor.get(bed.path() + "/wishes");
    assertEquals("", freed.valueOf("pin." + CLOVER));
    assertFalse(freed.html().contains("name=\"ban." + ASPARAGUS + "\""));
  }

  @Test
  void whatIsFixedButNotInTheGuildIsNamedAndCanBeLetGo() {
    TestBed bed = TestBed.laidOut(visitor, "Fixed");
    bed.plant("Ours", ASPARAGUS, "5");
    bed.ask("pinAdd", CLOVER, "pinAddCount", "30", "without.listed", "on");
    Page draft = visitor.get(edit(bed));
    assertTrue(draft.says("Fixed in your limits, but not in the draft: white clover."));
    assertTrue(draft.says("white clover: you fixed 30; the plan has 0."));
    assertTrue(step(bed, "free:" + CLOVER, Map.of()).says("It keeps all your rules."));
  }

  @Test
  void theRestIsFilledUpAroundTheDraft() {
    TestBed bed = TestBed.laidOut(visitor, "Filling up");
    bed.ask("wish.function:nitrogen-fixer", "must", "wish.harvest-part:nut", "nice",
        "wish.function:pollinator-forage", "nice", "without.listed", "on");
    bed.standing("Malus domestica", 1);
    step(bed, "compute", Map.of("add", HAZEL, "addCount", "2"));
    step(bed, "compute", Map.of("add", "alnus-incana-subsp-rugosa", "addCount", "1"));
    step(bed, "never:alnus-incana-subsp-rugosa", Map.of());
    Page all = TestBed.proposals(visitor, visitor.post(edit(bed), with(TestBed.fields(visitor.get(edit(bed))), "do", "fill")).location());
    assertTrue(all.says("Each holds all of your draft:"));
    List<Map<String, Integer>> guilds = new ArrayList<>();
    for (String code : Pattern.compile("name=\"guild\" value=\"([^\"]*)\"").matcher(all.html().replaceAll("(?s)<article.*", "")).results()
        .map(r -> r.group(1)).toList()) {
      guilds.add(GuildCode.read(code).counts());
    }
    assertTrue(guilds.size() >= 2, guilds.toString());
    for (Map<String, Integer> guild : guilds) {
      assertEquals(2, guild.get(HAZEL));
      assertEquals(1, guild.get("malus-domestica"));
      assertFalse(guild.containsKey("alnus-incana-subsp-rugosa"), "what is never wanted is not filled in");
      assertTrue(guild.size() > 2, "something was added");
    }
    assertEquals(Map.of(HAZEL, "2", "malus-domestica", "1"), TestBed.counts(visitor.get(edit(bed))), "the draft is as it was");
    Page taken = visitor.submit(bed.path() + "/guild/draft", "guild", GuildCode.of(guildwood.guild.Guild.of(guilds.get(1))));
    assertTrue(taken.says("The draft now has that guild."));
    assertEquals(guilds.get(1).size(), TestBed.counts(taken).size());
    assertEquals(Map.of(HAZEL, "2", "malus-domestica", "1"), TestBed.counts(step(bed, "undo", Map.of())));
  }

  @Test
  void plantsThatStandCanNeitherBeBannedNorDecidedAway() {
    TestBed bed = TestBed.laidOut(visitor, "Standing");
    bed.standing("Malus domestica", 2);
    assertFalse(visitor.get(edit(bed)).html().contains("never:malus-domestica"));
    assertEquals(Map.of("malus-domestica", "2"), TestBed.counts(step(bed, "never:malus-domestica", Map.of())));
    bed.standing("Trifolium repens", 5000);
    step(bed, "compute", Map.of("keep." + CLOVER, "on"));
    String run = visitor.post(edit(bed), with(TestBed.fields(visitor.get(edit(bed))), "do", "fill")).location();
    assertTrue(TestBed.proposals(visitor, run).says("5000 × white clover") || visitor.get(run).says("5,000 × white clover"));
  }

  @Test
  void savingAProposalMovesTheDraftOn() {
    TestBed bed = TestBed.laidOut(visitor, "Moving on");
    bed.ask("wish.function:nitrogen-fixer", "must", "without.listed", "on");
    step(bed, "compute", Map.of("add", ASPARAGUS, "addCount", "4"));
    String run = visitor.post(bed.path() + "/guild/compose").location();
    TestBed.proposals(visitor, run);
    Page saved = visitor.submit(run + "/1");
    assertFalse(saved.says("a draft that is not saved yet"));
    assertEquals(TestBed.plants(saved).keySet(), TestBed.counts(visitor.get(edit(bed))).keySet());
    assertEquals(Map.of(ASPARAGUS, "4"), TestBed.counts(step(bed, "undo", Map.of())), "what was there before is one step back");
  }

  @Test
  void stepsAreSentInPartsWhereThatIsAskedFor() {
    TestBed bed = TestBed.laidOut(visitor, "Parts");
    step(bed, "compute", Map.of("add", ASPARAGUS, "addCount", "4"));
    Page part = visitor.postForFragment(edit(bed), "do", "undo");
    assertEquals(200, part.status());
    assertTrue(part.html().strip().startsWith("<div id=\"draft\""), part.html());
    assertTrue(part.says("No plants yet."));
    assertTrue(part.html().contains("name=\"csrf\""), "its forms can be sent");
  }

  @ParameterizedTest
  @ValueSource(strings = {"dance", "never:", "never:no-such-plant", "free:", "free:no-such-plant", "keep:x", ":", "undo ", "<b>"})
  void whatNoButtonSendsChangesNothing(String asked) {
    TestBed bed = TestBed.laidOut(visitor, "Nonsense");
    step(bed, "compute", Map.of("add", ASPARAGUS, "addCount", "4"));
    Page draft = step(bed, asked, Map.of());
    assertEquals(Map.of(ASPARAGUS, "4"), TestBed.counts(draft));
    assertFalse(draft.says("Never in this bed"));
  }

  @Test
  void aRefusedStepIsNoStep() {
    TestBed bed = TestBed.laidOut(visitor, "Refused");
    step(bed, "compute", Map.of("add", ASPARAGUS, "addCount", "4"));
    for (String asked : List.of("compute", "fill", "save", "never:" + ASPARAGUS)) {
      Page refused = visitor.post(edit(bed), "name", "x", "count." + ASPARAGUS, "some", "do", asked);
      assertEquals(422, refused.status(), asked);
      assertEquals("some", refused.valueOf("count." + ASPARAGUS));
    }
    assertEquals(Map.of(ASPARAGUS, "4"), TestBed.counts(visitor.get(edit(bed))));
    assertEquals(404, visitor.get("/beds/999999/guild/edit/gaps").status());
    assertEquals(404, visitor.get("/beds/x/guild/edit/gaps").status());
  }

  private static String edit(TestBed bed) {
    return bed.path() + "/guild/edit";
  }

  /** What a browser sends when a button of the page is pressed, with some fields typed otherwise. */
  private Page step(TestBed bed, String asked, Map<String, String> typed) {
    Map<String, String> fields = TestBed.fields(visitor.get(edit(bed)));
    fields.putAll(typed);
    Page reply = visitor.post(edit(bed), with(fields, "do", asked));
    assertEquals(303, reply.status(), () -> reply.messages().toString());
    return visitor.get(reply.location());
  }

  private static Map<String, String> with(Map<String, String> fields, String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(fields);
    more.put(name, value);
    return more;
  }

  /** A box that is not ticked is not sent; {@link #step} would otherwise send it as the page has it. */
  private static Map<String, String> without(Map<String, String> fields, String name) {
    Map<String, String> left = new LinkedHashMap<>(fields);
    left.put(name, "");
    return left;
  }

  private static boolean canBePressed(Page page, String button) {
    return !page.first("<button[^>]*id=\"" + button + "\"[^>]*>").orElseThrow().contains("disabled");
  }
}
