package guildwood.account.web;

import guildwood.account.Account;
import guildwood.account.Accounts;
import guildwood.account.Passwords;
import guildwood.kernel.Finding;
import guildwood.web.Access;
import guildwood.web.Form;
import guildwood.web.Pages;
import guildwood.web.Routes;
import guildwood.web.Tokens;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.SameSite;
import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/** Setting up the owner once, signing in and out. */
public final class SignInPages implements Routes {
  private static final Duration SESSION = Duration.ofDays(30);

  private final Pages pages;
  private final Accounts accounts;
  private final Clock clock;
  private final String setupTokenHash;
  private final Attempts attempts;

  /** @param setupToken the one-time token that was printed at the first start */
  public SignInPages(Pages pages, Accounts accounts, Clock clock, String setupToken) {
    this.pages = pages;
    this.accounts = accounts;
    this.clock = clock;
    this.setupTokenHash = Tokens.hash(setupToken);
    this.attempts = new Attempts(clock);
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/setup", this::hint, Access.ANYONE);
    routes.get("/setup/{token}", this::askForOwner, Access.ANYONE);
    routes.post("/setup/{token}", this::makeOwner, Access.ANYONE);
    routes.get("/sign-in", this::askForPassword, Access.ANYONE);
    routes.post("/sign-in", this::signIn, Access.ANYONE);
    routes.post("/sign-out", this::signOut, Access.ANYONE);
  }

  private void hint(Context ctx) {
    if (accounts.anyExists()) {
      ctx.redirect("/sign-in", HttpStatus.SEE_OTHER);
      return;
    }
    pages.show(ctx, "account/setup-hint", Map.of());
  }

  private void askForOwner(Context ctx) {
    requireSetupLink(ctx);
    pages.show(ctx, "account/setup", Map.of("form", Form.blank(Map.of(), pages.messages())));
  }

  private void makeOwner(Context ctx) {
    requireSetupLink(ctx);
    Form form = Form.read(ctx, pages.messages());
    String name = form.text("name", Account.LONGEST_NAME);
    String password = form.value("password");
    if (password.length() < Account.SHORTEST_PASSWORD || password.length() > Account.LONGEST_PASSWORD) {
      form.refuse(Finding.of("password.length", "password", Account.SHORTEST_PASSWORD, Account.LONGEST_PASSWORD));
    } else if (!password.equals(form.value("again"))) {
      form.refuse(Finding.of("password.differs", "again"));
    }
    if (form.isRefused()) {
      pages.refuse(ctx, "account/setup", Map.of("form", form));
      return;
    }
    if (!accounts.addFirst(name, Passwords.hash(password))) {
      throw new NotFoundResponse();
    }
    enter(ctx, accounts.find(name).orElseThrow());
    pages.goOn(ctx, "/", Finding.of("done.owner-set-up", "", name));
  }

  private void requireSetupLink(Context ctx) {
    if (accounts.anyExists() || !Tokens.hash(ctx.pathParam("token")).equals(setupTokenHash)) {
      throw new NotFoundResponse();
    }
  }

  private void askForPassword(Context ctx) {
    String back = ctx.queryParam("back");
    pages.show(ctx, "account/sign-in",
        Map.of("form", Form.blank(Map.of("back", safeBack(back)), pages.messages())));
  }

  private void signIn(Context ctx) {
    Form form = Form.read(ctx, pages.messages());
    String name = form.text("name", Account.LONGEST_NAME);
    String password = form.value("password");
    if (attempts.tooMany(ctx.ip())) {
      form.refuse(Finding.of("sign-in.too-many", ""));
    } else if (!form.isRefused()) {
      Optional<Account> account = password.length() > Account.LONGEST_PASSWORD ? Optional.empty() : matching(name, password);
      if (account.isPresent()) {
        attempts.forget(ctx.ip());
        enter(ctx, account.get());
        ctx.redirect(safeBack(form.value("back")), HttpStatus.SEE_OTHER);
        return;
      }
      attempts.failed(ctx.ip());
      form.refuse(Finding.of("sign-in.wrong", ""));
    }
    pages.refuse(ctx, "account/sign-in", Map.of("form", form));
  }

  private Optional<Account> matching(String name, String password) {
    Optional<Account> account = accounts.find(name);
    boolean matches = account.isPresent() ? Passwords.matches(password, account.get()) : Passwords.matchesNobody(password);
    return matches ? account : Optional.empty();
  }

  private void enter(Context ctx, Account account) {
    String token = Tokens.fresh();
    accounts.signIn(account, Tokens.hash(token), clock.instant().plus(SESSION));
    ctx.cookie(new Cookie(Gate.COOKIE, token, "/", (int) SESSION.toSeconds(), ctx.scheme().equals("https"), true,
        null, SameSite.LAX));
  }

  private void signOut(Context ctx) {
    String token = ctx.cookie(Gate.COOKIE);
    if (token != null) {
      accounts.signOut(Tokens.hash(token));
      ctx.removeCookie(Gate.COOKIE, "/");
    }
    ctx.redirect("/sign-in", HttpStatus.SEE_OTHER);
  }

  /** Only a path of our own: never another site's address. */
  private static String safeBack(String back) {
    return back != null && back.matches("/[A-Za-z0-9][A-Za-z0-9/_-]*") ? back : "/";
  }
}
