package guildwood.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import java.util.Set;

/**
 * Guards changes against other sites: a token in every form that belongs to a cookie of the visitor, and
 * the browser's own word on where the request comes from.
 */
public final class Csrf {
  private static final String COOKIE = "guildwood_visit";
  private static final String FIELD = "csrf";
  private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

  /** The token to put into forms; sets the visitor's cookie where there is none yet. */
  public String token(Context ctx) {
    String visit = ctx.attribute(COOKIE);
    if (visit == null) {
      visit = ctx.cookie(COOKIE);
    }
    if (visit == null || visit.length() != Tokens.LENGTH) {
      visit = Tokens.fresh();
      ctx.cookie(new Cookie(COOKIE, visit, "/", -1, ctx.scheme().equals("https"), true, null, SameSite.LAX));
    }
    ctx.attribute(COOKIE, visit);
    return Tokens.hash("csrf:" + visit);
  }

  /** The visit that a request belongs to, by which one browser is told from another; empty on the very first request. */
  public static Optional<String> visit(Context ctx) {
    return Optional.ofNullable(ctx.cookie(COOKIE)).filter(visit -> visit.length() == Tokens.LENGTH);
  }

  /** Refuses a change that does not come from one of our own forms. */
  public void check(Context ctx) {
    if (SAFE.contains(ctx.method().name())) {
      return;
    }
    String site = ctx.header("Sec-Fetch-Site");
    boolean fromHere = site == null || site.equals("same-origin") || site.equals("none");
    String visit = ctx.cookie(COOKIE);
    Optional<String> sent = fromHere && visit != null ? Upload.field(ctx, FIELD) : Optional.empty();
    if (sent.isEmpty() || !same(sent.get(), Tokens.hash("csrf:" + visit))) {
      throw new ForbiddenResponse("csrf");
    }
  }

  private static boolean same(String a, String b) {
    return MessageDigest.isEqual(a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
  }
}
