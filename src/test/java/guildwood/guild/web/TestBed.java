package guildwood.guild.web;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A bed to plan guilds in, by its address, and what the tests do with it. */
record TestBed(HttpVisitor visitor, String path) {

  /** A sunny, moist bed of 24 m2 in zone 5a, on a site of its own. */
  static TestBed laidOut(HttpVisitor visitor, String name) {
    String site = visitor.post("/sites/new", "name", "Site of " + name, "place", "US-WI", "winter", "5a", "winter-basis", "published",
        "ph-from", "6.2", "ph-basis", "measured").location();
    String path = visitor.post(site + "/beds/new", "name", name, "area", "24", "area-unit", "metric", "light-from", "full sun",
        "light-basis", "observed", "moisture-from", "moist", "moisture-basis", "observed").location();
    return new TestBed(visitor, path);
  }

  /** One of the demonstration's beds. */
  static TestBed ofDemo(HttpVisitor visitor, String name) {
    String path = visitor.get("/").first("href=\"(/beds/\\d+)\"[^>]*>" + Pattern.quote(name)).orElseThrow();
    return new TestBed(visitor, path);
  }

  /** The page of proposals once they are there. */
  static Page proposals(HttpVisitor visitor, String run) {
    long end = System.nanoTime() + 60_000_000_000L;
    Page page = visitor.get(run);
    while (page.html().contains("id=\"progress\"") && System.nanoTime() < end) {
      java.util.concurrent.locks.LockSupport.parkNanos(100_000_000L);
      page = visitor.get(run);
    }
    if (page.status() != 200 || page.html().contains("id=\"progress\"")) {
      throw new AssertionError("no proposals at " + run + ": " + page.status());
    }
    return page;
  }

  /** A page once the gaps on it are worked out. */
  static Page settled(HttpVisitor visitor, String path) {
    long end = System.nanoTime() + 60_000_000_000L;
    Page page = visitor.get(path);
    while (page.html().contains("id=\"gaps-working\"") && System.nanoTime() < end) {
      java.util.concurrent.locks.LockSupport.parkNanos(100_000_000L);
      page = visitor.get(path);
    }
    if (page.status() != 200 || page.html().contains("id=\"gaps-working\"")) {
      throw new AssertionError("no gaps at " + path + ": " + page.status());
    }
    return page;
  }

  /** Keeps wishes and limits; what is not named here is as the form has it when nothing is chosen. */
  Page ask(String... namesAndValues) {
    return visitor.submit(path + "/wishes", whole(namesAndValues));
  }

  /** The fields of a form of wishes, and the one that says that it arrived whole. */
  static String[] whole(String... namesAndValues) {
    List<String> fields = new ArrayList<>(List.of(namesAndValues));
    fields.addAll(List.of("whole", "yes"));
    return fields.toArray(String[]::new);
  }

  void standing(String scientificName, int plants) {
    visitor.submit(path + "/standing", "species", scientificName, "count", Integer.toString(plants));
  }

  /** Saves a guild by hand: species ids, each followed by its count. */
  Page plant(String name, String... idsAndCounts) {
    List<String> fields = new ArrayList<>(List.of("name", name, "do", "save"));
    for (int i = 0; i < idsAndCounts.length; i += 2) {
      fields.addAll(List.of("count." + idsAndCounts[i], idsAndCounts[i + 1]));
    }
    return visitor.submit(path + "/guild/edit", fields.toArray(String[]::new));
  }

  /** The species of a page's table of plants and how many of each, by id. */
  static Map<String, Integer> plants(Page page) {
    Map<String, Integer> plants = new LinkedHashMap<>();
    Matcher row = Pattern.compile("(?s)<a href=\"/library/([a-z0-9-]+)\">[^<]*</a><br>.*?<td class=\"number\"[^>]*><span>(\\d+)</span>")
        .matcher(page.html());
    while (row.find()) {
      plants.put(row.group(1), Integer.valueOf(row.group(2)));
    }
    return plants;
  }

  /** Species and counts in the fields of the page for editing by hand. */
  static Map<String, String> counts(Page page) {
    Map<String, String> counts = new LinkedHashMap<>();
    fields(page).forEach((field, value) -> {
      if (field.startsWith("count.")) {
        counts.put(field.substring("count.".length()), value);
      }
    });
    return counts;
  }

  /** What the parts of the score earn, as written, in their order; the total last. */
  static List<String> points(Page page) {
    return Pattern.compile("<td class=\"number\" data-label=\"Earned\">(?:<strong>)?([^<]*)<").matcher(page.html()).results()
        .map(r -> r.group(1)).toList();
  }

  /** Thousandths of a point of a number as written. */
  static int milli(String points) {
    return new java.math.BigDecimal(points.replace('−', '-')).movePointRight(3).intValueExact();
  }

  /** What a browser would send if the form were submitted as the page shows it. */
  static Map<String, String> fields(Page page) {
    Map<String, String> fields = new LinkedHashMap<>();
    String main = page.html().substring(page.html().indexOf("<main"), page.html().indexOf("</main>"));
    Matcher field = Pattern.compile("<(input|select|textarea)\\b[^>]*\\sname=\"([^\"]*)\"[^>]*>").matcher(main);
    while (field.find()) {
      boolean box = field.group().contains("type=\"checkbox\"");
      if (!field.group(2).equals("csrf") && (!box || field.group().contains(" checked"))) {
        // Each field by itself: to look for every name in the whole of a long page takes long.
        int end = field.group(1).equals("input") ? field.end() : main.indexOf("</" + field.group(1) + ">", field.end()) + 11;
        Page alone = new Page(page.status(), Map.of(), main.substring(field.start(), Math.min(end, main.length())));
        fields.put(field.group(2), box ? "on" : alone.valueOf(field.group(2)));
      }
    }
    return fields;
  }
}
