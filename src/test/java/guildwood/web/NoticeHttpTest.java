package guildwood.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sentence about what was just done travels in a cookie, which anybody can forge. */
class NoticeHttpTest {
  private final App app = SharedDemo.app();

  @Test
  void aNoticeIsShownOnce() {
    HttpVisitor visitor = new HttpVisitor(app);
    String site = visitor.post("/sites/new", "name", "Rubble & <Rose>").location();
    Page first = visitor.get(site);
    assertTrue(first.html().contains("class=\"notice\" role=\"status\""));
    assertTrue(first.html().contains("Rubble &amp; &lt;Rose&gt;"));
    assertFalse(visitor.get(site).html().contains("class=\"notice\" role=\"status\""));
  }

  @Test
  void markupInAForgedNoticeIsOnlyText() {
    RawHttp.Reply page = forged("done.guild-saved\n<script>alert(1)</script>{0}'");
    assertEquals(200, page.status());
    assertFalse(page.body().contains("<script>alert"));
    assertTrue(page.body().contains("&lt;script&gt;alert(1)&lt;/script&gt;"));
  }

  @ParameterizedTest
  @ValueSource(strings = {
      "done.no-such-text", "done.", "problem.500.title", "demo.banner", "finding.value.missing", "", "\n\n\n",
      "done.wishes-kept", "done.wishes-kept\nmany", "done.wishes-kept\n1e400", "done.wishes-kept\nNaN", "done.wishes-kept\n\u0000",
      "done.guild-saved", "done.plants-added\nx\ny\nz"})
  void aForgedNoticeDoesNotBreakThePage(String value) {
    RawHttp.Reply page = forged(value);
    assertEquals(200, page.status(), value);
    assertTrue(page.body().contains("<main"), value);
  }

  @ParameterizedTest
  @ValueSource(strings = {"done.no-such-text", "problem.500.title", "demo.banner", "nav.library", "finding.value.missing"})
  void onlyTextsOfThingsDoneAreShown(String key) {
    assertFalse(forged(key).body().contains("class=\"notice\" role=\"status\""), key);
  }

  @Test
  void aNoticeThatCannotBeDecodedIsDropped() {
    assertEquals(200, new RawHttp(app).get("/", "Cookie: guildwood_notice=%zz").status());
    assertEquals(404, new RawHttp(app).get("/nowhere", "Cookie: guildwood_notice=done.no-such-text").status());
  }

  private RawHttp.Reply forged(String value) {
    return new RawHttp(app).get("/", "Cookie: guildwood_notice=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
  }
}
