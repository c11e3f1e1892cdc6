package guildwood.materials.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.web.SharedDemo;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runoff over HTTP: the whole question stands in the address. */
class RunoffHttpTest {
  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());
  private final Map<String, String> question = new LinkedHashMap<>();
  private String site;

  @BeforeEach
  void aQuestion() {
    site = visitor.post("/sites/new", "name", "Slope").location();
    question.putAll(Map.of("length-unit", "metric", "rain", "40", "soil", "c", "area-1", "1000", "cover-1", "woods"));
  }

  private Page ask() {
    return visitor.get(site + "/runoff?" + question.entrySet().stream()
        .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8)).collect(Collectors.joining("&")));
  }

  /** Woods on group C have curve number 70: 40 mm on 1,000 m2 give 2.61 mm or 2.61 m3, as worked out by hand. */
  @Test
  void workedOutByTheCurveNumber() {
    Page page = ask();
    assertEquals(200, page.status());
    assertTrue(page.says("2.61 m³ of 40 m³ that fall: 40 mm of rain on 1000 m²"), page.text());
    assertTrue(page.says("Curve number 70"));
    assertTrue(page.says("108.9 mm"));
    assertTrue(page.says("TR-55"));
  }

  @Test
  void aBasinHoldsItBackAndSaysHowLongItStands() {
    question.putAll(Map.of("length", "20", "bottom", "0.5", "depth", "30", "side", "3", "open", "100", "soak", "5", "slope", "12"));
    Page page = ask();
    assertTrue(page.says("it holds 8.4 m³; the water is then 2.3 m wide."), page.text());
    assertTrue(page.says("That is all of what runs off: 2.61 m³."));
    assertTrue(page.says("takes about 60 hours"));
    assertTrue(page.says("The ground falls by 12 % (6.8°)."));
    assertTrue(page.says("It may stand full for more than a day."));
    question.put("length", "2");
    page = ask();
    assertTrue(page.says("That is 32 % of what runs off: 840 litres stay, 1.77 m³ go over."), page.text());
    assertTrue(page.says("More comes than it holds."));
  }

  @Test
  void severalCoversAreWeighted() {
    question.putAll(Map.of("area-2", "1000 m2", "cover-2", "roof-or-paving"));
    assertTrue(ask().says("Curve number 84"));
    question.put("rain", "5");
    assertTrue(ask().says("Nothing runs off"));
  }

  @Test
  void theHeaviestMoment() {
    question.putAll(Map.of("intensity", "50", "coefficient", "0.35"));
    assertTrue(ask().says("about 4.86 litres a second"), ask().text());
    question.put("coefficient", "");
    assertEquals("Please fill this in.", ask().messageOf("coefficient"));
  }

  @Test
  void usUnits() {
    question.putAll(Map.of("length-unit", "us", "rain", "6", "soil", "c", "area-1", "43560", "cover-1", "woods"));
    assertTrue(ask().says("Runoff, over the whole area (Q) 2.81 in"), ask().text());
  }

  @Test
  void asksFirst() {
    Page page = visitor.get(site + "/runoff");
    assertEquals(200, page.status());
    assertFalse(page.says("What runs off"));
    assertTrue(page.says("Never above or over a septic tank"));
    assertEquals(404, visitor.get("/sites/999999/runoff").status());
    assertEquals(404, visitor.get(site + "/runoff?path=999999").status());
  }

  @Test
  void aPathOfTheDemonstrationFillsInTheBasin() {
    Page page = visitor.get("/sites/1/runoff?path=1");
    assertEquals("14", page.valueOf("depth"));
    assertTrue(page.says("This path falls by 1.9 m from end to end"), page.text());
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {
      "rain; -5; Must lie between 0.1 and 2000 mm (0 and 78.74 in).",
      "rain; much; Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.",
      "rain; ''; Please fill this in.",
      "soil; ''; Please fill this in.",
      "soil; e; “e” is not known here.",
      "area-1; 0; Must lie between 1 m² (11 sq ft) and 1 km² (247 acres).",
      "area-1; big; Not an area. Write 24, 24 m2 or 260 sq ft.",
      "cover-1; ''; Please fill this in.",
      "length; 0; Must lie between 0.5 and 500 m (1.64 and 1640.42 ft).",
      "depth; -30; Must lie between 2 and 200 cm (0.79 and 78.74 in).",
      "side; steep; “steep” is not a number that can be read here.",
      "open; 0; Must lie between 1 and 100.",
      "coefficient; 1.5; Must lie between 0.01 and 1.",
      "slope; 101; Must lie between 0 and 100."})
  void badInputIsRefusedAndKept(String field, String typed, String message) {
    question.putAll(Map.of("length", "20", "bottom", "0.5", "depth", "30", "side", "3", "open", "100"));
    question.put(field, typed);
    Page page = ask();
    assertEquals(422, page.status());
    assertEquals(message, page.messageOf(field));
    question.forEach((name, value) -> {
      if (!name.equals("soil") || !field.equals("soil")) {
        assertEquals(value, page.valueOf(name), name);
      }
    });
  }
}
