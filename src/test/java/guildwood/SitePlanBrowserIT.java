package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.siteplan.exchange.Pictures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Drawing on the plan in a real browser: with the pointer, with keys alone, and what the drawing looks like. */
class SitePlanBrowserIT {
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

  @BeforeEach
  void wide() {
    browser.width(1280);
  }

  private static void open(String path) {
    browser.driver().get("http://127.0.0.1:" + app.port() + path);
  }

  private static WebElement find(String id) {
    return browser.driver().findElement(By.id(id));
  }

  private static String value(String id) {
    return find(id).getDomProperty("value");
  }

  private static void sees(String words) {
    browser.await().withMessage(words + " on the page").until(d -> browser.text().contains(words));
  }

  /** A place in the drawing as shares of its ground, told from its middle as the pointer's moves are. */
  private static Actions at(Actions actions, double right, double down) {
    WebElement drawing = find("site-plan");
    int width = drawing.getSize().getWidth();
    int height = drawing.getSize().getHeight();
    return actions.moveToElement(drawing, (int) ((right - 0.5) * width), (int) ((down - 0.5) * height));
  }

  private static void click(double right, double down) {
    at(new Actions(browser.driver()), right, down).click().perform();
  }

  private static void handles(int count) {
    browser.await().withMessage(count + " points").until(d -> browser.driver().findElements(By.cssSelector("#plan-draft .handle")).size() == count);
  }

  private static void focus(int handle) {
    browser.driver().executeScript("document.querySelector('[data-handle=\"" + handle + "\"]').focus();");
  }

  /** Keys go to the point that has the focus. */
  private static void keys(CharSequence... keys) {
    new Actions(browser.driver()).sendKeys(keys).perform();
  }

  private static void typed(String id, String words) {
    find(id).clear();
    find(id).sendKeys(words);
  }

  private static void scrollToDrawing() {
    browser.driver().executeScript("document.getElementById('site-plan').scrollIntoView({block: 'center'});");
  }

  @Test
  void aBedIsDrawnWithTheMouse() {
    open("/sites/1/plan/bed/new");
    scrollToDrawing();
    click(0.2, 0.7);
    click(0.3, 0.7);
    click(0.3, 0.8);
    handles(3);
    // On the side between the last and the first point: it goes between them.
    click(0.25, 0.75);
    handles(4);
    WebElement fourth = browser.driver().findElement(By.cssSelector("[data-handle='3']"));
    new Actions(browser.driver()).moveToElement(fourth).clickAndHold().moveByOffset(-40, 40).release().perform();
    assertTrue(find("plan-measure").getText().startsWith("Area "), find("plan-measure").getText());
    assertEquals(List.of(), browser.accessibilityViolations());
    browser.picture("plan-bed-drawn-wide");
    typed("name", "Drawn by hand");
    browser.press(By.id("plan-save"));
    sees("Drawn by hand is on the plan.");
    sees("5 beds");
  }

  @Test
  void aPathIsTracedAndItsSlopeTold() {
    open("/sites/1/plan/path/new");
    scrollToDrawing();
    click(0.35, 0.1);
    click(0.5, 0.15);
    click(0.6, 0.1);
    handles(3);
    assertTrue(find("plan-measure").getText().contains("Length "), find("plan-measure").getText());
    typed("name", "Along the hedge");
    typed("start-height", "10");
    typed("end-height", "14");
    browser.press(By.id("plan-save"));
    sees("Along the hedge is on the plan.");
    sees("from end to end, 4 m up.");
  }

  @Test
  void keysAloneMovePointsDeleteThemAndPutAllBack() {
    open("/sites/1/plan/path/1");
    handles(5);
    String before = value("x.2");
    focus(1);
    keys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    browser.await().until(d -> Math.abs(number(value("x.2")) - number(before) - 0.2) < 0.006);
    new Actions(browser.driver()).keyDown(Keys.SHIFT).sendKeys(Keys.ARROW_UP).keyUp(Keys.SHIFT).perform();
    assertEquals(15, number(value("y.2")), 0.006);
    keys(Keys.DELETE);
    handles(4);
    assertEquals("21.42", value("x.2"));
    focus(0);
    keys(Keys.ESCAPE);
    handles(5);
    assertEquals(before, value("x.2"));
    // A point by the button, half way to the next, then Enter saves.
    browser.press(By.cssSelector("button[value='add:1']"));
    handles(6);
    assertEquals((12 + 15) / 2.0, number(value("x.2")), 0.006);
    assertEquals("1", browser.driver().switchTo().activeElement().getDomAttribute("data-handle"));
    keys(Keys.ENTER);
    sees("Main path is changed.");
    browser.press(By.xpath("//button[normalize-space()='Undo it']"));
    sees("The change to Main path is undone.");
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace('−', '-'));
  }

  @Test
  void aCrossingOutlineIsRefusedAndKept() {
    open("/sites/1/plan/water/new");
    scrollToDrawing();
    click(0.2, 0.2);
    click(0.3, 0.3);
    click(0.3, 0.2);
    click(0.2, 0.3);
    handles(4);
    String kept = value("x.4");
    browser.press(By.id("plan-save"));
    sees("touch or cross each other");
    handles(4);
    assertEquals(kept, value("x.4"));
    assertEquals(List.of(), browser.accessibilityViolations());
    browser.picture("plan-water-refused-wide");
    // With the second and the third point in each other's place it is taken.
    List<String> second = List.of(value("x.2"), value("y.2"));
    typed("x.2", value("x.3"));
    typed("y.2", value("y.3"));
    typed("x.3", second.get(0));
    typed("y.3", second.get(1));
    browser.press(By.id("plan-save"));
    sees("is on the plan.");
  }

  @Test
  void touchSetsPoints() {
    open("/sites/1/plan/tree/new");
    scrollToDrawing();
    WebElement drawing = find("site-plan");
    Map<?, ?> box = (Map<?, ?>) browser.driver().executeScript("const b = arguments[0].getBoundingClientRect(); return {x: b.x, y: b.y, w: b.width, h: b.height};", drawing);
    double x = ((Number) box.get("x")).doubleValue() + 0.4 * ((Number) box.get("w")).doubleValue();
    double y = ((Number) box.get("y")).doubleValue() + 0.2 * ((Number) box.get("h")).doubleValue();
    browser.driver().executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", true));
    browser.driver().executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", "touchStart", "touchPoints", List.of(Map.of("x", x, "y", y))));
    browser.driver().executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
    browser.driver().executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", false));
    handles(1);
    assertTrue(!value("x.1").isEmpty());
  }

  /** The letters as the browser really sets them, in metres and in feet. */
  @Test
  void noLabelOverlapsAnotherOrIsCutOff() {
    for (String unit : List.of("metric", "us")) {
      open("/sites/1/plan");
      if (browser.driver().findElements(By.cssSelector("button[name='units'][value='" + unit + "']")).size() == 1) {
        browser.press(By.cssSelector("button[name='units'][value='" + unit + "']"));
      }
      sees(unit.equals("us") ? "ft apart" : "m apart");
      for (int width : List.of(1280, 360)) {
        browser.width(width);
        assertEquals(List.of(), browser.driver().executeScript("""
            const plan = document.getElementById('site-plan');
            const edge = plan.viewBox.baseVal;
            const boxes = [...plan.querySelectorAll('text')].map(t => ({words: t.textContent, box: t.getBBox()}));
            const out = boxes.filter(({box}) => box.x < edge.x || box.y < edge.y || box.x + box.width > edge.x + edge.width
                || box.y + box.height > edge.y + edge.height).map(b => b.words + ' is cut off');
            boxes.forEach((a, i) => boxes.slice(i + 1).forEach(b => {
              if (a.box.x < b.box.x + b.box.width && b.box.x < a.box.x + a.box.width
                  && a.box.y < b.box.y + b.box.height && b.box.y < a.box.y + a.box.height) out.push(a.words + ' over ' + b.words);
            }));
            return boxes.length < 8 ? ['only ' + boxes.length] : out;"""), unit + " at " + width);
      }
      browser.width(1280);
    }
    browser.press(By.cssSelector("button[name='units'][value='metric']"));
  }

  @Test
  void aPictureIsLaidToScaleByClicks(@TempDir Path directory) throws IOException {
    open("/sites/1/plan");
    find("file").sendKeys(Files.write(directory.resolve("yard.png"), Pictures.png(300, 200)).toString());
    browser.press(By.xpath("//button[normalize-space()='Lay it under the plan']"));
    sees("300 by 200 pixels");
    WebElement picture = find("plan-picture");
    browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'});", picture);
    int width = picture.getSize().getWidth();
    new Actions(browser.driver()).moveToElement(picture, -width / 4, 0).click().perform();
    new Actions(browser.driver()).moveToElement(picture, width / 4, 0).click().perform();
    browser.await().until(d -> !value("scale-2.x").isEmpty());
    assertEquals(150, number(value("scale-2.x")) - number(value("scale-1.x")), 3);
    typed("distance", "50");
    assertEquals(List.of(), browser.accessibilityViolations());
    browser.picture("plan-picture-wide");
    browser.press(By.xpath("//button[normalize-space()='Save']"));
    sees("The picture is laid anew.");
    browser.picture("plan-with-picture-wide");
    browser.press(By.xpath("//button[normalize-space()='Take the picture away']"));
    sees("The picture is taken away.");
  }

  @Test
  void everyPageIsAccessibleAndFitsAPhone() {
    for (String page : List.of("plan", "plan/bed/2", "plan/path/2", "plan/water/1", "plan/tree/1", "plan/building/2", "plan/tree/new", "plan/import")) {
      open("/sites/1/" + page);
      assertEquals(List.of(), browser.accessibilityViolations(), page);
      browser.picture("site-" + page.replace('/', '-') + "-wide");
      browser.width(360);
      browser.picture("site-" + page.replace('/', '-') + "-phone");
      assertEquals(List.of(), browser.beyondTheEdge(), page + " scrolls sideways at 360 px");
      browser.width(1280);
    }
  }

  @Test
  void withoutScriptsTheFieldsDo() {
    try (Chromium plain = Chromium.start(false)) {
      plain.driver().get("http://127.0.0.1:" + app.port() + "/sites/1/plan/water/new");
      assertTrue(plain.driver().findElements(By.cssSelector(".plan-tools:not([hidden])")).isEmpty());
      plain.driver().findElement(By.id("plan-add")).click();
      plain.await().withMessage("a fifth row").until(d -> d.findElements(By.id("x.5")).size() == 1);
      String[] corners = {"70", "0", "74", "0", "74", "4", "70", "4", "69", "2"};
      for (int i = 0; i < corners.length; i++) {
        plain.driver().findElement(By.id((i % 2 == 0 ? "x." : "y.") + (i / 2 + 1))).sendKeys(corners[i]);
      }
      plain.driver().findElement(By.id("plan-save")).click();
      plain.await().withMessage("the water on the plan").until(d -> plain.text().matches("(?s).*Water \\d is on the plan\\..*"));
    }
  }
}
