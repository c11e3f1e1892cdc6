package guildwood.web;

import io.javalin.config.RoutesConfig;

/** The pages of one feature, as routes. */
public interface Routes {
  void addTo(RoutesConfig routes);
}
