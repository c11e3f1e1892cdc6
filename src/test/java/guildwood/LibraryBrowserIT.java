package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** The library page in a real browser: what changes without a new page, what stays, and what works without scripts. */
class LibraryBrowserIT {
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

  private static void open(Chromium in, String path) {
    in.driver().get("http://127.0.0.1:" + app.port() + path);
  }

  private static WebElement find(String id) {
    return browser.driver().findElement(By.id(id));
  }

  private static String count() {
    return find("found").getText();
  }

  private static String shown(String option) {
    return find("n-" + option).findElement(By.cssSelector("[aria-hidden]")).getText();
  }

  private static void waitFor(String what, java.util.function.BooleanSupplier holds) {
    browser.await().withMessage(what).until(d -> holds.getAsBoolean());
  }

  private static String focused() {
    return browser.driver().switchTo().activeElement().getAttribute("id");
  }

  private static String address() {
    return browser.driver().getCurrentUrl().replaceFirst("http://[^/]+", "");
  }

  @Test
  void tickingChangesRowsCountsAndAddressAndNothingElse() {
    browser.width(1280);
    open(browser, "/library");
    String all = count();
    ((JavascriptExecutor) browser.driver()).executeScript("window.samePage = true; document.getElementById('f-bloom').open = true;");
    String shrubs = shown("layer-shrub");
    find("layer-shrub").sendKeys(Keys.SPACE);
    waitFor("fewer species", () -> !count().equals(all));
    assertTrue(count().startsWith(shrubs + " of "), count() + " after ticking " + shrubs);
    assertEquals("/library?layer=shrub", address());
    assertEquals("layer-shrub", focused());
    assertTrue(shown("layer-herb").startsWith("+"));
    assertEquals(count(), find("said").getAttribute("textContent"));
    assertTrue(find("f-bloom").getAttribute("open") != null, "a facet that was opened has closed");

    // Taking it back by its chip unticks the box, moves the focus to the count and keeps the page.
    browser.driver().findElement(By.cssSelector(".chip")).click();
    waitFor("all species again", () -> count().equals(all));
    assertFalse(find("layer-shrub").isSelected());
    assertEquals("found", focused());
    assertEquals("/library", address());
    assertTrue(find("f-bloom").getAttribute("open") != null, "a facet that was opened has closed");
    assertEquals(true, browser.driver().executeScript("return window.samePage === true;"));

    browser.driver().navigate().back();
    waitFor("the choice is back", () -> count().startsWith(shrubs + " of ") && find("layer-shrub").isSelected());
  }

  @Test
  void typingNarrowsWhileOneTypes() {
    browser.width(1280);
    open(browser, "/library");
    find("q").sendKeys("currant");
    waitFor("currants only", () -> address().equals("/library?q=currant"));
    assertEquals("q", focused());
    assertTrue(browser.driver().findElements(By.cssSelector(".species tbody th > a")).size() > 1);
    find("q").sendKeys(Keys.ENTER);
    waitFor("an answer to every request", () ->
        Boolean.TRUE.equals(browser.driver().executeScript("return document.querySelector('.htmx-request') === null;")));
    new Select(find("sort")).selectByVisibleText("tallest first");
    waitFor("sorted", () -> address().equals("/library?q=currant&sort=tallest-first"));
    assertEquals("sort", focused());
  }

  @Test
  void aBedBringsItsVerdictsAndKeepsWhatWasChosen() {
    browser.width(1280);
    open(browser, "/library?layer=herb");
    new Select(find("bed")).selectByVisibleText("Ditch corner");
    waitFor("the verdict facet", () -> !browser.driver().findElements(By.id("f-verdict")).isEmpty());
    assertTrue(find("layer-herb").isSelected());
    assertTrue(address().matches("/library\\?bed=\\d+&layer=herb"), address());
    find("verdict-fits").sendKeys(Keys.SPACE);
    waitFor("fitting herbs", () -> address().contains("verdict=fits"));
    assertEquals(List.of(), browser.accessibilityViolations());
    browser.picture("library-bed-1280");
  }

  @Test
  void aPhoneHasTheFacetsInOneDrawerAndNoSidewaysScrolling() {
    browser.width(360);
    open(browser, "/library?bed=1&function=nitrogen-fixer");
    assertFalse(find("layer-shrub").isDisplayed());
    assertEquals(List.of(), browser.beyondTheEdge());
    assertEquals(List.of(), browser.accessibilityViolations());
    browser.driver().findElement(By.cssSelector(".drawer > summary")).click();
    assertTrue(find("layer-shrub").isDisplayed());
    ((JavascriptExecutor) browser.driver()).executeScript("document.querySelectorAll('details').forEach(d => d.open = true);");
    assertEquals(List.of(), browser.beyondTheEdge());
    assertEquals(List.of(), browser.accessibilityViolations());
    browser.picture("library-facets-360");
  }

  @Test
  void withoutScriptsTheFormStillWorks() {
    try (Chromium plain = Chromium.start(false)) {
      open(plain, "/library");
      plain.driver().findElement(By.id("layer-root")).click();
      plain.driver().findElement(By.cssSelector("noscript button, .search-line button")).click();
      plain.await().until(d -> d.getCurrentUrl().endsWith("/library?layer=root"));
      assertTrue(plain.driver().findElement(By.id("layer-root")).isSelected());
    }
  }
}
