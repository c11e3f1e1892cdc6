package guildwood.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import io.javalin.Javalin;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that come with forms, over a real connection: whole, refused in words, and gone afterwards. */
class UploadHttpTest {
  private static final int LIMIT = 1_000_000;

  @TempDir
  Path directory;

  private final Messages messages = new Messages();
  private Javalin server;
  private HttpVisitor visitor;
  private byte[] arrived = new byte[0];
  private Path keepAt;

  @BeforeEach
  void serve() throws IOException {
    Files.writeString(directory.resolve("left-behind.part"), "from a program that was killed");
    Csrf csrf = new Csrf();
    Uploads uploads = new Uploads(directory);
    server = Javalin.create(config -> {
      config.http.maxRequestSize = 10_000;
      config.jetty.host = "127.0.0.1";
      config.jetty.port = 0;
      config.routes.beforeMatched(csrf::check);
      config.routes.get("/sign-in", ctx -> ctx.html("<input type=\"hidden\" name=\"csrf\" value=\"" + csrf.token(ctx) + "\">"));
      config.routes.post("/plain", ctx -> ctx.result("taken"));
      uploads.post(config.routes, "/up/{id}", LIMIT, this::take, Access.ANYONE);
    }).start();
    visitor = new HttpVisitor("http://127.0.0.1:" + server.port());
  }

  @AfterEach
  void stop() {
    server.stop();
  }

  private void take(Context ctx) throws IOException {
    Upload upload = Upload.of(ctx);
    if (upload.file().isRefused()) {
      ctx.status(422).result(messages.say(upload.file().findings().get(0)));
      return;
    }
    SentFile sent = upload.file().orThrow();
    arrived = Files.readAllBytes(sent.path());
    if (keepAt != null) {
      sent.moveTo(keepAt);
    }
    ctx.result(sent.name() + "|" + sent.bytes() + "|" + Form.read(ctx, messages).value("title"));
  }

  private List<String> left() throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }

  private static byte[] noise(int length) {
    byte[] bytes = new byte[length];
    new Random(7).nextBytes(bytes);
    return bytes;
  }

  @Test
  void aFileArrivesByteByByteWithTheOtherFields() throws IOException {
    byte[] sent = noise(700_001);
    HttpVisitor.Page page = visitor.postFile("/up/1", "C:\\lists\\Äpfel \"alt\".csv", sent, "title", "Großmutters Liste");
    assertEquals("Äpfel \"alt\".csv|700001|Großmutters Liste", page.html());
    assertTrue(Arrays.equals(sent, arrived));
    assertEquals(List.of(), left());
  }

  @Test
  void whatLooksLikeABoundaryInsideTheFileIsTheFiles() throws IOException {
    byte[] sent = "a\r\n------part7MA4YWxkTrZu0gX\r\n--\r\n\r\n------part7MA4YWxkTrZu0g".repeat(2000).getBytes(StandardCharsets.US_ASCII);
    assertEquals(200, visitor.postFile("/up/1", "a.csv", sent).status());
    assertEquals(new String(sent, StandardCharsets.US_ASCII), new String(arrived, StandardCharsets.US_ASCII));
  }

  @Test
  void aFileThatIsKeptStays() throws IOException {
    keepAt = directory.resolve("kept").resolve("7.csv");
    assertEquals(200, visitor.postFile("/up/1", "a.csv", noise(10)).status());
    assertEquals(10, Files.size(keepAt));
    assertEquals(List.of("kept"), left());
  }

  @Test
  void theLargestFileFitsAndOneByteMoreIsRefusedInWords() throws IOException {
    assertEquals(200, visitor.postFile("/up/1", "a.csv", noise(LIMIT)).status());
    for (int length : new int[] {LIMIT + 1, 30 * LIMIT}) {
      HttpVisitor.Page page = visitor.postFile("/up/1", "a.csv", noise(length));
      assertEquals(422, page.status());
      assertEquals("The file is larger than 1 MB, which is the most that can be taken here.", page.html());
    }
    assertEquals(List.of(), left());
  }

  @Test
  void nothingChosenOrNothingInsideIsSaid() throws IOException {
    assertEquals("Choose a file first.", visitor.postFile("/up/1", "", new byte[0]).html());
    assertEquals("Choose a file first.", visitor.post("/up/1", "title", "no file at all").html());
    assertEquals("“empty.csv” is empty: there is nothing in it.", visitor.postFile("/up/1", "empty.csv", new byte[0]).html());
    assertEquals(List.of(), left());
  }

  @Test
  void anotherSiteCannotSendAFile() throws IOException {
    visitor.get("/sign-in");
    assertEquals(403, visitor.postFileWithoutToken("/up/1", "a.csv", noise(10)).status());
    assertEquals(0, arrived.length);
    assertEquals(List.of(), left());
  }

  @Test
  void otherRoutesTakeNoFiles() throws IOException {
    assertEquals("taken", visitor.post("/plain", "title", "x").html());
    assertEquals(403, visitor.postFile("/plain", "a.csv", noise(10)).status());
    assertEquals(List.of(), left());
  }

  @Test
  void brokenFormsEndInAnAnswerAndLeaveNothing() throws IOException {
    String page = raw("GET /sign-in HTTP/1.1\r\n", "");
    String cookie = page.replaceAll("(?s).*Set-Cookie: ([^;]*);.*", "$1");
    String token = page.replaceAll("(?s).*value=\"([0-9a-f]{64})\".*", "$1");
    String field = "--x\r\nContent-Disposition: form-data; name=\"csrf\"\r\n\r\n" + token + "\r\n";
    String file = "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.csv\"\r\n\r\nabc";
    assertEquals(200, status(cookie, "multipart/form-data; boundary=x", field + file + "\r\n--x--\r\n"));
    for (String cut : List.of(field + file, field + file + "\r\n--x", field + "--x\r\n" + "a: b\r\n".repeat(5000))) {
      assertEquals(422, status(cookie, "multipart/form-data; boundary=x", cut), cut);
    }
    for (String rubbish : List.of("", "rubbish", "--x", "--x--\r\n", file)) {
      assertEquals(403, status(cookie, "multipart/form-data; boundary=x", rubbish), rubbish);
      assertEquals(403, status(cookie, "multipart/form-data", field + file + "\r\n--x--\r\n"));
    }
    assertEquals(List.of(), left());
  }

  private int status(String cookie, String type, String body) throws IOException {
    return Integer.parseInt(raw("POST /up/1 HTTP/1.1\r\nCookie: " + cookie + "\r\nContent-Type: " + type + "\r\nContent-Length: "
        + body.length() + "\r\n", body).split(" ")[1]);
  }

  private String raw(String head, String body) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      OutputStream out = socket.getOutputStream();
      out.write((head + "Host: 127.0.0.1\r\nConnection: close\r\n\r\n" + body).getBytes(StandardCharsets.US_ASCII));
      out.flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
