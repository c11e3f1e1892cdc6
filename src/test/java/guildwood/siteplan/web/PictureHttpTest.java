package guildwood.siteplan.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.siteplan.exchange.Pictures;
import guildwood.web.SharedDemo;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A picture under the plan: sent, refused, laid to scale and north, and taken away. */
class PictureHttpTest {
  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());
  private String plan;

  @BeforeEach
  void aSite() {
    plan = visitor.post("/sites/new", "name", "Orchard edge").location() + "/plan";
  }

  private HttpResponse<byte[]> file(String tag) throws Exception {
    HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + SharedDemo.app().port() + plan + "/picture/file"));
    return HttpClient.newHttpClient().send(tag.isEmpty() ? request.build() : request.header("If-None-Match", tag).build(),
        HttpResponse.BodyHandlers.ofByteArray());
  }

  @Test
  void whatIsKeptIsUprightAndTellsNothingButItsPixels() throws Exception {
    byte[] sent = Pictures.jpegWithPlace(48, 32, 6);
    Page reply = visitor.postFile(plan + "/picture/new", "yard.jpg", sent);
    assertEquals(303, reply.status());
    assertTrue(visitor.get(reply.location()).says("32 by 48 pixels"));
    HttpResponse<byte[]> kept = file("");
    assertEquals("image/jpeg", kept.headers().firstValue("Content-Type").orElseThrow());
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(kept.body()));
    assertEquals(32, image.getWidth());
    assertTrue(Pictures.holds(sent, Pictures.position()));
    assertFalse(Pictures.holds(kept.body(), Pictures.position()));
    assertFalse(Pictures.holds(kept.body(), Pictures.OWNER.getBytes(StandardCharsets.US_ASCII)));
    assertTrue(visitor.get(plan).html().contains("href=\"" + plan + "/picture/file\""));
    HttpResponse<byte[]> again = file(kept.headers().firstValue("ETag").orElseThrow());
    assertEquals(304, again.statusCode());
    assertArrayEquals(new byte[0], again.body());
  }

  @Test
  void whatIsNoPictureIsRefusedInWords() {
    refused("yard.png", "This is text, whatever its name says.".getBytes(StandardCharsets.UTF_8), "That is not a picture in PNG, JPEG or WebP");
    refused("yard.png", Pictures.hugePng(20_000, 10_000), "That picture has 200 megapixels; at most 40 can be taken.");
    byte[] whole = Pictures.jpeg(200, 100);
    refused("yard.jpg", Arrays.copyOf(whole, whole.length / 2), "That picture is not whole");
    refused("yard.png", Arrays.copyOf(Pictures.png(200, 100), 60), "That picture");
    refused("yard.png", new byte[0], "“yard.png” is empty");
    refused("yard.png", new byte[20_500_000], "The file is larger than 20 MB");
    Page nothing = visitor.postFile(plan + "/picture/new", "", new byte[0]);
    assertEquals(422, nothing.status());
    assertEquals("Choose a file first.", nothing.messageOf("file"));
    assertEquals(404, visitor.get(plan + "/picture/file").status(), "none of them is kept");
    assertEquals(403, visitor.postFileWithoutToken(plan + "/picture/new", "yard.png", Pictures.png(24, 16)).status());
  }

  private void refused(String name, byte[] content, String message) {
    Page page = visitor.postFile(plan + "/picture/new", name, content);
    assertEquals(422, page.status(), name);
    assertTrue(page.messageOf("file").startsWith(message), page.messages().toString());
  }

  /** 100 px are 20 m; from (0, 90) to (90, 0) is north, so the upper edge looks 45 degrees west of it. */
  @Test
  void twoPointsGiveTheScaleTwoGiveNorthAndOneThePlace() {
    visitor.postFile(plan + "/picture/new", "yard.png", Pictures.png(200, 100));
    Page laid = visitor.submit(plan + "/picture", "length-unit", "metric", "scale-1.x", "10", "scale-1.y", "10", "scale-2.x", "110", "scale-2.y", "10",
        "distance", "20", "south.x", "0", "south.y", "90", "north.x", "90", "north.y", "0", "turn", "0",
        "pin.x", "100", "pin.y", "50", "pin-east", "5", "pin-north", "7");
    assertTrue(laid.says("The picture is laid anew."));
    Page form = visitor.get(plan + "/picture");
    assertEquals("315", form.valueOf("turn"));
    assertTrue(form.says("it covers 40 m by 20 m now."), form.text());
    // The scale alone: direction and place stay.
    visitor.submit(plan + "/picture", "length-unit", "metric", "scale-1.x", "0", "scale-1.y", "0", "scale-2.x", "0", "scale-2.y", "100", "distance", "100 ft", "turn", "315");
    assertTrue(visitor.get(plan + "/picture").says("it covers 60.96 m by 30.48 m now."));
    assertEquals("315", visitor.get(plan + "/picture").valueOf("turn"));
    assertTrue(visitor.submit(plan + "/picture/remove").says("The picture is taken away."));
    assertEquals(404, visitor.post(plan + "/picture/remove").status());
  }

  @ParameterizedTest
  @CsvSource({
    "scale-2.x, The two points are the same., 10, 10, 10, 10, 20",
    "distance, Must lie between, 10, 10, 50, 10, 0",
    "distance, Please fill this in., 10, 10, 50, 10, ''",
    "distance, 'With that distance a pixel would be smaller', 10, 10, 11, 10, 4999",
    "scale-2.y, Please fill this in., 10, 10, 50, '', 20",
    "scale-1.x, Must lie between 0 and 200., 999, 10, 50, 10, 20",
    "scale-1.x, “left” is not a number, left, 10, 50, 10, 20"})
  void aScaleThatCannotBeIsRefusedWithAllThatWasTyped(
      String field, String message, String x1, String y1, String x2, String y2, String distance) {
    visitor.postFile(plan + "/picture/new", "yard.png", Pictures.png(200, 100));
    Page page = visitor.post(plan + "/picture", "length-unit", "metric", "scale-1.x", x1, "scale-1.y", y1, "scale-2.x", x2, "scale-2.y", y2,
        "distance", distance, "turn", "12", "pin.x", "");
    assertEquals(422, page.status());
    assertTrue(page.messageOf(field).startsWith(message), page.messages().toString());
    assertEquals(x1, page.valueOf("scale-1.x"));
    assertEquals(distance, page.valueOf("distance"));
    assertEquals("12", page.valueOf("turn"));
    assertTrue(visitor.get(plan + "/picture").says("it covers 40 m by 20 m now."), "nothing has changed");
  }

  @Test
  void northNeedsTwoPointsAndAPlaceBothNumbers() {
    visitor.postFile(plan + "/picture/new", "yard.png", Pictures.png(200, 100));
    Page page = visitor.post(plan + "/picture", "length-unit", "metric", "south.x", "5", "south.y", "5", "north.x", "5", "north.y", "5", "turn", "up",
        "pin.x", "1", "pin.y", "1", "pin-east", "here");
    assertEquals(422, page.status());
    assertEquals("The two points are the same. Choose two that lie apart.", page.messageOf("north.x"));
    Page turn = visitor.post(plan + "/picture", "length-unit", "metric", "turn", "upwards");
    assertFalse(turn.messageOf("turn").isEmpty());
    Page pin = visitor.post(plan + "/picture", "length-unit", "metric", "turn", "0", "pin.x", "1", "pin.y", "1", "pin-east", "here");
    assertFalse(pin.messageOf("pin-east").isEmpty());
    assertFalse(pin.messageOf("pin-north").isEmpty());
  }
}
