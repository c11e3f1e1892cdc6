package guildwood.drawing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.drawing.SvgBoxes;
import guildwood.web.SharedDemo;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The drawing pages over HTTP: what they show, what they keep, what they refuse. */
class DrawingHttpTest {
  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());
  private String bed;

  @BeforeEach
  void aBedWithAGuild() {
    String site = visitor.post("/sites/new", "name", "Drawn site", "latitude", "45", "winter", "5a", "winter-basis", "published").location();
    bed = visitor.post(site + "/beds/new", "name", "Drawn bed", "length", "8", "width", "6", "turn", "E", "light-from", "full sun",
        "light-basis", "observed").location();
    plant("malus-domestica", "1", "ribes-nigrum", "3", "trifolium-repens", "12");
  }

  private void plant(String... idsAndCounts) {
    List<String> fields = new ArrayList<>(List.of("name", "Round the apple", "do", "save"));
    for (int i = 0; i < idsAndCounts.length; i += 2) {
      fields.addAll(List.of("count." + idsAndCounts[i], idsAndCounts[i + 1]));
    }
    visitor.submit(bed + "/guild/edit", fields.toArray(String[]::new));
  }

  private Map<String, String> places() {
    Map<String, String> places = new LinkedHashMap<>();
    Page page = visitor.get(bed + "/drawing");
    Pattern.compile("name=\"((?:east|north)\\.[^\"]+)\"").matcher(page.html()).results().map(r -> r.group(1)).forEach(f -> places.put(f, page.valueOf(f)));
    return places;
  }

  @Test
  void theGuildsPageLeadsToTheDrawing() {
    assertTrue(visitor.get(bed + "/guild").links().contains(bed + "/drawing"));
    Page page = visitor.get(bed + "/drawing");
    assertEquals(200, page.status());
    for (String part : List.of("Where the plants stand: Drawn bed", "grown", "Crowns cover", "What does not work out", "The years", "Who is shaded out",
        "Places in numbers", "rules of thumb of Guildwood, no publication", "common practice, no source", "call 811")) {
      assertTrue(page.says(part), part);
    }
    assertEquals(16 * 2, places().size());
  }

  @Test
  void thePictureIsSvgAndCanBeTakenAway() {
    Page picture = visitor.get(bed + "/drawing.svg?year=5");
    assertTrue(picture.headers().get("content-type").startsWith("image/svg+xml"));
    assertEquals(16, SvgBoxes.of(picture.html()).spots().size());
    assertTrue(picture.html().contains("Drawn bed – Year 5"));
    assertTrue(visitor.get(bed + "/drawing.svg?year=5&download=1").headers().get("content-disposition").contains("year-5.svg"));
    Page sheet = visitor.get(bed + "/drawing/sheet?year=5&paper=large");
    assertTrue(sheet.says("at its own size on A3 or tabloid") && sheet.says("100 %"), sheet.text());
  }

  @Test
  void plantsAreSmallAtFirst() {
    double young = SvgBoxes.of(visitor.get(bed + "/drawing.svg?year=0").html()).spots().get("malus-domestica.1")[2];
    double old = SvgBoxes.of(visitor.get(bed + "/drawing.svg?year=99").html()).spots().get("malus-domestica.1")[2];
    assertTrue(young < old / 5, young + " and " + old);
    assertTrue(visitor.get(bed + "/drawing?year=0").says("At planting"));
  }

  @Test
  void aBedWithoutAGuildSaysSo() {
    visitor.submit(bed + "/guild/remove");
    Page page = visitor.get(bed + "/drawing");
    assertTrue(page.says("There is nothing to draw yet"));
    assertEquals(404, visitor.get(bed + "/drawing.svg").status());
    assertEquals(404, visitor.get("/beds/999999/drawing").status());
    assertEquals(404, visitor.get("/beds/x/drawing").status());
  }

  @ParameterizedTest
  @CsvSource({"soon", "-1", "2.5", "1000"})
  void aYearThatIsNoneIsRefusedAndKept(String year) {
    Page page = visitor.get(bed + "/drawing?year=" + year);
    assertEquals(422, page.status());
    assertFalse(page.messageOf("year").isEmpty());
    assertEquals(year, page.valueOf("year"));
  }

  @Test
  void aNudgedPlantMovesByItsStepAndIsLocked() {
    visitor.submit(bed + "/drawing/nudge", "spot", "ribes-nigrum.2", "way", "lock", "step", "0.1", "length-unit", "metric", "year", "3");
    Map<String, String> before = places();
    Page after = visitor.submit(bed + "/drawing/nudge", "spot", "ribes-nigrum.2", "way", "south", "step", "5 cm", "length-unit", "metric", "year", "3");
    assertTrue(after.says("Moved and kept."));
    assertTrue(after.says("2 (locked)"));
    Map<String, String> now = places();
    assertEquals(Double.parseDouble(minus(before.get("north.ribes-nigrum.2"))) - 0.05, Double.parseDouble(minus(now.get("north.ribes-nigrum.2"))), 0.011);
    assertEquals(before.get("east.ribes-nigrum.2"), now.get("east.ribes-nigrum.2"));
    assertEquals(before.get("north.malus-domestica.1"), now.get("north.malus-domestica.1"));
  }

  private static String minus(String number) {
    return number.replace('−', '-');
  }

  @ParameterizedTest
  @CsvSource({"ribes-nigrum.2, north, much, step", "ribes-nigrum.2, north, -1, step", "ribes-nigrum.9, north, 1, spot", "'', north, 1, spot",
      "ribes-nigrum.2, west, 50, spot"})
  void aNudgeThatMakesNoSenseIsRefused(String spot, String way, String step, String field) {
    Page page = visitor.post(bed + "/drawing/nudge", "spot", spot, "way", way, "step", step, "length-unit", "metric", "year", "3");
    assertEquals(422, page.status());
    assertFalse(page.messageOf(field).isEmpty(), page.messages().toString());
    assertEquals(step, page.valueOf("step"));
    assertEquals(404, visitor.post(bed + "/drawing/nudge", "spot", "ribes-nigrum.2", "way", "up", "step", "1", "length-unit", "metric").status());
  }

  @Test
  void aDraggedPlantIsKeptInsideTheBedOnly() {
    assertEquals(303, visitor.post(bed + "/drawing/move", "spot", "malus-domestica.1", "east", "1.5", "north", "-0.25", "year", "3").status());
    assertEquals("1.5", places().get("east.malus-domestica.1"));
    for (String east : List.of("99", "east", "", "1e400")) {
      Page refused = visitor.post(bed + "/drawing/move", "spot", "malus-domestica.1", "east", east, "north", "0", "year", "3");
      assertEquals(422, refused.status(), east);
      assertFalse(refused.messageOf("spot").isEmpty(), east);
    }
    assertEquals("1.5", places().get("east.malus-domestica.1"));
  }

  @Test
  void placesTypedWrongComeBackAsTyped() {
    Map<String, String> typed = places();
    typed.put("east.malus-domestica.1", "one metre");
    typed.put("north.ribes-nigrum.1", "0.77");
    typed.put("east.ribes-nigrum.3", "40");
    typed.put("north.ribes-nigrum.3", "0");
    Page page = visitor.post(bed + "/drawing/places", fields(typed));
    assertEquals(422, page.status());
    assertEquals("one metre", page.valueOf("east.malus-domestica.1"));
    assertEquals("0.77", page.valueOf("north.ribes-nigrum.1"));
    assertTrue(page.messageOf("east.ribes-nigrum.3").contains("outside the bed"));
    assertFalse(page.messageOf("east.malus-domestica.1").isEmpty());
    assertNotEquals("0.77", places().get("north.ribes-nigrum.1"));
  }

  @Test
  void placesInFeetAreKeptInMetres() {
    Map<String, String> typed = new LinkedHashMap<>(Map.of("east.malus-domestica.1", "3' 3\"", "north.malus-domestica.1", "-1", "length-unit", "us"));
    visitor.submit(bed + "/drawing/places", fields(typed));
    assertEquals("0.99", places().get("east.malus-domestica.1"));
    assertEquals("-0.3", minus(places().get("north.malus-domestica.1")));
    visitor.post("/units", "units", "us", "back", "/");
    assertTrue(visitor.get(bed + "/drawing").says("East (ft)"));
    assertTrue(visitor.get(bed + "/drawing.svg").html().contains(" ft</text>"));
    visitor.post("/units", "units", "metric", "back", "/");
  }

  private static String[] fields(Map<String, String> values) {
    values.putIfAbsent("length-unit", "metric");
    return values.entrySet().stream().flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue())).toArray(String[]::new);
  }

  @Test
  void lockedPlantsStayWhenTheRestIsArrangedAnew() {
    visitor.post(bed + "/drawing/move", "spot", "malus-domestica.1", "east", "-1", "north", "0.5", "year", "3");
    Map<String, String> before = places();
    assertTrue(visitor.submit(bed + "/drawing/arrange", "what", "rest", "year", "3").says("Arranged anew."));
    Map<String, String> now = places();
    assertEquals("-1", minus(now.get("east.malus-domestica.1")));
    assertNotEquals(before, now);
    visitor.submit(bed + "/drawing/arrange", "what", "all", "year", "3");
    assertFalse(visitor.get(bed + "/drawing").says("apple (locked)"));
  }

  @Test
  void plantsThatStayKeepTheirSpotsWhenTheGuildChanges() {
    visitor.submit(bed + "/drawing/arrange", "what", "rest");
    Map<String, String> before = places();
    plant("malus-domestica", "1", "ribes-nigrum", "2", "trifolium-repens", "12", "rubus-idaeus", "2");
    Map<String, String> now = places();
    assertFalse(now.containsKey("east.ribes-nigrum.3"));
    assertTrue(now.containsKey("east.rubus-idaeus.2"));
    for (String field : List.of("east.malus-domestica.1", "north.ribes-nigrum.2", "east.trifolium-repens.7")) {
      assertEquals(before.get(field), now.get(field), field);
    }
  }

  @Test
  void standingPlantsAreToBePutWhereTheyStand() {
    visitor.submit(bed + "/standing", "species", "Malus domestica", "count", "1");
    assertTrue(visitor.get(bed + "/drawing").says("These stand there already, and nobody told where: apple."));
    visitor.post(bed + "/drawing/move", "spot", "malus-domestica.1", "east", "1", "north", "1");
    assertFalse(visitor.get(bed + "/drawing").says("nobody told where"));
    visitor.submit(bed + "/drawing/arrange", "what", "all");
    assertEquals("1", places().get("east.malus-domestica.1"), "what stands there stays");
  }

  @Test
  void aTreeRecordedInTheBedUnderThePlantsNameIsThatPlant() {
    visitor.submit(bed + "/standing", "species", "Malus domestica", "count", "1");
    visitor.submit(bed + "/sun/trees/new", "name", "Apple", "east", "2", "north", "1", "height", "4", "eye", "1.6", "pace", "0.75",
        "crown-base", "1", "crown-radius", "1.5", "in-leaf", "20", "bare", "60");
    assertEquals("2", places().get("east.malus-domestica.1"));
    assertFalse(visitor.get(bed + "/drawing").says("nobody told where"));
  }

  @Test
  void settingsTypedWrongComeBackAsTyped() {
    Map<String, String> typed = settings();
    typed.put("reach", "far");
    typed.put("years.shrub.slow", "0");
    typed.put("years.herb.fast", "");
    typed.put("years.root.fast", "2");
    Page page = visitor.post(bed + "/drawing/settings", fields(typed));
    assertEquals(422, page.status());
    for (String field : List.of("reach", "years.shrub.slow", "years.herb.fast")) {
      assertFalse(page.messageOf(field).isEmpty(), field);
      assertEquals(typed.get(field), page.valueOf(field));
    }
    assertEquals("2", page.valueOf("years.root.fast"));
  }

  @Test
  void settingsAreKept() {
    Map<String, String> typed = settings();
    typed.put("reach", "0.8");
    typed.put("years.small-tree.medium", "11");
    assertTrue(visitor.submit(bed + "/drawing/settings", fields(typed)).says("Settings kept."));
    assertEquals("0.8", visitor.get(bed + "/drawing").valueOf("reach"));
    assertEquals("11", settings().get("years.small-tree.medium"));
  }

  private Map<String, String> settings() {
    Map<String, String> values = new LinkedHashMap<>();
    Page page = visitor.get(bed + "/drawing");
    Pattern.compile("name=\"(years\\.[^\"]+|reach|overhang)\"").matcher(page.html()).results().map(r -> r.group(1)).forEach(f -> values.put(f, page.valueOf(f)));
    values.put("edge", "on");
    return values;
  }
}
