package guildwood.sharing.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.sharing.store.SqlShareLinks;
import guildwood.store.Database;
import guildwood.web.Tokens;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Links for helpers, on an installation with an owner: giving, using, withdrawing. */
class ShareHttpTest {
  private static final String PASSWORD = "leaf mould and ash";
  private static final String EXPIRED = Tokens.fresh();

  @TempDir
  private static Path directory;

  private static App app;
  private static HttpVisitor owner;
  private static String bed;
  private static String otherBed;
  private static String givenBeforeTheRestart;
  private static List<String> hashes;
  private static String databaseFile;
  private final HttpVisitor helper = new HttpVisitor(app);

  /** Sets up a site with two planned beds, gives a link, adds one that has expired, and starts anew. */
  @BeforeAll
  static void serve() throws IOException {
    Settings settings = new Settings(false, directory, "127.0.0.1", 0, "");
    try (App first = App.start(settings)) {
      HttpVisitor visitor = new HttpVisitor(first);
      String greeting = first.greeting().get(1);
      String setUp = greeting.substring(greeting.indexOf("/setup/"));
      visitor.get(setUp);
      visitor.submit(setUp, "name", "Wren", "password", PASSWORD, "again", PASSWORD);
      String site = visitor.post("/sites/new", "name", "Quarry school", "winter", "5a", "winter-basis", "published").location();
      bed = planned(visitor, site, "South strip", "Saturday plan", "asparagus-officinalis", "5", "trifolium-repens", "30");
      otherBed = planned(visitor, site, "Secret corner", "Nobody's business", "corylus-americana", "2");
      givenBeforeTheRestart = give(visitor, bed, "First helpers", "30");
    }
    try (Database database = Database.open(directory)) {
      hashes = database.read(h -> h.createQuery("select token_hash from share_link").mapTo(String.class).list());
      long guild = database.read(h -> h.createQuery("select guild_id from share_link").mapTo(Long.class).one());
      Instant lastYear = Instant.now().minusSeconds(365 * 24 * 3600L);
      new SqlShareLinks(database).add(guild, Tokens.hash(EXPIRED), "Last year's", lastYear, Optional.of(lastYear.plusSeconds(3600)));
    }
    databaseFile = Files.readString(directory.resolve("guildwood.mv.db"), StandardCharsets.ISO_8859_1);
    app = App.start(settings);
    owner = new HttpVisitor(app);
    owner.submit("/sign-in", "name", "Wren", "password", PASSWORD);
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  @Test
  void aTokenHas128BitsAndOnlyItsHashIsKept() {
    assertTrue(givenBeforeTheRestart.matches("[A-Za-z0-9_-]{22}"), givenBeforeTheRestart);
    assertEquals(16, Base64.getUrlDecoder().decode(givenBeforeTheRestart).length);
    assertEquals(List.of(Tokens.hash(givenBeforeTheRestart)), hashes);
    assertTrue(databaseFile.contains(Tokens.hash(givenBeforeTheRestart)), "the file can be searched");
    assertFalse(databaseFile.contains(givenBeforeTheRestart));
    assertNotEquals(give(owner, bed, "One", ""), give(owner, bed, "Another", ""));
  }

  @Test
  void whoeverHoldsTheLinkSeesThePlanWithoutAnAccount() {
    Page plan = helper.get("/shared/" + givenBeforeTheRestart);
    assertEquals(200, plan.status());
    assertTrue(plan.text().matches("Saturday plan Planting plan for the bed “South strip”, 24 m², as of \\d{4}-\\d\\d-\\d\\d\\. .*"), plan.text());
    assertTrue(plan.says("5 × asparagus Asparagus officinalis"));
    assertTrue(plan.says("30 × white clover Trifolium repens"));
    assertTrue(plan.says("Eat nothing you are not sure of."));
    assertTrue(plan.says("buried lines marked"));
    assertTrue(plan.says("local authority"));
  }

  @Test
  void itShowsThatPlanAndNothingElse() {
    for (HttpVisitor visitor : List.of(helper, owner)) {
      Page plan = visitor.get("/shared/" + givenBeforeTheRestart);
      assertEquals(List.of("/shared/" + givenBeforeTheRestart + "/work.ics"), plan.links());
      assertFalse(Pattern.compile("<(form|nav|script|input|button|iframe)\\b|<img(?! src=\"/shared/[A-Za-z0-9_-]{22}/drawing\\.svg\")").matcher(plan.html()).find(), plan.html());
      for (String other : List.of("Secret corner", "Nobody", "Quarry school", "First helpers", "hazelnut", "Wren", "csrf", "/beds/", "/sites/", "/library/")) {
        assertFalse(plan.html().contains(other), other);
      }
    }
    assertEquals(303, helper.get(bed).status(), "the link opens nothing else");
    assertEquals(403, helper.post(bed + "/guild/edit", "name", "x", "do", "save").status());
    assertEquals(403, helper.post(bed + "/share", "label", "x", "days", "1").status());
    assertEquals(403, helper.post(bed + "/share/1/revoke").status());
  }

  @Test
  void theHeadersKeepItOutOfIndexesCachesAndReferrers() {
    for (String token : List.of(givenBeforeTheRestart, EXPIRED, Tokens.fresh())) {
      Page page = helper.get("/shared/" + token);
      assertEquals("noindex, nofollow", page.headers().get("x-robots-tag"));
      assertEquals("no-referrer", page.headers().get("referrer-policy"));
      assertEquals("no-store", page.headers().get("cache-control"));
      assertTrue(page.headers().get("content-security-policy").startsWith("default-src 'none';"));
    }
    assertTrue(helper.get("/shared/" + givenBeforeTheRestart).html().contains("<meta name=\"robots\" content=\"noindex, nofollow\">"));
  }

  @Test
  void itsDrawingGoesWithTheLink() {
    Page picture = helper.get("/shared/" + givenBeforeTheRestart + "/drawing.svg");
    assertEquals(200, picture.status());
    assertTrue(picture.headers().get("content-type").startsWith("image/svg+xml"));
    assertTrue(picture.html().contains("South strip") && picture.html().contains("asparagus") && !picture.html().contains("hazelnut"));
    assertEquals(410, helper.get("/shared/" + EXPIRED + "/drawing.svg").status());
    assertEquals(404, helper.get("/shared/" + Tokens.fresh() + "/drawing.svg").status());
    assertEquals(303, helper.get(bed + "/drawing.svg").status(), "the owner's own needs the owner");
  }

  @Test
  void anExpiredLinkSaysThatItIsGone() {
    gone(helper.get("/shared/" + EXPIRED));
    assertTrue(owner.get(bed + "/share").first("(?s)Last year&#39;s</th>.*?</tr>").orElseThrow().contains(">expired<"));
  }

  @Test
  void theWorkOfTheBedIsToldAndCanBeSubscribedTo() {
    Page plan = helper.get("/shared/" + givenBeforeTheRestart);
    assertTrue(plan.says("What is to be done"), plan.text());
    assertTrue(plan.text().indexOf("Ask where lines lie underground") < plan.text().indexOf("Plant asparagus in “South strip”"), plan.text());
    Page calendar = helper.get("/shared/" + givenBeforeTheRestart + "/work.ics");
    assertTrue(calendar.html().startsWith("BEGIN:VCALENDAR"), calendar.html());
    assertFalse(calendar.html().contains("Secret corner"));
    gone(helper.get("/shared/" + EXPIRED + "/work.ics"));
    assertEquals(404, helper.get("/shared/" + Tokens.fresh() + "/work.ics").status());
  }

  @Test
  void aWithdrawnLinkSaysThatItIsGone() {
    String token = give(owner, bed, "To be withdrawn", "180");
    assertEquals(200, helper.get("/shared/" + token).status());
    Page list = owner.submit(revoke(bed, "To be withdrawn"));
    assertTrue(list.says("The link is withdrawn and no longer works."));
    gone(helper.get("/shared/" + token));
    gone(owner.get("/shared/" + token));
    assertTrue(list.first("(?s)To be withdrawn</th>.*?</tr>").orElseThrow().contains(">withdrawn<"));
    assertEquals(200, helper.get("/shared/" + givenBeforeTheRestart).status(), "the others go on");
  }

  @ParameterizedTest
  @ValueSource(strings = {
      "x", "AAAAAAAAAAAAAAAAAAAAAA", "AAAAAAAAAAAAAAAAAAAAAAA", "%20", "..%2Fsites", "%22%3E%3Cscript%3E", "a%27%20or%20%271%27=%271", "1",
      "0123456789012345678901/x", "%C3%BC%C3%BC%C3%BC%C3%BC%C3%BC%C3%BC%C3%BC%C3%BC%C3%BC%C3%BC%C3%BC"})
  void anUnknownOrGarbledLinkLeadsNowhere(String token) {
    Page page = helper.get("/shared/" + token);
    assertEquals(404, page.status());
    assertTrue(page.says("Nothing here"));
    assertFalse(page.html().contains("<script>"));
  }

  @Test
  void aTokenMustBeWholeAndExact() {
    String swapped = Character.isUpperCase(givenBeforeTheRestart.charAt(0)) ? givenBeforeTheRestart.toLowerCase(java.util.Locale.ROOT)
        : givenBeforeTheRestart.toUpperCase(java.util.Locale.ROOT);
    for (String wrong : List.of(swapped, givenBeforeTheRestart + "A", givenBeforeTheRestart.substring(1), "x".repeat(2000),
        Tokens.hash(givenBeforeTheRestart))) {
      assertEquals(404, helper.get("/shared/" + wrong).status(), wrong);
    }
    assertEquals(404, helper.get("/shared/").status());
    assertEquals(405, helper.post("/shared/" + givenBeforeTheRestart).status());
  }

  @ParameterizedTest
  @CsvSource({
    "days, 0, Must lie between 1 and 3660.", "days, -1, Must lie between 1 and 3660.", "days, 3661, Must lie between 1 and 3660.",
    "days, soon, “soon” is not a whole number.", "days, 1.5, “1.5” is not a whole number.", "days, 1e3, “1e3” is not a whole number.",
    "days, 99999999999999999999, “99999999999999999999” is not a whole number.",
    "label, '', Please fill this in.", "label, overlong, Too long: at most 120 characters.",
    "label, a\u0007b, 'Contains characters that cannot be shown, such as tabs or control codes.'"})
  void refusesNonsenseAndGivesNoLink(String field, String typed, String message) {
    String value = typed.equals("overlong") ? "h".repeat(121) : typed;
    int before = rows(owner.get(bed + "/share"));
    Page refused = owner.post(bed + "/share", "label", field.equals("label") ? value : "Kept label", "days", field.equals("days") ? value : "77");
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    assertEquals(value, refused.valueOf(field));
    assertEquals(field.equals("days") ? "Kept label" : "77", refused.valueOf(field.equals("days") ? "label" : "days"));
    assertFalse(refused.html().contains("id=\"share-link\""));
    assertEquals(before, rows(owner.get(bed + "/share")));
  }

  @Test
  void theLinkIsShownOnceAndItsEndIsTold() {
    LocalDate before = LocalDate.now(ZoneOffset.UTC);
    Page given = owner.post(bed + "/share", "label", "<i>Tuesday</i> & co", "days", "10");
    LocalDate after = LocalDate.now(ZoneOffset.UTC);
    assertEquals(200, given.status());
    String link = given.first("id=\"share-link\" href=\"([^\"]*)\"").orElseThrow();
    assertTrue(link.startsWith("http://127.0.0.1:" + app.port() + "/shared/"), link);
    assertTrue(given.html().contains("<svg class=\"qr\""));
    assertTrue(given.html().contains("&lt;i&gt;Tuesday&lt;/i&gt; &amp; co") && !given.html().contains("<i>Tuesday"));
    String row = given.first("(?s)Tuesday.*?</tr>").orElseThrow();
    assertTrue(row.contains(before.plusDays(10).toString()) || row.contains(after.plusDays(10).toString()), row);
    String token = link.substring(link.lastIndexOf('/') + 1);
    assertFalse(owner.get(bed + "/share").html().contains(token));
    give(owner, bed, "For ever", " ");
    assertTrue(owner.get(bed + "/share").first("(?s)For ever</th>.*?</tr>").orElseThrow().contains(">–<"));
    assertEquals(200, helper.get("/shared/" + give(owner, bed, "Longest", "3660")).status());
  }

  @Test
  void aLinkIsWithdrawnThroughItsOwnBedOnly() {
    String token = give(owner, otherBed, "Other bed's", "10");
    String through = revoke(otherBed, "Other bed's").replace(otherBed + "/", bed + "/");
    assertEquals(404, owner.post(through).status());
    assertEquals(200, helper.get("/shared/" + token).status());
    for (String id : List.of("0", "999999", "x", "-1", "99999999999999999999")) {
      assertEquals(404, owner.post(bed + "/share/" + id + "/revoke").status(), id);
    }
    assertEquals(404, owner.post("/beds/999999/share", "label", "x").status());
    assertEquals(404, owner.get("/beds/999999/share").status());
  }

  @Test
  void thePageFollowsThePlan() {
    String site = owner.get(bed).links().stream().filter(l -> l.matches("/sites/\\d+")).findFirst().orElseThrow();
    String changing = planned(owner, site, "Changing bed", "First draft", "asparagus-officinalis", "5");
    String token = give(owner, changing, "Followers", "10");
    owner.submit(changing + "/guild/edit", "name", "Second draft", "do", "save", "count.asparagus-officinalis", "7", "count.fragaria-vesca", "40");
    Page plan = helper.get("/shared/" + token);
    assertTrue(plan.says("Second draft") && plan.says("7 × asparagus") && plan.says("40 × woodland strawberry"));
    assertFalse(plan.says("First draft"));
    owner.submit(changing + "/guild/remove");
    assertEquals(404, helper.get("/shared/" + token).status());
    assertEquals(404, owner.get(changing + "/share").status());
    assertEquals(404, owner.post(changing + "/share", "label", "x", "days", "1").status());
    owner.submit(changing + "/guild/edit", "name", "Third draft", "do", "save", "count.asparagus-officinalis", "1");
    assertEquals(404, helper.get("/shared/" + token).status(), "a new guild does not wake the old link");
    String again = give(owner, changing, "Again", "10");
    owner.submit(changing + "/remove");
    assertEquals(404, helper.get("/shared/" + again).status());
  }

  private static void gone(Page page) {
    assertEquals(410, page.status());
    assertTrue(page.says("This link no longer works"));
    assertTrue(page.says("Ask the person who gave it to you for a new one."));
    assertFalse(page.says("asparagus") || page.says("South strip") || page.says("Saturday plan"));
  }

  private static int rows(Page page) {
    return page.html().split("/revoke\"", -1).length;
  }

  private static String planned(HttpVisitor visitor, String site, String name, String guild, String... idsAndCounts) {
    String path = visitor.post(site + "/beds/new", "name", name, "area", "24", "area-unit", "metric", "light-from", "full sun",
        "light-basis", "observed", "moisture-from", "moist", "moisture-basis", "observed").location();
    java.util.List<String> fields = new java.util.ArrayList<>(List.of("name", guild, "do", "save"));
    for (int i = 0; i < idsAndCounts.length; i += 2) {
      fields.addAll(List.of("count." + idsAndCounts[i], idsAndCounts[i + 1]));
    }
    visitor.submit(path + "/guild/edit", fields.toArray(String[]::new));
    return path;
  }

  /** Gives a link and returns its token. */
  private static String give(HttpVisitor visitor, String bed, String label, String days) {
    Page given = visitor.post(bed + "/share", "label", label, "days", days);
    assertEquals(200, given.status(), () -> given.messages().toString());
    return given.first("id=\"share-link\" href=\"[^\"]*/shared/([^\"]*)\"").orElseThrow();
  }

  private static String revoke(String bed, String label) {
    String escaped = label.replace("'", "&#39;");
    return owner.get(bed + "/share").first("(?s)" + Pattern.quote(escaped) + "</th>.*?action=\"([^\"]*/revoke)\"").orElseThrow();
  }
}
