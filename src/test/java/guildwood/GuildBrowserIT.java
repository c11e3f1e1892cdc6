package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;

/** Asking for covered ground, seeing what is missing as it is worked out, and replacing a saved guild, in a real browser. */
class GuildBrowserIT {
  private static final String BED = "beds/1";
  private static App app;
  private static Chromium browser;

  @BeforeAll
  static void start() {
    app = App.start(Settings.demoOnFreePort());
    browser = Chromium.start(true);
  }

  @AfterAll
  static void stop() {
    browser.close();
    app.close();
  }

  @Test
  void coveredGroundIsAskedForAndASavedGuildIsReplacedOnlyWhenAgreedTo() {
    open(BED + "/wishes");
    choose("wish.ground", "must");
    WebElement share = find("share.ground");
    share.clear();
    share.sendKeys("60");
    new Select(find("plantsFrom")).selectByValue("anywhere");
    check("wishes-ground");
    browser.press(By.xpath("//button[normalize-space()='Save']"));
    sees("60 % of the ground covered");
    browser.press(By.id("compose"));
    browser.await().until(ExpectedConditions.presenceOfElementLocated(By.className("proposal")));
    browser.press(By.partialLinkText("1. Best score"));
    sees("60 % of the ground covered");
    check("proposal-ground");
    browser.press(By.xpath("//button[normalize-space()='Save as this bed’s guild']"));
    sees("Saved");
    open(BED + "/guild/compare");
    sees("Choose two guilds of this bed");
    check("compare-choose");
    browser.press(By.xpath("//button[normalize-space()='Compare']"));
    browser.press(By.partialLinkText("All proposals"));
    browser.press(By.partialLinkText("2. "));
    browser.press(By.xpath("//button[normalize-space()='Save as this bed’s guild']"));
    sees("What would change");
    check("replace");
    browser.press(By.xpath("//button[normalize-space()='Replace the saved guild']"));
    sees("Saved");
  }

  /** Whether or not the waiting is seen, what is missing comes without the page being loaded anew. */
  @Test
  void whatIsMissingComesByItself() {
    open("beds/2/wishes");
    for (String month : List.of("1", "2", "11", "12")) {
      choose("wish.bloom-month:" + month, "nice");
    }
    browser.press(By.xpath("//button[normalize-space()='Save']"));
    sees("wishes kept");
    open("beds/2/guild/edit/gaps");
    browser.driver().executeScript("window.samePage = true;");
    browser.await().until(d -> !d.findElements(By.className("gap")).isEmpty());
    assertTrue((Boolean) browser.driver().executeScript("return window.samePage === true;"), "the page was not loaded anew");
    sees("in bloom in January");
    check("draft-gaps-come");
  }

  private static void open(String path) {
    browser.driver().get("http://127.0.0.1:" + app.port() + "/" + path);
  }

  private static WebElement find(String id) {
    return browser.driver().findElement(By.id(id));
  }

  /** Chooses in a part of the form that may be folded away. */
  private static void choose(String id, String value) {
    browser.driver().executeScript("arguments[0].closest('details').open = true;", find(id));
    new Select(find(id)).selectByValue(value);
  }

  private static void sees(String words) {
    browser.await().withMessage(words).until(d -> browser.text().contains(words));
  }

  private static void check(String page) {
    browser.await().until(d -> !browser.has(By.id("gaps-working")));
    browser.picture(page + "-wide");
    assertEquals(List.of(), browser.accessibilityViolations(), page);
    browser.width(360);
    browser.picture(page + "-phone");
    assertEquals(List.of(), browser.beyondTheEdge(), page + " scrolls sideways at 360 px");
    browser.width(1280);
  }
}
