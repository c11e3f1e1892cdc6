package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** Mulch, chips, runoff and the season's work in a real browser: accessible, within a phone's width, and done with one press. */
class GroundworkBrowserIT {
  private static final List<String> PAGES = List.of("/sites/1/materials", "/sites/1/materials/settings", "/sites/1/materials/at/bed-1",
      "/sites/1/materials/at/path-1", "/sites/1/runoff", "/sites/1/runoff?path=1",
      "/sites/1/runoff?length-unit=metric&rain=40&soil=c&area-1=1000&cover-1=grass&length=20&bottom=0.5&depth=30&side=3&open=100&slope=12",
      "/sites/1/runoff?rain=-1", "/sites/1/work", "/sites/1/work?bed=2", "/sites/1/work/now?hours=2&people=2", "/sites/1/plants",
      "/sites/1/work/settings", "/sites/1/work/now?hours=x", "/sites/1");

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

  private static void open(String path) {
    browser.driver().get("http://127.0.0.1:" + app.port() + path);
  }

  @Test
  void everyPageIsAccessibleAndFitsAPhone() {
    for (int i = 0; i < PAGES.size(); i++) {
      for (int width : new int[] {1280, 360}) {
        browser.width(width);
        open(PAGES.get(i));
        assertFalse(browser.text().contains("Something went wrong"), PAGES.get(i));
        assertEquals(List.of(), browser.beyondTheEdge(), PAGES.get(i) + " at " + width);
        browser.picture("groundwork-" + i + "-" + width);
      }
      assertEquals(List.of(), browser.accessibilityViolations(), PAGES.get(i));
    }
  }

  @Test
  void oneLoadComesWithOnePressAndIsSpent() {
    browser.width(1280);
    open("/sites/1/materials");
    assertTrue(browser.text().contains("can be begun"));
    browser.press(By.xpath("//button[starts-with(., 'One load of chips came today')]"));
    browser.await().until(d -> browser.text().contains("Recorded: Wood chips, 8 m³"));
    browser.press(By.xpath("//button[starts-with(@aria-label, 'Done: Wood chips') and contains(@aria-label, 'Main path')]"));
    browser.await().until(d -> browser.text().contains("Main path: the layer is done."));
  }

  @Test
  void oneStepIsTickedOffAndTheSeasonPrints() {
    browser.width(1280);
    open("/sites/1/work");
    browser.press(By.xpath("//button[starts-with(@aria-label, 'Done: Ask where lines lie underground')]"));
    browser.await().until(d -> browser.text().contains("Done: Ask where lines lie underground"));
    browser.press(By.xpath("//button[starts-with(@aria-label, 'Take back: Ask where lines lie underground')]"));
    browser.await().until(d -> browser.text().contains("Taken back."));
    byte[] pdf = browser.pdf();
    assertTrue(new String(pdf, 0, 5, StandardCharsets.US_ASCII).startsWith("%PDF-"), "a PDF");
  }
}
