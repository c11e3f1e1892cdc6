package guildwood.importing.web;

import guildwood.App;
import guildwood.HttpVisitor;
import guildwood.Settings;
import java.util.Locale;

/**
 * The pages of the import with a table of 200,000 rows; run it with {@code -Xmx256m}. Prints seconds of one run on this
 * machine, and how long a page of the review takes beside one of a table of ten rows.
 */
public final class ImportPagesBenchmark {
  private static final int ROWS = 200_000;

  private ImportPagesBenchmark() {}

  public static void main(String[] args) {
    try (App app = App.start(Settings.demoOnFreePort())) {
      TableBringer bringer = new TableBringer(new HttpVisitor(app));
      String small = bringer.map("small.csv", table(10));
      bringer.look(small);
      double smallPage = page(bringer, small, "/review?section=unread&page=1");
      String large = timed("sent and taken", () -> bringer.send("large.csv", table(ROWS)));
      timed("its columns", () -> bringer.visitor().submit(large + "/sheet", "sheet", "large.csv", "first", "1", "last", "1"));
      timed("looked through", () -> {
        bringer.visitor().post(large + "/columns", "source_kind", "own-experience", "source_title", "x", "then", "look");
        return bringer.await(large + "/review", 600);
      });
      for (String where : new String[] {"/review?section=new&page=1", "/review?section=new&page=7900", "/review?section=unread&page=500", "/columns"}) {
        double seconds = page(bringer, large, where);
        System.out.printf(Locale.ENGLISH, "%-34s %.4f s, %.1f times the page of ten rows%n", where, seconds, seconds / smallPage);
      }
      Runtime runtime = Runtime.getRuntime();
      System.gc();
      System.out.printf(Locale.ENGLISH, "heap after that %d MB of %d MB%n", (runtime.totalMemory() - runtime.freeMemory()) >> 20, runtime.maxMemory() >> 20);
    }
  }

  private static double page(TableBringer bringer, String draft, String where) {
    double best = Double.MAX_VALUE;
    for (int i = 0; i < 20; i++) {
      long start = System.nanoTime();
      if (bringer.visitor().get(draft + where).status() != 200) {
        throw new IllegalStateException(where);
      }
      best = Math.min(best, (System.nanoTime() - start) / 1e9);
    }
    return best;
  }

  private interface Work<T> {
    T run();
  }

  private static <T> T timed(String what, Work<T> work) {
    long start = System.nanoTime();
    T result = work.run();
    System.out.printf(Locale.ENGLISH, "%-34s %.1f s%n", what, (System.nanoTime() - start) / 1e9);
    return result;
  }

  /** Every tenth row has a cell that cannot be read. */
  private static String table(int rows) {
    StringBuilder table = new StringBuilder("Botanical name;Common name;Height (ft);Spread (ft);pH;Bloom;Remarks\n");
    for (int row = 0; row < rows; row++) {
      table.append("Inventia ").append(word(row)).append(";plant ").append(row).append(';').append(row % 10 == 0 ? "tall" : 1 + row % 60)
          .append(";").append(1 + row % 20).append(";5.5-").append(6 + row % 2).append(";May-June;row number ").append(row).append('\n');
    }
    return table.toString();
  }

  /** A word of small letters for a number, so that no two names are near each other by design alone. */
  private static String word(int number) {
    StringBuilder word = new StringBuilder();
    for (int rest = number + 26 * 26; rest > 0; rest /= 26) {
      word.append((char) ('a' + rest % 26)).append("aeiou".charAt(rest % 5));
    }
    return word.append("ensis").toString();
  }
}
