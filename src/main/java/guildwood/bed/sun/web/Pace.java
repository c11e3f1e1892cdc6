package guildwood.bed.sun.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;

/** The length of one of the visitor's paces, remembered by the browser as it is their own and nobody else's. */
final class Pace {
  private static final String COOKIE = "guildwood_pace";
  private static final int YEAR_SECONDS = 365 * 24 * 3600;

  /** Where to begin, metres; people put in their own. */
  private static final double USUAL_M = 0.75;

  private Pace() {}

  static double of(Context ctx) {
    String kept = ctx.cookie(COOKIE);
    double metres = kept != null && kept.matches("\\d\\.\\d{1,18}") ? Double.parseDouble(kept) : USUAL_M;
    return NearbyForm.PACE_M.contains(metres) ? metres : USUAL_M;
  }

  static void remember(Context ctx, double metres) {
    ctx.cookie(new Cookie(COOKIE, Double.toString(metres), "/", YEAR_SECONDS, ctx.scheme().equals("https"), true, null, SameSite.LAX));
  }
}
