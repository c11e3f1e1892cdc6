package guildwood.siteplan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.web.SharedDemo;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drawing beds, paths, water, trees and buildings in number fields, nonsense included. */
class PlanHttpTest {
  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());
  private String site;

  @BeforeEach
  void aSite() {
    site = visitor.post("/sites/new", "name", "Orchard edge", "latitude", "45", "longitude", "-89").location();
  }

  /** Fields of a form: a name, the unit, then points. */
  private static String[] fields(String unit, String points, String... more) {
    List<String> fields = new ArrayList<>(List.of(more));
    fields.addAll(List.of("length-unit", unit, "do", "save"));
    String[] numbers = points.isEmpty() ? new String[0] : points.split("[ ;]");
    for (int i = 0; i < numbers.length; i++) {
      fields.addAll(List.of((i % 2 == 0 ? "x." : "y.") + (i / 2 + 1), numbers[i]));
    }
    return fields.toArray(String[]::new);
  }

  private Page draw(String kind, String points, String... more) {
    return visitor.post(site + "/plan/" + kind + "/new", fields("metric", points, more));
  }

  private Page plan() {
    return visitor.get(site + "/plan");
  }

  private String linkTo(String name) {
    return plan().first("href=\"([^\"]*/plan/[a-z]+/\\d+)\">" + name + "<").orElseThrow();
  }

  @Test
  void aBedDrawnIsABedOfTheSiteAndFollowsItsOutline() {
    assertEquals(303, draw("bed", "10 20;14 20;14 21;12 21;12 23;10 23", "name", "Ell").status());
    Page plan = plan();
    assertTrue(plan.says("Ell is on the plan."), plan.text());
    assertTrue(plan.says("One bed, 8 m² in all."), plan.text());
    String bed = linkTo("Ell").replaceFirst("/sites/\\d+/plan/bed/", "/beds/");
    assertTrue(visitor.get(bed).says("8 m²"));
    Page edit = visitor.get(bed + "/edit");
    assertEquals("4", edit.valueOf("length"));
    assertEquals("3", edit.valueOf("width"));
    assertEquals("12", edit.valueOf("east"));
    assertEquals("21.5", edit.valueOf("north"));
    assertTrue(visitor.get(bed + "/sun").says("on the ground as it was traced on the site plan"));
  }

  @Test
  void theBedsOwnFormLeavesTheOutlineUnlessItTellsAnotherSize() {
    // Thin and bent: it fills little of a rectangle that lies at an odd angle, and no number in it is round.
    draw("bed", "0.1 0.2;7.3 2.9;7.2 3.1;0.4 0.7;0.9 7.7;0.7 7.7", "name", "Corner");
    String bed = linkTo("Corner").replaceFirst("/sites/\\d+/plan/bed/", "/beds/");
    Page form = visitor.get(bed + "/edit");
    String[] same = {"name", "Corner bed", "area", form.valueOf("area"), "length", form.valueOf("length"), "width", form.valueOf("width"),
        "turn", form.valueOf("turn"), "east", form.valueOf("east"), "north", form.valueOf("north"), "area-unit", "metric", "length-unit", "metric"};
    assertEquals(303, visitor.post(bed + "/edit", same).status());
    assertTrue(visitor.get(bed + "/sun").says("as it was traced"), "untouched numbers keep the outline");
    assertTrue(form.says("This bed is drawn on the site plan"));
    same[3] = "20";
    assertEquals(303, visitor.post(bed + "/edit", same).status());
    assertFalse(visitor.get(bed + "/sun").says("as it was traced"));
    assertTrue(plan().says("Only its rectangle is known."));
  }

  @Test
  void aPathTellsLengthAreaAndSlopeAndWarns() {
    draw("path", "0 0;30 40", "name", "Up", "width", "1.2", "depth", "14 cm", "start-height", "100", "end-height", "106");
    Page plan = plan();
    assertTrue(plan.says("Path 60 m² 50 m 1.2 m wide. Slope 12 % (6.8°) from end to end, 6 m up."), plan.text());
    assertTrue(plan.says("At over 10 % water runs down a path"), plan.text());
    assertTrue(plan.says("no more than 3 m in one go"), plan.text());
    visitor.post("/units", "units", "us", "back", site);
    assertTrue(plan().says("no more than 10 ft in one go"), plan().text());
    visitor.post("/units", "units", "metric", "back", site);
    String path = linkTo("Up");
    assertEquals("0.14", visitor.get(path).valueOf("depth"));
    visitor.submit(path, fields("metric", "0 0;30 40", "name", "Level", "width", "1.2", "depth", "0", "start-height", "100", "end-height", "101"));
    assertTrue(plan().says("Slope 2 %"));
    assertFalse(plan().says("no more than 3 m"));
  }

  @Test
  void treesAndBuildingsOfThePlanAreThoseOfTheSun() {
    draw("bed", "0 0;4 0;4 4;0 4", "name", "Strip");
    String bed = linkTo("Strip").replaceFirst("/sites/\\d+/plan/bed/", "/beds/");
    assertEquals(303, draw("tree", "2 -10", "name", "Old oak", "height", "12", "crown-radius", "4", "crown-base", "2").status());
    assertEquals(303, draw("building", "10 0;14 0;14 6;10 6", "name", "Shed", "height", "3").status());
    Page sun = visitor.get(bed + "/sun");
    assertTrue(sun.says("Old oak tree, 12 m tall, crown 8 m wide from 2 m up 12 m S"), sun.text());
    assertTrue(sun.says("Shed building, 3 m tall 10 m E"), sun.text());
    visitor.submit(linkTo("Old oak"), fields("metric", "2 -5", "name", "Old oak", "height", "12", "crown-radius", "4", "crown-base", "2"));
    assertTrue(visitor.get(bed + "/sun").says("from 2 m up 7 m S"));
    // What is measured from the bed's middle stays where it is on the site when the bed is drawn anew.
    visitor.submit(bed + "/sun/trees/new", "name", "Birch", "east", "5", "north", "0", "height", "9", "crown-base", "1", "crown-radius", "2",
        "in-leaf", "10", "bare", "60", "length-unit", "metric");
    visitor.submit(linkTo("Strip"), fields("metric", "0 0;8 0;8 4;0 4", "name", "Strip"));
    Page birch = visitor.get(linkTo("Birch"));
    assertEquals("7", birch.valueOf("x.1"));
    assertEquals("2", birch.valueOf("y.1"));
  }

  @Test
  void theLastChangeCanBeTakenBack() {
    draw("water", "0 0;4 0;4 4", "name", "Pond");
    visitor.submit(linkTo("Pond"), fields("metric", "0 0;4 0;4 8", "name", "Lake"));
    assertTrue(plan().says("Lake") && plan().says("16 m²"));
    assertTrue(visitor.submit(site + "/plan/undo").says("The change to Lake is undone."));
    assertTrue(plan().says("Pond") && plan().says("8 m²"));
    assertTrue(visitor.submit(site + "/plan/undo").says("That could not be undone"));
    visitor.submit(linkTo("Pond") + "/remove");
    assertTrue(plan().says("Nothing yet."));
    visitor.submit(site + "/plan/undo");
    assertTrue(plan().says("Pond"));
    draw("bed", "0 0;4 0;4 4", "name", "Strip");
    visitor.submit(linkTo("Strip"), fields("metric", "0 0;8 0;8 4", "name", "Strip"));
    visitor.submit(site + "/plan/undo");
    assertTrue(plan().says("One bed, 8 m² in all."), plan().text());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "water | 0 0;4 4;4 0;0 4 | The side after point 1 and the side after point 3 touch or cross each other.",
    "bed | 0 0;4 4;4 0;0 4 | The side after point 1 and the side after point 3 touch or cross each other.",
    "water | 0 0;4 0 | 2 points are set; an outline has from 3 to 500.",
    "water | '' | No point is set",
    "water | 0 0;4 0;4 0;0 4 | Point 2 and the next are the same point.",
    "bed | 0 0;0.1 0;0.1 0.1 | A bed has between 0.1 m²",
    "bed | 0 0;900 0;900 900;0 900 | A bed has between 0.1 m²",
    "path | 0 0 | One point is set; a path has from 2 to 2,000.",
    "path | 0 0;0 0 | Point 1 and the next are the same point.",
    "tree | '' | No point is set; a tree stands at one."})
  void whatCannotBeDrawnIsRefusedWithAllThatWasTyped(String kind, String points, String message) {
    Page page = draw(kind, points, "name", "Slip", "width", "1.5", "height", "5", "crown-radius", "1", "crown-base", "0");
    assertEquals(422, page.status());
    assertTrue(page.messageOf("points").startsWith(message), page.messageOf("points"));
    assertEquals("Slip", page.valueOf("name"));
    String[] numbers = points.isEmpty() ? new String[0] : points.split("[ ;]");
    for (int i = 0; i < numbers.length; i++) {
      assertEquals(numbers[i], page.valueOf((i % 2 == 0 ? "x." : "y.") + (i / 2 + 1)));
    }
    assertTrue(plan().says("Nothing yet."));
  }

  @Test
  void badNumbersAreRefusedBesideTheirFields() {
    Page page = draw("path", "0 east;5000 1;1,500 2;3 3", "name", "", "width", "-1", "depth", "deep", "start-height", "100");
    assertEquals(422, page.status());
    for (String field : List.of("y.1", "x.2", "x.3", "name", "width", "depth", "end-height")) {
      assertFalse(page.messageOf(field).isEmpty(), field + " in " + page.messages());
    }
    assertEquals("", page.messageOf("points"), "the points that are left are not looked at alone");
    assertEquals("east", page.valueOf("y.1"));
    assertEquals("1,500", page.valueOf("x.3"));
    assertEquals("deep", page.valueOf("depth"));
    Page tree = draw("tree", "1 1", "name", "Tree", "height", "2", "crown-radius", "0", "crown-base", "5");
    assertTrue(tree.messageOf("crown-base").contains("Must lie below the top of the tree at 2 m."), tree.messages().toString());
    assertFalse(tree.messageOf("crown-radius").isEmpty());
  }

  @Test
  void tenThousandPointsGetAClearMessageAndAreKept() {
    String[] fields = fields("metric", String.join(";", IntStream.range(0, 10_000).mapToObj(i -> i / 10 + " " + i % 10).toList()), "name", "Long",
        "width", "1");
    Page page = visitor.post(site + "/plan/path/new", fields);
    assertEquals(422, page.status());
    assertEquals("10000 points are set; a path has from 2 to 2,000.", page.messageOf("points").replace("10,000", "10000"));
    assertTrue(page.html().contains("name=\"x.10000\" value=\"999\""));
    Page water = visitor.post(site + "/plan/water/new", fields);
    assertTrue(water.messageOf("points").endsWith("points are set; an outline has from 3 to 500."), water.messageOf("points"));
  }

  @Test
  void rowsAreAddedAndTakenAwayWithoutScript() {
    String[] fields = fields("metric", "0 0;4 0;4 4", "name", "Pond");
    fields[5] = "add:1";
    Page page = visitor.post(site + "/plan/water/new", fields);
    assertEquals(200, page.status());
    assertEquals(List.of("0", "", "4", "4"), IntStream.rangeClosed(1, 4).mapToObj(i -> page.valueOf("x." + i)).toList());
    assertEquals("Pond", page.valueOf("name"));
    fields[5] = "remove:2";
    Page shorter = visitor.post(site + "/plan/water/new", fields);
    assertEquals(List.of("0", "4", ""), IntStream.rangeClosed(1, 3).mapToObj(i -> shorter.valueOf("x." + i)).toList());
    assertEquals("4", shorter.valueOf("y.2"));
  }

  @Test
  void feetAreReadAndShownAndUntouchedFieldsKeepTheirLastDigit() {
    visitor.post("/units", "units", "us", "back", site);
    visitor.post(site + "/plan/water/new", fields("us", "0 0;10 0;10 10.333;0 10", "name", "Pond"));
    Page plan = plan();
    assertTrue(plan.says("102 sq ft"), plan.text());
    assertTrue(plan.says("ft apart"), plan.text());
    Page form = visitor.get(linkTo("Pond"));
    assertEquals("10.33", form.valueOf("y.3"));
    visitor.submit(linkTo("Pond"), fields("us", "0 0;10 0;10 10.33;0 10", "name", "Pond"));
    String json = visitor.get(site + "/plan.geojson").html();
    visitor.post("/units", "units", "metric", "back", site);
    // 10.333 ft are 3.14950 m; 10.33 ft would be 3.14858 m, nearly a millimetre less.
    double north = 45 + 10.333 * 0.3048 / 111_131.75;
    assertTrue(json.contains(String.format(java.util.Locale.ROOT, "%.8f", north)), json);
  }

  @Test
  void paperHasItsLimits() {
    Page page = visitor.post(site + "/plan/paper", "paper-width", "0", "paper-depth", "wide", "paper-east", "0", "paper-north", "9999", "length-unit", "metric");
    assertEquals(422, page.status());
    assertEquals("wide", page.valueOf("paper-depth"));
    for (String field : List.of("paper-width", "paper-depth", "paper-north")) {
      assertFalse(page.messageOf(field).isEmpty(), field);
    }
    assertTrue(visitor.submit(site + "/plan/paper", "paper-width", "120", "paper-depth", "80", "paper-east", "0", "paper-north", "0",
        "length-unit", "metric").says("The paper is changed."));
    assertEquals("120", plan().valueOf("paper-width"));
  }

  @Test
  void whatIsNotThereIsNotFound() {
    draw("water", "0 0;4 0;4 4", "name", "Pond");
    String pond = linkTo("Pond");
    for (String path : List.of("/sites/999999/plan", site + "/plan/bed/999999", site + "/plan/path/x", site + "/plan/picture", site + "/plan/picture/file",
        site + "/plan/shed/new", pond.replace("/water/", "/path/"))) {
      assertEquals(404, visitor.get(path).status(), path);
    }
    String other = visitor.post("/sites/new", "name", "Other").location();
    assertEquals(404, visitor.post(pond.replace(site, other), fields("metric", "0 0;1 0;1 1", "name", "Mine")).status(), "another site's water");
    assertEquals(404, visitor.post(pond.replace(site, other) + "/remove").status());
    assertEquals(403, visitor.postWithoutToken(pond, fields("metric", "0 0;1 0;1 1", "name", "Mine")).status());
  }
}
