package guildwood.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.Map;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What went wrong, on a plain page: what happened, what to do, and a reference; nothing internal. */
public final class Problems implements Routes {
  private static final Logger LOG = LoggerFactory.getLogger(Problems.class);
  private static final Set<Integer> WITH_TEXT = Set.of(400, 403, 404, 405, 410, 413, 429, 500);

  private static final String SHOWN = "guildwood.problem";

  private final Pages pages;

  public Problems(Pages pages) {
    this.pages = pages;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.exception(HttpResponseException.class, (e, ctx) -> show(ctx, e.getStatus()));
    routes.exception(Exception.class, (e, ctx) -> {
      String reference = Tokens.fresh().substring(0, 8);
      LOG.error("reference {}: {} {}", reference, ctx.method(), ctx.path(), e);
      show(ctx, 500, reference);
    });
    // An address that no route answers never passed through an exception.
    routes.error(404, ctx -> {
      if (ctx.attribute(SHOWN) == null) {
        show(ctx, 404);
      }
    });
  }

  private void show(Context ctx, int status) {
    show(ctx, status, "");
  }

  private void show(Context ctx, int status, String reference) {
    ctx.status(status);
    ctx.attribute(SHOWN, true);
    String key = WITH_TEXT.contains(status) ? Integer.toString(status) : status < 500 ? "400" : "500";
    pages.show(ctx, "problem", Map.of("key", key, "reference", reference));
  }
}
