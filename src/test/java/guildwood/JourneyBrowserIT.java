package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;

/**
 * The main job in a real browser against the packaged program: narrow the library to what suits a bed, ask
 * for a guild, understand it, save it, change it, and hand it to a helper. Every page on the way is checked
 * against WCAG 2.2 A and AA by axe-core and must not scroll sideways on a phone.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class JourneyBrowserIT {
  private static PackagedJar program;
  private static Chromium browser;
  private static String sharedLink;

  @BeforeAll
  static void start() throws IOException {
    program = PackagedJar.serve("--demo");
    browser = Chromium.start(true);
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
    if (program != null) {
      program.close();
    }
  }

  @Test
  @Order(1)
  void theFirstPageLeadsToTheBeds() {
    open("");
    sees("demonstration");
    check("home");
    open("sites");
    check("sites");
    follow("Sunny bank");
    check("bed");
  }

  @Test
  @Order(2)
  void theLibraryNarrowsWithoutAWholePageLoad() {
    follow("Narrow the library");
    int all = remaining();
    check("library");
    browser.driver().executeScript("window.samePage = true;");
    WebElement fits = browser.driver().findElement(By.cssSelector("#verdict-fits"));
    fits.click();
    browser.await().until(d -> remaining() < all);
    assertTrue((Boolean) browser.driver().executeScript("return window.samePage === true;"), "the page was not loaded anew");
    assertTrue(address().contains("verdict=fits"), "the choice is in the address: " + address());
    int fitting = remaining();
    browser.driver().navigate().refresh();
    assertEquals(fitting, remaining(), "the address alone brings the same species back");
    browser.press(By.cssSelector("table a[href^='/library/']"));
    check("species");
  }

  @Test
  @Order(3)
  void wishesAreAskedAndRefusedWhereTheyMakeNoSense() {
    open("sites");
    follow("Behind the gym");
    browser.press(By.cssSelector("a[href$='/guild']"));
    check("guild-empty");
    follow("Change wishes and limits");
    check("wishes");
    WebElement species = browser.driver().findElement(By.id("maxSpecies"));
    species.clear();
    species.sendKeys("a few");
    press("Save");
    assertTrue(browser.driver().findElement(By.id("maxSpecies-error")).isDisplayed());
    assertEquals("a few", browser.driver().findElement(By.id("maxSpecies")).getAttribute("value"), "what was typed is kept");
    check("wishes-refused");
    species = browser.driver().findElement(By.id("maxSpecies"));
    species.clear();
    species.sendKeys("8");
    new Select(browser.driver().findElement(By.id("wish.harvest-part:nut"))).selectByValue("must");
    press("Save");
    sees("wishes kept");
  }

  @Test
  @Order(4)
  void proposalsExplainThemselves() {
    browser.press(By.id("compose"));
    browser.await().until(ExpectedConditions.presenceOfElementLocated(By.className("proposal")));
    List<WebElement> proposals = browser.driver().findElements(By.className("proposal"));
    assertTrue(proposals.size() >= 2, proposals.size() + " proposals");
    sees("points");
    check("proposals");
    press("Compare");
    sees("side by side");
    check("compare");
    browser.driver().navigate().back();
    browser.press(By.cssSelector(".proposal h2 a"));
    check("proposal");
    browser.driver().findElement(By.id("why-species")).sendKeys("American hazelnut", Keys.ENTER);
    sees("How American hazelnut suits");
    check("why");
    browser.driver().navigate().back();
    double total = Double.parseDouble(browser.driver().findElement(By.cssSelector("tfoot td strong")).getText());
    double sum = browser.driver().findElements(By.cssSelector("table:has(tfoot) tbody td:nth-of-type(1)")).stream()
        .mapToDouble(cell -> Double.parseDouble(cell.getText().replace('−', '-'))).sum();
    assertEquals(total, sum, 1e-9, "the parts add up to the total");
    press("Save as this bed’s guild");
    sees("Saved");
    check("guild");
  }

  @Test
  @Order(5)
  void changingACountChangesTheScoreAtOnce() {
    follow("Edit by hand");
    check("edit");
    String before = score();
    WebElement count = browser.driver().findElement(By.cssSelector("input[name^='count.']"));
    count.sendKeys(Keys.chord(Keys.CONTROL, "a"), "0", Keys.TAB);
    browser.await().until(d -> !score().equals(before));
    sees("Against the saved guild");
    press("Undo");
    browser.await().until(d -> score().equals(before));
    browser.press(By.cssSelector("button[value^='never:']"));
    sees("Never in this bed");
    check("edit-decided");
    browser.driver().navigate().refresh();
    sees("Never in this bed");
    follow("What the draft leaves open");
    check("draft-gaps");
    follow("Back to the draft");
    press("Discard the draft");
    sees("The draft is discarded");
    follow("Edit by hand");
    assertEquals(before, score(), "nothing is saved before it is asked for");
    press("Fill up the rest");
    browser.await().until(ExpectedConditions.presenceOfElementLocated(By.className("proposal")));
    sees("Each holds all of your draft");
    check("proposals-filling");
    press("Work on it by hand");
    sees("The draft now has that guild.");
    press("Save the guild");
    sees("Saved");
  }

  @Test
  @Order(6)
  void aHelperGetsAReadOnlyPage() {
    follow("Share with helpers");
    check("share");
    browser.driver().findElement(By.id("label")).sendKeys("Saturday helpers");
    press("Make the link");
    sharedLink = browser.driver().findElement(By.id("share-link")).getAttribute("href");
    check("share-new");
    browser.driver().get(sharedLink);
    assertFalse(browser.has(By.tagName("form")), "nothing can be changed");
    assertFalse(browser.has(By.tagName("nav")), "nothing else is shown");
    sees("×");
    check("shared");
  }

  @Test
  @Order(7)
  void theHelpersPagePrintsOnPaper() {
    browser.driver().get(sharedLink);
    byte[] pdf = browser.pdf();
    assertTrue(new String(pdf, 0, 5, StandardCharsets.US_ASCII).startsWith("%PDF-"), "a PDF");
    // PDF names each page's object once; a plan of a dozen species fits on a few sheets.
    int pages = new String(pdf, StandardCharsets.ISO_8859_1).split("/Type\\s*/Page\\b", -1).length - 1;
    assertTrue(pages >= 1 && pages <= 4, pages + " pages");
  }

  @Test
  @Order(8)
  void aWithdrawnLinkShowsAPlainPage() {
    open("sites");
    follow("Behind the gym");
    browser.press(By.cssSelector("a[href$='/guild']"));
    follow("Share with helpers");
    press("Withdraw");
    browser.driver().get(sharedLink);
    sees("no longer works");
    check("link-gone");
    open("library/no-such-species");
    check("not-found");
  }

  @Test
  @Order(9)
  void theOtherPagesStandToo() {
    for (String path : List.of("sites/new", "sites/1/beds/new", "beds/1/edit", "library/new", "sources", "bin", "beds/2/guild",
        "beds/3/sun", "beds/1/sun", "beds/3/sun/trees/new", "beds/3/sun/buildings/new", "beds/3/sun/nearby/1", "beds/3/sun/horizon",
        "sites/1/surveys", "beds/4/surveys/new", "beds/4/surveys/pick", "surveys/1", "surveys/1/edit", "surveys/1/pick", "surveys/1/remove")) {
      open(path);
      check(path.replace('/', '-'));
    }
    open("beds/1/wishes?ease=borderline");
    check("wishes-eased");
  }

  @Test
  @Order(10)
  void aPacedHeightIsWorkedOutWhileTyping() {
    open("beds/3/sun/trees/new");
    browser.driver().findElement(By.id("away")).sendKeys("20");
    browser.driver().findElement(By.id("angle")).sendKeys("45", Keys.TAB);
    browser.await().until(ExpectedConditions.textToBePresentInElementLocated(By.id("reckoned"), "= 21.6 m"));
    browser.driver().findElement(By.id("direction")).sendKeys("SW", Keys.TAB);
    browser.driver().findElement(By.id("distance")).sendKeys("10", Keys.TAB);
    browser.await().until(ExpectedConditions.textToBePresentInElementLocated(By.id("reckoned"), "7.1 m west and 7.1 m south"));
    assertEquals(List.of(), browser.accessibilityViolations());
  }

  private static void open(String path) {
    browser.driver().get(program.address() + path);
  }

  private static void follow(String words) {
    browser.press(By.partialLinkText(words));
  }

  private static void press(String words) {
    browser.press(By.xpath("//button[normalize-space()='" + words + "']"));
  }

  /** Waits for words to stand on the page; a page that computes may take a moment to come. */
  private static void sees(String words) {
    try {
      browser.await().until(d -> browser.text().contains(words));
    } catch (org.openqa.selenium.TimeoutException e) {
      throw new AssertionError("'" + words + "' is not on the page " + address() + ":\n" + browser.text(), e);
    }
  }

  private static String score() {
    return browser.driver().findElement(By.className("score")).getText();
  }

  private static String address() {
    return browser.driver().getCurrentUrl();
  }

  /** The first number of the line that says how many species remain. */
  private static int remaining() {
    return Integer.parseInt(browser.driver().findElement(By.id("found")).getText().replaceAll("\\D.*", ""));
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
