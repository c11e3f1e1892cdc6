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

/** The season's work in a real browser: accessible, within a phone's width, on paper, and ticked off with one press. */
class WorkBrowserIT {
  private static final List<String> PAGES = List.of("/sites/1/work", "/sites/1/work?bed=2", "/sites/1/work/now?hours=2&people=2", "/sites/1/plants",
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
        browser.picture("work-" + i + "-" + width);
      }
      assertEquals(List.of(), browser.accessibilityViolations(), PAGES.get(i));
    }
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
