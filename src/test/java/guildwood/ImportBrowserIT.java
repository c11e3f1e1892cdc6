package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.Select;

/** A workbook through the whole import in a real browser: chosen, mapped, looked through, mended, brought in, undone. */
class ImportBrowserIT {
  private static final String[][] ROWS = {
    {"Plants of the hedge", "", "", "", ""},
    {"Botanical name", "Common name", "Height", "Bloom", "Remarks"},
    {"Inventia nova", "made-up plant", "15-20", "May-June", "by the gate"},
    {"Inventia altera", "other plant", "12", "Smarch", ""},
    {"Rubus idaeuss", "raspberry", "5", "June", ""},
    {"Malus domestica", "apple", "90", "April-May", ""},
  };

  @TempDir
  private static Path directory;

  private static App app;
  private static Chromium browser;

  @BeforeAll
  static void start() throws IOException {
    try (OutputStream out = Files.newOutputStream(directory.resolve("hedge.xlsx"))) {
      Workbook workbook = new Workbook(out, "hedge", "1.0");
      workbook.newWorksheet("Read me").value(0, 0, "Nothing here");
      Worksheet sheet = workbook.newWorksheet("Plants");
      for (int row = 0; row < ROWS.length; row++) {
        for (int column = 0; column < ROWS[row].length; column++) {
          sheet.value(row, column, ROWS[row][column]);
        }
      }
      workbook.finish();
    }
    app = App.start(Settings.demoOnFreePort());
    browser = Chromium.start(true);
  }

  @AfterAll
  static void stop() {
    browser.close();
    app.close();
  }

  private static void waitFor(String what, java.util.function.BooleanSupplier holds) {
    browser.await().withMessage(what).until(d -> holds.getAsBoolean());
  }

  private static String address() {
    return browser.driver().getCurrentUrl().replaceFirst("http://[^/]+", "");
  }

  /** The page as it is now, on a screen and on a phone. */
  private static void look(String name) {
    for (int width : new int[] {1280, 360}) {
      browser.width(width);
      assertEquals(List.of(), browser.beyondTheEdge(), name + " at " + width);
      assertEquals(List.of(), browser.accessibilityViolations(), name + " at " + width);
      browser.picture("import-" + name + "-" + width);
    }
    browser.width(1280);
  }

  private static void choose(String id, String value) {
    browser.await().until(d -> {
      new Select(d.findElement(By.id(id))).selectByValue(value);
      return true;
    });
  }

  private static void submit(String words) {
    browser.press(By.xpath("//main//button[normalize-space()='" + words + "']"));
  }

  private static void chooseTheSheet() {
    browser.driver().get("http://127.0.0.1:" + app.port() + "/import");
    look("start");
    browser.driver().findElement(By.id("file")).sendKeys(directory.resolve("hedge.xlsx").toString());
    submit("Bring the file");
    waitFor("the sheets", () -> address().matches("/import/\\d+/sheet"));
    choose("sheet", "Plants");
    submit("Show this sheet");
    waitFor("the rows of the sheet", () -> browser.text().contains("Botanical name"));
    assertEquals("2", browser.driver().findElement(By.id("first")).getAttribute("value"));
    look("sheet");
    submit("Go on to the columns");
    waitFor("the columns", () -> address().endsWith("/columns"));
  }

  private static void sayTheUnit() {
    assertTrue(browser.text().contains("The unit of these columns is not known"), browser.text());
    browser.driver().executeScript("window.samePage = true;");
    choose("c2-unit", "feet");
    waitFor("the readings in feet", () -> browser.text().contains("4.6 – 6.1 m"));
    assertEquals(true, browser.driver().executeScript("return window.samePage === true;"));
    assertEquals("c2-unit", browser.driver().switchTo().activeElement().getAttribute("id"));
    look("columns");
  }

  private static void lookThrough() {
    choose("source_kind", "own-experience");
    submit("Look it through");
    waitFor("the review", () -> address().contains("/review") && browser.text().contains("In short"));
    look("review-names");
    browser.press(By.cssSelector("input[value='rubus-idaeus']"));
    submit("Keep the choices of this page");
    waitFor("the choice is kept", () -> browser.text().contains("since this was reckoned"));
    browser.press(By.partialLinkText("Not read"));
    waitFor("the cells", () -> browser.text().contains("Smarch"));
    browser.driver().findElement(By.id("mend-0")).sendKeys("Octember");
    submit("Read this instead");
    waitFor("the refusal", () -> !browser.driver().findElements(By.id("mend-0-error")).isEmpty());
    look("review-mend");
    browser.driver().findElement(By.id("mend-0")).clear();
    browser.driver().findElement(By.id("mend-0")).sendKeys("March");
    submit("Read this instead");
    waitFor("the cell is mended", () -> browser.text().contains("will be read instead"));
    submit("Reckon anew");
    waitFor("the review anew", () -> browser.text().contains("In short") && !browser.text().contains("since this was reckoned"));
    browser.press(By.partialLinkText("Two opinions"));
    waitFor("the conflicts", () -> browser.text().contains("The library says"));
    look("review-conflicts");
    browser.press(By.partialLinkText("New species"));
    waitFor("the new species", () -> browser.text().contains("Inventia altera"));
    look("review-new");
  }

  @Test
  void aWorkbookIsBroughtInAndTakenOutAgain() {
    browser.width(1280);
    chooseTheSheet();
    sayTheUnit();
    lookThrough();

    submit("Bring it in");
    waitFor("the end of the import", () -> address().matches("/imports/\\d+"));
    assertTrue(browser.text().contains("Brought in on"));
    String run = address();
    look("done");
    browser.driver().get("http://127.0.0.1:" + app.port() + "/library/inventia-altera");
    assertTrue(browser.text().contains("March"), browser.text());
    browser.driver().get("http://127.0.0.1:" + app.port() + run + "/undo");
    look("undo");
    submit("Undo the import");
    waitFor("the end of undoing", () -> address().equals(run) && browser.text().contains("Undone on"));
    browser.driver().get("http://127.0.0.1:" + app.port() + "/library/inventia-altera");
    waitFor("nothing is left of it", () -> browser.text().contains("Nothing here"));
  }
}
