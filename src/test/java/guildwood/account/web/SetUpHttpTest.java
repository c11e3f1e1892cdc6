package guildwood.account.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.Settings;
import guildwood.web.Tokens;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Choosing the owner of a new installation, by the link that is printed at the first start. */
class SetUpHttpTest {
  private static final String PASSWORD = "leaf mould and ash";

  @TempDir
  private static Path directory;

  private static App app;
  private static String link;
  private final HttpVisitor visitor = new HttpVisitor(app);

  @BeforeAll
  static void serve() {
    app = App.start(settings("nobody's"));
    link = linkOf(app);
  }

  @AfterAll
  static void stop() {
    app.close();
  }

  @Test
  void theLinkIsPrintedAndCannotBeGuessed() {
    assertEquals(2, app.greeting().size());
    assertTrue(app.greeting().get(0).contains("http://127.0.0.1:" + app.port() + "/"));
    assertTrue(link.matches("/setup/[A-Za-z0-9_-]{22}"), link);
    assertTrue(visitor.get(link).says("Choose the name and password"));
  }

  @Test
  void beforeThatEveryPageOfTheOwnerPointsToTheLink() {
    Page page = visitor.get("/");
    assertEquals(303, page.status());
    assertEquals("/setup", page.location());
    assertTrue(visitor.get("/setup").says("Open the set-up link that the program printed"));
    assertEquals(403, visitor.post("/sites/new", "name", "Nobody's").status());
    assertFalse(visitor.get("/setup").links().contains("/sites"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/setup/x", "/setup/AAAAAAAAAAAAAAAAAAAAAA", "/setup/..%2Fsetup", "/setup/%20"})
  void aWrongLinkLeadsNowhere(String wrong) {
    assertEquals(404, visitor.get(wrong).status());
    assertEquals(404, visitor.post(wrong, "name", "Rook", "password", PASSWORD, "again", PASSWORD).status());
    assertEquals("/setup", visitor.get("/").location());
  }

  @ParameterizedTest
  @CsvSource({
    "Wren, nine char, nine char, password, Between 10 and 200 characters.",
    "Wren, '', '', password, Between 10 and 200 characters.",
    "Wren, long, long, password, Between 10 and 200 characters.",
    "Wren, leaf mould and ash, leaf mould and Ash, again, The two passwords differ.",
    "Wren, leaf mould and ash, '', again, The two passwords differ.",
    "'  ', leaf mould and ash, leaf mould and ash, name, Please fill this in.",
    "overlong, leaf mould and ash, leaf mould and ash, name, Too long: at most 80 characters.",
    "We\u0007ren, leaf mould and ash, leaf mould and ash, name, 'Contains characters that cannot be shown, such as tabs or control codes.'"})
  void refusesAndKeepsTheNameButNoPassword(String name, String password, String again, String field, String message) {
    String typedName = name.equals("overlong") ? "w".repeat(81) : name;
    Page refused = visitor.post(link, "name", typedName, "password", of(password), "again", of(again));
    assertEquals(422, refused.status());
    assertEquals(message, refused.messageOf(field));
    assertEquals(typedName, refused.valueOf("name"));
    assertEquals("", refused.valueOf("password"));
    assertEquals("", refused.valueOf("again"));
    assertEquals("/setup", visitor.get("/").location(), "nobody may have become the owner");
  }

  @Test
  void aFormOfAnotherSiteIsRefused() {
    assertEquals(403, visitor.postWithoutToken(link, "name", "Rook", "password", PASSWORD, "again", PASSWORD).status());
    assertEquals("/setup", visitor.get("/").location());
  }

  @Test
  void worksOnceAndNeverAgain() {
    Settings settings = settings("wren's");
    try (App fresh = App.start(settings)) {
      HttpVisitor wren = new HttpVisitor(fresh);
      String once = linkOf(fresh);
      wren.get(once);
      Page home = wren.submit(once, "name", " Wren ", "password", PASSWORD, "again", PASSWORD);
      assertEquals(200, home.status());
      assertTrue(home.says("Welcome, Wren."));
      assertTrue(home.says("Sign out"));
      assertEquals(404, wren.get(once).status());
      assertEquals(404, wren.post(once, "name", "Rook", "password", PASSWORD, "again", PASSWORD).status());
      HttpVisitor rook = new HttpVisitor(fresh);
      assertEquals(404, rook.get(once).status());
      assertEquals("/sign-in?back=%2F", rook.get("/").location());
      assertEquals("/sign-in", rook.get("/setup").location(), "somebody owns it: nothing to set up");
      assertEquals(422, rook.post("/sign-in", "name", "Rook", "password", PASSWORD).status());
      assertEquals(303, rook.post("/sign-in", "name", "Wren", "password", PASSWORD).status());
    }
    try (App again = App.start(settings)) {
      assertEquals(1, again.greeting().size(), "no set-up link where somebody owns it");
      assertEquals(404, new HttpVisitor(again).get("/setup/" + Tokens.fresh()).status());
      assertEquals(303, new HttpVisitor(again).post("/sign-in", "name", "Wren", "password", PASSWORD).status());
    }
  }

  private static String of(String password) {
    return password.equals("long") ? "p".repeat(201) : password;
  }

  private static Settings settings(String name) {
    return new Settings(false, directory.resolve(name), "127.0.0.1", 0, "");
  }

  private static String linkOf(App app) {
    String greeting = app.greeting().get(1);
    return greeting.substring(greeting.indexOf("/setup/"));
  }
}
