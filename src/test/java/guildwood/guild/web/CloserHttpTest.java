package guildwood.guild.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.species.GuildFunction;
import guildwood.species.Species;
import guildwood.species.exchange.ShippedLibrary;
import guildwood.web.SharedDemo;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What would close a gap, over HTTP: every change says what it promises, and doing it keeps the promise. */
class CloserHttpTest {
  /** Wishes and limits that leave gaps of many kinds in an empty bed. */
  private static final String[] ASKED = {"wish.function:nitrogen-fixer", "must", "wish.function:mulch-maker", "nice",
      "wish.harvest-part:nut", "nice", "wish.layer:small-tree", "nice", "wish.layer:climber", "nice",
      "without.listed", "on", "without.thorns", "on", "maxSpecies", "3"};
  private static final int MOST_OF_A_KIND = 4;

  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());
  /** What the bed's form held before it was changed; null while it is as it was. */
  private Map<String, String> before;

  /** A closer as the page shows it; {@code step} is the button or link it offers. */
  private record Shown(String change, int promisedMilli, String guild, String free, String limits, String step) {}

  @ParameterizedTest
  @CsvSource({"acid, 24, full sun, moist, 4.6", "shady, 24, full shade, moist, 6.2", "dry, 24, full sun, very dry, 6.2",
      "small, 6, full sun, moist, 6.2"})
  void doingWhatIsSaidKeepsThePromise(String name, String area, String light, String moisture, String ph) {
    TestBed bed = laidOut(name, area, light, moisture, ph);
    bed.ask(ASKED);
    Map<String, Integer> kinds = new HashMap<>();
    for (Shown shown : closers(TestBed.settled(visitor, bed.path() + "/guild/edit/gaps"))) {
      if (kinds.merge(shown.step, 1, Integer::sum) <= MOST_OF_A_KIND) {
        assertEquals(shown.promisedMilli, total(done(bed, shown)), shown.toString());
        undone(bed);
      }
    }
    assertTrue(kinds.size() >= 2, kinds.toString());
  }

  /** Between them the beds above show every kind of step; so that none is left untried, each is named here. */
  @Test
  void everyKindOfStepIsOffered() {
    Set<String> kinds = new LinkedHashSet<>();
    for (String[] of : new String[][] {{"24", "full shade", "moist", "4.6"}, {"6", "full sun", "moist", "6.2"}}) {
      TestBed bed = laidOut("Kinds", of[0], of[1], of[2], of[3]);
      bed.ask(ASKED);
      closers(TestBed.settled(visitor, bed.path() + "/guild/edit/gaps")).forEach(shown -> kinds.add(shown.step));
    }
    assertEquals(Set.of("draft", "limits", "ground", "bed"), kinds);
  }

  @Test
  void aBanIsLiftedByTakingTheGuildThatNeedsIt() {
    TestBed bed = TestBed.laidOut(visitor, "Banned");
    bed.ask("wish.function:mulch-maker", "must", "without.listed", "on", "allowNotKnown", "on");
    Page open = TestBed.settled(visitor, bed.path() + "/guild/edit/gaps");
    Set<String> providers = new LinkedHashSet<>();
    closers(open).forEach(c -> GuildCode.read(c.guild).species().forEach(providers::add));
    assertFalse(providers.isEmpty());
    List<String> fields = new ArrayList<>(List.of("wish.function:mulch-maker", "must", "without.listed", "on", "allowNotKnown", "on"));
    for (Species species : ShippedLibrary.read("/seed-data").orThrow().species()) {
      if (species.does(GuildFunction.MULCH_MAKER).orElse(false)) {
        fields.addAll(List.of("ban." + species.id(), "on"));
      }
    }
    bed.ask(fields.toArray(String[]::new));
    List<Shown> lifting = closers(TestBed.settled(visitor, bed.path() + "/guild/edit/gaps")).stream().filter(c -> !c.free.isEmpty()).toList();
    assertFalse(lifting.isEmpty(), "all plants that make mulch are banned");
    Page draft = done(bed, lifting.get(0));
    assertEquals(lifting.get(0).promisedMilli, total(draft));
    assertTrue(draft.says("It keeps all your rules."), "the ban is lifted in the draft");
    assertTrue(visitor.get(bed.path() + "/wishes").html().contains("ban." + lifting.get(0).free), "and nowhere else before it is saved");
    assertEquals(303, visitor.post(bed.path() + "/guild/edit", saving(draft)).status());
    assertFalse(visitor.get(bed.path() + "/wishes").html().contains("\"ban." + lifting.get(0).free + "\""));
    assertTrue(visitor.get(bed.path() + "/guild").says("It keeps all your rules."));
  }

  @Test
  void theGroundIsExplainedWithPublishedAmountsOnlyAndATestFirst() {
    TestBed acid = laidOut("Lime", "24", "full shade", "moist", "4.6");
    acid.ask(ASKED);
    Page open = TestBed.settled(visitor, acid.path() + "/guild/edit/gaps");
    assertTrue(open.says("Test the soil first and follow the laboratory’s figure"));
    assertTrue(open.says("common practice, no source"), "no publication is claimed for rates that have none");
    assertTrue(open.says("open the canopy"));
    assertTrue(open.says("trees may be protected"));
    TestBed lime = laidOut("Sulfur", "100", "full sun", "moist", "8.3");
    lime.ask(ASKED);
    // Clemson University, as kept in CHECKS 7.4: 5 to 10 lb a 1,000 sq ft at a time, 2 to 3 months apart.
    Page sulfur = TestBed.settled(visitor, lime.path() + "/guild/edit/gaps");
    assertTrue(sulfur.says("No more elemental sulfur at a time than 24 – 49 g/m², which is 2.4 – 4.9 kg for this bed"));
    assertTrue(sulfur.says("two to three months before the next (Clemson University)"));
    visitor.submit("/units", "units", "us", "back", "/");
    assertTrue(TestBed.settled(visitor, lime.path() + "/guild/edit/gaps").says("than 5 – 10 lb per 1,000 sq ft, which is 5.4 – 11 lb for this bed"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"no-such-rule", "enemies", "larger-than-bed", "banned&to=nobody", "caution&to=listed", "caution&to=toxic:leaves",
      "not-native&to=the+moon", "too-many-species&to=0", "too-many-species&to=many", "over-budget&to=99999999999", "genus-limit&to=-1"})
  void whatNobodyCanEaseIsNotFound(String ease) {
    TestBed bed = TestBed.laidOut(visitor, "Easing");
    assertEquals(404, visitor.get(bed.path() + "/wishes?ease=" + ease).status());
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", "a:0", "a:-1", "a:1,", "a:99999", "A:1", "a:1;b:2", "a", ":3", "<b>:1"})
  void aGuildThatNobodyWroteIsABadRequest(String code) {
    TestBed bed = TestBed.laidOut(visitor, "Codes");
    assertEquals(400, visitor.post(bed.path() + "/guild/draft", "guild", code).status());
    assertEquals(303, visitor.post(bed.path() + "/guild/draft", "guild", "no-such-plant:3").status());
    assertTrue(visitor.get(bed.path() + "/guild/edit").says("No plants yet."), "what the library does not have is left out");
    assertEquals(404, visitor.post("/beds/999999/guild/draft", "guild", "a:1").status());
  }

  /** Does what a closer says, and returns the draft that then has its guild. */
  private Page done(TestBed bed, Shown shown) {
    if (!shown.limits.isEmpty()) {
      Page limits = visitor.get(shown.limits);
      assertTrue(limits.says(shown.change), "the limit that is eased is named");
      Map<String, String> fields = TestBed.fields(limits);
      fields.put("do", "draft");
      Page draft = visitor.get(visitor.post(bed.path() + "/wishes", fields).location());
      assertTrue(draft.says("Limits and 5 wishes kept."));
      return draft;
    }
    if (shown.step.equals("ground") || shown.step.equals("bed")) {
      change(bed, shown.change);
    }
    List<String> fields = new ArrayList<>(List.of("guild", shown.guild));
    if (!shown.free.isEmpty()) {
      fields.addAll(List.of("free", shown.free));
    }
    return visitor.submit(bed.path() + "/guild/draft", fields.toArray(String[]::new));
  }

  /** Describes the bed anew as the sentence has it: hours, a pH, a class, or an area. */
  private void change(TestBed bed, String change) {
    Map<String, String> fields = TestBed.fields(visitor.get(bed.path() + "/edit"));
    before = new LinkedHashMap<>(fields);
    Matcher area = Pattern.compile("the bed had ([0-9.]+) m²").matcher(change);
    if (area.find()) {
      fields.put("area", area.group(1));
    } else {
      Matcher range = Pattern.compile("were (?:at pH )?([0-9.]+|[a-z ]+?)(?: (?:–|to) ([0-9.]+|[a-z ]+?))?(?: h a day)? instead").matcher(change);
      assertTrue(range.find(), change);
      String axis = change.contains("sun here") ? "light" : change.contains("pH") ? "ph" : change.contains("moisture") ? "moisture" : "fertility";
      fields.put(axis + "-from", range.group(1));
      fields.put(axis + "-to", range.group(2) == null ? "" : range.group(2));
      fields.put(axis + "-basis", "measured");
    }
    assertEquals(303, visitor.post(bed.path() + "/edit", fields).status(), change);
  }

  /** Takes back what {@link #done} did. */
  private void undone(TestBed bed) {
    if (before != null) {
      assertEquals(303, visitor.post(bed.path() + "/edit", before).status());
      before = null;
    }
    bed.ask(ASKED);
    assertEquals(303, visitor.post(bed.path() + "/guild/edit", "do", "undo").status());
    assertTrue(visitor.get(bed.path() + "/guild/edit").says("No plants yet."));
  }

  private static Map<String, String> saving(Page draft) {
    Map<String, String> fields = TestBed.fields(draft);
    fields.put("do", "save");
    return fields;
  }

  private TestBed laidOut(String name, String area, String light, String moisture, String ph) {
    String site = visitor.post("/sites/new", "name", "Site of " + name, "place", "US-WI", "winter", "5a", "winter-basis", "published").location();
    return new TestBed(visitor, visitor.post(site + "/beds/new", "name", name, "area", area, "area-unit", "metric",
        "light-from", light, "light-basis", "observed", "moisture-from", moisture, "moisture-basis", "observed",
        "ph-from", ph, "ph-basis", "measured").location());
  }

  private static List<Shown> closers(Page page) {
    List<Shown> shown = new ArrayList<>();
    for (String part : page.html().split("<li class=\"closer\">")) {
      Page one = new Page(200, Map.of(), part);
      Matcher promise = Pattern.compile("\\(([0-9.−]+) in all\\)").matcher(one.text());
      if (part.contains("class=\"closer-line\"") && promise.find()) {
        String limits = one.first("href=\"([^\"]*ease=[^\"]*)\"").orElse("").replace("&amp;", "&");
        String step = !limits.isEmpty() ? "limits" : part.contains("What the ground would need") ? "ground"
            : part.contains("Describe the bed anew") ? "bed" : "draft";
        shown.add(new Shown(one.text().replaceAll("(?s) ?: .*", ""), TestBed.milli(promise.group(1)), one.valueOf("guild"),
            one.valueOf("free"), limits, step));
      }
    }
    return shown;
  }

  private static int total(Page page) {
    List<String> points = TestBed.points(page);
    return TestBed.milli(points.get(points.size() - 1));
  }
}
