package guildwood.web;

import io.javalin.config.RoutesConfig;
import java.util.Map;

/** The first page. */
public final class HomePages implements Routes {
  private final Pages pages;

  public HomePages(Pages pages) {
    this.pages = pages;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/", ctx -> pages.show(ctx, "home", Map.of()), Access.OWNER);
  }
}
