package guildwood.guild.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.guild.StartingWishes;
import guildwood.guild.Wish;
import guildwood.guild.WishKind;
import guildwood.web.SharedDemo;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wishes and limits of a bed over HTTP: what the form takes, what it refuses and keeps. */
class WishHttpTest {
  private static String refusing;
  private static Map<String, String> beforeRefusing;
  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());

  /** One bed for all that is refused: nothing of it may change. */
  @BeforeAll
  static void aBedWithWishes() {
    HttpVisitor visitor = new HttpVisitor(SharedDemo.app());
    refusing = TestBed.laidOut(visitor, "Refused").path();
    visitor.submit(refusing + "/wishes", TestBed.whole("pinAdd", "asparagus-officinalis", "wish.layer:shrub", "nice", "weight.layer:shrub", "9"));
    beforeRefusing = TestBed.fields(visitor.get(refusing + "/wishes"));
  }

  @ParameterizedTest
  @EnumSource(StartingWishes.class)
  void aStartingSetFillsTheFormAndSavesNothing(StartingWishes set) {
    String path = bed("Starting") + "/wishes";
    visitor.submit(path, TestBed.whole("wish.layer:herb", "must", "weight.layer:herb", "2", "maxSpecies", "4"));
    Map<String, String> before = TestBed.fields(visitor.get(path));
    Map<String, String> filled = TestBed.fields(visitor.get(path + "?start=" + set.key()));
    for (WishKind kind : WishKind.values()) {
      for (String item : kind.items()) {
        List<Wish> asked = set.wishes().stream()
            .filter(w -> w.kind() == kind && (kind == WishKind.GROUND || w.item().equals(item))).toList();
        String key = WishForm.field(kind, item);
        assertEquals(asked.isEmpty() ? "" : asked.get(0).must() ? "must" : "nice", filled.get("wish." + key), key);
        assertEquals(asked.isEmpty() ? "5" : Integer.toString(asked.get(0).weight()), filled.get("weight." + key), key);
      }
    }
    assertEquals("4", filled.get("maxSpecies"), "limits stay");
    assertEquals(before, TestBed.fields(visitor.get(path)));
    assertEquals(303, visitor.post(path, filled).status());
    assertTrue(visitor.get(path.replace("/wishes", "/guild")).says(set.wishes().size() + " wishes kept."));
  }

  @Test
  void anUnknownStartingSetShowsWhatIsKept() {
    String path = bed("Unknown start") + "/wishes";
    assertEquals(TestBed.fields(visitor.get(path)), TestBed.fields(visitor.get(path + "?start=no-such-set")));
  }

  @Test
  void whatIsSavedComesBackAsItWas() {
    String path = bed("Round trip") + "/wishes";
    Map<String, String> fields = whole();
    fields.put("pinAdd", "asparagus-officinalis");
    fields.put("pinAddCount", "3");
    fields.put("banAdd", "urtica-dioica");
    Page guild = visitor.submit(path, flat(fields));
    assertTrue(guild.says("4 wishes kept."));
    assertTrue(guild.says("must fixes nitrogen nice to have in bloom in May; fruit to harvest; 45 % of the ground covered"));
    Map<String, String> kept = new LinkedHashMap<>(TestBed.fields(visitor.get(path)));
    assertEquals("3", kept.remove("pin.asparagus-officinalis"));
    assertEquals("on", kept.remove("ban.urtica-dioica"));
    whole().forEach((field, value) -> assertEquals(value, kept.get(field), field));
    assertFalse(kept.containsKey("allowBorderline") || kept.containsKey("without.thorns"));
  }

  @Test
  void fixedAndBannedSpeciesCanBeLetGoAgain() {
    String path = bed("Letting go") + "/wishes";
    visitor.submit(path, TestBed.whole("pinAdd", "asparagus-officinalis", "banAdd", "urtica-dioica"));
    Map<String, String> fields = TestBed.fields(visitor.get(path));
    assertEquals("1", fields.get("pin.asparagus-officinalis"), "one plant where no number was given");
    fields.put("pin.asparagus-officinalis", "0");
    fields.remove("ban.urtica-dioica");
    visitor.submit(path, flat(fields));
    Map<String, String> after = TestBed.fields(visitor.get(path));
    assertFalse(after.containsKey("pin.asparagus-officinalis") || after.containsKey("ban.urtica-dioica"));
  }

  @Test
  void anEmptyFormAsksNothingAndTakesTheUsualLimits() {
    String path = bed("Empty") + "/wishes";
    Map<String, String> usual = TestBed.fields(visitor.get(path));
    visitor.submit(path, flat(whole()));
    assertTrue(visitor.submit(path, TestBed.whole("without.listed", "on")).says("Kept, without any wish."));
    assertEquals(usual, TestBed.fields(visitor.get(path)));
  }

  @ParameterizedTest
  @CsvSource({
    "maxSpecies, 0, Must lie between 1 and 40.",
    "maxSpecies, 9999, Must lie between 1 and 40.",
    "maxSpecies, seven, “seven” is not a whole number.",
    "maxSpecies, 1.5, “1.5” is not a whole number.",
    "maxSpecies, 1e1, “1e1” is not a whole number.",
    "maxSpecies, 7\u00077, 'Contains characters that cannot be shown, such as tabs or control codes.'",
    "maxPlants, -1, Must lie between 1 and 2000.",
    "maxPlants, 2001, Must lie between 1 and 2000.",
    "maxPlants, 99999999999999999999, “99999999999999999999” is not a whole number.",
    "maxSpeciesPerGenus, 0, Must lie between 1 and 40.",
    "maxSpeciesPerGenus, two, “two” is not a whole number.",
    "budget, -1, Must lie between 0 and 1000000.",
    "budget, abc, “abc” is not a number that can be read here.",
    "budget, 1e9, “1e9” is not a number that can be read here.",
    "budget, 1000001, Must lie between 0 and 1000000.",
    "budget, $20, “$20” is not a number that can be read here.",
    "priceIfUnknown, free, “free” is not a number that can be read here.",
    "priceIfUnknown, 10000.01, Must lie between 0 and 10000.",
    "priceIfUnknown, -0.01, Must lie between 0 and 10000.",
    "weight.function:nitrogen-fixer, 0, Must lie between 1 and 10.",
    "weight.function:nitrogen-fixer, 11, Must lie between 1 and 10.",
    "weight.function:nitrogen-fixer, 1.5, “1.5” is not a whole number.",
    "weight.function:nitrogen-fixer, heavy, “heavy” is not a whole number.",
    "weight.bloom-month:12, 0, Must lie between 1 and 10.",
    "wish.function:nitrogen-fixer, perhaps, '“perhaps” is not one of: must, nice.'",
    "wish.harvest-month:1, MUST, '“MUST” is not one of: must, nice.'",
    "share.ground, 0, Must lie between 1 and 100.",
    "share.ground, 101, Must lie between 1 and 100.",
    "share.ground, 7.5, “7.5” is not a whole number.",
    "share.ground, '', Please fill this in.",
    "plantsFrom, the moon, “the moon” is not known here.",
    "nativeTo, atlantis, “atlantis” is not known here.",
    "pinAdd, no-such-plant, “no-such-plant” is not known here.",
    "pinAdd, ../../etc, “../../etc” is not known here.",
    "banAdd, no-such-plant, “no-such-plant” is not known here.",
    "pinAddCount, 0, Must lie between 1 and 2000.",
    "pinAddCount, a few, “a few” is not a whole number.",
    "pin.asparagus-officinalis, 2.5, “2.5” is not a whole number.",
    "pin.asparagus-officinalis, -2, Must lie between 0 and 2000.",
    "pin.asparagus-officinalis, 2001, Must lie between 0 and 2000."})
  void refusesNonsenseBesideItsFieldAndKeepsTheRest(String field, String typed, String message) {
    String path = refusing + "/wishes";
    Map<String, String> fields = whole();
    fields.put("pin.asparagus-officinalis", "4");
    fields.put(field, typed);
    Page refused = visitor.post(path, fields);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    assertEquals(List.of(message), refused.messages().stream().filter(m -> !m.startsWith("Not saved yet.")).toList());
    Map<String, String> kept = TestBed.fields(refused);
    // A choice that is none of those offered cannot be shown as chosen; everything else comes back.
    boolean choice = field.startsWith("wish.") || List.of("nativeTo", "pinAdd", "banAdd", "plantsFrom").contains(field);
    fields.forEach((name, value) -> assertEquals(choice && name.equals(field) ? "" : value, kept.get(name), name));
    assertEquals(beforeRefusing, TestBed.fields(visitor.get(path)), "nothing is half saved");
  }

  /** Cut short on the way, or from anywhere: what is missing in it is not taken for what is no longer wished. */
  @Test
  void aFormThatDidNotArriveWholeChangesNothing() {
    String path = bed("Cut short") + "/wishes";
    visitor.post(path, whole());
    Map<String, String> before = TestBed.fields(visitor.get(path));
    for (Page refused : List.of(visitor.post(path), visitor.post(path, "wish.layer:herb", "must", "maxSpecies", "3"))) {
      assertEquals(422, refused.status());
      assertTrue(refused.says("This form did not arrive whole, so nothing was changed."));
      assertEquals(before, TestBed.fields(refused), "what is kept is shown");
    }
    assertEquals(before, TestBed.fields(visitor.get(path)));
  }

  /** A refused field in a part of the form that is folded away would not be seen. */
  @Test
  void thePartWithTheRefusedFieldIsOpen() {
    String path = bed("Folded") + "/wishes";
    String december = "(?s)<details[^>]*>\\s*<summary><strong>A harvest in a month</strong>";
    assertFalse(visitor.get(path).first(december).orElseThrow().contains("open"));
    assertTrue(visitor.post(path, TestBed.whole("weight.harvest-month:12", "12")).first(december).orElseThrow().contains("open"));
    assertTrue(visitor.post(path, TestBed.whole("wish.harvest-month:12", "perhaps")).first(december).orElseThrow().contains("open"));
  }

  @Test
  void severalMistakesAreToldAtOnce() {
    Page refused = visitor.post(bed("Several") + "/wishes", TestBed.whole("maxSpecies", "0", "budget", "abc", "weight.layer:herb", "99", "nativeTo", "x"));
    assertEquals(5, refused.messages().size());
    assertFalse(refused.messageOf("maxSpecies").isEmpty() || refused.messageOf("budget").isEmpty()
        || refused.messageOf("weight.layer:herb").isEmpty() || refused.messageOf("nativeTo").isEmpty());
  }

  @Test
  void anOverlongNumberIsToldSoAndShownAgain() {
    String digits = "9".repeat(5000);
    Page refused = visitor.post(bed("Overlong") + "/wishes", TestBed.whole("maxPlants", digits, "nativeTo", "x".repeat(5000)));
    assertEquals(422, refused.status());
    assertEquals("Too long: at most 40 characters.", refused.messageOf("maxPlants"));
    assertEquals(digits, refused.valueOf("maxPlants"));
    assertFalse(refused.messageOf("nativeTo").isEmpty());
  }

  @Test
  void aSpeciesCannotBeFixedAndBannedAtOnce() {
    String path = bed("Both") + "/wishes";
    Page both = visitor.post(path, TestBed.whole("pinAdd", "asparagus-officinalis", "banAdd", "asparagus-officinalis"));
    assertEquals(422, both.status());
    assertEquals("This species is fixed and banned at once.", both.messageOf("pinAdd"));
    assertEquals("asparagus-officinalis", both.valueOf("pinAdd"));
    visitor.submit(path, TestBed.whole("pinAdd", "asparagus-officinalis"));
    Page later = visitor.post(path, TestBed.whole("pin.asparagus-officinalis", "1", "banAdd", "asparagus-officinalis"));
    assertEquals("This species is fixed and banned at once.", later.messageOf("pin.asparagus-officinalis"));
  }

  @Test
  void plantsThatStandCannotBeFixedToFewer() {
    TestBed bed = TestBed.laidOut(visitor, "Standing");
    bed.standing("Asparagus officinalis", 3);
    String path = bed.path() + "/wishes";
    Page refused = visitor.post(path, TestBed.whole("pinAdd", "asparagus-officinalis", "pinAddCount", "2"));
    assertEquals(422, refused.status());
    assertEquals("Plants that stand there stay: at least 3.", refused.messageOf("pinAdd"));
    visitor.submit(path, TestBed.whole("pinAdd", "asparagus-officinalis"));
    assertEquals("3", visitor.get(path).valueOf("pin.asparagus-officinalis"), "what stands there is the least");
    assertEquals("Plants that stand there stay: at least 3.", visitor.post(path, TestBed.whole("pin.asparagus-officinalis", "1")).messageOf("pin.asparagus-officinalis"));
  }

  /** The bed may change after its limits were set; its pages must not break on that. */
  @Test
  void moreOfAFixedSpeciesMayComeToStand() {
    TestBed bed = TestBed.laidOut(visitor, "Growing");
    bed.ask("pinAdd", "asparagus-officinalis", "pinAddCount", "2", "banAdd", "urtica-dioica");
    bed.standing("Asparagus officinalis", 5);
    bed.standing("Urtica dioica", 1);
    assertEquals(200, visitor.get(bed.path() + "/guild").status());
    Page edit = visitor.get(bed.path() + "/guild/edit");
    assertEquals(Map.of("asparagus-officinalis", "5", "urtica-dioica", "1"), TestBed.counts(edit));
    assertTrue(edit.says("It keeps all your rules."));
    assertEquals(303, visitor.post(bed.path() + "/guild/compose").status());
  }

  @Test
  void idsNobodyOffersAreNotKept() {
    String path = bed("Tampered") + "/wishes";
    visitor.submit(path, TestBed.whole("ban.no-such-plant", "on", "pin.no-such-plant", "3", "pin.another", "many", "without.nonsense", "on",
        "wish.function:nonsense", "must", "wish.nonsense", "must", "without.listed", "on"));
    Map<String, String> usual = TestBed.fields(visitor.get(bed("Usual") + "/wishes"));
    assertEquals(usual, TestBed.fields(visitor.get(path)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/beds/999999/wishes", "/beds/x/wishes", "/beds/-1/wishes", "/beds/99999999999999999999/wishes", "/beds/1%2e0/wishes"})
  void unknownBedsAreNotFound(String path) {
    assertEquals(404, visitor.get(path).status());
    assertEquals(404, visitor.post(path, whole()).status());
  }

  private String bed(String name) {
    return TestBed.laidOut(visitor, name).path();
  }

  private static String[] flat(Map<String, String> fields) {
    return fields.entrySet().stream().flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue())).toArray(String[]::new);
  }

  private static Map<String, String> whole() {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("wish.function:nitrogen-fixer", "must");
    fields.put("weight.function:nitrogen-fixer", "9");
    fields.put("wish.bloom-month:5", "nice");
    fields.put("weight.bloom-month:5", "1");
    fields.put("wish.harvest-part:fruit", "nice");
    fields.put("weight.harvest-part:fruit", "10");
    fields.put("whole", "yes");
    fields.put("wish.ground", "nice");
    fields.put("weight.ground", "3");
    fields.put("share.ground", "45");
    fields.put("maxSpecies", "6");
    fields.put("maxPlants", "33");
    fields.put("maxSpeciesPerGenus", "1");
    fields.put("budget", "120.50");
    fields.put("priceIfUnknown", "4.00");
    fields.put("plantsFrom", "have-or-propagate");
    fields.put("allowNotKnown", "on");
    fields.put("nativeTo", "great-lakes");
    fields.put("without.toxic", "on");
    fields.put("without.listed", "on");
    return fields;
  }
}
