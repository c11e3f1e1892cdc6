package guildwood.workplan.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Work over the wire, in a demonstration of its own. */
class WorkHttpTest {
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

  private static String task(Page page, String beginning) {
    Matcher found = Pattern.compile("name=\"task\" value=\"(" + Pattern.quote(beginning) + "[^\"]*)\"").matcher(page.html());
    assertTrue(found.find(), beginning + " is not on the page: " + page.text());
    return found.group(1);
  }

  @Test
  void whatIsGotIsOnHandAndCanBeTakenBack() {
    Page work = visitor.get("/sites/1/work");
    assertEquals(200, work.status());
    String task = task(work, "buy.bed-");
    Page after = visitor.submit("/sites/1/work/done", "task", task, "amount", "1");
    assertTrue(after.says("Done: Get"), after.text());
    String species = task.substring(task.lastIndexOf('.') + 1);
    Page plants = visitor.get("/sites/1/plants");
    assertTrue(plants.says("on hand"), plants.text());
    Matcher back = Pattern.compile("action=\"(/sites/1/work/done/\\d+/take-back)\"").matcher(after.html());
    assertTrue(back.find());
    Page again = visitor.submit(back.group(1));
    assertTrue(again.says("Taken back."), again.text());
    assertEquals(404, visitor.post(back.group(1)).status(), species);
  }

  @ParameterizedTest
  @CsvSource({"0", "-1", "many", "1.5", "1000000"})
  void anAmountThatMakesNoSenseIsRefusedAndNothingChanges(String amount) {
    String task = task(visitor.get("/sites/1/work"), "buy.bed-");
    String before = visitor.get("/sites/1/plants").text();
    Page refused = visitor.post("/sites/1/work/done", "task", task, "amount", amount);
    assertEquals(422, refused.status());
    assertFalse(refused.messages().isEmpty());
    assertEquals(before, visitor.get("/sites/1/plants").text());
  }

  /** Who thinks in yards reads and types yards; the stock is kept in cubic metres. */
  @Test
  void chipsAreTickedOffInCubicYards() {
    visitor.submit("/units", "units", "us", "back", "/sites/1/work");
    Page work = visitor.get("/sites/1/work");
    assertTrue(work.says("yd³ ("), work.text());
    String task = task(work, "cover.bed-");
    Page after = visitor.submit("/sites/1/work/done", "task", task, "amount", "0.5", "length-unit", "us");
    assertTrue(after.says("0.5 yd³ (0.38 m³)"), after.text());
  }

  @Test
  void aStepThatIsNoLongerThereIsNotTickedOff() {
    Page refused = visitor.post("/sites/1/work/done", "task", "plant.bed-99.no-such-plant.have", "amount", "1");
    assertEquals(422, refused.status());
    assertTrue(refused.says("The plan has changed"), refused.text());
  }

  @Test
  void anHourOfWorkIsChosenAndWhatWaitsSaysWhy() {
    Page now = visitor.get("/sites/1/work/now?hours=1&people=1");
    assertEquals(200, now.status());
    assertTrue(now.says("Not yet, and why"), now.text());
    assertTrue(now.says("waits for:") || now.says("not in season before"), now.text());
  }

  @ParameterizedTest
  @CsvSource({"hours=0&people=1,hours", "hours=x&people=1,hours", "hours=&people=1,hours", "hours=2&people=0,people", "hours=2&people=1.5,people"})
  void hoursThatMakeNoSenseAreRefusedBesideTheirField(String query, String field) {
    Page refused = visitor.get("/sites/1/work/now?" + query);
    assertEquals(422, refused.status());
    assertFalse(refused.messageOf(field).isEmpty());
  }

  @Test
  void settingsAreKeptOrRefusedWhole() {
    Page page = visitor.get("/sites/1/work/settings");
    assertEquals("60", page.valueOf("take.hardwood-cutting"));
    String[] good = {"sessionHours", "3", "people", "4", "day", "sunday", "tree", "50", "shrub", "20", "herb", "6", "cover", "4",
        "take.division", "90", "take.sucker", "80", "take.tuber", "90", "take.bulb", "90", "take.hardwood-cutting", "70", "take.layering", "80",
        "take.root-cutting", "60", "take.softwood-cutting", "50", "take.seed", "40", "take.grafting", "60"};
    String[] bad = good.clone();
    bad[1] = "25";
    Page refused = visitor.post("/sites/1/work/settings", bad);
    assertEquals(422, refused.status());
    assertFalse(refused.messageOf("sessionHours").isEmpty());
    assertEquals("70", refused.valueOf("take.hardwood-cutting"), "the rest is kept");
    assertEquals("60", visitor.get("/sites/1/work/settings").valueOf("take.hardwood-cutting"));
    assertEquals(422, visitor.post("/sites/1/work/settings").status(), "an empty form changes nothing");
    assertTrue(visitor.submit("/sites/1/work/settings", good).says("each Sunday"));
    assertEquals("70", visitor.get("/sites/1/work/settings").valueOf("take.hardwood-cutting"));
  }

  @Test
  void theCalendarAndTheListCanBeTakenAway() {
    Page calendar = visitor.get("/sites/1/work.ics");
    assertTrue(calendar.headers().get("content-type").startsWith("text/calendar"));
    assertTrue(calendar.html().startsWith("BEGIN:VCALENDAR"));
    assertEquals(calendar.html(), visitor.get("/sites/1/work.ics").html(), "the same plan, the same file");
  }

  @Test
  void oneBedIsLookedAtAlone() {
    for (String page : new String[] {"/work", "/work/now", "/plants", "/shopping.csv", "/work.ics"}) {
      assertEquals(200, visitor.get("/sites/1" + page + "?bed=2").status(), page);
    }
  }

  @Test
  void unknownSitesAndBedsLeadNowhere() {
    assertEquals(404, visitor.get("/sites/999/work").status());
    assertEquals(404, visitor.get("/sites/1/work?bed=999").status());
    assertEquals(404, visitor.get("/sites/1/work?bed=x").status());
    assertEquals(404, visitor.get("/beds/999/work").status());
    assertEquals(303, visitor.get("/beds/1/work").status());
    assertEquals(404, visitor.get("/sites/999/work/now").status());
    assertEquals(404, visitor.get("/sites/999/plants").status());
    assertEquals(404, visitor.get("/sites/999/work.ics").status());
  }
}
