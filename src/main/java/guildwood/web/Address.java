package guildwood.web;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;

/** What stands in the address of a request. */
public final class Address {
  private Address() {}

  /** The number {@code {id}} of the address; what is no number leads nowhere. */
  public static long id(Context ctx) {
    return number(ctx, "id");
  }

  /** A number in the address by the name of its part; what is no number leads nowhere. */
  public static long number(Context ctx, String part) {
    String id = ctx.pathParam(part);
    if (!id.matches("\\d{1,18}")) {
      throw new NotFoundResponse();
    }
    return Long.parseLong(id);
  }
}
