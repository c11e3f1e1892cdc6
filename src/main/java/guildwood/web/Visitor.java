package guildwood.web;

import io.javalin.http.Context;
import java.util.OptionalLong;

/**
 * Who asks: the owner, or nobody known.
 *
 * @param accountId of the signed-in owner; absent for others and for visitors of a demonstration
 */
public record Visitor(boolean isOwner, OptionalLong accountId) {
  private static final String KEY = "guildwood.visitor";
  public static final Visitor STRANGER = new Visitor(false, OptionalLong.empty());

  public static Visitor of(Context ctx) {
    Visitor visitor = ctx.attribute(KEY);
    return visitor == null ? STRANGER : visitor;
  }

  public void enter(Context ctx) {
    ctx.attribute(KEY, this);
  }
}
