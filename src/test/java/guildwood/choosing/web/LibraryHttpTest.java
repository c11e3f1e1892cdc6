package guildwood.choosing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The library page as it goes over the wire, with the seed library and the demonstration's beds. */
class LibraryHttpTest {
  private static final Pattern OPTION =
      Pattern.compile("name=\"([a-z-]+)\" value=\"([^\"]+)\" aria-describedby=\"n-([^\"]+)\"( checked=\"checked\")?>");
  private static App app;
  private static HttpVisitor visitor;

  @BeforeAll
  static void start() {
    app = App.start(Settings.demoOnFreePort());
    visitor = new HttpVisitor(app);
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  private static int remaining(Page page) {
    return Integer.parseInt(page.first("id=\"found\"[^>]*><span>([\\d,]+) of ").orElseThrow().replace(",", ""));
  }

  private static int total(Page page) {
    return Integer.parseInt(page.first("id=\"found\"[^>]*><span>[\\d,]+ of ([\\d,]+) species").orElseThrow().replace(",", ""));
  }

  private static Page fragment(String path, String... headers) {
    try {
      HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + app.port() + path))
          .header("HX-Request", "true");
      if (headers.length > 0) {
        request.headers(headers);
      }
      HttpResponse<String> response = HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
      Map<String, String> first = new java.util.HashMap<>();
      response.headers().map().forEach((name, values) -> first.put(name.toLowerCase(java.util.Locale.ROOT), values.get(0)));
      return new Page(response.statusCode(), first, response.body());
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String bed(String name) {
    Matcher option = Pattern.compile("<option value=\"(\\d+)\"[^>]*>" + name).matcher(visitor.get("/library").html());
    assertTrue(option.find(), "no bed " + name + " to choose");
    return option.group(1);
  }

  @Test
  void theWholeLibraryComesFirst() throws IOException {
    Page page = visitor.get("/library");
    assertEquals(200, page.status());
    assertEquals(speciesInSeedFiles(), total(page));
    assertEquals(total(page), remaining(page));
    assertEquals(50, rows(page).size());
    assertTrue(page.links().containsAll(List.of("/library/new", "/bin")));
    assertTrue(page.says("Rows") || page.says("1–50 of " + total(page)));
  }

  private static int speciesInSeedFiles() throws IOException {
    Set<String> ids = new HashSet<>();
    try (Stream<Path> files = Files.list(Path.of("seed-data/species"))) {
      for (Path file : files.toList()) {
        Files.readAllLines(file).stream().skip(1).map(line -> line.split(",", 2)[0]).forEach(ids::add);
      }
    }
    return ids.size();
  }

  private static List<String> rows(Page page) {
    return Pattern.compile("(?s)<th scope=\"row\">\\s*<a href=\"/library/([^\"]+)\"").matcher(page.html()).results()
        .map(r -> r.group(1)).toList();
  }

  @Test
  void theFormWorksWithoutScripts() {
    Page page = visitor.get("/library?layer=shrub");
    assertTrue(page.html().contains("method=\"get\" action=\"/library\""));
    assertTrue(page.first("<noscript><p><button>").isPresent());
    assertTrue(page.first("<input type=\"checkbox\"[^>]* name=\"layer\" value=\"shrub\"[^>]* checked=\"checked\"").isPresent());
    assertTrue(page.first("<select id=\"sort\" name=\"sort\" form=\"library-form\"").isPresent());
    // What a form sends for fields left alone is tidied away, nothing else.
    Page sent = visitor.get("/library?q=&bed=&layer=shrub&evidence=&sort=");
    assertEquals(303, sent.status());
    assertEquals("/library?layer=shrub", sent.location());
  }

  /** Every number on the page is put to the proof: tick the option, and so many species must remain. */
  @ParameterizedTest
  @ValueSource(strings = {
      "/library", "/library?layer=shrub", "/library?function=nitrogen-fixer&evidence=observed&notknown=function",
      "/library?harvest=fruit&harvest-month=august&notknown=keep", "/library?without=toxic&q=a",
      "/library?wetland-region=midwest&wetland=facw&native=great-lakes", "/library?bed=BED&verdict=fits&bloom=may"})
  void theCountsBesideTheOptionsAreTrue(String start) {
    String path = start.replace("BED", bed("Orchard row"));
    Page page = visitor.get(path);
    int now = remaining(page);
    List<MatchResult> options = OPTION.matcher(page.html()).results().toList();
    assertTrue(options.size() > 100, "only " + options.size() + " options on the page");
    int step = 11;
    int proven = 0;
    for (int at = path.length() % step; at < options.size(); at += step) {
      MatchResult option = options.get(at);
      if (option.group(4) != null) {
        continue;
      }
      String shown = page.first("id=\"n-" + Pattern.quote(option.group(3)) + "\"><span aria-hidden=\"true\">([^<]*)<").orElseThrow();
      if (shown.isEmpty()) {
        assertEquals("wetland", option.group(1));
        continue;
      }
      int would = shown.startsWith("+") ? now + Integer.parseInt(shown.substring(1)) : Integer.parseInt(shown);
      String ticked = path + (path.contains("?") ? "&" : "?") + option.group(1) + "=" + option.group(2);
      assertEquals(would, remaining(visitor.get(ticked)), ticked);
      proven++;
    }
    assertTrue(proven > 10, "only " + proven + " counts were put to the proof");
  }

  @Test
  void aChangedFormBringsRowsAndCountsOnly() {
    Page part = fragment("/library?q=&layer=shrub&layer=herb&sort=", "HX-Trigger", "library-form", "HX-Target", "results",
        "HX-Current-URL", "http://127.0.0.1/library?layer=shrub");
    assertEquals(200, part.status());
    assertFalse(part.html().contains("<html"));
    assertFalse(part.html().contains("<form"));
    assertTrue(part.html().contains("<section id=\"results\""));
    assertTrue(part.first("<span class=\"count\" id=\"n-layer-herb\" hx-swap-oob=\"true\">").isPresent());
    assertTrue(part.first("hx-swap-oob=\"innerHTML:#said\">" + remaining(part) + " of ").isPresent());
    // The boxes stay as they are, and with them the focus.
    assertFalse(part.html().contains("type=\"checkbox\""));
    assertFalse(part.html().contains("autofocus"));
    assertEquals("/library?layer=shrub&layer=herb", part.headers().get("hx-push-url"));
    assertEquals(remaining(visitor.get("/library?layer=shrub&layer=herb")), remaining(part));
  }

  @Test
  void typingOnDoesNotFillTheHistory() {
    Page typed = fragment("/library?q=ro&layer=shrub", "HX-Trigger", "library-form", "HX-Target", "results",
        "HX-Current-URL", "http://127.0.0.1/library?q=r&layer=shrub");
    assertEquals("/library?q=ro&layer=shrub", typed.headers().get("hx-replace-url"));
    assertFalse(typed.headers().containsKey("hx-push-url"));
    Page odd = fragment("/library?q=ro", "HX-Current-URL", "http://[not an address");
    assertEquals(200, odd.status());
  }

  @Test
  void aLinkBringsTheTicksToo() {
    Page part = fragment("/library", "HX-Target", "results", "HX-Current-URL", "http://127.0.0.1/library?layer=shrub");
    assertTrue(part.first("(?s)id=\"b-layer\"[^>]*hx-swap-oob=\"true\".*?id=\"layer-shrub\"").isPresent());
    assertTrue(part.html().contains("autofocus"));
    assertTrue(part.first("<input id=\"q\"[^>]*hx-swap-oob=\"true\"").isPresent());
    // An id may stand only once in an answer, or the second replacement would fail.
    List<String> ids = Pattern.compile(" id=\"([^\"]+)\"").matcher(part.html()).results().map(r -> r.group(1)).toList();
    assertEquals(ids.size(), new HashSet<>(ids).size());
  }

  @Test
  void anotherBedBringsOtherFacets() {
    Page part = fragment("/library?bed=" + bed("Sunny bank"), "HX-Trigger", "bed", "HX-Target", "library");
    assertTrue(part.html().contains("id=\"library-form\""));
    assertTrue(part.html().contains("id=\"f-verdict\""));
    assertFalse(part.html().contains("id=\"f-winter\""));
    assertFalse(part.html().contains("<html"));
  }

  @Test
  void goingBackInTheHistoryGetsAWholePage() {
    assertTrue(fragment("/library?layer=shrub", "HX-History-Restore-Request", "true").html().contains("<html"));
  }

  @Test
  void aBedBringsVerdictsBestFirst() {
    Page page = visitor.get("/library?bed=" + bed("Ditch corner"));
    assertTrue(page.says("for Ditch corner"));
    assertTrue(page.says("moisture: wet"));
    List<String> verdicts = Pattern.compile("class=\"mark mark-(fits|borderline|does-not-fit|not-known)\"")
        .matcher(page.html()).results().map(r -> r.group(1)).toList();
    assertEquals(50, verdicts.size());
    assertEquals("fits", verdicts.get(0));
    List<String> order = List.of("fits", "borderline", "not-known", "does-not-fit");
    assertEquals(verdicts.stream().sorted(java.util.Comparator.comparing(order::indexOf)).toList(), verdicts);
    Page failing = visitor.get("/library?bed=" + bed("Ditch corner") + "&verdict=does-not-fit");
    assertTrue(failing.first("limit\">(moisture|light|winter cold|soil reaction \\(pH\\)|soil texture|fertility|length of season)").isPresent());
    assertFalse(failing.html().contains("mark-fits"));
  }

  @Test
  void edibleNeverStandsWithoutItsCautions() {
    Page elder = visitor.get("/library?q=sambucus+canadensis");
    assertEquals(1, remaining(elder));
    assertTrue(elder.says("Caution: poisonous"), elder.text());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "layer=attic | “attic” is not a choice under “Layer”; it was left out.",
      "bed=999 | There is no bed “999”",
      "bed=' OR 1=1 | There is no bed “' OR 1=1”",
      "verdict=fits | Choose a bed first",
      "sort=fit | Without a bed there is no fit to go by",
      "sort=price | “price” is not a choice under “order”",
      "wetland=obl | choose a region too",
      "page=0 | “0” is not a choice under “page”",
      "page=99999 | There is no page 99999",
      "notknown=perhaps | “perhaps” is not a choice under “not known”",
      "evidence=hope | “hope” is not a choice under “evidence”",
      "wetland-region=moon | “moon” is not a choice under “wetland region”",
      "bloom=smarch | “smarch” is not a choice under “In bloom in”",
      "q=a%00b | The name contains control codes",
      "layer=<script>alert(1)</script> | “<script>alert(1)</script>” is not a choice"})
  void whatMakesNoSenseIsLeftOutWithANote(String parameter, String note) {
    String[] parts = parameter.split("=", 2);
    String value = parts[1].equals("a%00b") ? parts[1] : java.net.URLEncoder.encode(parts[1], java.nio.charset.StandardCharsets.UTF_8);
    Page page = visitor.get("/library?" + parts[0] + "=" + value);
    assertEquals(200, page.status());
    assertTrue(page.says(note), () -> page.first("(?s)class=\"warning\".*?</div>").orElse("no note"));
    assertFalse(page.html().contains("<script>alert"));
    assertEquals(total(page), remaining(page));
  }

  @Test
  void manyOddValuesMakeFewNotes() {
    Page page = visitor.get("/library?" + String.join("&", java.util.Collections.nCopies(40, "layer=attic")));
    assertEquals(200, page.status());
    assertTrue(page.says("… and 35 more."));
  }

  @Test
  void pagesTogetherAreTheLibrary() {
    Page first = visitor.get("/library?layer=herb&sort=family");
    int all = remaining(first);
    List<String> seen = new ArrayList<>();
    Page page = first;
    for (int n = 0; n < 20; n++) {
      seen.addAll(rows(page));
      List<String> next = Pattern.compile("rel=\"next\" href=\"([^\"]+)\"").matcher(page.html()).results()
          .map(r -> r.group(1).replace("&amp;", "&")).toList();
      if (next.isEmpty()) {
        break;
      }
      page = visitor.get(next.get(0));
    }
    assertTrue(all > 50, "too few herbs to need pages: " + all);
    assertEquals(all, seen.size());
    assertEquals(all, new HashSet<>(seen).size());
  }

  @Test
  void everyChoiceCanBeTakenBackAndAllAtOnce() {
    Page page = visitor.get("/library?q=a&layer=shrub&layer=herb&notknown=layer&sort=family");
    List<String> chips = Pattern.compile("class=\"chip\" href=\"([^\"]+)\"").matcher(page.html()).results()
        .map(r -> r.group(1).replace("&amp;", "&")).toList();
    assertEquals(List.of("/library?layer=shrub&layer=herb&notknown=layer&sort=family", "/library?q=a&layer=herb&notknown=layer&sort=family",
        "/library?q=a&layer=shrub&notknown=layer&sort=family", "/library?q=a&layer=shrub&layer=herb&sort=family"), chips);
    assertEquals("/library?sort=family", page.first("class=\"clear\" href=\"([^\"]+)\"").orElseThrow());
    assertTrue(visitor.get("/library").first("class=\"clear\"").isEmpty());
  }

  @Test
  void whereNothingRemainsOneStepBackIsOffered() {
    Page page = visitor.get("/library?q=zzzz&layer=root");
    assertEquals(0, remaining(page));
    String back = page.first("<li><a href=\"([^\"]+)\"[^>]*>leave out the name</a>").orElseThrow();
    assertEquals("/library?layer=root", back);
    assertTrue(page.says("leave out the name " + remaining(visitor.get(back)) + " species"));
  }

  @Test
  void aNameNearlySpeltIsOfferedWithWhatElseWasChosen() {
    Page page = visitor.get("/library?q=amelanchior+alnifola");
    String href = page.first("<li><a href=\"([^\"]+)\"[^>]*>look for “amelanchier alnifolia”, spelt nearly so</a>").orElseThrow();
    assertEquals(List.of("amelanchier-alnifolia"), rows(visitor.get(href)));
    assertFalse(visitor.get("/library?q=amelanchior+alnifola&layer=root").says("spelt nearly so"), "it would find nothing there");
    assertTrue(visitor.get("/library?q=sasketoon&layer=shrub").links().contains("/library?q=saskatoon&layer=shrub"));
    assertFalse(visitor.get("/library?q=saskatoon&layer=root").says("spelt nearly so"));
  }

  @Test
  void wordsAreFoundByTheirBeginnings() {
    assertEquals(List.of("symphytum-x-uplandicum"), rows(visitor.get("/library?q=symphytum+x+upl")).stream()
        .filter(id -> id.equals("symphytum-x-uplandicum")).toList());
    assertEquals(0, remaining(visitor.get("/library?q=ymphytum")));
  }

  @Test
  void unitsAreTheVisitors() {
    HttpVisitor american = new HttpVisitor(app);
    american.post("/units", "units", "us", "back", "/library");
    Page page = american.get("/library");
    assertTrue(page.says("3.3 – 6.6 ft") && page.says("5a (−20 °F)"), page.text());
  }

  @Test
  void onlyTheOwnerLooks(@TempDir Path data) {
    try (App kept = App.start(new Settings(false, data, "127.0.0.1", 0, ""))) {
      Page page = new HttpVisitor(kept).get("/library");
      assertEquals(303, page.status());
    }
  }
}
