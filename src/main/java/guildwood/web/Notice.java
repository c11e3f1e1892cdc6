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

/**
 * One sentence about what was just done, carried over a redirect in a short-lived cookie. Only the message
 * key and its values travel; whatever we would not have left is dropped, for anybody can write a cookie.
 */
final class Notice {
  private static final String COOKIE = "guildwood_notice";
  private static final String KNOWN_PREFIX = "done.";

  private Notice() {}

  static void leave(Context ctx, Finding notice) {
    List<String> parts = new ArrayList<>(List.of(notice.code()));
    parts.addAll(notice.args());
    String value = URLEncoder.encode(String.join("\n", parts), StandardCharsets.UTF_8);
    ctx.cookie(new Cookie(COOKIE, value, "/", 60, false, true, null, SameSite.STRICT));
  }

  /** The notice in words, once; empty where there is none, or none that we would have left. */
  static String take(Context ctx, Messages messages) {
    String value = ctx.cookie(COOKIE);
    if (value == null || value.isEmpty()) {
      return "";
    }
    ctx.removeCookie(COOKIE, "/");
    try {
      String[] parts = URLDecoder.decode(value, StandardCharsets.UTF_8).split("\n", -1);
      boolean known = parts[0].startsWith(KNOWN_PREFIX) && messages.has(parts[0]);
      return known ? messages.say(new Finding(parts[0], "", List.of(parts).subList(1, parts.length))) : "";
    } catch (IllegalArgumentException e) {
      // Not encoded as we do, or a word where a number belongs: somebody else wrote it.
      return "";
    }
  }
}
