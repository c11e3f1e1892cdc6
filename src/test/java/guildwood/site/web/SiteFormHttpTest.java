package guildwood.site.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The form of a site over HTTP: what it takes, what it refuses and keeps. */
class SiteFormHttpTest {
  private static App app;
  private final HttpVisitor visitor = new HttpVisitor(app);

  @BeforeAll
  static void serve() {
    app = App.start(Settings.demoOnFreePort());
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  @Test
  void keepsASiteAndShowsItsClimate() {
    Page site = added(whole("Orchard edge"));
    assertTrue(site.says("Wisconsin, United States"));
    assertTrue(site.says("zone 4b (−31.7 °C to −28.9 °C) entered as zone 4b; published map or table"));
    assertTrue(site.says("153 frost-free days from 5 May to 5 October"));
    assertTrue(site.says("44.9° N"));
    assertTrue(site.says("89.6° W"));
    assertTrue(site.says("moderately acid to slightly acid pH 6.0 to 6.4"));
    assertTrue(site.says("6.2 one number, widened by 0.2 each way"));
    assertTrue(site.says("Old hay field"));
  }

  @Test
  void theNameAloneIsEnough() {
    Page site = added(Map.of("name", "Only a name"));
    assertTrue(site.says("Nothing told yet."));
    assertTrue(site.says("Not told yet: Winter cold, Frost dates, Latitude."));
  }

  @Test
  void degreesAndZonesAreBothTaken() {
    assertTrue(added(Map.of("name", "Degrees C", "winter", "-28 C", "winter-basis", "measured")).says("zone 5a (−28 °C) entered as -28 C; measured"));
    assertTrue(added(Map.of("name", "Degrees F", "winter", "-15 F", "winter-basis", "measured")).says("zone 5b (−26.1 °C)"));
    assertTrue(added(Map.of("name", "Zone", "winter", "5b", "winter-basis", "published")).says("zone 5b (−26.1 °C to −23.3 °C)"));
  }

  @Test
  void theFormIsFilledWithWhatWasEnteredAndSavesItUnchanged() {
    String path = visitor.post("/sites/new", whole("Round trip")).location();
    visitor.get(path);
    String before = visitor.get(path).text();
    Page form = visitor.get(path + "/edit");
    Map<String, String> fields = new LinkedHashMap<>();
    whole("").keySet().forEach(field -> fields.put(field, form.valueOf(field)));
    assertEquals(whole("Round trip"), fields);
    visitor.submit(path + "/edit", flat(fields));
    assertEquals(before, visitor.get(path).text());
  }

  @Test
  void aChangeReplacesWhatWasThere() {
    String path = visitor.post("/sites/new", whole("Before")).location();
    Page site = visitor.submit(path + "/edit", "name", "After", "place", "DE");
    assertTrue(site.says("After"));
    assertTrue(site.says("Germany"));
    assertTrue(site.says("None stated; every bed tells its own."));
  }

  @ParameterizedTest
  @CsvSource({
    "name, '   ', Please fill this in.",
    "winter, very cold, '“very cold” is neither a zone such as 5b nor degrees such as -28 C or -15 F.'",
    "winter, -28, 'Is -28 in degrees C or F? Write -28 C or -28 F.'",
    "winter, zone 14, 'Hardiness zones run from 1a to 13b. For degrees, add C or F.'",
    "winter, -99 C, Must lie between -60 and 25 °C (-76 and 77 °F).",
    "winter-basis, guessed, 'Say how you know: observed, measured, or from a published map or table.'",
    "spring-day, x, A day from 1 to 31.",
    "spring-day, 32, That month has no such day.",
    "spring-month, 13, A month from 1 to 12.",
    "autumn-day, '', Please fill this in.",
    "autumn-month, '', Please fill this in.",
    "latitude, north, 'Write degrees such as 44.9, 44.9 N or 37 S.'",
    "latitude, 91, Must lie between -90 and 90.",
    "longitude, west, 'Write degrees such as 13.4, 13.4 E or 89.6 W.'",
    "longitude, 44.9 N, 'Write degrees such as 13.4, 13.4 E or 89.6 W.'",
    "longitude, 181, Must lie between -180 and 180.",
    "latitude, 44.9 E, 'Write degrees such as 44.9, 44.9 N or 37 S.'",
    "place, Wisconsin, 'A code of two letters for the country, and where it has one a part of it: DE, US-WI.'",
    "place, QQ, QQ is not the code of a country.",
    "place, US-QQ, QQ is not the code of a state of the USA.",
    "ph-from, 15, Must lie between 2.5 and 11.",
    "ph-from, lemon, '“lemon” is not a word used here. Write a number or one of: extremely acid, very strongly acid, strongly acid, moderately acid, slightly acid, neutral, slightly alkaline, moderately alkaline, strongly alkaline, very strongly alkaline.'",
    "ph-to, 5, The lower end comes first: “6.2” lies above “5”.",
    "ph-basis, inherited, 'Say how you know: observed, measured, or from a published map or table.'",
    "moisture-from, 6, 'A whole class from 1 to 5, or its word; for something between, write both ends.'"})
  void refusesNonsenseBesideItsFieldAndKeepsTheRest(String field, String typed, String message) {
    int before = sites();
    Map<String, String> fields = whole("Refused");
    fields.put(field, typed);
    Page refused = visitor.post("/sites/new", fields);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    assertTrue(refused.says("Not saved yet."));
    // A choice that is none of those offered cannot be shown as chosen; everything else comes back.
    boolean notOffered = field.endsWith("-basis") || field.endsWith("-month");
    fields.forEach((name, value) -> assertEquals(notOffered && name.equals(field) ? "" : value, refused.valueOf(name), name));
    assertEquals(before, sites());
  }

  @Test
  void namesTheFieldThatIsMissingOrTurnsTheRestWrong() {
    Map<String, String> onlyTo = whole("Refused");
    onlyTo.put("light-to", "5");
    assertEquals("Please fill this in.", visitor.post("/sites/new", onlyTo).messageOf("light-from"));
    Map<String, String> south = whole("Refused");
    south.put("latitude", "-44.9");
    assertEquals("South of the equator spring comes late in the year and autumn early. Are the two dates swapped?",
        visitor.post("/sites/new", south).messageOf("spring-day"));
  }

  @Test
  void refusesADateThatDoesNotExist() {
    Map<String, String> fields = whole("Refused");
    fields.put("spring-day", "30");
    fields.put("spring-month", "2");
    assertEquals("That month has no such day.", visitor.post("/sites/new", fields).messageOf("spring-day"));
  }

  @Test
  void refusesOverlongTextsAndControlCharacters() {
    Map<String, String> fields = whole("x".repeat(121));
    fields.put("note", "y".repeat(2001));
    fields.put("ph-from", "6\u0007");
    Page refused = visitor.post("/sites/new", fields);
    assertEquals("Too long: at most 120 characters.", refused.messageOf("name"));
    assertEquals("Too long: at most 2000 characters.", refused.messageOf("note"));
    assertEquals("Contains characters that cannot be shown, such as tabs or control codes.", refused.messageOf("ph-from"));
    assertEquals("x".repeat(121), refused.valueOf("name"));
    assertEquals("Contains characters that cannot be shown, such as tabs or control codes.",
        visitor.post("/sites/new", "name", "a\u0000b").messageOf("name"));
  }

  @Test
  void aRefusedChangeLeavesTheSiteAlone() {
    String path = visitor.post("/sites/new", whole("Stays")).location();
    visitor.get(path);
    String before = visitor.get(path).text();
    Map<String, String> fields = whole("Changed");
    fields.put("ph-from", "15");
    assertEquals(422, visitor.post(path + "/edit", fields).status());
    assertEquals(before, visitor.get(path).text());
  }

  @Test
  void showsWhatWasTypedAsTextNeverAsMarkup() {
    Page site = added(Map.of("name", "<b>Bold</b> & \"co\""));
    assertTrue(site.html().contains("&lt;b&gt;Bold&lt;/b&gt; &amp; &quot;co&quot;"));
  }

  @Test
  void unknownSitesAreNotFound() {
    assertEquals(404, visitor.get("/sites/999999/edit").status());
    assertEquals(404, visitor.get("/sites/abc/edit").status());
    assertEquals(404, visitor.get("/sites/99999999999999999999/edit").status());
    assertEquals(404, visitor.post("/sites/999999/edit", whole("x")).status());
    assertEquals(403, visitor.postWithoutToken("/sites/new", "name", "x").status());
  }

  private Page added(Map<String, String> fields) {
    return visitor.submit("/sites/new", flat(fields));
  }

  private int sites() {
    return visitor.get("/sites").html().split("<section class=\"ground\"").length - 1;
  }

  private static String[] flat(Map<String, String> fields) {
    return fields.entrySet().stream().flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue())).toArray(String[]::new);
  }

  private static Map<String, String> whole(String name) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("name", name);
    fields.put("winter", "zone 4b");
    fields.put("winter-basis", "published");
    fields.put("spring-day", "5");
    fields.put("spring-month", "5");
    fields.put("autumn-day", "5");
    fields.put("autumn-month", "10");
    fields.put("latitude", "44.9");
    fields.put("longitude", "−89.6");
    fields.put("place", "US-WI");
    fields.put("light-from", "");
    fields.put("light-to", "");
    fields.put("moisture-from", "");
    fields.put("ph-from", "6.2");
    fields.put("ph-to", "");
    fields.put("ph-basis", "measured");
    fields.put("note", "Old hay field");
    return fields;
  }
}
