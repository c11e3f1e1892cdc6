package guildwood.web;

import io.javalin.http.Context;

/**
 * One page of a long list.
 *
 * @param page from 1
 * @param address of the list, up to and with the page's {@code page=}
 */
public record Paging(int page, int pageCount, int rows, String address) {

  /** The page that the address asks for; the last one where it asks beyond the end, the first where it asks for none. */
  public static Paging of(Context ctx, long count, int rows, String address) {
    int pageCount = (int) Math.max(1, (count + rows - 1) / rows);
    String asked = ctx.queryParam("page");
    int page = asked != null && asked.matches("[1-9]\\d{0,8}") ? Integer.parseInt(asked) : 1;
    return new Paging(Math.min(page, pageCount), pageCount, rows, address + (address.contains("?") ? "&" : "?") + "page=");
  }

  /** How many entries stand before the page. */
  public long before() {
    return (page - 1L) * rows;
  }

  public boolean isNeeded() {
    return pageCount > 1;
  }

  public boolean hasPrevious() {
    return page > 1;
  }

  public boolean hasNext() {
    return page < pageCount;
  }

  public String previous() {
    return address + (page - 1);
  }

  public String next() {
    return address + (page + 1);
  }
}
