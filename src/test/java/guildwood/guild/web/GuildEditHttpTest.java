package guildwood.guild.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.bed.Bed;
import guildwood.guild.BedPlan;
import guildwood.guild.Evaluation;
import guildwood.guild.Evaluator;
import guildwood.guild.Guild;
import guildwood.guild.Rules;
import guildwood.guild.ScoreBreakdown;
import guildwood.guild.Supply;
import guildwood.guild.Wish;
import guildwood.guild.WishKind;
import guildwood.site.Basis;
import guildwood.site.ClimateReader;
import guildwood.site.Condition;
import guildwood.site.ConditionReader;
import guildwood.site.Site;
import guildwood.species.Axis;
import guildwood.species.SpeciesLibrary;
import guildwood.species.exchange.SeedFiles;
import guildwood.species.store.SqlSpeciesRecords;
import guildwood.store.Database;
import guildwood.web.Messages;
import guildwood.web.SharedDemo;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Planning a guild by hand over HTTP. */
class GuildEditHttpTest {
  private static final String ASPARAGUS = "asparagus-officinalis";
  private static final String CLOVER = "trifolium-repens";
  private static final String HAZEL = "corylus-americana";

  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());

  @Test
  void nothingIsSavedBeforeItIsAskedFor() {
    TestBed bed = TestBed.laidOut(visitor, "By hand");
    Page empty = visitor.get(bed.path() + "/guild/edit");
    assertEquals("Guild of By hand", empty.valueOf("name"));
    assertTrue(empty.says("No plants yet."));
    Page one = compute(bed, "name", "Ours", "add", ASPARAGUS, "addCount", "3");
    assertEquals(Map.of(ASPARAGUS, "3"), TestBed.counts(one));
    assertEquals("Ours", one.valueOf("name"));
    assertEquals("", one.valueOf("add"));
    Page two = compute(bed, "name", "Ours", "count." + ASPARAGUS, "5", "add", CLOVER);
    assertEquals(Map.of(ASPARAGUS, "5", CLOVER, "1"), TestBed.counts(two));
    assertTrue(new HttpVisitor(SharedDemo.app()).get(bed.path() + "/guild/edit").says("No plants yet."), "the draft is one person’s");
    assertFalse(visitor.get(bed.path() + "/guild").html().contains("class=\"score\""));
    Page saved = bed.plant("Ours", ASPARAGUS, "5", CLOVER, "30");
    assertTrue(saved.says("Saved: Ours."));
    assertEquals(Map.of(ASPARAGUS, 5, CLOVER, 30), TestBed.plants(saved));
    assertEquals(Map.of(ASPARAGUS, "5", CLOVER, "30"), TestBed.counts(visitor.get(bed.path() + "/guild/edit")));
  }

  @Test
  void aCountOfNoneTakesASpeciesOut() {
    TestBed bed = TestBed.laidOut(visitor, "Taking out");
    bed.plant("Two", ASPARAGUS, "5", CLOVER, "30");
    assertEquals(Map.of(CLOVER, "30"), TestBed.counts(compute(bed, "name", "Two", "count." + ASPARAGUS, "0", "count." + CLOVER, "30")));
    assertEquals(Map.of(CLOVER, 30), TestBed.plants(bed.plant("One", ASPARAGUS, "0", CLOVER, "30")));
    assertTrue(bed.plant("None", CLOVER, "0").says("No plants yet."));
  }

  @Test
  void addingWhatIsThereAlreadyChangesNothing() {
    TestBed bed = TestBed.laidOut(visitor, "Twice");
    assertEquals(Map.of(ASPARAGUS, "5"), TestBed.counts(compute(bed, "name", "x", "count." + ASPARAGUS, "5", "add", ASPARAGUS, "addCount", "9")));
  }

  @ParameterizedTest
  @CsvSource({
    "-1, Must lie between 0 and 2000.", "1000000000, “1000000000” is not a whole number.", "2001, Must lie between 0 and 2000.",
    "x, “x” is not a whole number.", "1.5, “1.5” is not a whole number.", "1e2, “1e2” is not a whole number.", "'', Please fill this in.",
    "3\u00073, 'Contains characters that cannot be shown, such as tabs or control codes.'"})
  void aCountThatCannotBeIsRefusedAndTheRestKept(String typed, String message) {
    TestBed bed = TestBed.laidOut(visitor, "Counts");
    bed.plant("Before", ASPARAGUS, "5");
    for (String what : new String[] {"save", "compute"}) {
      Page refused = visitor.post(bed.path() + "/guild/edit", "name", "After", "do", what, "count." + ASPARAGUS, typed, "count." + CLOVER, "40");
      assertEquals(422, refused.status());
      assertEquals(message, refused.messageOf("count." + ASPARAGUS));
      assertEquals(typed, refused.valueOf("count." + ASPARAGUS));
      assertEquals("40", refused.valueOf("count." + CLOVER));
      assertEquals("After", refused.valueOf("name"));
    }
    Page kept = visitor.get(bed.path() + "/guild");
    assertEquals(Map.of(ASPARAGUS, 5), TestBed.plants(kept));
    assertTrue(kept.says("Before"));
  }

  @ParameterizedTest
  @CsvSource({"0, Must lie between 1 and 2000.", "some, “some” is not a whole number.", "2001, Must lie between 1 and 2000."})
  void aNumberToAddThatCannotBeKeepsTheChoice(String typed, String message) {
    TestBed bed = TestBed.laidOut(visitor, "Adding");
    Page refused = visitor.post(bed.path() + "/guild/edit", "name", "x", "do", "compute", "add", ASPARAGUS, "addCount", typed);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf("addCount"));
    assertEquals(typed, refused.valueOf("addCount"));
    assertEquals(ASPARAGUS, refused.valueOf("add"));
    assertEquals(Map.of(), TestBed.counts(refused));
  }

  @ParameterizedTest
  @CsvSource({
    "'  ', Please fill this in.", "overlong, Too long: at most 120 characters.",
    "a\u0007b, 'Contains characters that cannot be shown, such as tabs or control codes.'"})
  void aNameThatCannotBeIsRefused(String typed, String message) {
    TestBed bed = TestBed.laidOut(visitor, "Names");
    String name = typed.equals("overlong") ? "n".repeat(121) : typed;
    Page refused = visitor.post(bed.path() + "/guild/edit", "name", name, "do", "save", "count." + ASPARAGUS, "5");
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf("name"));
    assertEquals(name, refused.valueOf("name"));
    assertEquals(Map.of(ASPARAGUS, "5"), TestBed.counts(refused));
    assertFalse(visitor.get(bed.path() + "/guild").html().contains("class=\"score\""));
  }

  @Test
  void aNameIsTextAndNothingElse() {
    TestBed bed = TestBed.laidOut(visitor, "Markup");
    Page saved = bed.plant("<b>Our</b> \"guild\" & {0} 'co'", ASPARAGUS, "5");
    assertTrue(saved.html().contains("<h1>&lt;b&gt;Our&lt;/b&gt; &quot;guild&quot; &amp; {0} &#39;co&#39;</h1>"));
    assertFalse(saved.html().contains("<b>Our"));
  }

  @Test
  void unknownSpeciesAreRefusedOrLeftOut() {
    TestBed bed = TestBed.laidOut(visitor, "Unknown");
    Page refused = visitor.post(bed.path() + "/guild/edit", "name", "x", "do", "save", "add", "no-such-plant", "count." + ASPARAGUS, "5");
    assertEquals(422, refused.status());
    assertEquals("“no-such-plant” is not known here.", refused.messageOf("add"));
    Page saved = bed.plant("x", "no-such-plant", "3", "another", "many", ASPARAGUS, "5");
    assertEquals(Map.of(ASPARAGUS, 5), TestBed.plants(saved));
    assertTrue(saved.says("5 plants in all"));
  }

  @Test
  void plantsThatStandStay() {
    TestBed bed = TestBed.laidOut(visitor, "Old trees");
    bed.standing("Malus domestica", 2);
    assertEquals(Map.of("malus-domestica", "2"), TestBed.counts(visitor.get(bed.path() + "/guild/edit")));
    for (String fewer : new String[] {"0", "1"}) {
      Page refused = visitor.post(bed.path() + "/guild/edit", "name", "x", "do", "save", "count.malus-domestica", fewer);
      assertEquals(422, refused.status());
      assertEquals("Plants that stand there stay: at least 2.", refused.messageOf("count.malus-domestica"));
      assertEquals(fewer, refused.valueOf("count.malus-domestica"));
    }
    assertFalse(visitor.get(bed.path() + "/guild").html().contains("class=\"score\""), "nothing was saved");
    assertEquals(Map.of("malus-domestica", 2, ASPARAGUS, 5), TestBed.plants(bed.plant("x", ASPARAGUS, "5")), "they are in without being named");
    Page three = bed.plant("x", "malus-domestica", "3");
    assertTrue(three.says("3 plants in all, 1 to put in"));
    assertTrue(three.says("3 2 there already, 1 to get"));
  }

  @Test
  void moreMayStandThanAnybodyWouldPlant() {
    TestBed bed = TestBed.laidOut(visitor, "Meadow");
    bed.standing("Trifolium repens", 5000);
    assertEquals(Map.of(CLOVER, "5000"), TestBed.counts(visitor.get(bed.path() + "/guild/edit")));
    assertEquals(Map.of(CLOVER, 5000), TestBed.plants(bed.plant("Meadow", CLOVER, "5000")));
  }

  @Test
  void onlyThePartThatChangesIsSentWhereThatIsAskedFor() {
    TestBed bed = TestBed.laidOut(visitor, "In parts");
    String path = bed.path() + "/guild/edit";
    visitor.get(path);
    String[] draft = {"name", "x", "count." + ASPARAGUS, "5"};
    Page part = visitor.postForFragment(path, draft);
    assertEquals(200, part.status());
    assertTrue(part.html().strip().startsWith("<div id=\"draft\""), part.html());
    assertFalse(part.html().contains("<main"));
    Page whole = visitor.submit(path, draft);
    assertTrue(whole.html().contains("<main"));
    assertEquals(TestBed.points(whole), TestBed.points(part));
    // A part with status 422 would not be shown: the message comes with 200.
    Page refused = visitor.postForFragment(path, "name", "x", "count." + ASPARAGUS, "many");
    assertEquals(200, refused.status());
    assertEquals("“many” is not a whole number.", refused.messageOf("count." + ASPARAGUS));
    assertEquals(Map.of(ASPARAGUS, "5"), TestBed.counts(visitor.get(path)), "what is refused is no step of the draft");
  }

  @Test
  void theScoreShownIsTheEvaluatorsToTheLastPoint() {
    TestBed bed = TestBed.laidOut(visitor, "Scored");
    bed.ask("wish.function:nitrogen-fixer", "must", "weight.function:nitrogen-fixer", "8",
        "wish.layer:shrub", "nice", "weight.layer:shrub", "3", "wish.bloom-month:6", "nice", "weight.bloom-month:6", "5",
        "wish.harvest-part:nut", "must", "weight.harvest-part:nut", "2", "maxSpecies", "2", "without.listed", "on");
    BedPlan plan = plan(List.of(new Wish(WishKind.FUNCTION, "nitrogen-fixer", true, 8), new Wish(WishKind.LAYER, "shrub", false, 3),
        new Wish(WishKind.BLOOM_MONTH, "6", false, 5), new Wish(WishKind.HARVEST_PART, "nut", true, 2)), Rules.forArea(24).withMaxSpecies(2));
    Evaluator evaluator = new Evaluator(plan.problem(id -> Supply.UNKNOWN));
    GuildWords words = new GuildWords(new Messages(), plan.library(), Units.METRIC);
    for (Map<String, Integer> counts : List.<Map<String, Integer>>of(Map.of(), Map.of(ASPARAGUS, 5), Map.of(ASPARAGUS, 5, CLOVER, 30, HAZEL, 1),
        Map.of("amelanchier-alnifolia", 2, CLOVER, 30, ASPARAGUS, 1, HAZEL, 400))) {
      Evaluation judged = evaluator.evaluate(Guild.of(counts));
      List<String> fields = new ArrayList<>(List.of("name", "x"));
      counts.forEach((id, count) -> fields.addAll(List.of("count." + id, Integer.toString(count))));
      Page page = compute(bed, fields.toArray(String[]::new));
      List<String> points = TestBed.points(page);
      List<Integer> parts = judged.score().parts().stream().map(ScoreBreakdown.Part::earnedMilli).toList();
      assertEquals(parts, points.subList(0, points.size() - 1).stream().map(TestBed::milli).toList());
      assertEquals(judged.score().totalMilli(), TestBed.milli(points.get(points.size() - 1)));
      words.breaches(judged).forEach(breach -> assertTrue(page.says(breach), breach));
      words.remarks(judged.remarks()).forEach(remark -> assertTrue(page.says(remark), remark));
      assertEquals(judged.keepsRules(), page.says("It keeps all your rules."));
    }
  }

  @Test
  void whatChangesAgainstTheSavedGuildAddsUp() {
    TestBed bed = TestBed.laidOut(visitor, "Differences");
    bed.ask("wish.function:nitrogen-fixer", "must", "wish.layer:herb", "nice", "without.listed", "on");
    visitor.post(bed.path() + "/guild/edit", "name", "Before", "do", "save", "count." + CLOVER, "30");
    int before = total(visitor.get(bed.path() + "/guild/edit"));
    assertTrue(compute(bed, "name", "Before", "count." + CLOVER, "30").says("Scores the same as the saved guild, part by part."));
    Page draft = compute(bed, "name", "Before", "count." + ASPARAGUS, "5");
    int sum = Pattern.compile("<li>[^<]*: ([0-9.]+) points (more|fewer)</li>").matcher(draft.html()).results()
        .mapToInt(r -> r.group(2).equals("more") ? TestBed.milli(r.group(1)) : -TestBed.milli(r.group(1))).sum();
    assertTrue(sum != 0);
    assertEquals(total(draft) - before, sum);
  }

  /** Every wish a guild made by hand leaves open is told with its reason, whatever keeps it open. */
  @Test
  void theGapsOfAGuildMadeByHandAreExplained() {
    TestBed bed = TestBed.laidOut(visitor, "Gaps");
    bed.ask("wish.function:nitrogen-fixer", "must", "wish.layer:tall-tree", "nice",
        "wish.bloom-month:1", "nice", "without.listed", "on");
    bed.plant("Only asparagus", ASPARAGUS, "5");
    Page guild = TestBed.settled(visitor, bed.path() + "/guild");
    List<String> gaps = Pattern.compile("(?s)<article class=\"card gap\">.*?</article>").matcher(guild.html()).results()
        .map(r -> new Page(200, Map.of(), r.group()).text()).toList();
    assertEquals(3, gaps.size(), gaps.toString());
    assertTrue(gaps.stream().anyMatch(gap -> gap.startsWith("fixes nitrogen must It could be met: ")), gaps.toString());
    assertTrue(gaps.stream().anyMatch(gap -> gap.contains("What would close it")), gaps.toString());
    visitor.submit("/units", "units", "us", "back", "/");
    Page feet = visitor.get(bed.path() + "/guild");
    assertEquals(200, feet.status());
    assertFalse(feet.text().matches(".*\\d (m|cm|m²|°C)[ ,.;)].*"), feet.text());
  }

  @Test
  void aSpeciesThatWasRemovedFromTheLibraryDoesNotBreakItsGuilds() {
    TestBed bed = TestBed.laidOut(visitor, "Removed");
    bed.ask("wish.layer:shrub", "nice", "pinAdd", "sambucus-canadensis", "without.listed", "on");
    visitor.post(bed.path() + "/guild/edit", "name", "With elder", "do", "save", "count.sambucus-canadensis", "1", "count." + ASPARAGUS, "5");
    visitor.get("/library/sambucus-canadensis");
    assertEquals(303, visitor.post("/library/sambucus-canadensis/remove").status());
    try {
      assertEquals(200, visitor.get(bed.path() + "/guild").status());
      assertEquals(200, visitor.get(bed.path() + "/guild/edit").status());
      assertEquals(200, visitor.get(bed.path() + "/wishes").status());
      bed.ask("wish.layer:shrub", "nice", "without.listed", "on");
      Page guild = visitor.get(bed.path() + "/guild");
      assertEquals(200, guild.status());
      assertTrue(guild.says("is not in the library."));
      assertEquals(Map.of(ASPARAGUS, "5"), TestBed.counts(visitor.get(bed.path() + "/guild/edit")));
    } finally {
      assertEquals(303, visitor.post("/library/sambucus-canadensis/restore").status());
    }
    assertEquals(Map.of("sambucus-canadensis", 1, ASPARAGUS, 5), TestBed.plants(visitor.get(bed.path() + "/guild")));
  }

  @Test
  void aGuildIsForgottenOnce() {
    TestBed bed = TestBed.laidOut(visitor, "Forgetting");
    assertEquals(404, visitor.post(bed.path() + "/guild/remove").status());
    bed.plant("Short-lived", ASPARAGUS, "5");
    assertTrue(visitor.submit(bed.path() + "/guild/remove").says("The guild is forgotten."));
    assertEquals(404, visitor.post(bed.path() + "/guild/remove").status());
    assertEquals(404, visitor.get(bed.path() + "/share").status());
  }

  @Test
  void unknownBedsAreNotFound() {
    for (String bed : new String[] {"/beds/999999", "/beds/x", "/beds/-1", "/beds/99999999999999999999"}) {
      assertEquals(404, visitor.get(bed + "/guild").status(), bed);
      assertEquals(404, visitor.get(bed + "/guild/edit").status(), bed);
      assertEquals(404, visitor.post(bed + "/guild/edit", "name", "x", "do", "save").status(), bed);
      assertEquals(404, visitor.post(bed + "/guild/remove").status(), bed);
    }
  }

  private Page compute(TestBed bed, String... fields) {
    List<String> all = new ArrayList<>(List.of(fields));
    all.addAll(List.of("do", "compute"));
    return visitor.submit(bed.path() + "/guild/edit", all.toArray(String[]::new));
  }

  private static int total(Page page) {
    List<String> points = TestBed.points(page);
    return TestBed.milli(points.get(points.size() - 1));
  }

  /** The bed of {@link TestBed} with the species that come with the program, put together without pages or forms. */
  private static BedPlan plan(List<Wish> wishes, Rules rules) {
    Site site = new Site(1, "Site", "US-WI", OptionalDouble.empty(), Optional.empty(), Optional.empty(), Map.of(
        Axis.WINTER_COLD, ClimateReader.winter("5a", Basis.PUBLISHED, "").orThrow().orElseThrow(),
        Axis.REACTION, condition(Axis.REACTION, "6.2", "measured")), "");
    Bed bed = new Bed(1, 1, "Scored", 24, Map.of(Axis.LIGHT, condition(Axis.LIGHT, "full sun", "observed"),
        Axis.MOISTURE, condition(Axis.MOISTURE, "moist", "observed")), List.of(), "");
    return new BedPlan(bed, site, library(), wishes, rules);
  }

  private static Condition condition(Axis axis, String entered, String basis) {
    return ConditionReader.read(axis, new ConditionReader.Entry(entered, "", basis), "").orThrow().orElseThrow();
  }

  private static SpeciesLibrary library() {
    try (Database database = Database.inMemory()) {
      SqlSpeciesRecords records = new SqlSpeciesRecords(database);
      records.addAll(SeedFiles.read("/seed-data").orThrow());
      return records.library();
    }
  }
}
