package guildwood;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A browser without scripts, for tests: keeps cookies, fills the hidden token into every form it sends, and
 * follows no redirect by itself.
 */
public final class HttpVisitor {
  private static final Pattern TOKEN = Pattern.compile("name=\"csrf\" value=\"([0-9a-f]{64})\"");

  private final HttpClient client =
      HttpClient.newBuilder().cookieHandler(new CookieManager(null, CookiePolicy.ACCEPT_ALL)).build();
  private final String root;
  private String token = "";

  public HttpVisitor(App app) {
    this("http://127.0.0.1:" + app.port());
  }

  /** @param root address of the first page, without a slash at the end */
  public HttpVisitor(String root) {
    this.root = root;
  }

  public Page get(String path) {
    return send(HttpRequest.newBuilder(URI.create(root + path)).GET());
  }

  /** As the library for parts of pages asks. */
  public Page getFragment(String path) {
    return send(HttpRequest.newBuilder(URI.create(root + path)).header("HX-Request", "true").GET());
  }

  /** Sends a form; the hidden token is added. Each name is followed by its value; a name may come twice. */
  public Page post(String path, String... namesAndValues) {
    if (token.isEmpty()) {
      get("/sign-in");
    }
    List<String> all = new ArrayList<>(List.of(namesAndValues));
    all.addAll(List.of("csrf", token));
    return postAsIs(path, all);
  }

  public Page post(String path, Map<String, String> fields) {
    List<String> all = new ArrayList<>();
    fields.forEach((name, value) -> all.addAll(List.of(name, value)));
    return post(path, all.toArray(String[]::new));
  }

  /** Sends a form as the library for parts of pages does, and gets a part back. */
  public Page postForFragment(String path, String... namesAndValues) {
    List<String> all = new ArrayList<>(List.of(namesAndValues));
    all.addAll(List.of("csrf", token));
    return send(form(path, all).header("HX-Request", "true"));
  }

  /** Sends a form with a file in its field {@code file}, as a browser does; the hidden token stands first. */
  public Page postFile(String path, String fileName, byte[] content, String... namesAndValues) {
    if (token.isEmpty()) {
      get("/sign-in");
    }
    List<String> all = new ArrayList<>(List.of("csrf", token));
    all.addAll(List.of(namesAndValues));
    return postFileAsIs(path, fileName, content, all);
  }

  /** The same as another site would: without the token. */
  public Page postFileWithoutToken(String path, String fileName, byte[] content) {
    return postFileAsIs(path, fileName, content, List.of());
  }

  private Page postFileAsIs(String path, String fileName, byte[] content, List<String> namesAndValues) {
    String between = "----part7MA4YWxkTrZu0gW";
    StringBuilder head = new StringBuilder();
    for (int i = 0; i < namesAndValues.size(); i += 2) {
      head.append("--").append(between).append("\r\nContent-Disposition: form-data; name=\"").append(namesAndValues.get(i))
          .append("\"\r\n\r\n").append(namesAndValues.get(i + 1)).append("\r\n");
    }
    head.append("--").append(between).append("\r\nContent-Disposition: form-data; name=\"file\"; filename=\"")
        .append(fileName.replace("\"", "%22")).append("\"\r\nContent-Type: application/octet-stream\r\n\r\n");
    return send(HttpRequest.newBuilder(URI.create(root + path))
        .header("Content-Type", "multipart/form-data; boundary=" + between)
        .POST(HttpRequest.BodyPublishers.ofByteArrays(List.of(head.toString().getBytes(StandardCharsets.UTF_8), content,
            ("\r\n--" + between + "--\r\n").getBytes(StandardCharsets.UTF_8)))));
  }

  /** Sends a form as another site would: without the token. */
  public Page postWithoutToken(String path, String... namesAndValues) {
    return postAsIs(path, List.of(namesAndValues));
  }

  /** Sends a form that must be accepted, and returns the page it leads to. */
  public Page submit(String path, String... namesAndValues) {
    Page reply = post(path, namesAndValues);
    if (reply.status() != 303) {
      throw new AssertionError("POST " + path + " was not accepted: " + reply.status() + " " + reply.messages());
    }
    return get(reply.location());
  }

  private Page postAsIs(String path, List<String> namesAndValues) {
    return send(form(path, namesAndValues));
  }

  private HttpRequest.Builder form(String path, List<String> namesAndValues) {
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i < namesAndValues.size(); i += 2) {
      pairs.add(encode(namesAndValues.get(i)) + "=" + encode(namesAndValues.get(i + 1)));
    }
    return HttpRequest.newBuilder(URI.create(root + path))
        .header("Content-Type", "application/x-www-form-urlencoded")
        .POST(HttpRequest.BodyPublishers.ofString(String.join("&", pairs)));
  }

  /** A file as it comes, byte for byte. */
  public byte[] getBytes(String path) {
    try {
      return client.send(HttpRequest.newBuilder(URI.create(root + path)).GET().build(), HttpResponse.BodyHandlers.ofByteArray()).body();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private Page send(HttpRequest.Builder request) {
    try {
      HttpResponse<String> response =
          client.send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
      Map<String, String> headers = new LinkedHashMap<>();
      response.headers().map().forEach((name, values) -> headers.put(name.toLowerCase(java.util.Locale.ROOT), values.get(0)));
      Page page = new Page(response.statusCode(), headers, response.body());
      Matcher found = TOKEN.matcher(page.html());
      if (found.find()) {
        token = found.group(1);
      }
      return page;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static String encode(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /**
   * What came back.
   *
   * @param headers by lower-case name, the first of each
   */
  public record Page(int status, Map<String, String> headers, String html) {
    /** Where a redirect leads; empty where it is none. */
    public String location() {
      return headers.getOrDefault("location", "");
    }

    /** The words a reader sees, spaces folded. */
    public String text() {
      return words(html.replaceAll("(?s)<(script|style|head)\\b.*?</\\1>", " "));
    }

    public boolean says(String words) {
      return text().contains(words);
    }

    /** The message beside a form field; empty where there is none. */
    public String messageOf(String field) {
      return first("(?s)id=\"" + Pattern.quote(field) + "-error\"[^>]*>(.*?)</p>").map(Page::words).orElse("");
    }

    /** All messages beside fields and about the whole form. */
    public List<String> messages() {
      return Pattern.compile("(?s)<p class=\"error\"[^>]*>(.*?)</p>|<div class=\"danger\" role=\"alert\">(.*?)</div>").matcher(html)
          .results().map(r -> words(r.group())).toList();
    }

    /** What stands in an input, a text area, or is chosen in a select of the page; empty where nothing does. */
    public String valueOf(String field) {
      String name = "name=\"" + Pattern.quote(field) + "\"";
      Optional<String> input = first("<input[^>]*" + name + "[^>]*>");
      if (input.isPresent()) {
        Matcher value = Pattern.compile("\\svalue=\"([^\"]*)\"").matcher(input.get());
        return value.find() ? plain(value.group(1)) : "";
      }
      Optional<String> select = first("(?s)<select[^>]*" + name + ".*?</select>");
      if (select.isPresent()) {
        Matcher value = Pattern.compile("<option[^>]*value=\"([^\"]*)\"[^>]*\\sselected").matcher(select.get());
        return value.find() ? plain(value.group(1)) : "";
      }
      return first("(?s)<textarea[^>]*" + name + "[^>]*>(.*?)</textarea>").map(Page::plain).orElse("");
    }

    /** The addresses of all links, in order. */
    public List<String> links() {
      return Pattern.compile("<a\\b[^>]*\\shref=\"([^\"]*)\"").matcher(html).results()
          .map(r -> plain(r.group(1))).collect(Collectors.toList());
    }

    /** The first match of a pattern in the page: its first group where it has one, else the whole. */
    public Optional<String> first(String pattern) {
      Matcher matcher = Pattern.compile(pattern).matcher(html);
      return matcher.find() ? Optional.of(matcher.groupCount() > 0 ? matcher.group(1) : matcher.group()) : Optional.empty();
    }

    private static String words(String html) {
      return plain(html.replaceAll("(?s)<[^>]*>", " ")).replaceAll("\\s+", " ").strip();
    }

    private static String plain(String html) {
      return html.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&#39;", "'")
          .replace("&#xD;", "\r").replace("&amp;", "&");
    }
  }
}
