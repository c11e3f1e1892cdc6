package guildwood.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;

/** Switching between metric and US units; remembered by the browser. */
public final class UnitsPages implements Routes {
  private static final int YEAR_SECONDS = 365 * 24 * 3600;

  @Override
  public void addTo(RoutesConfig routes) {
    routes.post("/units", this::choose, Access.ANYONE);
  }

  private void choose(Context ctx) {
    String chosen = "us".equals(ctx.formParam("units")) ? "us" : "metric";
    ctx.cookie(new Cookie(Units.COOKIE, chosen, "/", YEAR_SECONDS, ctx.scheme().equals("https"), true, null, SameSite.LAX));
    String back = ctx.formParam("back");
    ctx.redirect(back != null && back.matches("/[A-Za-z0-9/_-]*") && !back.startsWith("//") ? back : "/",
        HttpStatus.SEE_OTHER);
  }
}
