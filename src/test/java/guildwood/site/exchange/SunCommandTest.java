package guildwood.site.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import guildwood.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** The command {@code sun}: its fixed keys, and what it says to files that are no scene. */
class SunCommandTest {
  /** The example of the design. */
  private static final String SCENE = """
      {"latitude":44.9,"longitude":-89.6,"year":2026,"seasonStart":"04-01","seasonEnd":"09-30","stepMinutes":10,
       "points":[[0,0],[2.5,-3]],
       "obstacles":[{"type":"building","footprint":[[-5,-8],[5,-8],[5,-4],[-5,-4]],"heightM":6},
         {"type":"tree","x":3,"y":-6,"heightM":9,"crownBaseM":2,"crownRadiusM":3,"lightInLeaf":0.1,"lightBare":0.6,"evergreen":false}],
       "horizon":[{"azimuthDeg":180,"elevationDeg":12}]}
      """;

  @TempDir
  private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void printsTheFixedKeysInAFixedOrder() throws IOException {
    assertEquals(0, run(SCENE));
    JsonNode answer = new ObjectMapper().readTree(out.toString());
    JsonNode point = answer.get("points").get(0);
    assertEquals(List.of("points", "lightScheme", "dayLengthHours", "monthlyDayLengthHours", "aboveAtmosphereMJ"), keys(answer));
    assertEquals(List.of("x", "y", "seasonMeanHours", "monthlyMeanHours", "lostHours", "morningMeanHours",
        "afternoonMeanHours", "wonIfGoneHours", "lightClass"), keys(point));
    assertEquals(List.of("building 1", "tree 1", "horizon"), keys(point.get("lostHours")));
    assertEquals(List.of("building 1", "tree 1"), keys(point.get("wonIfGoneHours")));
    assertEquals(12, point.get("monthlyMeanHours").size());
    assertEquals(2.5, answer.get("points").get(1).get("x").doubleValue());
    assertEquals(-3, answer.get("points").get(1).get("y").doubleValue());
    assertEquals("", err.toString());
  }

  @Test
  void hoursAndLossesAddUpToTheDay() throws IOException {
    run(SCENE);
    JsonNode answer = new ObjectMapper().readTree(out.toString());
    for (JsonNode point : answer.get("points")) {
      double sum = point.get("seasonMeanHours").doubleValue();
      for (JsonNode lost : point.get("lostHours")) {
        sum += lost.doubleValue();
      }
      assertEquals(answer.get("dayLengthHours").doubleValue(), sum, 5e-4);
      assertEquals(point.get("seasonMeanHours").doubleValue(),
          point.get("morningMeanHours").doubleValue() + point.get("afternoonMeanHours").doubleValue(), 2e-4);
    }
  }

  @Test
  void theSameSceneGivesTheSameBytes() throws IOException {
    run(SCENE);
    String first = out.toString();
    out.getBuffer().setLength(0);
    run(SCENE);
    assertEquals(first, out.toString());
    assertTrue(StandardCharsets.US_ASCII.newEncoder().canEncode(first), "readable in any terminal");
  }

  /** US Naval Observatory day lengths as in SunReferenceCheck: 39 N 105 W, and Anchorage. */
  @ParameterizedTest
  @CsvSource({
    "39, -105, 2015, 01-02, 9.500", "39, -105, 2015, 04-02, 12.683", "39, -105, 2015, 08-02, 14.150", "39, -105, 2015, 12-02, 9.617",
    "61.2167, -149.8667, 2020, 06-15, 19.317", "-36.8333, 174.8, 2020, 12-15, 14.667"
  })
  void oneOpenDayHasItsPublishedLength(double latitude, double longitude, int year, String day, double hours) throws IOException {
    String scene = "{\"latitude\":%s,\"longitude\":%s,\"year\":%d,\"seasonStart\":\"%s\",\"seasonEnd\":\"%s\",\"points\":[[0,0]]}"
        .formatted(latitude, longitude, year, day, day);
    assertEquals(0, run(scene), err::toString);
    double found = new ObjectMapper().readTree(out.toString()).get("points").get(0).get("seasonMeanHours").doubleValue();
    assertEquals(hours, found, 2 / 60.0);
  }

  @Test
  void radiationAboveTheAtmosphereComesByTheMonth() throws IOException {
    assertEquals(0, run(SCENE), err::toString);
    JsonNode months = new ObjectMapper().readTree(out.toString()).get("aboveAtmosphereMJ");
    assertEquals(12, months.size());
    // 44.9 N: the year's peak falls in June, its least in December.
    for (JsonNode month : months) {
      assertTrue(month.doubleValue() <= months.get(5).doubleValue() && month.doubleValue() >= months.get(11).doubleValue());
    }
  }

  @Test
  void aSlopeIsComparedWithLevelGround() throws IOException {
    assertEquals(1, slopeRatio(0, 180), 1e-4);
    assertTrue(slopeRatio(30, 180) > 1.02, "towards the sun");
    assertTrue(slopeRatio(30, 0) < 0.85, "away from the sun");
    assertEquals(slopeRatio(30, 90), slopeRatio(30, 270), 5e-3);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
    "{\"steepnessDeg\":91,\"facingDeg\":180} | slope.steepnessDeg: is 91 and must lie between 0 and 90",
    "{\"steepnessDeg\":30,\"facingDeg\":-1} | slope.facingDeg: is -1",
    "{\"steepnessDeg\":30} | slope.facingDeg: is missing",
    "{\"steepnessDeg\":\"steep\",\"facingDeg\":180} | slope.steepnessDeg: must be a number",
    "30 | slope: must be an object"
  })
  void saysWhatIsWrongWithASlope(String slope, String message) throws IOException {
    assertBad(SCENE.replace("\"points\"", "\"slope\":" + slope + ",\"points\""), message);
  }

  @Test
  void aSlopeWithoutSunHasNoRatio() throws IOException {
    assertEquals(0, run("""
        {"latitude":80,"longitude":0,"year":2026,"seasonStart":"12-01","seasonEnd":"12-31","points":[[0,0]],
         "slope":{"steepnessDeg":30,"facingDeg":180}}"""), err::toString);
    assertFalse(new ObjectMapper().readTree(out.toString()).has("slopeDirectRatio"), out::toString);
  }

  @Test
  void polarDayAndNight() throws IOException {
    assertEquals(0, run(SCENE.replace("44.9", "78.2").replaceAll("\"horizon\".*\\]", "\"horizon\":[]")), err::toString);
    JsonNode month = new ObjectMapper().readTree(out.toString()).get("monthlyDayLengthHours");
    assertEquals(24, month.get(5).doubleValue());
    assertEquals(0, month.get(11).doubleValue());
  }

  @Test
  void aSouthernSeasonRunsOverTheNewYear() throws IOException {
    String south = SCENE.replace("44.9", "-44.9").replace("04-01", "10-01").replace("09-30", "03-31");
    assertEquals(0, run(south), err::toString);
    double day = new ObjectMapper().readTree(out.toString()).get("dayLengthHours").doubleValue();
    assertTrue(day > 13.5 && day < 14.5, "summer days of " + day);
  }

  @Test
  void obstaclesHorizonAndStepMayBeLeftOut() throws IOException {
    assertEquals(0, run("""
        {"latitude":0,"longitude":0,"year":2026,"seasonStart":"01-01","seasonEnd":"12-31","points":[[0,0]]}"""), err::toString);
    assertEquals(12.11, new ObjectMapper().readTree(out.toString()).get("dayLengthHours").doubleValue(), 0.03);
  }

  @Test
  void anEvergreenNeedNotSayWhatItLetsThroughBare() throws IOException {
    assertEquals(0, run(SCENE.replace("\"lightBare\":0.6,\"evergreen\":false", "\"evergreen\":true")), err::toString);
  }

  @Test
  void leavesMayComeAndGoByTheirOwnDates() throws IOException {
    run(SCENE);
    double season = hoursOfFirstPoint();
    out.getBuffer().setLength(0);
    assertEquals(0, run(SCENE.replace("\"points\"", "\"leavesFrom\":\"05-15\",\"leavesUntil\":\"10-10\",\"points\"")), err::toString);
    assertTrue(hoursOfFirstPoint() > season, "bare in April, the tree lets more through");
    out.getBuffer().setLength(0);
    assertBad(SCENE.replace("\"points\"", "\"leavesFrom\":\"05-15\",\"points\""), "leavesUntil: is missing");
  }

  @Test
  void aKeyThatMeansNothingIsMentionedAndLeftOut() throws IOException {
    assertEquals(0, run(SCENE.replace("\"evergreen\":false", "\"evergren\":true")), err::toString);
    assertTrue(err.toString().contains("obstacles[1].evergren means nothing here"), err::toString);
  }

  @ParameterizedTest
  @ValueSource(strings = {"latitude", "longitude", "year", "seasonStart", "seasonEnd", "points", "footprint", "heightM",
      "type", "x", "y", "crownBaseM", "crownRadiusM", "lightInLeaf", "lightBare", "azimuthDeg", "elevationDeg"})
  void namesTheKeyThatIsMissing(String key) throws IOException {
    assertBad(SCENE.replaceFirst("\"" + key + "\":", "\"not-" + key + "\":"), key + ": is missing");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
    "44.9 | 95 | latitude: is 95 and must lie between -90 and 90",
    "-89.6 | 181 | longitude: is 181",
    "44.9 | \"44.9\" | latitude: must be a number",
    "44.9 | null | latitude: is missing",
    "44.9 | NaN | not JSON that can be read, line 1",
    "44.9 | 1e999 | latitude: must be a number",
    "44.9 | 4 4 | not JSON",
    "2026 | 2026.5 | year: must be a whole number",
    "2026 | 26 | year: is 26",
    "04-01 | 4-1 | seasonStart: must be a day of the year",
    "04-01 | 02-30 | seasonStart: must be a day of the year",
    "04-01 | 13-01 | seasonStart: must be a day of the year",
    "\"04-01\" | 401 | seasonStart: must be text",
    "\"stepMinutes\":10 | \"stepMinutes\":0 | stepMinutes: is 0 and must lie between 1 and 60",
    "\"stepMinutes\":10 | \"stepMinutes\":-10 | stepMinutes: is -10",
    "\"stepMinutes\":10 | \"stepMinutes\":\"ten\" | stepMinutes: must be a number",
    "\"stepMinutes\":10 | \"stepMinutes\":10,\"stepMinutes\":5 | Duplicate",
    "[[0,0],[2.5,-3]] | [] | points: must hold at least one entry",
    "[[0,0],[2.5,-3]] | [0,0] | points[0]: must be a pair of numbers",
    "[[0,0],[2.5,-3]] | [[0,0,0]] | points[0]: must be a pair",
    "[[0,0],[2.5,-3]] | [[0]] | points[0]: must be a pair",
    "[[0,0],[2.5,-3]] | [[0,\"a\"]] | points[0][1]: must be a number",
    "[[0,0],[2.5,-3]] | [[0,1e9]] | points[0][1]: is 1000000000",
    "[[0,0],[2.5,-3]] | {\"x\":0} | points: must be a list",
    "[-5,-8],[5,-8],[5,-4],[-5,-4] | [-5,-8],[5,-4],[5,-8],[-5,-4] | footprint: side 1 and side 3 touch or cross",
    "[-5,-8],[5,-8],[5,-4],[-5,-4] | [-5,-8],[5,-8] | footprint: has 2 corners",
    "[-5,-8],[5,-8],[5,-4],[-5,-4] | [-5,-8],[5,-8],[5,-8] | footprint: corner 2 and the next",
    "[-5,-8],[5,-8],[5,-4],[-5,-4] | [0,0],[1,1],[2,2] | footprint: side",
    "\"heightM\":6 | \"heightM\":0 | obstacles[0].heightM: is 0",
    "\"heightM\":6 | \"heightM\":-3 | obstacles[0].heightM: is -3",
    "\"heightM\":9 | \"heightM\":1.5 | obstacles[1].crownBaseM: must be lower",
    "\"crownRadiusM\":3 | \"crownRadiusM\":0 | obstacles[1].crownRadiusM: is 0",
    "\"lightInLeaf\":0.1 | \"lightInLeaf\":10 | obstacles[1].lightInLeaf: is 10 and must lie between 0 and 1",
    "\"evergreen\":false | \"evergreen\":\"no\" | obstacles[1].evergreen: must be true or false",
    "\"type\":\"tree\" | \"type\":\"fence\" | obstacles[1].type: \"fence\" is neither",
    "\"obstacles\":[ | \"obstacles\":[7, | obstacles[0]: must be an object",
    "\"azimuthDeg\":180 | \"azimuthDeg\":361 | horizon[0].azimuthDeg: is 361",
    "\"elevationDeg\":12 | \"elevationDeg\":91 | horizon[0].elevationDeg: is 91",
    "12}] | 12},{\"azimuthDeg\":180,\"elevationDeg\":9}] | horizon: gives two different elevations for the azimuth 180"
  })
  void saysWhatIsWrong(String right, String wrong, String message) throws IOException {
    assertTrue(SCENE.contains(right), right);
    assertBad(SCENE.replace(right, wrong), message);
  }

  @Test
  void namesEverythingThatIsWrongAtOnce() throws IOException {
    assertBad(SCENE.replace("44.9", "95").replace("\"heightM\":6", "\"heightM\":0"), "latitude: is 95");
    assertTrue(err.toString().contains("obstacles[0].heightM: is 0"), err::toString);
    String manyBad = SCENE.replace("[[0,0],[2.5,-3]]", "[" + "[0],".repeat(500) + "[0]]");
    err.getBuffer().setLength(0);
    assertBad(manyBad, "and 481 more");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "[]", "7", "null", "\"scene\"", "{", "{}", "{}{}", "\u0000", "<scene/>"})
  void refusesWhatIsNoScene(String text) throws IOException {
    assertBad(text, "scene.json: ");
  }

  @Test
  void refusesDeepNestingAndTextThatIsNotUtf8() throws IOException {
    assertBad("[".repeat(100_000), "not JSON");
    Path file = folder.resolve("scene.json");
    Files.write(file, SCENE.replace("tree", "tr\u00e9e").getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(2, execute("sun", "--scene", file.toString()));
    assertTrue(err.toString().contains("not JSON"), err::toString);
  }

  @Test
  void aSeasonWithoutADayIsRefused() throws IOException {
    assertBad(SCENE.replace("04-01", "02-29").replace("09-30", "02-29"), "seasonStart: no day of 2026 lies in this season");
  }

  @Test
  void aMissingFileOrOptionIsSaidPlainly() {
    assertEquals(2, execute("sun", "--scene", folder.resolve("nowhere.json").toString()));
    assertTrue(err.toString().contains("there is no such file"), err::toString);
    assertEquals(2, execute("sun", "--scene", folder.toString()));
    assertEquals(2, execute("sun"));
    assertTrue(err.toString().contains("--scene"), err::toString);
    assertEquals("", out.toString());
  }

  private double slopeRatio(int steepness, int facing) throws IOException {
    out.getBuffer().setLength(0);
    String slope = "\"slope\":{\"steepnessDeg\":" + steepness + ",\"facingDeg\":" + facing + "},\"points\"";
    assertEquals(0, run(SCENE.replace("\"points\"", slope)), err::toString);
    return new ObjectMapper().readTree(out.toString()).get("slopeDirectRatio").doubleValue();
  }

  private double hoursOfFirstPoint() throws IOException {
    return new ObjectMapper().readTree(out.toString()).get("points").get(0).get("seasonMeanHours").doubleValue();
  }

  private void assertBad(String scene, String message) throws IOException {
    assertEquals(2, run(scene), out::toString);
    assertTrue(err.toString().contains(message), err::toString);
    assertEquals("", out.toString());
    for (String inside : List.of("Exception", "jackson", "guildwood.site", "\tat ", "`")) {
      assertFalse(err.toString().contains(inside), err::toString);
    }
  }

  private int run(String scene) throws IOException {
    Path file = folder.resolve("scene.json");
    Files.writeString(file, scene);
    return execute("sun", "--scene", file.toString());
  }

  private int execute(String... words) {
    return new CommandLine(new Main()).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true)).execute(words);
  }

  private static List<String> keys(JsonNode node) {
    List<String> keys = new ArrayList<>();
    node.fieldNames().forEachRemaining(keys::add);
    return keys;
  }
}
