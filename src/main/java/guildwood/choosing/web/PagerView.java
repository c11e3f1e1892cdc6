package guildwood.choosing.web;

import guildwood.web.Messages;

/** Where one is in a long list; the addresses are empty where there is nothing to go to. */
record PagerView(String where, String first, String previous, String next, String last) {
  static final int ROWS = 50;

  /** Number of the last page that has rows; 1 for an empty list. */
  static int lastPage(int rows) {
    return Math.max(1, (rows + ROWS - 1) / ROWS);
  }

  static PagerView of(LibraryAddress address, int rows, Messages messages) {
    int page = address.page();
    int last = lastPage(rows);
    String where = messages.say("choosing.rows", (page - 1) * ROWS + 1, Math.min(rows, page * ROWS), rows);
    return new PagerView(where,
        page > 2 ? address.onPage(1).path() : "",
        page > 1 ? address.onPage(page - 1).path() : "",
        page < last ? address.onPage(page + 1).path() : "",
        page < last - 1 ? address.onPage(last).path() : "");
  }

  public boolean isNeeded() {
    return !previous.isEmpty() || !next.isEmpty();
  }
}
