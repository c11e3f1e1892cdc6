package guildwood.bed.sun.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;

/** The sun page over HTTP: what it shows, what it refuses, and taking the light over. */
class SunHttpTest {
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
    site = visitor.post("/sites/new", "name", "Orchard edge", "latitude", "45", "spring-day", "10", "spring-month", "5",
        "autumn-day", "1", "autumn-month", "10").location();
    bed = visitor.post(site + "/beds/new", "name", "North strip", "length", "9", "width", "2", "turn", "E").location();
  }

  @Test
  void theDemonstrationShowsAShadedBed() {
    Page bedPage = visitor.get("/beds/3");
    assertTrue(bedPage.links().contains("/beds/3/sun"));
    Page page = visitor.get("/beds/3/sun");
    assertEquals(200, page.status());
    for (String part : List.of("Gym and changing rooms", "Maple by the gate", "What blocks the sun here", "Month by month",
        "Mean over 10 May to 1 October, from the last spring frost to the first autumn frost", "What these figures cannot tell",
        "full sun from 6 h, part shade 3-6 h, full shade under 3 h", "Before felling", "450 cells of 0.2 m on a rectangle of 9 m by 2 m")) {
      assertTrue(page.says(part), part);
    }
    assertFalse(page.says("Nothing that takes sun is recorded"));
  }

  @Test
  void openGroundSaysThatNothingIsRecorded() {
    Page page = visitor.get(bed + "/sun");
    assertTrue(page.says("Nothing that takes sun is recorded around this bed yet"));
    assertTrue(page.says("The longitude of the site is not told."));
    assertTrue(page.links().contains(bed + "/sun/trees/new"));
    assertTrue(page.says("full sun: 100 %"));
  }

  @Test
  void withoutALatitudeTheSiteIsAskedForIt() {
    String bare = visitor.post("/sites/new", "name", "Bare").location();
    String there = visitor.post(bare + "/beds/new", "name", "Bed", "area", "10").location();
    visitor.submit(there + "/sun/trees/new", NearbyHttpTest.tree("Oak"));
    Page page = visitor.get(there + "/sun");
    assertEquals(200, page.status());
    assertTrue(page.says("needs the latitude of the site"));
    assertTrue(page.links().contains(bare + "/edit"));
    assertTrue(page.says("Oak tree, 9 m tall, crown 6 m wide from 2 m up 5 m SW – –"));
    assertEquals(404, visitor.get(there + "/sun/map.svg").status());
    assertEquals(200, visitor.get(there + "/sun/plan.svg").status());
    assertEquals(422, visitor.post(there + "/sun/use").status());
    assertTrue(visitor.get(there).says("Light not known yet"));
  }

  @Test
  void theMapIsAPictureWithTitleAndDescriptionAndATableBehindIt() throws Exception {
    Page page = visitor.get("/beds/3/sun");
    String alt = page.first("<img src=\"/beds/3/sun/map.svg\" alt=\"([^\"]*)\"").orElseThrow();
    assertTrue(alt.startsWith("Map of Behind the gym from above, north up. Hours of direct sun a day"), alt);
    Page map = visitor.get("/beds/3/sun/map.svg");
    assertEquals("image/svg+xml;charset=utf-8", map.headers().get("content-type").replace(" ", "").toLowerCase(java.util.Locale.ROOT));
    Element svg = DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(new ByteArrayInputStream(map.html().getBytes(StandardCharsets.UTF_8))).getDocumentElement();
    assertEquals(alt, svg.getElementsByTagName("desc").item(0).getTextContent());
    assertEquals("Sun on Behind the gym", svg.getElementsByTagName("title").item(0).getTextContent());
    assertTrue(map.html().contains("1.5 to 3 h, full shade") && map.html().contains("10 h and more, full sun"));
    assertTrue(page.says("Hours of direct sun a day in the season, by place seen from the middle of the bed."));
    assertEquals(8, page.first("(?s)<table class=\"sun-cells\">.*?</thead>").orElseThrow().split("scope=\"col\"", -1).length - 1);
  }

  @Test
  void unitsOfTheUsAreFeet() {
    visitor.submit("/units", "units", "us", "back", "/");
    Page page = visitor.get("/beds/3/sun");
    assertTrue(page.says("a rectangle of 29.53 ft by 6.56 ft"));
    assertTrue(page.says("tree, 32.8 ft tall, crown 23 ft wide from 8.2 ft up"));
    assertTrue(page.says("Side of a cell in feet"));
    assertTrue(visitor.get("/beds/3/sun/map.svg").html().contains(">5 ft<"));
    assertTrue(visitor.get("/beds/3/sun?cell=2&length-unit=us").says("of 2 ft on"));
    visitor.submit("/units", "units", "metric", "back", "/");
  }

  @Test
  void feelsAWallAndSaysWhatItTakes() {
    visitor.submit(bed + "/sun/buildings/new", "name", "Wall", "distance", "2", "direction", "S", "measured-to", "wall",
        "length", "60", "width", "0.3", "turn", "E", "height", "4", "pace", "0.75", "eye", "1.6");
    Page page = visitor.get(bed + "/sun");
    double takes = Double.parseDouble(page.first("data-label=\"Takes\">([0-9.]+) h").orElseThrow());
    double back = Double.parseDouble(page.first("data-label=\"Comes back if gone\">([0-9.]+) h").orElseThrow());
    double mean = Double.parseDouble(page.first("class=\"big\">([0-9.]+) h").orElseThrow());
    double open = Double.parseDouble(page.first("Open ground has</dt><dd>([0-9.]+) h").orElseThrow());
    assertEquals(takes, back, 0.001, "alone, it gives back all that it takes");
    assertEquals(open, mean + takes, 0.11, "what is left and what is taken make the day");
    assertTrue(takes > 3, takes + " h");
  }

  @Test
  void theHorizonCountsAndIsNamed() {
    Page open = visitor.get(bed + "/sun");
    assertTrue(visitor.submit(bed + "/sun/horizon", "s", "20", "sw", "25", "w", "30", "scope", "site").says("The horizon is saved"));
    Page page = visitor.get(bed + "/sun");
    assertTrue(page.says("Horizon as measured for the whole site all around"));
    assertNotEquals(open.first("class=\"big\">([0-9.]+) h"), page.first("class=\"big\">([0-9.]+) h"));
    assertFalse(page.says("Nothing that takes sun is recorded"));
  }

  @Test
  void theCellsCanBeChosenWithinLimits() {
    assertTrue(visitor.get(bed + "/sun?cell=0.5").says("72 cells of 0.5 m"));
    assertTrue(visitor.get(bed + "/sun?cell=").says("450 cells of 0.2 m"));
    String map = visitor.get(bed + "/sun?cell=0.5").first("<img src=\"(/beds/\\d+/sun/map.svg[^\"]*)\"").orElseThrow();
    assertNotEquals(visitor.get(bed + "/sun/map.svg").html(), visitor.get(map).html());
  }

  @ParameterizedTest
  @CsvSource({"0.05, 'That makes 7200 cells; with what is recorded here at most 2500 can be worked out. Choose 0.09 m or more.'",
    "3, A cell cannot be wider than the bed. Choose 2 m or less.", "tiny, 'Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.'",
    "0, Must lie between 0.01 and 1000 m (0.03 and 3280.84 ft).", "-1, Must lie between 0.01 and 1000 m (0.03 and 3280.84 ft)."})
  void refusesCellsThatCannotBe(String typed, String message) {
    Page refused = visitor.get(bed + "/sun?cell=" + typed);
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf("cell"));
    assertEquals(typed, refused.valueOf("cell"));
    assertTrue(refused.says("450 cells of 0.2 m"), "the usual map stands all the same");
    assertEquals(404, visitor.get(bed + "/sun/map.svg?cell=" + typed).status());
  }

  @Test
  void usingItSetsTheBedsLightAsComputed() {
    assertTrue(visitor.get(bed + "/sun").says("Nothing is recorded around the bed yet, so this holds only if nothing stands there."));
    Page after = visitor.submit(bed + "/sun/use");
    assertTrue(after.says("worked out from the sun’s path."));
    assertTrue(after.first("Light</th>\\s*<td>\\s*<strong>full sun</strong>").isPresent());
    Page again = visitor.get(bed + "/sun");
    assertTrue(again.says("The bed has taken this over: full sun"));
    assertFalse(again.says("Use this for the bed"));
    // The form of the bed keeps it as computed, and refuses another number under that name.
    Page form = visitor.get(bed + "/edit");
    assertEquals("computed", form.valueOf("light-basis"));
    String from = form.valueOf("light-from");
    Page kept = visitor.submit(bed + "/edit", "name", "North strip", "area", "18", "length", "9", "width", "2", "turn", "90",
        "light-from", from, "light-to", form.valueOf("light-to"), "light-basis", "computed");
    assertTrue(kept.says("worked out from the sun’s path"));
    assertEquals(422, visitor.post(bed + "/edit", "name", "North strip", "area", "18", "light-from", "1", "light-basis", "computed").status());
  }

  @Test
  void aMeasuredValueStaysAndTheContradictionIsShown() {
    visitor.submit(bed + "/edit", "name", "North strip", "area", "18", "length", "9", "width", "2", "turn", "90",
        "light-from", "1", "light-to", "2", "light-basis", "measured");
    Page page = visitor.get(bed + "/sun");
    assertTrue(page.says("They contradict each other. The bed says full shade (1 to 2 h) (measured), which shares neither hours nor a class"
        + " with what was worked out."
        + " A measured value outranks a worked-out one and stays."));
    assertFalse(page.says("Use this for the bed"));
    Page refused = visitor.post(bed + "/sun/use");
    assertEquals(422, refused.status());
    assertTrue(refused.says("Not taken over: the light of this bed was measured"));
    assertTrue(visitor.get(bed).says("full shade 1 to 2 h measured"));
  }

  @Test
  void anObservedValueIsReplacedWhenAskedTo() {
    visitor.submit(bed + "/edit", "name", "North strip", "area", "18", "length", "9", "width", "2", "turn", "90",
        "light-from", "1", "light-to", "2", "light-basis", "observed");
    assertFalse(visitor.get(bed + "/sun").says("They contradict each other."), "as long as nothing is recorded around the bed");
    visitor.submit(bed + "/sun/trees/new", NearbyHttpTest.tree("Oak"));
    assertTrue(visitor.get(bed + "/sun").says("They contradict each other."));
    assertTrue(visitor.submit(bed + "/sun/use").says("worked out from the sun’s path"));
  }

  @Test
  void aBedWithoutASizeIsTakenAsASquare() {
    String plain = visitor.post(site + "/beds/new", "name", "Plain", "area", "16").location();
    Page page = visitor.get(plain + "/sun");
    assertTrue(page.says("on a rectangle of 4 m by 4 m."));
    assertTrue(page.says("The bed’s size is not told, so a square of its area is taken."));
  }

  @Test
  void unknownBedsAreNotFound() {
    for (String path : List.of("/beds/999999/sun", "/beds/abc/sun", "/beds/999999/sun/map.svg", "/beds/999999/sun/plan.svg",
        "/beds/999999/sun/trees/new", "/beds/999999/sun/buildings/new", "/beds/999999/sun/horizon", "/beds/999999/sun/nearby/1", bed + "/sun/nearby/999999")) {
      assertEquals(404, visitor.get(path).status(), path);
    }
    for (String path : List.of("/beds/999999/sun/use", "/beds/999999/sun/trees/new", "/beds/999999/sun/horizon", "/beds/999999/sun/nearby/1/remove")) {
      assertEquals(404, visitor.post(path).status(), path);
    }
    assertEquals(303, visitor.get(bed + "/sun/use").status());
    assertEquals(403, visitor.postWithoutToken(bed + "/sun/use").status());
  }
}
