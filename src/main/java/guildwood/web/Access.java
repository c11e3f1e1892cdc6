package guildwood.web;

import io.javalin.security.RouteRole;

/** Who may call a route. Every route names one; a route without one is refused. */
public enum Access implements RouteRole {
  /** No sign-in needed. */
  ANYONE,
  /** The signed-in owner; everybody in a demonstration. */
  OWNER,
  /** Whoever holds a share link; the page itself checks the link. */
  LINK_HOLDER
}
