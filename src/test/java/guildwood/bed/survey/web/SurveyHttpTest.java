package guildwood.bed.survey.web;

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
import org.junit.jupiter.params.provider.ValueSource;

/** Surveys over HTTP: writing down, picking, reading, taking over, changing, removing. */
class SurveyHttpTest {
  private static final String WET = "Typha latifolia 40\nCaltha palustris 10\nCarex stricta 20\nSalix nigra 10\nOnoclea sensibilis 10";

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
    site = visitor.post("/sites/new", "name", "Orchard edge", "place", "DE").location();
    bed = visitor.post(site + "/beds/new", "name", "Strip", "area", "20").location();
  }

  @Test
  void theDemonstrationHasASurveyThatReadsWet() {
    String ditch = visitor.get("/sites/1").links().stream().filter(l -> l.startsWith("/beds/"))
        .filter(l -> visitor.get(l).says("Ditch corner in June")).findFirst().orElseThrow();
    String survey = visitor.get(ditch).links().stream().filter(l -> l.matches("/surveys/\\d+")).findFirst().orElseThrow();
    Page page = visitor.get(survey);
    assertTrue(page.says("Moisture The plants say wet to waterlogged"), page.text());
    assertTrue(page.says("11 of 12 wild names matched"));
    assertTrue(page.says("Ditch corner keeps its measured value, moderately acid to neutral (pH 6.0 to 6.8), measured."));
    assertTrue(page.says("1 planted left out"));
  }

  @Test
  void aTypedListIsReadOnEveryAxis() {
    Page page = visitor.submit(bed + "/surveys/new", flat(whole(WET)));
    assertTrue(page.says("Survey kept: June"));
    assertTrue(page.says("14 June 2025 plot of 25 m² cover: Percent of the ground wetland ratings: Midwest (US) 5 of 5 wild names matched"));
    for (String axis : new String[] {"Light", "Moisture", "Soil reaction", "Productivity (fertility)", "Wetland rating"}) {
      assertTrue(page.says(axis + ": who pulls where"), axis);
    }
    assertTrue(page.says("Effective number of species"));
    assertTrue(page.says("standard error"));
    assertTrue(page.says("Unweighted mean"));
    assertTrue(page.says("Prevalence index 1"));
    assertTrue(page.says("decided by the authority"));
    assertTrue(page.says("poorly indicated by herbs under a closed canopy"));
    assertTrue(page.says("Planted, young or single plants prove little"));
  }

  @Test
  void aReactionIsToldInClassesAndNeverAsANumberAlone() {
    String page = visitor.submit(bed + "/surveys/new", flat(whole(WET + "\nUrtica dioica 5"))).text();
    assertTrue(page.contains("pH "));
    var told = java.util.regex.Pattern.compile("(\\w+) \\(pH [\\d.]+( to [\\d.]+)?\\)").matcher(page).results().toList();
    long numbers = java.util.regex.Pattern.compile("pH \\d").matcher(page).results().count();
    assertEquals(numbers, told.size());
    assertTrue(told.stream().allMatch(m -> m.group(1).matches("acid|neutral|alkaline")), page);
  }

  @Test
  void anUnmatchedNameStaysAndIsOnlyExchangedByAButton() {
    String survey = visitor.post(bed + "/surveys/new", flat(whole(WET + "\nAcer rubrm 5\nzzqq 3"))).location();
    Page page = visitor.get(survey);
    assertTrue(page.says("5 of 7 wild names matched"));
    assertTrue(page.says("Acer rubrm Is it red maple (Acer rubrum)"));
    assertTrue(page.says("zzqq no plant with indicator values is spelt nearly so"));
    Page after = visitor.submit(survey + "/name", "written", "Acer rubrm", "species", "Acer rubrum");
    assertTrue(after.says("“Acer rubrm” is now taken for Acer rubrum"));
    assertTrue(after.says("6 of 7 wild names matched"));
    assertTrue(visitor.get(survey + "/edit").valueOf("plants").contains("Acer rubrm 5"));
    Page edited = visitor.submit(survey + "/edit", flat(whole(WET + "\nAcer rubrm 6\nzzqq 3")));
    assertTrue(edited.says("6 of 7 wild names matched"), "what was accepted stays");
    assertTrue(visitor.submit(survey + "/name", "written", "Acer rubrm", "species", "").says("5 of 7 wild names matched"));
    assertEquals(404, visitor.post(survey + "/name", "written", "Acer rubrm", "species", "No such").status());
    assertEquals(404, visitor.post(survey + "/name", "written", "not there", "species", "Acer rubrum").status());
  }

  @Test
  void classesOfBothScalesAreUnderstood() {
    Map<String, String> form = whole("stinging nettle +\nAcer rubrum 3");
    form.put("scale", "braun-blanquet");
    Page page = visitor.submit(bed + "/surveys/new", flat(form));
    assertTrue(page.says("class + (counts as 0.1 %)"));
    assertTrue(page.says("class 3 (counts as 37.5 %)"));
    form.put("plants", "Acer rubrum 6");
    form.put("scale", "daubenmire");
    assertTrue(visitor.submit(bed + "/surveys/new", flat(form)).says("class 6 (counts as 97.5 %)"));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "name|''|Please fill this in",
    "name|LONG|Too long",
    "date|soon|is not a date",
    "date|2025-13-01|is not a date",
    "date|2999-01-01|in the future",
    "date|1066-10-14|in the future or before 1900",
    "plot|a few steps|Not an area",
    "plot|0|A plot has between",
    "plot|10000000|A plot has between",
    "plot|-4|Not an area",
    "scale|stars|is not known here",
    "region|atlantis|is not known here",
    "plants|''|Type at least one plant",
    "plants|Acer rubrum 150|Line 1: “150” is not a cover in percent",
    "plants|Acer rubrum -3|Line 1: “-3” is not a cover in percent",
    "note|LONG|Too long",
  })
  void nonsenseIsRefusedBesideItsFieldAndTheRestKept(String field, String typed, String message) {
    Map<String, String> form = whole("Acer rubrum 15\nnettle 3");
    form.put(field, typed.equals("LONG") ? "x".repeat(2001) : typed);
    Page page = visitor.post(bed + "/surveys/new", flat(form));
    assertEquals(422, page.status());
    String beside = field.equals("plants") ? page.first("(?s)id=\"plants-error\">(.*?)</div>").orElse("") : page.messageOf(field);
    assertTrue(beside.contains(message), beside);
    if (!field.equals("plants")) {
      assertEquals("Acer rubrum 15\nnettle 3", page.valueOf("plants"));
    }
    if (!field.equals("plot")) {
      assertEquals("25", page.valueOf("plot"));
    }
    assertTrue(visitor.get(bed + "/surveys").says("No survey yet"), "nothing was kept");
  }

  @Test
  void whatIsTypedIsShownAsTextAndNeverAsMarkup() {
    Page page = visitor.submit(bed + "/surveys/new", flat(whole("<script>alert(1)</script> 5\nAcer rubrum 3")));
    assertFalse(page.html().contains("<script>alert"));
    assertTrue(page.says("<script>alert(1)</script>"));
  }

  @Test
  void plotsAreTakenAndShownInTheVisitorsUnits() {
    visitor.submit("/units", "units", "us", "back", "/");
    Page form = visitor.get(bed + "/surveys/new");
    assertTrue(form.says("Plot size in square feet"));
    assertEquals("us", form.valueOf("plot-unit"));
    Map<String, String> typed = whole(WET);
    typed.put("plot-unit", "us");
    typed.put("plot", "100");
    String survey = visitor.post(bed + "/surveys/new", flat(typed)).location();
    assertTrue(visitor.get(survey).says("plot of 100 sq ft"));
    visitor.submit("/units", "units", "metric", "back", "/");
    assertTrue(visitor.get(survey).says("plot of 9.3 m²"));
  }

  @Test
  void thePickingListIsSearchedByRegionAndRead() {
    Page all = visitor.get(bed + "/surveys/pick");
    assertEquals("north_west_europe", all.valueOf("region"), "the site lies in Europe");
    assertFalse(all.html().contains("value=\"Acer rubrum\""));
    Page found = visitor.get(bed + "/surveys/pick?region=eastern_north_america&q=red+twigs");
    assertTrue(found.says("red maple Acer rubrum Maple with red twigs"));
    assertFalse(found.html().contains("value=\"Typha latifolia\""));
    assertTrue(visitor.get(bed + "/surveys/pick?q=qqqqq").says("No plant of the list fits"));
    assertEquals(422, visitor.get(bed + "/surveys/pick?q=" + "x".repeat(200)).status());
    Page none = visitor.post(bed + "/surveys/pick", "region", "eastern_north_america", "plant", "No such plant");
    assertEquals(422, none.status());
    assertTrue(none.says("Tick at least one plant"));
    String survey = visitor.post(bed + "/surveys/pick", "plant", "Typha latifolia", "plant", "Caltha palustris").location();
    Page page = visitor.get(survey);
    assertTrue(page.says("2 plants added"));
    assertTrue(page.says("a list without cover"));
    assertTrue(page.says("Only 2 species speak here"));
    assertTrue(visitor.submit(survey + "/pick", "plant", "Typha latifolia", "plant", "Urtica dioica").says("One plant added"));
    assertTrue(visitor.get(survey + "/pick").says("in the survey"));
  }

  @Test
  void oneGeneralistGivesNoCallAndNothingToUse() {
    String survey = visitor.post(bed + "/surveys/pick", "plant", "Acer rubrum").location();
    Page page = visitor.get(survey);
    assertTrue(page.says("Moisture No call: these plants leave the whole scale open"));
    assertEquals(404, visitor.post(survey + "/use", "axis", "moisture", "bed", id(bed)).status());
  }

  @Test
  void theBedTakesAnIntervalOverAndKeepsItWhenItIsDescribedAnew() {
    String survey = visitor.post(bed + "/surveys/new", flat(whole(WET))).location();
    Page after = visitor.submit(survey + "/use", "axis", "moisture", "bed", id(bed));
    assertTrue(after.says("Moisture of Strip is now wet to waterlogged"));
    Page shown = visitor.get(bed);
    assertTrue(shown.says("read from wild plants June, 2025-06-14"), shown.text());
    Page form = visitor.get(bed + "/edit");
    Page again = visitor.submit(bed + "/edit", "name", "Strip", "area", "21", "moisture-from", form.valueOf("moisture-from"),
        "moisture-to", form.valueOf("moisture-to"), "moisture-basis", form.valueOf("moisture-basis"));
    assertTrue(again.says("read from wild plants June, 2025-06-14"));
  }

  @Test
  void aMeasuredValueStandsAndTheContradictionIsShownOnBothPages() {
    visitor.submit(bed + "/edit", "name", "Strip", "area", "20", "moisture-from", "very dry", "moisture-basis", "measured");
    String survey = visitor.post(bed + "/surveys/new", flat(whole(WET))).location();
    Page page = visitor.get(survey);
    assertTrue(page.says("Contradiction: Strip states very dry (class 1 of 5), measured"));
    assertTrue(page.says("Strip keeps its measured value"));
    Page after = visitor.submit(survey + "/use", "axis", "moisture", "bed", id(bed));
    assertTrue(after.says("Moisture of Strip stays as measured"));
    Page shown = visitor.get(bed);
    assertTrue(shown.says("Moisture: stated is very dry (class 1 of 5), measured, but the wild plants of “June” say wet"), shown.text());
    assertTrue(shown.says("Moisture very dry class 1 of 5 measured"));
  }

  @Test
  void whatIsMeasuredOnTheSiteOutranksWhatPlantsIndicateInTheBed() {
    String survey = visitor.post(bed + "/surveys/new", flat(whole(WET))).location();
    visitor.submit(survey + "/use", "axis", "moisture", "bed", id(bed));
    visitor.submit(site + "/edit", "name", "Orchard edge", "place", "DE", "moisture-from", "dry", "moisture-basis", "measured");
    assertTrue(visitor.get(bed).says("Moisture dry class 2 of 5 measured inherited from the site"), visitor.get(bed).text());
    assertTrue(visitor.get(survey).says("Contradiction: Strip states dry"));
  }

  @Test
  void aSurveyOfTheWholeSiteOffersItsBeds() {
    String survey = visitor.post(site + "/surveys/new", flat(whole(WET))).location();
    assertTrue(visitor.get(survey).says("Use this for Strip"));
    assertTrue(visitor.get(site + "/surveys").says("June 14 June 2025 the whole site 5"));
    assertTrue(visitor.submit(survey + "/use", "axis", "moisture", "bed", id(bed)).says("Moisture of Strip is now"));
    assertEquals(404, visitor.post(survey + "/use", "axis", "moisture", "bed", "1").status(), "a bed of another site");
    assertEquals(404, visitor.post(survey + "/use", "axis", "wetness", "bed", id(bed)).status(), "not an axis of beds");
    assertEquals(404, visitor.post(survey + "/use", "axis", "fortune", "bed", id(bed)).status());
    assertEquals(404, visitor.post(survey + "/use", "axis", "moisture", "bed", "a").status());
  }

  @Test
  void removingAsksFirstAndTheBedTellsWhatGoesWithIt() {
    String survey = visitor.post(bed + "/surveys/new", flat(whole(WET))).location();
    assertTrue(visitor.get(bed + "/remove").says("one survey of wild plants"));
    assertTrue(visitor.get(site + "/remove").says("one survey of wild plants"));
    assertTrue(visitor.get(survey + "/remove").says("The list of 5 plants goes (14 June 2025)"));
    assertTrue(visitor.submit(survey + "/remove").says("Survey removed: June."));
    assertEquals(404, visitor.get(survey).status());
    assertEquals(404, visitor.post(survey + "/remove").status());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/surveys/999999", "/surveys/x", "/surveys/999999/edit", "/surveys/999999/pick", "/surveys/999999/remove",
    "/beds/999999/surveys", "/beds/999999/surveys/new", "/beds/999999/surveys/pick", "/sites/999999/surveys", "/sites/x/surveys/new"})
  void unknownAddressesLeadNowhere(String path) {
    assertEquals(404, visitor.get(path).status());
  }

  private static Map<String, String> whole(String plants) {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("name", "June");
    form.put("date", "2025-06-14");
    form.put("plot", "25");
    form.put("plot-unit", "metric");
    form.put("scale", "percent");
    form.put("region", "midwest");
    form.put("plants", plants);
    form.put("note", "");
    return form;
  }

  private static String[] flat(Map<String, String> form) {
    return form.entrySet().stream().flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue())).toArray(String[]::new);
  }

  private static String id(String bedPath) {
    return bedPath.substring("/beds/".length());
  }
}
