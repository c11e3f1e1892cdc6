package guildwood.materials.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.web.SharedDemo;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mulch and chips over HTTP, on a site of its own with two beds of 100 and 10 m2. */
class MaterialsHttpTest {
  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());
  private String materials;
  private String large;
  private String small;

  @BeforeEach
  void aSiteWithTwoBeds() {
    String site = visitor.post("/sites/new", "name", "Long strip").location();
    materials = site + "/materials";
    large = "bed-" + visitor.post(site + "/beds/new", "name", "Large", "area", "100").location().substring("/beds/".length());
    small = "bed-" + visitor.post(site + "/beds/new", "name", "=Small", "area", "10").location().substring("/beds/".length());
  }

  private static Map<String, String> settings() {
    Map<String, String> fields = new LinkedHashMap<>();
    for (String begins : List.of("bed-", "path-")) {
      fields.put(begins + "material", "wood-chips");
      fields.put(begins + "depth", "10");
    }
    fields.putAll(Map.of("settling", "0", "load", "8", "barrow", "100", "pace", "2", "gap", "15", "trunk", "5", "sheet-length", "120",
        "sheet-width", "80", "overlap", "15", "sheets", "30"));
    return fields;
  }

  @Test
  void tellsVolumesBothWaysWithBarrowsAndTime() {
    visitor.post(materials + "/settings", settings());
    Page page = visitor.get(materials);
    assertTrue(page.says("Wood chips, 10 cm deep 100 m² 10 m³ (13.1 yd³) 100 barrows 5 h"), page.text());
    assertTrue(page.says("Layers: 2 must wait for material."));
    assertTrue(page.says("Wood chips: 11 m³ (14.4 yd³) 2 loads 110 barrows"));
  }

  @Test
  void oneLoadIsSpentInTheOwnersOrder() {
    visitor.post(materials + "/settings", settings());
    Page page = visitor.submit(materials + "/load");
    assertTrue(page.says("Recorded: Wood chips, 8 m³ (10.5 yd³)."));
    // By name "=Small" comes first and is finished; the rest goes to the large bed.
    assertTrue(page.says("Layers: 1 can be finished with what is there, 1 can be begun."), page.text());
    assertTrue(page.says("can be begun 7 m³ (9.2 yd³) there, 3 m³ (3.9 yd³) missing"));
    page = visitor.submit(materials + "/order", "up", large);
    assertTrue(page.says("1. Large bed"), page.text());
    assertTrue(page.says("Layers: 1 can be begun, 1 must wait for material."), page.text());
    assertEquals(303, visitor.post(materials + "/order", "up", large).status(), "higher than first is nowhere");
    assertTrue(visitor.get(materials).says("1. Large bed"));
  }

  @Test
  void workDoneIsTakenFromTheStockAndCanBeTakenBack() {
    visitor.post(materials + "/settings", settings());
    visitor.submit(materials + "/load");
    Page page = visitor.submit(materials + "/done", "need", small + ".wood-chips");
    assertTrue(page.says("=Small: the layer is done."));
    assertTrue(page.says("Wood chips: 7 m³ (9.2 yd³) spent on what follows"), page.text());
    page = visitor.submit(materials + "/done", "need", large + ".wood-chips");
    assertTrue(page.says("Layers: 2 done."), page.text());
    assertTrue(page.says("3 m³ (3.9 yd³) of it from elsewhere"));
    assertTrue(page.says("Nothing lies there to be laid."));
    visitor.submit(materials + "/done", "need", large + ".wood-chips");
    assertEquals(2, visitor.get(materials).html().split("name=\"laid\"", -1).length - 1, "done twice is done once");
    Page refused = visitor.submit(materials + "/deliveries/remove", "delivery", id(page, "delivery"));
    assertTrue(refused.says("Not removed: some of it is laid already."));
    page = visitor.submit(materials + "/laid/remove", "laid", id(page, "laid"));
    assertTrue(page.says("Taken back"));
    assertTrue(page.says("Layers: 1 done, 1 can be begun."), page.text());
  }

  @Test
  void aPartCanBeLaidAndABedCoveredOtherwise() {
    visitor.submit(materials + "/at/" + large, "wanted", "yes", "material", "straw", "depth", "20", "card", "yes");
    Page page = visitor.get(materials);
    assertTrue(page.says("Card 100 m² 147 sheets"), page.text());
    assertTrue(page.says("Straw, 20 cm deep 100 m² 20 m³ (26.2 yd³)"));
    page = visitor.submit(materials + "/at/" + large + "/laid", "need", large + ".straw", "amount", "5000 litres", "on", "2026-03-04");
    assertTrue(page.says("Large : Straw, 5 m³ (6.5 yd³) 4 March 2026"), page.text());
    assertTrue(page.says("5 m³ (6.5 yd³) laid"));
    page = visitor.submit(materials + "/at/" + large + "/laid", "need", large + ".card", "amount", "140", "finished", "yes");
    assertTrue(page.says("Layers: 1 done, 2 must wait for material."), page.text());
    page = visitor.submit(materials + "/at/" + large, "material", "straw", "depth", "20");
    assertTrue(page.says("Left out: Large (bed)"), page.text());
    page = visitor.submit(materials + "/at/" + large, "usual", "yes");
    assertFalse(page.says("Left out"));
  }

  @Test
  void theShoppingListIsATableNoSpreadsheetTakesForFormulas() {
    visitor.post(materials + "/settings", settings());
    visitor.submit(materials + "/at/" + small, "wanted", "yes", "material", "wood-chips", "depth", "10", "card", "yes");
    Page list = visitor.get(materials.replace("/materials", "/shopping.csv"));
    assertEquals("text/csv; charset=utf-8; header=present", list.headers().get("content-type").toLowerCase(java.util.Locale.ROOT));
    assertEquals("""
        item,scientific_name,amount,unit,cubic_yards,loads,bed\r
        Wood chips,,11,m3,14.39,2,\r
        Card,,15,sheets,,,\r
        """, list.html());
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {
      "bed-depth; -3; Must lie between 1 and 60 cm (0.39 and 23.62 in).",
      "bed-depth; deep; Not a length. Write a number, or one with its unit: 12 m, 40 ft, 5 ft 6 in.",
      "bed-depth; ''; Please fill this in.",
      "path-depth; 61; Must lie between 1 and 60 cm (0.39 and 23.62 in).",
      "bed-material; gold; “gold” is not known here.",
      "bed-material; card; “card” is not known here.",
      "settling; 100; Must lie between 0 and 60.",
      "settling; a fifth; “a fifth” is not a number that can be read here.",
      "load; 0; Must lie between 0.1 and 100 m³ (0.13 and 130.8 yd³).",
      "load; -8; Not a volume. Write a number, or one with its unit: 4 m3, 5 yd3, 800 litres, 1 load.",
      "barrow; 0; Must lie between 10 and 500.",
      "barrow; ''; Please fill this in.",
      "pace; fast; Not a volume. Write a number, or one with its unit: 4 m3, 5 yd3, 800 litres, 1 load.",
      "gap; -1; Must lie between 0 and 100 cm (0 and 39.37 in).",
      "overlap; 80; The overlap must be smaller than both sides of the sheet.",
      "sheet-width; 0; Must lie between 10 and 1000 cm (3.94 and 393.7 in).",
      "sheets; none; “none” is not a number that can be read here."})
  void badSettingsAreRefusedAndAllTheRestIsKept(String field, String typed, String message) {
    Map<String, String> fields = settings();
    fields.put(field, typed);
    fields.put(field.equals("settling") ? "pace" : "settling", "7");
    Page page = visitor.post(materials + "/settings", fields);
    assertEquals(422, page.status());
    assertEquals(message, page.messageOf(field));
    fields.forEach((name, value) -> {
      // A choice that is none of those offered cannot be shown; everything else stands as typed.
      if (!name.equals("bed-material")) {
        assertEquals(value, page.valueOf(name), name);
      }
    });
    assertEquals("0", visitor.get(materials + "/settings").valueOf("settling"), "nothing was kept");
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {
      "wood-chips; -4; 2026-03-04; amount; Not a volume. Write a number, or one with its unit: 4 m3, 5 yd3, 800 litres, 1 load.",
      "wood-chips; 0; 2026-03-04; amount; Must lie between 0.01 and 1000 m³ (0.01 and 1307.95 yd³).",
      "wood-chips; 1,500; 2026-03-04; amount; Does the comma part thousands or decimals? Write 1500 or 1.500.",
      "card; 12.5; 2026-03-04; amount; “12.5” is not a whole number.",
      "card; ''; 2026-03-04; amount; Please fill this in.",
      "wood-chips; 4; 2099-01-01; on; The date lies in the future or before 1900.",
      "wood-chips; 4; 31 March; on; “31 March” is not a date. Write year-month-day, such as 2025-06-14.",
      "gold; 4; 2026-03-04; material; “gold” is not known here."})
  void badDeliveriesAreRefusedAndAllTheRestIsKept(String material, String amount, String on, String field, String message) {
    Page page = visitor.post(materials + "/deliveries", "material", material, "amount", amount, "on", on, "note", "from the park");
    assertEquals(422, page.status());
    assertEquals(message, page.messageOf(field));
    assertEquals("from the park", page.valueOf("note"));
    assertEquals(amount, page.valueOf("amount"));
    assertTrue(visitor.get(materials).says("Nothing came yet."));
  }

  @Test
  void removingTheSiteTellsThatItsRecordsGo() {
    String remove = materials.replace("/materials", "/remove");
    assertFalse(visitor.get(remove).says("of mulch"));
    visitor.submit(materials + "/load");
    visitor.submit(materials + "/done", "need", small + ".wood-chips");
    assertTrue(visitor.get(remove).says("one delivery of mulch and one record of what was laid"));
    assertEquals(303, visitor.post(remove).status());
    assertEquals(404, visitor.get(materials).status());
  }

  @Test
  void badPartsAreRefused() {
    Page page = visitor.post(materials + "/at/" + large + "/laid", "need", large + ".straw", "amount", "2");
    assertEquals(422, page.status());
    assertEquals("“" + large + ".straw” is not known here.", page.messageOf("need"));
    page = visitor.post(materials + "/at/" + large + "/laid", "need", large + ".wood-chips", "amount", "-2");
    assertEquals(422, page.status());
    assertEquals("-2", page.valueOf("amount"));
    assertEquals(422, visitor.post(materials + "/at/" + large, "wanted", "yes", "material", "wood-chips", "depth", "-1").status());
  }

  @Test
  void whatIsNotThereLeadsNowhere() {
    for (String path : List.of("/sites/999999/materials", "/sites/x/materials", "/sites/999999/materials/settings",
        "/sites/999999/shopping.csv", materials + "/at/bed-999999", materials + "/at/path-1x", materials + "/at/tree-1")) {
      assertEquals(404, visitor.get(path).status(), path);
    }
    assertEquals(404, visitor.post(materials + "/done", "need", "bed-999999.wood-chips").status());
    assertEquals(404, visitor.post(materials + "/order", "up", "bed-999999").status());
    assertEquals(404, visitor.post(materials + "/order").status());
    assertEquals(404, visitor.post(materials + "/deliveries/remove", "delivery", "999999").status());
    assertEquals(404, visitor.post(materials + "/laid/remove", "laid", "-1").status());
    assertEquals(404, visitor.post("/sites/999999/materials/load").status());
  }

  @Test
  void readsAndShowsUsUnits() {
    visitor.post("/units", "units", "us", "back", "/");
    assertEquals("3", visitor.get(materials + "/settings").valueOf("bed-depth"));
    assertEquals("6", visitor.get(materials + "/settings").valueOf("gap"));
    assertEquals("10.46", visitor.get(materials + "/settings").valueOf("load"));
    Map<String, String> fields = settings();
    fields.put("length-unit", "us");
    fields.putAll(Map.of("bed-depth", "3", "path-depth", "6", "load", "10", "barrow", "3", "gap", "6", "trunk", "2", "sheet-length", "48",
        "sheet-width", "32", "overlap", "6"));
    assertEquals(303, visitor.post(materials + "/settings", fields).status());
    Page page = visitor.get(materials);
    assertTrue(page.says("Wood chips, 3 in deep 1076 sq ft 10 yd³ (7.62 m³)"), page.text());
    assertTrue(page.says("One load of chips came today: 10 yd³ (7.65 m³)"), page.text());
    visitor.submit(materials + "/deliveries", "material", "wood-chips", "amount", "2", "on", "2026-03-04", "length-unit", "us");
    assertTrue(visitor.get(materials).says("Wood chips, 2 yd³ (1.53 m³)"));
  }

  private static String id(Page page, String field) {
    return page.first("name=\"" + field + "\" value=\"(\\d+)\"").orElseThrow();
  }
}
