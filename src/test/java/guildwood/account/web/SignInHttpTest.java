package guildwood.account.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.web.RawHttp;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who may see what: signing in and out, and what guards every change. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class SignInHttpTest {
  private static final String PASSWORD = "leaf mould and ash";

  @TempDir
  private static Path directory;

  private static App app;
  private static HttpVisitor owner;
  private static String site;
  private final HttpVisitor stranger = new HttpVisitor(app);

  @BeforeAll
  static void serve() {
    app = App.start(new Settings(false, directory, "127.0.0.1", 0, ""));
    owner = new HttpVisitor(app);
    String greeting = app.greeting().get(1);
    String link = greeting.substring(greeting.indexOf("/setup/"));
    owner.get(link);
    owner.submit(link, "name", "Wren", "password", PASSWORD, "again", PASSWORD);
    site = owner.post("/sites/new", "name", "Orchard").location();
    owner.post(site + "/beds/new", "name", "South strip", "area", "12");
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  @ParameterizedTest
  @ValueSource(strings = {
      "/", "/sites", "/sites/new", "/sites/1", "/sites/999", "/beds/1", "/beds/1/edit", "/beds/1/guild", "/beds/1/wishes",
      "/beds/1/guild/edit", "/beds/1/share", "/beds/999/share", "/library", "/library/bin", "/sources"})
  void pagesOfTheOwnerAskStrangersToSignIn(String path) {
    Page page = stranger.get(path);
    assertEquals(303, page.status(), path);
    assertTrue(page.location().startsWith("/sign-in?back=%2F"), page.location());
    assertFalse(page.says("Orchard") || stranger.get(page.location()).says("Orchard"));
  }

  @ParameterizedTest
  @ValueSource(strings = {
      "/sites/new", "/sites/1/edit", "/sites/1/remove", "/beds/1/edit", "/beds/1/remove", "/beds/1/wishes", "/beds/1/guild/compose",
      "/beds/1/guild/edit", "/beds/1/guild/remove", "/beds/1/share", "/library/new"})
  void strangersCannotChangeAnything(String path) {
    String before = owner.get(site).text();
    Page answer = stranger.post(path, "name", "Rook's");
    assertEquals(403, answer.status(), path);
    assertTrue(answer.says("Not allowed"));
    assertEquals(before, owner.get(site).text());
  }

  @Test
  void aWrongPasswordAndAnUnknownNameAreToldTheSame() {
    Page wrong = stranger.post("/sign-in", "name", "Wren", "password", "leaf mould and oak");
    assertEquals(422, wrong.status());
    assertTrue(wrong.says("Name or password is wrong."));
    assertEquals("Wren", wrong.valueOf("name"));
    assertEquals("", wrong.valueOf("password"));
    Page unknown = stranger.post("/sign-in", "name", "Rook", "password", PASSWORD);
    assertEquals(wrong.messages(), unknown.messages());
    assertEquals(422, stranger.post("/sign-in", "name", "Wren", "password", "p".repeat(100_000)).status());
    assertEquals(422, stranger.post("/sign-in", "name", "Wren", "password", "").status());
    assertEquals("Please fill this in.", stranger.post("/sign-in", "name", "", "password", PASSWORD).messageOf("name"));
    assertEquals(303, stranger.get("/").status());
  }

  @Test
  void signingInLeadsOnToWhereOneWantedToGo() {
    Page form = stranger.get(stranger.get(site).location());
    assertEquals(site, form.valueOf("back"));
    assertEquals(site, stranger.post("/sign-in", "name", "Wren", "password", PASSWORD, "back", form.valueOf("back")).location());
    assertTrue(stranger.get(site).says("South strip"));
  }

  @ParameterizedTest
  @ValueSource(strings = {
      "//elsewhere.example", "https://elsewhere.example/", "/\\elsewhere.example", "\\\\elsewhere.example", "/%2F/elsewhere.example",
      "/.elsewhere.example", "javascript:alert(1)", "elsewhere.example", "/\t/elsewhere.example", " //elsewhere.example",
      "/sites\r\nSet-Cookie: x=y", "/@elsewhere.example"})
  void signingInNeverLeadsToAnotherSite(String back) {
    String encoded = java.net.URLEncoder.encode(back, java.nio.charset.StandardCharsets.UTF_8);
    assertEquals("/", new HttpVisitor(app).get("/sign-in?back=" + encoded).valueOf("back"));
    assertEquals("/", stranger.post("/units", "units", "us", "back", back).location());
  }

  @Test
  void notEvenWhereTheFormWasTamperedWith() {
    for (String back : new String[] {"//elsewhere.example", "https://elsewhere.example/", "/\\elsewhere.example"}) {
      assertEquals("/", stranger.post("/sign-in", "name", "Wren", "password", PASSWORD, "back", back).location());
    }
  }

  @Test
  void theSessionCookieIsKeptFromScriptsAndOtherSites() {
    Page signedIn = stranger.post("/sign-in", "name", "Wren", "password", PASSWORD);
    String cookie = signedIn.headers().get("set-cookie");
    assertTrue(cookie.matches("guildwood_session=[A-Za-z0-9_-]{22};.*"), cookie);
    assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Lax") && cookie.contains("Path=/"), cookie);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "x", "AAAAAAAAAAAAAAAAAAAAAA", "' or '1'='1"})
  void aForgedSessionIsNobodys(String token) {
    RawHttp.Reply reply = new RawHttp(app).get("/", "Cookie: guildwood_session=" + token);
    assertEquals(303, reply.status());
    assertTrue(reply.header("Location").startsWith("/sign-in"));
  }

  @Test
  void signingOutEndsTheSessionItselfNotOnlyItsCookie() {
    Page signedIn = stranger.post("/sign-in", "name", "Wren", "password", PASSWORD);
    String cookie = signedIn.headers().get("set-cookie").replaceFirst(";.*", "");
    assertEquals(200, new RawHttp(app).get("/", "Cookie: " + cookie).status());
    stranger.get("/");
    assertEquals("/sign-in", stranger.post("/sign-out").location());
    assertEquals(303, stranger.get("/").status());
    assertEquals(303, new RawHttp(app).get("/", "Cookie: " + cookie).status());
    assertEquals(200, owner.get("/").status(), "the other session goes on");
  }

  @Test
  void aChangeNeedsTheTokenOfThisVisitorsOwnForm() {
    String before = owner.get(site).text();
    assertEquals(403, owner.postWithoutToken(site + "/edit", "name", "Changed").status());
    assertEquals(403, owner.postWithoutToken(site + "/edit", "name", "Changed", "csrf", "").status());
    assertEquals(403, owner.postWithoutToken(site + "/edit", "name", "Changed", "csrf", "0".repeat(64)).status());
    String strangers = stranger.get("/sign-in").valueOf("csrf");
    assertTrue(strangers.matches("[0-9a-f]{64}"));
    assertEquals(403, owner.postWithoutToken(site + "/edit", "name", "Changed", "csrf", strangers).status());
    assertEquals(before, owner.get(site).text());
    assertEquals(303, owner.post(site + "/edit", "name", "Orchard").status());
  }

  /** The browser's own word on where a request comes from counts even where the token is right. */
  @Test
  void aRequestAnotherSiteStartedIsRefused() {
    RawHttp raw = new RawHttp(app);
    RawHttp.Reply form = raw.get("/sign-in");
    String visit = form.header("Set-Cookie").replaceFirst(";.*", "");
    String body = "csrf=" + form.body().replaceFirst("(?s).*name=\"csrf\" value=\"([0-9a-f]{64})\".*", "$1") + "&units=us";
    assertEquals(303, raw.post("/units", body, "Cookie: " + visit, "Sec-Fetch-Site: same-origin").status());
    assertEquals(303, raw.post("/units", body, "Cookie: " + visit).status());
    assertEquals(403, raw.post("/units", body, "Cookie: " + visit, "Sec-Fetch-Site: cross-site").status());
    assertEquals(403, raw.post("/units", body, "Cookie: " + visit, "Sec-Fetch-Site: same-site").status());
    assertEquals(403, raw.post("/units", body).status());
  }

  /** A name of another site can be pointed at this machine; the browser then says that name. */
  @ParameterizedTest
  @ValueSource(strings = {"elsewhere.example", "elsewhere.example:80", "127.0.0.1.elsewhere.example", "localhost.elsewhere.example:8080", "192.0.2.7"})
  void aForeignHostNameIsRefused(String host) {
    for (String path : new String[] {"/", "/sign-in", "/setup", "/static/guildwood.css", "/nowhere"}) {
      assertEquals(403, new RawHttp(app).get(path, "Host: " + host).status(), path);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"localhost", "127.0.0.1", "[::1]"})
  void theMachinesOwnNamesAreAnswered(String host) {
    assertEquals(200, new RawHttp(app).get("/sign-in", "Host: " + host + ":" + app.port()).status());
    assertEquals(200, new RawHttp(app).get("/sign-in", "Host: " + host).status());
  }

  @Test
  void everyPageIsGuarded() {
    for (Page page : new Page[] {owner.get("/"), stranger.get("/sign-in"), stranger.get("/nowhere"), stranger.get("/")}) {
      assertTrue(page.headers().get("content-security-policy").startsWith("default-src 'none'; style-src 'self'; script-src 'self'"));
      assertTrue(page.headers().get("content-security-policy").contains("frame-ancestors 'none'"));
      assertEquals("nosniff", page.headers().get("x-content-type-options"));
      assertEquals("no-referrer", page.headers().get("referrer-policy"));
      assertEquals("no-store", page.headers().get("cache-control"));
      assertFalse(page.html().contains("<script>") || page.html().contains("style=\"") || page.html().contains("onclick="));
    }
  }

  /** Last, because it shuts the door for everybody at this address. */
  @Test
  @Order(Integer.MAX_VALUE)
  void tenFailuresShutTheDoorForAWhile() {
    assertEquals(303, stranger.post("/sign-in", "name", "Wren", "password", PASSWORD).status(), "this forgets what failed before");
    stranger.post("/sign-out");
    for (int i = 0; i < 10; i++) {
      Page wrong = stranger.post("/sign-in", "name", "Wren", "password", "guess number " + i);
      assertTrue(wrong.says("Name or password is wrong."), "try " + i);
    }
    Page shut = stranger.post("/sign-in", "name", "Wren", "password", PASSWORD);
    assertEquals(422, shut.status());
    assertTrue(shut.says("Too many failed tries from this address."));
    assertEquals(303, stranger.get("/").status(), "the right password does not help now");
    assertEquals(200, owner.get("/").status(), "who is in stays in");
  }
}
