package guildwood.siteplan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.web.SharedDemo;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan out as GeoJSON and in again, by RFC 7946. */
class GeoHttpTest {
  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());
  private String plan;

  @BeforeEach
  void aSite() {
    plan = siteAt("44.3", "-88.4") + "/plan";
  }

  private String siteAt(String latitude, String longitude) {
    return visitor.post("/sites/new", "name", "Orchard edge", "latitude", latitude, "longitude", longitude).location();
  }

  private void draw(String kind, String points, String... more) {
    String[] numbers = points.split("[ ;]");
    java.util.List<String> fields = new java.util.ArrayList<>(List.of(more));
    fields.addAll(List.of("length-unit", "metric"));
    for (int i = 0; i < numbers.length; i++) {
      fields.addAll(List.of((i % 2 == 0 ? "x." : "y.") + (i / 2 + 1), numbers[i]));
    }
    visitor.submit(plan + "/" + kind + "/new", fields.toArray(String[]::new));
  }

  private void drawOneOfEach() {
    draw("bed", "10 20;10 24;16 24;16 20", "name", "Strip");
    draw("path", "-3.5 1.25;30 40;31 60", "name", "Up", "width", "1.2", "depth", "0.14", "start-height", "100", "end-height", "102.5");
    draw("water", "100 100;150 100;120 180", "name", "Pond");
    draw("tree", "-250 -300", "name", "Old oak", "height", "12", "crown-radius", "4", "crown-base", "2", "evergreen", "yes");
    draw("building", "0 0;0 -6;-4 -6", "name", "Shed", "height", "3.25");
  }

  private JsonNode exported() throws Exception {
    Page file = visitor.get(plan + ".geojson");
    assertEquals("application/geo+json", file.headers().get("content-type").replaceFirst(";.*", ""));
    return new ObjectMapper().readTree(file.html());
  }

  @Test
  void theFileIsGeoJson() throws Exception {
    drawOneOfEach();
    JsonNode root = exported();
    assertEquals("FeatureCollection", root.path("type").asText());
    assertEquals(5, root.path("features").size());
    for (JsonNode feature : root.path("features")) {
      assertEquals("Feature", feature.path("type").asText());
      assertTrue(feature.path("properties").isObject());
      if (feature.path("geometry").path("type").asText().equals("Polygon")) {
        JsonNode ring = feature.path("geometry").path("coordinates").path(0);
        assertEquals(ring.get(0), ring.get(ring.size() - 1), "closed, section 3.1.6");
        double twice = 0;
        for (int i = 0; i + 1 < ring.size(); i++) {
          twice += ring.get(i).get(0).asDouble() * ring.get(i + 1).get(1).asDouble() - ring.get(i + 1).get(0).asDouble() * ring.get(i).get(1).asDouble();
        }
        assertTrue(twice > 0, "against the clock, section 3.1.6");
        assertEquals(-88.4, ring.get(0).get(0).asDouble(), 0.01, "longitude first, section 3.1.1");
        assertEquals(44.3, ring.get(0).get(1).asDouble(), 0.01);
      }
    }
  }

  /** Out, in on an empty site at the same place, and out again: no coordinate is off by a centimetre. */
  @Test
  void aPlanComesBackToTheCentimetre() throws Exception {
    drawOneOfEach();
    JsonNode first = exported();
    plan = siteAt("44.3", "-88.4") + "/plan";
    Page look = visitor.postFile(plan + "/import", "plan.geojson", first.toString().getBytes(StandardCharsets.UTF_8), "polygons", "none");
    assertEquals(200, look.status());
    assertFalse(look.says("Left out"), look.text());
    assertTrue(visitor.get(plan).says("Nothing yet."), "looking adds nothing");
    Page added = visitor.submit(plan + "/import/add", "token", look.valueOf("token"));
    assertTrue(added.says("5 things were added to the plan."), added.text());
    JsonNode second = exported();
    assertEquals(first.size(), second.size());
    double largestM = 0;
    for (int i = 0; i < 5; i++) {
      assertEquals(first.at("/features/" + i + "/properties"), second.at("/features/" + i + "/properties"));
      List<JsonNode> before = first.at("/features/" + i + "/geometry").findValues("coordinates");
      List<JsonNode> after = second.at("/features/" + i + "/geometry").findValues("coordinates");
      List<Double> a = numbers(before.get(0));
      List<Double> b = numbers(after.get(0));
      assertEquals(a.size(), b.size());
      for (int j = 0; j < a.size(); j++) {
        largestM = Math.max(largestM, 111_500 * Math.abs(a.get(j) - b.get(j)));
      }
    }
    assertTrue(largestM < 0.01, largestM + " m");
    assertTrue(visitor.submit(plan + "/undo").says("is undone"));
    assertTrue(visitor.get(plan).says("Nothing yet."));
    assertEquals(422, visitor.post(plan + "/import/add", "token", look.valueOf("token")).status(), "a look is added once");
  }

  private static List<Double> numbers(JsonNode node) {
    List<Double> all = new java.util.ArrayList<>();
    if (node.isNumber()) {
      all.add(node.asDouble());
    }
    node.forEach(child -> all.addAll(numbers(child)));
    return all;
  }

  @Test
  void whatIsThereAlreadyIsLeftOutIfAsked() throws Exception {
    drawOneOfEach();
    byte[] file = exported().toString().getBytes(StandardCharsets.UTF_8);
    Page look = visitor.postFile(plan + "/import", "plan.geojson", file);
    assertTrue(look.says("Something of this name is on the plan already."));
    assertTrue(visitor.submit(plan + "/import/add", "token", look.valueOf("token"), "leave-twins", "yes").says("Nothing was added."));
    Page again = visitor.postFile(plan + "/import", "plan.geojson", file);
    assertTrue(visitor.submit(plan + "/import/add", "token", again.valueOf("token")).says("5 things were added"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "{'kind':'shed'}|Point|[-88.4,44.3]|“shed” is not one of bed, path, water, tree, building.",
    "{}|Polygon|[[[-88.4,44.3],[-88.3999,44.3],[-88.3999,44.3001],[-88.4,44.3]]]|It does not say what it is.",
    "{'kind':'path'}|Point|[-88.4,44.3]|Point is not what a path is drawn as.",
    "{'kind':'path'}|LineString|[[-88.4,44.3],[-88.4,'north']]|Its coordinates cannot be read.",
    "{'kind':'path'}|LineString|[[-88.4,44.3],[-88.4,144.3]]|Its coordinates cannot be read.",
    "{'kind':'path'}|LineString|[[-88.4,44.3],[-88.4,44.4]]|A point lies more than 2 km from the site’s own point.",
    "{'kind':'path','widthM':'broad'}|LineString|[[-88.4,44.3],[-88.4,44.3001]]|“broad” is not a number.",
    "{'kind':'path','widthM':500}|LineString|[[-88.4,44.3],[-88.4,44.3001]]|widthM: Must lie between",
    "{'kind':'tree','crownRadiusM':2,'crownBaseM':1}|Point|[-88.4,44.3]|heightM: Please fill this in.",
    "{'kind':'water'}|Polygon|[[[-88.4,44.3],[-88.3999,44.3001],[-88.3999,44.3],[-88.4,44.3001],[-88.4,44.3]]]|The side after point 1 and the side after point 3",
    "{'kind':'water'}|Polygon|[[[-88.4,44.3],[-88.3999,44.3],[-88.4,44.3]]]|2 points are set",
    "{'kind':'water'}|MultiPolygon|[]|MultiPolygon is not what a water is drawn as.",
    "{'kind':'water'}|Polygon|[[[-88.4,44.3],[-88.399,44.3],[-88.399,44.301],[-88.4,44.3]],[[-88.3995,44.3001],[-88.3994,44.3001],[-88.3994,44.3002],[-88.3995,44.3001]]]|It has a hole"})
  void whatCannotBeDrawnIsListedWithItsReason(String properties, String geometry, String coordinates, String why) {
    String feature = "{'type':'FeatureCollection','features':[{'type':'Feature','properties':" + properties + ",'geometry':{'type':'" + geometry
        + "','coordinates':" + coordinates + "}}]}";
    Page look = visitor.postFile(plan + "/import", "plan.geojson", feature.replace('\'', '"').getBytes(StandardCharsets.UTF_8), "polygons", "none");
    assertEquals(200, look.status(), look.messages().toString());
    assertTrue(look.says("Nothing in this file can be added."), look.text());
    assertTrue(look.says(why), look.text());
  }

  @Test
  void outlinesWithoutAKindAreWhatIsAskedFor() {
    String feature = "{\"type\":\"Feature\",\"properties\":null,\"geometry\":{\"type\":\"Polygon\",\"coordinates\":"
        + "[[[-88.4,44.3],[-88.3999,44.3],[-88.3999,44.3001],[-88.4,44.3]]]}}";
    Page look = visitor.postFile(plan + "/import", "plan.geojson", feature.getBytes(StandardCharsets.UTF_8), "polygons", "bed");
    assertTrue(look.says("Bed 1 Bed 3"), look.text());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "hello|That is not GeoJSON: it cannot be read from line 1, column",
    "{\"type\":\"FeatureCollection\"|That is not GeoJSON",
    "[]|There are no features in it.",
    "{\"type\":\"FeatureCollection\",\"features\":[]}|There are no features in it.",
    "''|“plan.geojson” is empty"})
  void aFileThatIsNoPlanIsRefused(String content, String message) {
    Page page = visitor.postFile(plan + "/import", "plan.geojson", content.getBytes(StandardCharsets.UTF_8), "polygons", "water");
    assertEquals(422, page.status());
    assertTrue(page.messageOf("file").startsWith(message), page.messages().toString());
    assertEquals("water", page.valueOf("polygons"), "what was chosen is kept");
  }

  @Test
  void tooManyFeaturesAndTooDeepNestsAreRefused() {
    String one = "{\"type\":\"Feature\",\"properties\":{},\"geometry\":null}";
    String many = "{\"type\":\"FeatureCollection\",\"features\":[" + (one + ",").repeat(500) + one + "]}";
    assertEquals("501 features; at most 500 can be brought in at once.",
        visitor.postFile(plan + "/import", "plan.geojson", many.getBytes(StandardCharsets.UTF_8)).messageOf("file"));
    assertTrue(visitor.postFile(plan + "/import", "plan.geojson", "[".repeat(100_000).getBytes(StandardCharsets.UTF_8)).messageOf("file")
        .startsWith("That file is nested deeper"));
    assertTrue(visitor.postFile(plan + "/import", "plan.geojson", new byte[5_100_000]).messageOf("file").startsWith("The file is larger than 5 MB"));
  }

  @Test
  void aSiteWithoutAPlaceHasNoDegrees() {
    String site = visitor.post("/sites/new", "name", "Somewhere", "latitude", "45").location();
    for (String path : List.of("/plan.geojson", "/plan/import")) {
      Page page = visitor.get(site + path);
      assertEquals(422, page.status());
      assertTrue(page.says("only where latitude and longitude of the site are told"), page.text());
    }
    assertTrue(visitor.get(site + "/plan").says("For that the latitude and longitude of the site must be told"));
  }
}
