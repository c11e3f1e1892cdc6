package guildwood.web;

import guildwood.App;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** Requests no browser would send, word by word over a socket: foreign host names, forged cookies. */
public final class RawHttp {
  private final int port;

  public RawHttp(App app) {
    this.port = app.port();
  }

  /** What came back: the status, and everything as it stood on the wire. */
  public record Reply(int status, String head, String body) {
    /** The first header of a name; empty where there is none. */
    public String header(String name) {
      String start = name.toLowerCase(Locale.ROOT) + ":";
      return head.lines().filter(line -> line.toLowerCase(Locale.ROOT).startsWith(start))
          .map(line -> line.substring(start.length()).strip()).findFirst().orElse("");
    }
  }

  /** @param headers whole lines; {@code Host} is added where none is given */
  public Reply get(String path, String... headers) {
    return send("GET " + path + " HTTP/1.1", List.of(headers), "");
  }

  /** @param body form fields, encoded already */
  public Reply post(String path, String body, String... headers) {
    return send("POST " + path + " HTTP/1.1", List.of(headers), body);
  }

  private Reply send(String request, List<String> headers, String body) {
    StringBuilder text = new StringBuilder(request).append("\r\n");
    headers.forEach(line -> text.append(line).append("\r\n"));
    if (headers.stream().noneMatch(line -> line.startsWith("Host:"))) {
      text.append("Host: 127.0.0.1:").append(port).append("\r\n");
    }
    if (!body.isEmpty()) {
      text.append("Content-Type: application/x-www-form-urlencoded\r\nContent-Length: ").append(body.length()).append("\r\n");
    }
    text.append("Connection: close\r\n\r\n").append(body);
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      socket.getOutputStream().write(text.toString().getBytes(StandardCharsets.ISO_8859_1));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      int end = answer.indexOf("\r\n\r\n");
      return new Reply(Integer.parseInt(answer.split(" ")[1]), answer.substring(0, end), answer.substring(end + 4));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
