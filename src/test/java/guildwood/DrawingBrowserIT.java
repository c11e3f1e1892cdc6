package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;

/** The drawing in a real browser: the slider, a plant dragged and moved by keys, the sheet for the printer. */
class DrawingBrowserIT {
  /** Chromium's own: an inch has 96 of its pixels. */
  private static final double PX_PER_MM = 96 / 25.4;

  private static App app;
  private static Chromium browser;
  private static String drawing;

  @BeforeAll
  static void start() {
    app = App.start(Settings.demoOnFreePort());
    browser = Chromium.start(true);
    open("/sites");
    browser.press(By.partialLinkText("Orchard row"));
    browser.press(By.cssSelector("a[href$='/guild']"));
    browser.press(By.linkText("Draw it in the bed"));
    browser.await().until(d -> d.getCurrentUrl().endsWith("/drawing"));
    drawing = browser.driver().getCurrentUrl().replaceFirst("http://[^/]+", "");
  }

  @AfterAll
  static void stop() {
    browser.close();
    app.close();
  }

  private static void open(String path) {
    browser.driver().get("http://127.0.0.1:" + app.port() + path);
  }

  private static void openDrawing(int width) {
    browser.width(width);
    open(drawing);
    live();
  }

  /** Waits until the drawing is part of the page and its plants can be moved. */
  private static void live() {
    browser.await().until(d -> !d.findElements(By.cssSelector(".bed-drawing[data-ready] svg .spot[tabindex]")).isEmpty());
  }

  private static String year() {
    return browser.await().until(d -> d.findElement(By.cssSelector("#drawing-plan h2")).getText());
  }

  private static double east(String spot) {
    return browser.await().until(d -> Double.valueOf(d.findElement(By.cssSelector("[data-spot='" + spot + "']")).getAttribute("data-x")));
  }

  private static double crown(String spot) {
    return browser.await().until(d -> Double.valueOf(d.findElement(By.cssSelector("[data-crown='" + spot + "'] .crown")).getAttribute("r")));
  }

  private static String tree() {
    return browser.await().until(d -> d.findElement(By.cssSelector("#spot option")).getAttribute("value"));
  }

  @Test
  void theSliderGrowsThePlants() {
    openDrawing(1280);
    String grown = year();
    String tree = tree();
    double wide = crown(tree);
    browser.driver().executeScript("window.samePage = true;");
    WebElement slider = browser.driver().findElement(By.id("year-slider"));
    slider.sendKeys(Keys.HOME);
    browser.await().until(d -> !year().equals(grown));
    live();
    assertEquals("At planting", year());
    assertEquals("0", browser.driver().findElement(By.id("year")).getAttribute("value"));
    assertTrue(crown(tree) < wide / 3, crown(tree) + " after " + wide);
    assertEquals("year-slider", browser.driver().switchTo().activeElement().getAttribute("id"));
    slider.sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    browser.await().until(d -> year().equals("Year 3"));
    assertEquals(true, browser.driver().executeScript("return window.samePage === true;"));
  }

  @Test
  void aPlantIsDraggedAndStaysThere() {
    openDrawing(1280);
    String tree = tree();
    double before = east(tree);
    WebElement handle = browser.driver().findElement(By.cssSelector("[data-spot='" + tree + "'] .handle"));
    browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'});", handle);
    new Actions(browser.driver()).moveToElement(handle).clickAndHold().moveByOffset(-20, 2).moveByOffset(-20, 2).release().perform();
    browser.await().until(d -> d.findElement(By.cssSelector("#spot option")).getText().endsWith("(locked)"));
    live();
    double after = east(tree);
    assertTrue(after < before - 0.3, before + " and " + after);
    open(drawing);
    live();
    assertEquals(after, east(tree), 1e-3, "it is kept");
  }

  @Test
  void aPlantIsMovedByKeys() {
    openDrawing(1280);
    String herb = browser.driver().findElements(By.cssSelector("#spot option")).get(8).getAttribute("value");
    double before = east(herb);
    WebElement spot = browser.driver().findElement(By.cssSelector("[data-spot='" + herb + "']"));
    // The middle of the bed lies inside it whichever way the plant is moved.
    boolean eastwards = before < 0;
    spot.sendKeys(eastwards ? Keys.ARROW_RIGHT : Keys.ARROW_LEFT, eastwards ? Keys.ARROW_RIGHT : Keys.ARROW_LEFT);
    browser.await().until(d -> d.findElements(By.cssSelector("#spot option")).get(8).getText().endsWith("(locked)"));
    live();
    assertEquals(before + (eastwards ? 0.2 : -0.2), east(herb), 0.002);
    browser.await().until(d -> herb.equals(d.switchTo().activeElement().getAttribute("data-spot")));
  }

  @Test
  void buttonsNudgeAndRefuseInPlace() {
    openDrawing(1280);
    String tree = tree();
    WebElement step = browser.driver().findElement(By.id("step"));
    step.clear();
    step.sendKeys("99");
    browser.press(By.id("nudge-west"));
    browser.await().until(d -> d.findElement(By.id("spot-error")).getText().contains("outside the bed"));
    assertEquals("99", browser.driver().findElement(By.id("step")).getAttribute("value"));
    live();
    double before = east(tree);
    assertEquals(tree, new Select(browser.driver().findElement(By.id("spot"))).getFirstSelectedOption().getAttribute("value"));
    step = browser.driver().findElement(By.id("step"));
    step.clear();
    step.sendKeys("0.1");
    browser.press(By.id("nudge-lock"));
    browser.await().until(d -> !browser.has(By.id("spot-error")));
    live();
    assertEquals(before, east(tree), 1e-3);
  }

  @Test
  void thePagesAreAccessibleAndFitAPhone() {
    openDrawing(1280);
    browser.driver().executeScript("document.querySelectorAll('details').forEach(d => d.open = true);");
    assertEquals(List.of(), browser.accessibilityViolations());
    browser.picture("drawing-1280");
    openDrawing(360);
    browser.picture("drawing-360");
    browser.driver().executeScript("document.querySelectorAll('details').forEach(d => d.open = true);");
    assertEquals(List.of(), browser.beyondTheEdge());
    assertEquals(List.of(), browser.accessibilityViolations());
    open(drawing + "/sheet");
    assertEquals(List.of(), browser.beyondTheEdge());
    assertEquals(List.of(), browser.accessibilityViolations());
    browser.picture("drawing-sheet-360");
    browser.width(1280);
  }

  /** The sheet is one page, and as large in the browser as its scale says: its own millimetres. */
  @Test
  void theSheetPrintsTrueToScale() {
    browser.width(1280);
    open(drawing + "/sheet");
    WebElement sheet = browser.driver().findElement(By.cssSelector(".true-sheet img"));
    browser.await().until(d -> Boolean.TRUE.equals(browser.driver().executeScript("return arguments[0].complete && arguments[0].naturalWidth > 0;", sheet)));
    double shown = ((Number) browser.driver().executeScript("return arguments[0].getBoundingClientRect().width;", sheet)).doubleValue();
    open(drawing + ".svg");
    double millimetres = Double.parseDouble(browser.driver().findElement(By.tagName("svg")).getAttribute("width").replace("mm", ""));
    assertEquals(millimetres * PX_PER_MM, shown, 1);
    open(drawing + "/sheet");
    browser.await().until(d -> Boolean.TRUE.equals(browser.driver().executeScript("const i = document.querySelector('.true-sheet img'); return i.complete && i.naturalWidth > 0;")));
    String pdf = new String(browser.pdf(), StandardCharsets.ISO_8859_1);
    assertTrue(pdf.startsWith("%PDF-"));
    assertEquals(1, pdf.split("/Type\\s*/Page\\b(?!s)", -1).length - 1, "one page");
  }

  @Test
  void withoutScriptsPlantsAreMovedByButtonsAndTheYearByNumber() {
    try (Chromium plain = Chromium.start(false)) {
      plain.driver().get("http://127.0.0.1:" + app.port() + drawing);
      assertTrue(plain.driver().findElement(By.cssSelector(".bed-drawing img")).isDisplayed());
      WebElement year = plain.driver().findElement(By.id("year"));
      year.clear();
      year.sendKeys("4", Keys.ENTER);
      plain.await().until(d -> d.findElement(By.cssSelector("#drawing-plan h2")).getText().equals("Year 4"));
      String before = plain.driver().findElement(By.cssSelector("#spot option:nth-child(3)")).getText();
      new Select(plain.driver().findElement(By.id("spot"))).selectByIndex(2);
      plain.press(By.id("nudge-lock"));
      plain.await().until(d -> d.findElement(By.cssSelector(".notice")).getText().contains("kept"));
      assertNotEquals(before, plain.driver().findElement(By.cssSelector("#spot option:nth-child(3)")).getText());
    }
  }
}
