package guildwood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The tests' own browser, against the real server. */
class HttpVisitorTest {
  @Test
  void keepsCookiesAndFillsTheTokenIn() {
    try (App app = App.start(Settings.demoOnFreePort())) {
      HttpVisitor visitor = new HttpVisitor(app);
      assertTrue(visitor.get("/").says("Metric units"));
      assertTrue(visitor.submit("/units", "units", "us", "back", "/").says("US units"));
      assertEquals(403, visitor.postWithoutToken("/units", "units", "metric").status());
      assertEquals(404, visitor.get("/nowhere").status());
      String script = visitor.get("/").first("<script src=\"([^\"]*)\"").orElseThrow();
      assertEquals(200, visitor.get(script).status());
    }
  }

  @Test
  void readsFieldsAndTheirMessages() {
    try (App app = App.start(Settings.demoOnFreePort())) {
      HttpVisitor.Page refused = new HttpVisitor(app).post("/sign-in", "name", "a\u0007<b>", "password", "secret");
      assertEquals(422, refused.status());
      assertEquals("Contains characters that cannot be shown, such as tabs or control codes.", refused.messageOf("name"));
      assertEquals("", refused.valueOf("password"));
      assertTrue(refused.links().contains("/"));
    }
  }
}
