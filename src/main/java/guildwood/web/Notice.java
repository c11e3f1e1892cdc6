package guildwood.web;

import guildwood.kernel.Finding;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One sentence about what was just done, carried over a redirect in a short-lived cookie. Only the message
 * key and its values travel; an unknown key is dropped.
 */
final class Notice {
  private static final String COOKIE = "guildwood_notice";
  private static final List<String> KNOWN_PREFIXES = List.of("done.");

  private Notice() {}

  static void leave(Context ctx, Finding notice) {
    List<String> parts = new ArrayList<>(List.of(notice.code()));
    parts.addAll(notice.args());
    String value = URLEncoder.encode(String.join("\n", parts), StandardCharsets.UTF_8);
    ctx.cookie(new Cookie(COOKIE, value, "/", 60, false, true, null, SameSite.STRICT));
  }

  static Optional<Finding> take(Context ctx) {
    String value = ctx.cookie(COOKIE);
    if (value == null || value.isEmpty()) {
      return Optional.empty();
    }
    ctx.removeCookie(COOKIE, "/");
    try {
      String[] parts = URLDecoder.decode(value, StandardCharsets.UTF_8).split("\n", -1);
      boolean known = KNOWN_PREFIXES.stream().anyMatch(parts[0]::startsWith);
      return known ? Optional.of(new Finding(parts[0], "", List.of(parts).subList(1, parts.length))) : Optional.empty();
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
