package guildwood;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real Chromium, driven by the tests. A missing browser is a failure that says what to install. */
final class Chromium implements AutoCloseable {
  private static final List<String> BROWSERS = List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");
  private static final List<String> DRIVERS = List.of("/usr/bin/chromedriver", "/usr/lib/chromium/chromedriver");

  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final ChromeDriver driver;

  private Chromium(ChromeDriver driver) {
    this.driver = driver;
  }

  static Chromium start(boolean javaScript) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(find("CHROMIUM", BROWSERS));
    options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic",
        "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
        "--hide-scrollbars", "--window-size=1280,900");
    if (!javaScript) {
      options.setExperimentalOption("prefs", Map.of("profile.managed_default_content_settings.javascript", 2));
    }
    ChromeDriverService service = new ChromeDriverService.Builder()
        .usingDriverExecutable(Path.of(find("CHROMEDRIVER", DRIVERS)).toFile()).build();
    ChromeDriver driver = new ChromeDriver(service, options);
    driver.manage().timeouts().implicitlyWait(PATIENCE);
    return new Chromium(driver);
  }

  private static String find(String variable, List<String> places) {
    String set = System.getenv(variable);
    return (set == null ? places.stream() : Stream.of(set))
        .filter(place -> Files.isExecutable(Path.of(place)))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(
            "The browser tests need Chromium and its driver: install them (Debian: apt-get install chromium chromium-driver)"
                + " or set " + variable + " to the program."));
  }

  ChromeDriver driver() {
    return driver;
  }

  /**
   * Waits for something to hold. A page that htmx is just changing may take an element away between finding
   * and reading it, which the driver tells in several ways; it is asked again until the time is over.
   */
  WebDriverWait await() {
    WebDriverWait wait = new WebDriverWait(driver, Duration.ofSeconds(30));
    wait.ignoring(WebDriverException.class);
    return wait;
  }

  /** All words on the page, read in one step. */
  String text() {
    Object text = await().until(d -> driver.executeScript("return document.body ? document.body.innerText : null;"));
    return (String) text;
  }

  /** Presses what is found; one that is taken away meanwhile is looked for again. A page that follows has come when this returns. */
  void press(By what) {
    await().until(d -> {
      driver.executeScript("window.pressedHere = true;");
      driver.findElement(what).click();
      return true;
    });
    settle();
  }

  /** A press may lead to another page or change this one: the other one is given a moment to begin, then time to come. */
  private void settle() {
    long moment = System.nanoTime() + Duration.ofMillis(250).toNanos();
    boolean here = true;
    while (here && System.nanoTime() < moment) {
      here = await().until(d -> driver.executeScript("return [window.pressedHere === true];")).toString().contains("true");
    }
    await().until(d -> "complete".equals(driver.executeScript("return document.readyState;")));
  }

  /** Whether something is on the page at this moment. */
  boolean has(By what) {
    return atOnce(() -> !driver.findElements(what).isEmpty());
  }

  /** Asks what may well not be there: the driver's patience for elements to come would be spent whole on each. */
  private <T> T atOnce(Supplier<T> question) {
    driver.manage().timeouts().implicitlyWait(Duration.ZERO);
    try {
      return question.get();
    } finally {
      driver.manage().timeouts().implicitlyWait(PATIENCE);
    }
  }

  /** A phone's width in CSS pixels, or any other. */
  void width(int cssPixels) {
    driver.executeCdpCommand("Emulation.setDeviceMetricsOverride",
        Map.of("width", cssPixels, "height", 900, "deviceScaleFactor", 1, "mobile", false));
  }

  /** What makes the page scroll sideways: the elements that reach beyond its right edge, a few of them. */
  @SuppressWarnings("unchecked")
  List<String> beyondTheEdge() {
    return (List<String>) driver.executeScript("""
        const edge = document.documentElement.clientWidth;
        if (document.documentElement.scrollWidth <= edge) return [];
        const inside = e => { for (let p = e.parentElement; p; p = p.parentElement) {
          if (getComputedStyle(p).overflowX !== 'visible') return true; } return false; };
        return ['page ' + document.documentElement.scrollWidth, ...[...document.querySelectorAll('body *')]
          .filter(e => e.getBoundingClientRect().right > edge + 1 && !inside(e)).slice(0, 5)
          .map(e => e.tagName + '.' + e.className + ' ' + Math.round(e.getBoundingClientRect().right))];""");
  }

  /** The violations of WCAG 2.2 A and AA that axe-core finds on the page now shown, one line each. */
  List<String> accessibilityViolations() {
    // It looks for frames on every page.
    return atOnce(() -> new AxeBuilder()
        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
        .analyze(driver).getViolations().stream().map(Chromium::line).toList());
  }

  private static String line(Rule rule) {
    return rule.getId() + ": " + rule.getHelp() + " at "
        + rule.getNodes().stream().map(node -> String.valueOf(node.getTarget())).limit(3).toList();
  }

  /** Keeps a picture of the page under target/pictures, to be looked at. */
  void picture(String name) {
    try {
      Path file = Path.of("target", "pictures", name + ".png");
      Files.createDirectories(file.getParent());
      Map<String, Object> shot = driver.executeCdpCommand("Page.captureScreenshot",
          Map.of("format", "png", "captureBeyondViewport", true));
      Files.write(file, java.util.Base64.getDecoder().decode((String) shot.get("data")));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** The page as A4 in PDF. */
  byte[] pdf() {
    return OutputType.BYTES.convertFromBase64Png(driver.print(new org.openqa.selenium.print.PrintOptions()).getContent());
  }

  @Override
  public void close() {
    driver.quit();
  }
}
