package guildwood.bed.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beds over HTTP: laying out, looking, plants that stand there, changing, removing. */
class BedHttpTest {
  private static App app;
  private final HttpVisitor visitor = new HttpVisitor(app);
  private String site;

  @BeforeAll
  static void serve() {
    app = App.start(Settings.demoOnFreePort());
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  @BeforeEach
  void aSite() {
    site = visitor.post("/sites/new", "name", "Orchard edge", "winter", "5b", "winter-basis", "published",
        "spring-day", "5", "spring-month", "5", "autumn-day", "5", "autumn-month", "10",
        "ph-from", "6.2", "ph-basis", "measured", "light-from", "full sun", "light-basis", "observed").location();
  }

  @Test
  void showsItsOwnConditionsAndTheInheritedOnesMarkedAsSuch() {
    Page bed = visitor.submit(site + "/beds/new", flat(whole("South strip")));
    assertTrue(bed.says("Area 24 m²"));
    assertTrue(bed.says("Light part shade 3 to 5 h measured 3 to 5"));
    assertTrue(bed.says("Moisture dry to moist class 2 to 3 of 5 observed dry to moist"));
    assertTrue(bed.says("Soil reaction moderately acid to slightly acid pH 6.0 to 6.4 measured inherited from the site 6.2"));
    assertTrue(bed.says("Winter cold zone 5b −26.1 °C to −23.3 °C published map or table inherited from the site 5b"));
    assertTrue(bed.says("Season 153 frost-free days counted from the frost dates inherited from the site 5 May to 5 October"));
    assertTrue(bed.says("Fertility not known yet"));
    assertTrue(bed.says("full sun from 6 h, part shade 3-6 h, full shade under 3 h"));
    assertFalse(bed.says("Light or moisture of this bed is not known yet"));
  }

  @Test
  void leadsOnToTheLibraryAndTheGuild() {
    String path = laidOut("South strip");
    String id = path.substring("/beds/".length());
    assertTrue(visitor.get(path).links().contains("/library?bed=" + id));
    assertTrue(visitor.get(path).links().contains(path + "/guild"));
    Page home = visitor.get("/");
    assertTrue(home.links().contains("/library?bed=" + id));
    assertTrue(home.links().contains(path + "/guild"));
  }

  @Test
  void aBedWithoutLightOrMoistureAsksForThemFirst() {
    String path = visitor.post(site + "/beds/new", "name", "Bare", "area", "5").location();
    assertTrue(visitor.get(path).says("Light or moisture of this bed is not known yet"));
    assertTrue(visitor.get("/").links().contains(path + "/edit"));
    assertTrue(visitor.get(site).says("Bare 5 m² Light: full sun Soil reaction: pH 6.0 to 6.4 Not known yet: moisture, fertility, soil texture"));
  }

  @Test
  void areasAreTakenAndShownInTheVisitorsUnits() {
    visitor.submit("/units", "units", "us", "back", "/");
    Page form = visitor.get(site + "/beds/new");
    assertTrue(form.says("Area in square feet"));
    assertEquals("us", form.valueOf("area-unit"));
    String path = visitor.post(site + "/beds/new", "name", "Feet", "area", "100", "area-unit", "us").location();
    assertTrue(visitor.get(path).says("Area 100 sq ft"));
    visitor.submit("/units", "units", "metric", "back", "/");
    assertTrue(visitor.get(path).says("Area 9.3 m²"));
    // Saving the form in the other unit without touching the area keeps it to the last digit.
    Page metric = visitor.get(path + "/edit");
    assertEquals("9.29", metric.valueOf("area"));
    visitor.submit(path + "/edit", "name", "Feet", "area", "9.29", "area-unit", "metric");
    visitor.submit("/units", "units", "us", "back", "/");
    assertEquals("100", visitor.get(path + "/edit").valueOf("area"));
    visitor.submit("/units", "units", "metric", "back", "/");
  }

  @ParameterizedTest
  @CsvSource({
    "name, '', Please fill this in.",
    "area, '', Please fill this in.",
    "area, 0, 'A bed has between 0.1 m² (1.1 sq ft) and 100,000 m² (1,076,391 sq ft).'",
    "area, 10000000, 'A bed has between 0.1 m² (1.1 sq ft) and 100,000 m² (1,076,391 sq ft).'",
    "area, 10 km2, 'Not an area. Write 24, 24 m2 or 260 sq ft.'",
    "area, big, 'Not an area. Write 24, 24 m2 or 260 sq ft.'",
    "area, -4, 'Not an area. Write 24, 24 m2 or 260 sq ft.'",
    "area, '1,200', Does the comma part thousands or decimals? Write 1200 or 1.200.",
    "light-from, 25, Must lie between 0 and 24.",
    "light-from, 4 4, “4 4” is not a number that can be read here.",
    "light-to, 2, The lower end comes first: “3” lies above “2”.",
    "light-to, soon, '“soon” is not a word used here. Write a number or one of: full shade, part shade, full sun.'",
    "ph-from, 15, Must lie between 2.5 and 11.",
    "moisture-from, 2.5, 'A whole class from 1 to 5, or its word; for something between, write both ends.'",
    "texture-from, gravel, '“gravel” is not a word used here. Write a number or one of: coarse, sand, loamy sand, medium, sandy loam, loam, silt loam, silt, sandy clay loam, clay loam, silty clay loam, fine, sandy clay, silty clay, clay.'"})
  void refusesNonsenseBesideItsFieldAndKeepsTheRest(String field, String typed, String message) {
    Map<String, String> fields = whole("Refused");
    fields.put(field, typed);
    Page refused = visitor.post(site + "/beds/new", fields);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    fields.forEach((name, value) -> assertEquals(value, refused.valueOf(name), name));
    assertTrue(visitor.get(site).says("No beds yet."));
  }

  @Test
  void theSizeIsKeptAndMakesTheAreaWhereNoneIsTold() {
    String path = visitor.post(site + "/beds/new", "name", "Strip", "length", "9", "width", "2", "turn", "ENE", "east", "-4", "north", "2.5").location();
    assertTrue(visitor.get(path).says("Area 18 m²"));
    Page form = visitor.get(path + "/edit");
    Map<String, String> expected = Map.of("area", "18", "length", "9", "width", "2", "turn", "67.5", "east", "−4", "north", "2.5");
    expected.forEach((field, value) -> assertEquals(value, form.valueOf(field), field));
    String square = visitor.post(site + "/beds/new", "name", "Square", "length", "12 ft", "width", "12 ft").location();
    assertEquals("13.38", visitor.get(square + "/edit").valueOf("area"));
    assertEquals("0", visitor.get(square + "/edit").valueOf("turn"));
  }

  @ParameterizedTest
  @CsvSource({
    "length, '', Please fill this in.",
    "length, wide, 'Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.'",
    "length, 12 paces, 'Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.'",
    "length, 0.1, Must lie between 0.2 and 1000 m (0.66 and 3280.84 ft).",
    "length, 9, 'Length times width is 18 m², less than the bed’s area of 24 m². Change one of them.'",
    "length, 90, 'Length times width is 180 m², more than four times the bed’s area of 24 m². Change one of them.'",
    "width, -2, Must lie between 0.2 and 1000 m (0.66 and 3280.84 ft).",
    "turn, '', Please fill this in.",
    "turn, sideways, 'Not a direction. Write a compass point such as N or SW, or degrees from north: 225.'",
    "turn, 361, A direction lies between 0 and 360 degrees.",
    "east, '', Please fill this in.",
    "north, 5000, Must lie between -2000 and 2000 m (-6561.68 and 6561.68 ft)."})
  void refusesASizeOrPlaceThatCannotBe(String field, String typed, String message) {
    Map<String, String> fields = whole("Refused");
    fields.putAll(Map.of("length", "12", "width", "2", "turn", "E", "east", "1", "north", "-1"));
    fields.put(field, typed);
    Page refused = visitor.post(site + "/beds/new", fields);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    fields.forEach((name, value) -> assertEquals(value, refused.valueOf(name), name));
  }

  @Test
  void refusesABedTooSlenderForAMap() {
    Page refused = visitor.post(site + "/beds/new", "name", "Thread", "length", "100", "width", "0.4", "turn", "N");
    assertEquals("A bed can be at most 200 times as long as wide. Lay out a longer one in parts.", refused.messageOf("width"));
  }

  @Test
  void refusesOverlongTextsAndControlCharacters() {
    Map<String, String> fields = whole("x".repeat(121));
    fields.put("note", "a\u0007b");
    fields.put("light-from", "4".repeat(60));
    Page refused = visitor.post(site + "/beds/new", fields);
    assertEquals("Too long: at most 120 characters.", refused.messageOf("name"));
    assertEquals("Contains characters that cannot be shown, such as tabs or control codes.", refused.messageOf("note"));
    assertEquals("Too long: at most 50 characters.", refused.messageOf("light-from"));
  }

  @Test
  void aRefusedChangeLeavesTheBedAlone() {
    String path = laidOut("Stays");
    Map<String, String> fields = whole("Changed");
    fields.put("area", "0");
    assertEquals(422, visitor.post(path + "/edit", fields).status());
    assertEquals("Stays", visitor.get(path + "/edit").valueOf("name"));
    assertEquals("24", visitor.get(path + "/edit").valueOf("area"));
  }

  @Test
  void theFormIsFilledWithWhatWasEntered() {
    Page form = visitor.get(laidOut("Round trip") + "/edit");
    whole("Round trip").forEach((field, value) -> assertEquals(value, form.valueOf(field), field));
    assertTrue(form.says("Left empty, the site’s holds: moderately acid to slightly acid (pH 6.0 to 6.4)."));
  }

  @Test
  void plantsThatStandThereAreAddedCountedAndRemoved() {
    String path = laidOut("With plants");
    assertTrue(visitor.submit(path + "/standing", "species", "Malus domestica", "count", "2").says("2 apple Malus domestica"));
    Page bed = visitor.submit(path + "/standing", "species", "  malus  DOMESTICA ", "count", "1");
    assertTrue(bed.says("3 apple Malus domestica"));
    assertTrue(bed.says("3 plants stand here already"));
    visitor.submit(path + "/edit", flat(whole("Renamed")));
    assertTrue(visitor.get(path).says("3 apple Malus domestica"));
    Page without = visitor.submit(path + "/standing/remove", "species", "malus-domestica");
    assertTrue(without.says("apple is no longer noted here."));
    assertTrue(without.says("Nothing is noted."));
    assertEquals(404, visitor.post(path + "/standing/remove", "species", "malus-domestica").status());
  }

  @Test
  void aNameThatFitsSeveralSpeciesAsksWhichOne() {
    String path = laidOut("With plants");
    Page which = visitor.post(path + "/standing", "species", "currant", "count", "2");
    assertEquals(422, which.status());
    assertEquals("Which one is meant by “currant”? Choose below.", which.messageOf("species"));
    assertTrue(which.html().contains("value=\"Ribes nigrum\""));
    assertTrue(visitor.submit(path + "/standing", "species", "currant", "pick", "Ribes nigrum", "count", "2").says("Ribes nigrum"));
  }

  @ParameterizedTest
  @CsvSource({
    "species, '', Please fill this in.", "species, nonesuch, 'No species in the library is called “nonesuch” or has that in its name.'",
    "count, 0, 'Must lie between 1 and 10000.'", "count, many, “many” is not a whole number.", "count, '', Please fill this in.",
    "count, 10001, 'Must lie between 1 and 10000.'", "count, 1.5, “1.5” is not a whole number.", "species, '???', 'No species in the library is called “???” or has that in its name.'"})
  void refusesPlantsThatCannotBe(String field, String typed, String message) {
    String path = laidOut("Refusing");
    Map<String, String> fields = new LinkedHashMap<>(Map.of("species", "Malus domestica", "count", "2"));
    fields.put(field, typed);
    Page refused = visitor.post(path + "/standing", fields);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    fields.forEach((name, value) -> assertEquals(value, refused.valueOf(name), name));
    assertTrue(visitor.get(path).says("Nothing is noted."));
  }

  @Test
  void removingABedIsAskedOnAPageOfItsOwnThatSaysWhatGoes() {
    String path = laidOut("Going");
    visitor.submit(path + "/standing", "species", "Malus domestica", "count", "2");
    Page asked = visitor.get(path + "/remove");
    assertTrue(asked.says("Remove Going?"));
    assertTrue(asked.says("the bed Going (24 m²) and its conditions"));
    assertTrue(asked.says("the record of 2 plants that stand there"));
    assertEquals(200, visitor.get(path).status());
    assertTrue(visitor.submit(path + "/remove").says("The bed Going is removed."));
    assertEquals(404, visitor.get(path).status());
    assertEquals(404, visitor.post(path + "/remove").status());
  }

  @Test
  void removingASiteTakesItsBeds() {
    String path = laidOut("Going too");
    Page asked = visitor.get(site + "/remove");
    assertTrue(asked.says("This cannot be undone. With the site go: the bed Going too (24 m²) and its conditions"));
    assertTrue(visitor.submit(site + "/remove").says("Orchard edge and its beds are removed."));
    assertEquals(404, visitor.get(path).status());
    assertEquals(404, visitor.get(site).status());
    assertEquals(404, visitor.post(site + "/beds/new", whole("x")).status());
  }

  @Test
  void unknownBedsAreNotFound() {
    for (String path : new String[] {"/beds/999999", "/beds/abc", "/beds/-1", "/beds/999999/edit", "/beds/999999/remove", "/sites/999999/beds/new"}) {
      assertEquals(404, visitor.get(path).status(), path);
    }
    assertEquals(404, visitor.post("/beds/999999/standing", "species", "Malus domestica", "count", "1").status());
    assertEquals(404, visitor.post("/beds/999999/edit", whole("x")).status());
    assertEquals(404, visitor.post("/beds/999999/remove").status());
  }

  private String laidOut(String name) {
    return visitor.post(site + "/beds/new", whole(name)).location();
  }

  private static String[] flat(Map<String, String> fields) {
    return fields.entrySet().stream().flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue())).toArray(String[]::new);
  }

  private static Map<String, String> whole(String name) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("name", name);
    fields.put("area", "24");
    fields.put("area-unit", "metric");
    fields.put("light-from", "3");
    fields.put("light-to", "5");
    fields.put("light-basis", "measured");
    fields.put("moisture-from", "dry");
    fields.put("moisture-to", "moist");
    fields.put("moisture-basis", "observed");
    fields.put("ph-from", "");
    fields.put("texture-from", "");
    fields.put("note", "by the gate");
    return fields;
  }
}
