package guildwood.account.web;

import guildwood.account.Accounts;
import guildwood.web.Access;
import guildwood.web.Csrf;
import guildwood.web.Routes;
import guildwood.web.Tokens;
import guildwood.web.Visitor;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.OptionalLong;
import java.util.Set;

/** Stands before every route: who is it, may they, and does the request come from our own pages. */
public final class Gate implements Routes {
  static final String COOKIE = "guildwood_session";
  private static final Set<String> LOOPBACK_NAMES = Set.of("127.0.0.1", "localhost", "[::1]", "::1");

  private final Accounts accounts;
  private final Csrf csrf;
  private final Clock clock;
  private final boolean demo;
  private final boolean loopbackOnly;

  public Gate(Accounts accounts, Csrf csrf, Clock clock, boolean demo, boolean loopbackOnly) {
    this.accounts = accounts;
    this.csrf = csrf;
    this.clock = clock;
    this.demo = demo;
    this.loopbackOnly = loopbackOnly;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.before(ctx -> {
      harden(ctx);
      refuseForeignNames(ctx);
      visitor(ctx).enter(ctx);
    });
    routes.beforeMatched(this::admit);
  }

  private void admit(Context ctx) {
    Set<?> roles = ctx.routeRoles();
    if (roles.isEmpty()) {
      throw new IllegalStateException("no access is named for " + ctx.path());
    }
    if (roles.contains(Access.OWNER) && !Visitor.of(ctx).isOwner()) {
      if (ctx.method().name().equals("GET")) {
        String back = URLEncoder.encode(ctx.path(), StandardCharsets.UTF_8);
        ctx.redirect(accounts.anyExists() ? "/sign-in?back=" + back : "/setup", HttpStatus.SEE_OTHER);
        ctx.skipRemainingHandlers();
        return;
      }
      throw new ForbiddenResponse();
    }
    csrf.check(ctx);
  }

  private Visitor visitor(Context ctx) {
    if (demo) {
      return new Visitor(true, OptionalLong.empty());
    }
    String token = ctx.cookie(COOKIE);
    if (token == null) {
      return Visitor.STRANGER;
    }
    return accounts.signedIn(Tokens.hash(token), clock.instant())
        .map(a -> new Visitor(true, OptionalLong.of(a.id())))
        .orElse(Visitor.STRANGER);
  }

  /** A page on another site may point a name of its own at this machine; such a name is not answered. */
  private void refuseForeignNames(Context ctx) {
    String host = ctx.host();
    if (loopbackOnly && host != null && !LOOPBACK_NAMES.contains(host.replaceFirst(":\\d+$", ""))) {
      throw new ForbiddenResponse();
    }
  }

  private static void harden(Context ctx) {
    ctx.header("Content-Security-Policy",
        "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self' data:; connect-src 'self'; "
            + "font-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'");
    ctx.header("X-Content-Type-Options", "nosniff");
    ctx.header("Referrer-Policy", "no-referrer");
    ctx.header("Cross-Origin-Opener-Policy", "same-origin");
    ctx.header("Cache-Control", "no-store");
  }
}
