package guildwood.bed.sun.web;

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

/** Recording trees, buildings and the horizon over HTTP, nonsense included. */
class NearbyHttpTest {
  private static App app;
  private final HttpVisitor visitor = new HttpVisitor(app);
  private String site;
  private String bed;

  @BeforeAll
  static void serve() {
    app = App.start(Settings.demoOnFreePort());
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  @BeforeEach
  void aBed() {
    site = visitor.post("/sites/new", "name", "Orchard edge", "latitude", "45").location();
    bed = visitor.post(site + "/beds/new", "name", "Strip", "length", "9", "width", "2", "turn", "E").location();
  }

  @Test
  void aTreeIsRecordedByPacesAndAngle() {
    // 16 paces of 0.75 m are 12 m; at 45 degrees the height is 12 m and that of the eye.
    Map<String, String> fields = treeFields("Old oak");
    fields.put("distance", "16 paces");
    fields.put("direction", "south-west");
    fields.keySet().removeAll(java.util.List.of("east", "north", "height"));
    fields.put("away", "16 p");
    fields.put("angle", "45");
    Page page = submit(bed + "/sun/trees/new", fields);
    assertTrue(page.says("Old oak is recorded and counts for the sun."));
    assertTrue(page.says("Old oak tree, 13.6 m tall, crown 6 m wide from 2 m up 12 m SW"));
    Page form = visitor.get(linkTo(page, "Old oak"));
    assertEquals("−8.49", form.valueOf("east"));
    assertEquals("−8.49", form.valueOf("north"));
    assertEquals("", form.valueOf("height"));
    assertEquals("12", form.valueOf("away"));
    assertEquals("45", form.valueOf("angle"));
  }

  @Test
  void heightAndPlaceAreWorkedOutWithoutSaving() {
    Map<String, String> fields = treeFields("Oak");
    fields.remove("height");
    fields.put("crown-radius", "");
    fields.put("away", "20");
    fields.put("angle", "30");
    fields.put("do", "reckon");
    Page page = visitor.post(bed + "/sun/trees/new", fields);
    assertEquals(200, page.status());
    // 20 m × tan 30° + 1.6 m = 13.147 m.
    assertTrue(page.says("Height: 20 m × tan(30°) + 1.6 m = 13.1 m."));
    assertTrue(page.says("Place: 3 m west and 4 m south of the bed’s middle; from there it is 5 m SW."));
    fields.remove("do");
    fields.forEach((field, value) -> assertEquals(value, page.valueOf(field), field));
    assertTrue(visitor.get(bed + "/sun").says("Nothing is recorded around this bed."));
    fields.put("do", "reckon");
    fields.put("angle", "steep");
    Page refused = visitor.post(bed + "/sun/trees/new", fields);
    assertEquals(422, refused.status());
    assertEquals("“steep” is not a number that can be read here.", refused.messageOf("angle"));
    assertTrue(visitor.post(bed + "/sun/trees/new", "do", "reckon").says("There is not enough here yet"));
  }

  @ParameterizedTest
  @CsvSource({
    "name, '', Please fill this in.",
    "pace, long, 'Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.'",
    "pace, 3, Must lie between 0.3 and 1.5 m (0.98 and 4.92 ft).",
    "east, '', Please fill this in.",
    "east, here, 'Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.'",
    "east, 2001, Must lie between -2000 and 2000 m (-6561.68 and 6561.68 ft).",
    "north, '1,200', Does the comma part thousands or decimals? Write 1200 or 1.200.",
    "distance, -5, Must lie between 0 and 2000 m (0 and 6561.68 ft).",
    "direction, up, 'Not a direction. Write a compass point such as N or SW, or degrees from north: 225.'",
    "height, 0, Must lie between 0.05 and 200 m (0.16 and 656.17 ft).",
    "height, 300, Must lie between 0.05 and 200 m (0.16 and 656.17 ft).",
    "height, tall, 'Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.'",
    "angle, 90, Must lie between −45 and 85.",
    "away, 0, Must lie between 0.5 and 500 m (1.64 and 1640.42 ft).",
    "crown-radius, '', Please fill this in.",
    "crown-radius, 61, Must lie between 0.05 and 60 m (0.16 and 196.85 ft).",
    "crown-base, '', Please fill this in.",
    "crown-base, 9, Must lie below the top of the tree at 9 m.",
    "crown-base, -1, Must lie between 0 and 200 m (0 and 656.17 ft).",
    "in-leaf, '', Please fill this in.",
    "in-leaf, 101, Must lie between 0 and 100.",
    "bare, none, “none” is not a number that can be read here."})
  void refusesTreesThatCannotBe(String field, String typed, String message) {
    Map<String, String> fields = treeFields("Refused");
    fields.put(field, typed);
    Page refused = visitor.post(bed + "/sun/trees/new", fields);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    fields.forEach((name, value) -> assertEquals(value, refused.valueOf(name), name));
    assertTrue(visitor.get(bed + "/sun").says("Nothing is recorded around this bed."));
  }

  @Test
  void twoWaysOfTellingMustAgree() {
    Map<String, String> fields = treeFields("Twice told");
    fields.put("distance", "5");
    fields.put("direction", "NE");
    fields.put("away", "10");
    fields.put("angle", "45");
    Page refused = visitor.post(bed + "/sun/trees/new", fields);
    assertEquals("Distance and direction lead to 3.5 m east and 3.5 m north, which is not what is told by east and north. Empty one of the two pairs.",
        refused.messageOf("distance"));
    assertEquals("Distance and angle give 11.6 m. Correct them, or empty this field.", refused.messageOf("height"));
    fields.put("direction", "216.8699");
    fields.put("height", "11.6");
    assertEquals(303, visitor.post(bed + "/sun/trees/new", fields).status());
    Page below = visitor.post(bed + "/sun/trees/new", "name", "x", "east", "1", "north", "1", "away", "10", "angle", "-30", "eye", "1.6");
    assertEquals("That gives a height of −4.2 m, which cannot be.", below.messageOf("angle"));
  }

  @Test
  void refusesOverlongNamesAndControlCharacters() {
    Map<String, String> fields = treeFields("x".repeat(121));
    fields.put("direction", "S\u0007");
    fields.put("corners", "y");
    assertEquals("Too long: at most 120 characters.", visitor.post(bed + "/sun/trees/new", fields).messageOf("name"));
    assertEquals("Too long: at most 4000 characters.",
        visitor.post(bed + "/sun/buildings/new", "name", "x", "height", "5", "corners", "1 1\n".repeat(1001)).messageOf("corners"));
  }

  @Test
  void aBuildingIsRecordedByTheWallThatFacesTheBed() {
    Page page = submit(bed + "/sun/buildings/new", buildingFields("Shed"));
    // The wall's middle is 4 m south and the building goes back 6 m: its middle is 7 m south.
    assertTrue(page.says("Shed building, 3 m tall 7 m S"));
    Page form = visitor.get(linkTo(page, "Shed"));
    assertEquals("0", form.valueOf("east"));
    assertEquals("−7", form.valueOf("north"));
    assertEquals("middle", form.valueOf("measured-to"));
    assertEquals("10", form.valueOf("length"));
    Map<String, String> north = buildingFields("Barn");
    north.put("direction", "N");
    north.put("turn", "W");
    assertTrue(submit(bed + "/sun/buildings/new", north).says("Barn building, 3 m tall 7 m N"));
  }

  @Test
  void aBuildingIsRecordedByItsCorners() {
    Page page = visitor.submit(bed + "/sun/buildings/new", "name", "Barn", "height", "20 ft", "corners", "-3 -5\r\n5 -5\r\n\r\n5 -9\r\n-3; -9");
    assertTrue(page.says("Barn building, 6.1 m tall 7.1 m S"));
    Page form = visitor.get(linkTo(page, "Barn"));
    assertEquals("−3 −5\n5 −5\n5 −9\n−3 −9", form.valueOf("corners"));
    visitor.submit(linkTo(page, "Barn"), "name", "Barn", "height", "6.1", "corners", form.valueOf("corners"));
    assertTrue(visitor.get(bed + "/sun").says("Barn building, 6.1 m tall 7.1 m S"));
  }

  @ParameterizedTest
  @CsvSource({
    "length, '', Please fill this in.",
    "length, 0.1, Must lie between 0.2 and 1000 m (0.66 and 3280.84 ft).",
    "width, deep, 'Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.'",
    "turn, '', Please fill this in.",
    "turn, 400, A direction lies between 0 and 360 degrees.",
    "distance, '', Please fill this in.",
    "measured-to, roof, Please fill this in.",
    "corners, 1 1, 'Either the corners or place, length, depth and direction: empty one of the two.'",
    "height, '', Please fill this in."})
  void refusesBuildingsThatCannotBe(String field, String typed, String message) {
    Map<String, String> fields = buildingFields("Refused");
    fields.put(field, typed);
    Page refused = visitor.post(bed + "/sun/buildings/new", fields);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    fields.forEach((name, value) -> assertEquals(name.equals("measured-to") && value.equals("roof") ? "" : value, refused.valueOf(name), name));
    assertTrue(visitor.get(bed + "/sun").says("Nothing is recorded around this bed."));
  }

  @Test
  void aWallSeenEdgeOnIsAskedAbout() {
    Map<String, String> fields = buildingFields("Wall");
    fields.put("turn", "N");
    assertTrue(visitor.post(bed + "/sun/buildings/new", fields).messageOf("measured-to").startsWith("Seen from the bed, a wall that runs this way"));
    fields.put("measured-to", "middle");
    assertEquals(303, visitor.post(bed + "/sun/buildings/new", fields).status());
  }

  @ParameterizedTest
  @CsvSource({"1 1/2 2, 2 corners: a ground plan has from 3 to 500.", "1 1/2 two/3 3, 'Corner 2 is not two lengths with a space between, east and north: -3 -5.'",
    "1 1/2 2 3/3 3, 'Corner 2 is not two lengths with a space between, east and north: -3 -5.'", "0 0/0 0/4 4/5 0, Corner 1 and the next are the same point.",
    "0 0/4 4/4 0/0 4, Side 1 and side 3 touch or cross each other. Give the corners in order around the building.",
    "0 0/9999 1/5 5, 'Corner 2 is not two lengths with a space between, east and north: -3 -5.'"})
  void refusesCornersThatMakeNoGroundPlan(String corners, String message) {
    Page refused = visitor.post(bed + "/sun/buildings/new", "name", "x", "height", "5", "corners", corners.replace("/", "\n"));
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf("corners"));
    assertEquals(corners.replace("/", "\n"), refused.valueOf("corners"));
  }

  @Test
  void aChangeKeepsWhatNobodyTouchedInEitherUnit() {
    Page page = visitor.submit(bed + "/sun/trees/new", tree("Oak"));
    String path = linkTo(page, "Oak");
    visitor.submit("/units", "units", "us", "back", "/");
    Page feet = visitor.get(path);
    assertEquals("29.53", feet.valueOf("height"));
    Map<String, String> fields = new LinkedHashMap<>();
    for (String field : new String[] {"name", "length-unit", "pace", "east", "north", "height", "eye", "crown-base", "crown-radius", "in-leaf", "bare"}) {
      fields.put(field, feet.valueOf(field));
    }
    fields.put("name", "Older oak");
    assertTrue(submit(path, fields).says("The changes to Older oak are saved."));
    visitor.submit("/units", "units", "metric", "back", "/");
    Page metric = visitor.get(path);
    for (Map.Entry<String, String> kept : treeFields("Older oak").entrySet()) {
      if (!kept.getKey().equals("pace")) {
        assertEquals(kept.getValue().replace('-', '−'), metric.valueOf(kept.getKey()).replace('-', '−'), kept.getKey());
      }
    }
  }

  @Test
  void theLengthOfAPaceIsRemembered() {
    Map<String, String> fields = treeFields("Oak");
    fields.put("pace", "0.82");
    submit(bed + "/sun/trees/new", fields);
    assertEquals("0.82", visitor.get(bed + "/sun/buildings/new").valueOf("pace"));
  }

  @Test
  void removingTakesItOffTheList() {
    Page page = visitor.submit(bed + "/sun/trees/new", tree("Doomed"));
    String path = linkTo(page, "Doomed");
    assertEquals(303, visitor.get(path + "/remove").status());
    assertTrue(visitor.submit(path + "/remove").says("Doomed is no longer recorded here."));
    assertEquals(404, visitor.get(path).status());
    assertEquals(404, visitor.post(path + "/remove").status());
    assertEquals(404, visitor.post(path, treeFields("Doomed")).status());
  }

  @Test
  void aTreeOfAnotherSiteIsNotFoundHere() {
    assertEquals(404, visitor.get(bed + "/sun/nearby/1").status());
    assertEquals(404, visitor.post(bed + "/sun/nearby/1/remove").status());
    assertEquals(200, visitor.get("/beds/3/sun/nearby/1").status());
  }

  @Test
  void bedsWhosePlacesAreKnownShareTheirSurroundings() {
    visitor.submit(bed + "/sun/trees/new", tree("Shared oak"));
    String second = visitor.post(site + "/beds/new", "name", "Second", "area", "10", "east", "10", "north", "0").location();
    Page apart = visitor.get(second + "/sun");
    assertTrue(apart.says("nobody told where this bed lies on the site: Shared oak."));
    visitor.submit(bed + "/edit", "name", "Strip", "length", "9", "width", "2", "turn", "E", "east", "0", "north", "0");
    Page together = visitor.get(second + "/sun");
    // 3 m west and 4 m south of the first bed is 13 m west and 4 m south of the second.
    assertTrue(together.says("Shared oak tree, 9 m tall, crown 6 m wide from 2 m up 13.6 m WSW"));
    Map<String, String> moved = treeFields("Shared oak");
    moved.put("east", "-12");
    submit(linkTo(together, "Shared oak"), moved);
    assertTrue(visitor.get(bed + "/sun").says("4.5 m SSW"), "2 m west and 4 m south of the first");
  }

  @Test
  void removingABedSaysWhatIsLostAroundIt() {
    visitor.submit(bed + "/sun/trees/new", tree("Oak"));
    assertTrue(visitor.get(bed + "/remove").says("the record of one tree or building around it"));
    assertTrue(visitor.get(site + "/remove").says("the record of one tree or building around it"));
    visitor.submit(bed + "/edit", "name", "Strip", "area", "18", "east", "5", "north", "5");
    assertFalse(visitor.get(bed + "/remove").says("the record of one tree"));
    visitor.submit(bed + "/remove");
    String second = visitor.post(site + "/beds/new", "name", "Second", "area", "10", "east", "5", "north", "5").location();
    assertTrue(visitor.get(second + "/sun").says("Oak tree, 9 m tall"));
  }

  @Test
  void aSiteHoldsOnlySoManyAndSaysSo() {
    for (int i = 0; i < 60; i++) {
      assertEquals(303, visitor.post(bed + "/sun/trees/new", treeFields("Oak " + i)).status());
    }
    Page refused = visitor.post(bed + "/sun/trees/new", treeFields("One too many"));
    assertEquals(422, refused.status());
    assertTrue(refused.says("There are 60 trees and buildings on this site already"));
    assertEquals("One too many", refused.valueOf("name"));
    assertEquals(200, visitor.get(bed + "/sun").status());
  }

  @Test
  void aBuildingOverTheBedIsPointedOut() {
    visitor.submit(bed + "/sun/buildings/new", "name", "Tent", "height", "5", "corners", "-5 -5\n5 -5\n5 5\n-5 5");
    assertTrue(visitor.get(bed + "/sun").says("Recorded as standing over the middle of the bed: Tent."));
  }

  @Test
  void theHorizonIsKeptForTheSiteOrTheBed() {
    String second = visitor.post(site + "/beds/new", "name", "Second", "area", "10").location();
    visitor.submit(bed + "/sun/horizon", "s", "12,5", "scope", "site");
    assertEquals("12.5", visitor.get(second + "/sun/horizon").valueOf("s"));
    assertEquals("site", visitor.get(second + "/sun/horizon").valueOf("scope"));
    visitor.submit(second + "/sun/horizon", "s", "3", "scope", "bed");
    assertEquals("12.5", visitor.get(bed + "/sun/horizon").valueOf("s"));
    assertEquals("bed", visitor.get(second + "/sun/horizon").valueOf("scope"));
    assertTrue(visitor.get(second + "/sun").says("Horizon as measured for this bed"));
    visitor.submit(second + "/sun/horizon", "scope", "site");
    assertEquals("", visitor.get(bed + "/sun/horizon").valueOf("s"));
  }

  @ParameterizedTest
  @CsvSource({"n, high, “high” is not a number that can be read here.", "sw, 91, Must lie between 0 and 90.", "e, -1, Must lie between 0 and 90.",
    "scope, world, Please fill this in."})
  void refusesAHorizonThatCannotBe(String field, String typed, String message) {
    Map<String, String> fields = new LinkedHashMap<>(Map.of("s", "10", "scope", "bed"));
    fields.put(field, typed);
    Page refused = visitor.post(bed + "/sun/horizon", fields);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    assertEquals("10", refused.valueOf("s"));
    assertEquals("", visitor.get(bed + "/sun/horizon").valueOf("s"));
  }

  private Page submit(String path, Map<String, String> fields) {
    return visitor.submit(path, fields.entrySet().stream().flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue())).toArray(String[]::new));
  }

  private static String linkTo(Page page, String name) {
    return page.first("<a href=\"([^\"]*/nearby/\\d+)\">" + name + "</a>").orElseThrow();
  }

  static String[] tree(String name) {
    return treeFields(name).entrySet().stream().flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue())).toArray(String[]::new);
  }

  private static Map<String, String> treeFields(String name) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("name", name);
    fields.put("pace", "0.75");
    fields.put("east", "-3");
    fields.put("north", "-4");
    fields.put("height", "9");
    fields.put("eye", "1.6");
    fields.put("crown-base", "2");
    fields.put("crown-radius", "3");
    fields.put("in-leaf", "10");
    fields.put("bare", "60");
    return fields;
  }

  private static Map<String, String> buildingFields(String name) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("name", name);
    fields.put("measured-to", "wall");
    fields.put("distance", "4");
    fields.put("direction", "S");
    fields.put("length", "10");
    fields.put("width", "6");
    fields.put("turn", "E");
    fields.put("height", "3");
    return fields;
  }
}
