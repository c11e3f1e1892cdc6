package guildwood.guild.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.web.SharedDemo;
import guildwood.web.Tokens;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Two guilds side by side over HTTP, and the character of each in its own numbers. */
class CompareHttpTest {
  private static final Pattern CARD = Pattern.compile("(?s)<li class=\"card proposal\">.*?</li>");

  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());

  @Test
  void anyTwoProposalsAreSetSideBySideAndEverythingAddsUp() {
    TestBed bed = TestBed.ofDemo(visitor, "Sunny bank");
    String run = visitor.post(bed.path() + "/guild/compose").location();
    Page all = TestBed.proposals(visitor, run);
    int proposals = (int) CARD.matcher(all.html()).results().count();
    assertTrue(proposals >= 2);
    String key = run.substring(run.lastIndexOf('/') + 1);
    assertTrue(all.html().contains("<option value=\"" + key + ".2\""), "two are chosen in a plain form");
    for (int one = 1; one <= proposals; one++) {
      for (int other = 1; other <= proposals; other++) {
        Page page = compare(bed, key + "." + one, key + "." + other);
        assertEquals(200, page.status());
        holdsTogether(page, visitor.get(run + "/" + one), visitor.get(run + "/" + other));
        assertEquals(one == other, page.says("Both are the same guild."));
      }
    }
  }

  @Test
  void aProposalAndTheSavedGuildAndTheDraft() {
    TestBed bed = TestBed.laidOut(visitor, "Compared");
    bed.ask("wish.function:nitrogen-fixer", "must", "wish.harvest-part:nut", "nice", "without.listed", "on");
    Page saved = bed.plant("Ours", "asparagus-officinalis", "5", "trifolium-repens", "30");
    Page draft = visitor.submit(bed.path() + "/guild/edit", "name", "Ours", "count.trifolium-repens", "40", "add", "corylus-americana", "do", "compute");
    Page page = compare(bed, "saved", "draft");
    assertTrue(page.says("Only in the saved guild asparagus"));
    assertTrue(page.says("Only in the draft American hazelnut"));
    assertTrue(page.says("In both, with other counts white clover ground cover layer 30 40") || page.text().matches(".*In both, with other counts white clover [a-z ]* 30 40 .*"), page.text());
    assertTrue(page.says("They differ in 2 species."));
    holdsTogether(page, saved, draft);
    String run = visitor.post(bed.path() + "/guild/compose").location();
    Page all = TestBed.proposals(visitor, run);
    String key = run.substring(run.lastIndexOf('/') + 1);
    assertEquals(List.of(key + ".1", "saved", "draft"), options(all).stream().filter(o -> !o.matches(".*\\.[2-9]")).toList());
    holdsTogether(compare(bed, key + ".1", "saved"), visitor.get(run + "/1"), visitor.get(bed.path() + "/guild"));
    assertFalse(compare(bed, "saved", key + ".1").says("They have changed since."));
    bed.ask("wish.function:nitrogen-fixer", "nice", "without.listed", "on");
    assertTrue(compare(bed, "saved", key + ".1").says("Both are judged by the wishes, limits and conditions for which the proposals were composed. They have changed since."));
    Page taken = visitor.submit(bed.path() + "/guild/draft", "guild",
        compare(bed, "saved", key + ".1").first("name=\"guild\" value=\"([^\"]*)\"").orElseThrow());
    assertEquals(Set.of("asparagus-officinalis", "trifolium-repens"), TestBed.counts(taken).keySet());
  }

  @Test
  void theCharacterOfEachProposalIsToldByItsOwnNumbers() {
    int told = 0;
    for (String name : List.of("Sunny bank", "Orchard row", "Ditch corner", "Behind the gym")) {
      TestBed bed = TestBed.ofDemo(visitor, name);
      String run = visitor.post(bed.path() + "/guild/compose").location();
      List<String> cards = CARD.matcher(TestBed.proposals(visitor, run).html()).results().map(r -> r.group()).toList();
      String key = run.substring(run.lastIndexOf('/') + 1);
      for (int number = 1; number <= cards.size(); number++) {
        String character = new Page(200, java.util.Map.of(), cards.get(number - 1)).first("<p class=\"character\">([^<]*)</p>").orElseThrow();
        assertTrue(visitor.get(run + "/" + number).says(character), "the same on its own page");
        Page numbers = compare(bed, key + "." + number, key + ".1");
        told += confirmed(character, numbers) ? 1 : 0;
      }
    }
    assertTrue(told >= 5, told + " sentences could be held against the table of numbers");
  }

  /** Holds a sentence that counts something against the comparison's table. */
  private static boolean confirmed(String character, Page numbers) {
    String[][] sentences = {
        {"(\\d+) of (\\d+) species give a harvest\\.", "Kinds of food: species with a harvest"},
        {"(\\d+) of (\\d+) species fix nitrogen, make mulch or root deep\\.", "Soil builders: nitrogen, mulch or deep roots"},
        {"(\\d+) of (\\d+) species feed pollinators\\.", "Species that feed pollinators"},
        {"About ([0-9.]+) for (\\d+) plants to get\\.", "Cost, about"},
        {"(\\d+) plants to get, of (\\d+) to put in\\.", "Plants to get"},
        {"(\\d+) plants of (\\d+) species\\.", "Plants in all"}};
    for (String[] sentence : sentences) {
      Matcher said = Pattern.compile(sentence[0]).matcher(character);
      if (said.matches()) {
        assertEquals(said.group(1), row(numbers, sentence[1]), character);
        return true;
      }
    }
    return false;
  }

  private static String row(Page page, String label) {
    return page.first("(?s)<th scope=\"row\">" + Pattern.quote(label) + "</th>\\s*<td[^>]*>([^<]*)</td>").orElseThrow();
  }

  @Test
  void nonsenseIsNotFoundAndWhatIsGoneLeadsBack() {
    TestBed bed = TestBed.laidOut(visitor, "Nonsense");
    assertEquals(404, compare(bed, "saved", "draft").status(), "nothing is saved");
    assertEquals(200, compare(bed, "", "draft").status());
    for (String nonsense : List.of("nobody", "1", "%3Cb%3E", "saved2", ".", ".1")) {
      assertEquals(404, compare(bed, "draft", nonsense).status(), nonsense);
    }
    Page gone = compare(bed, "draft", Tokens.fresh() + ".1");
    assertEquals(303, gone.status());
    assertEquals(bed.path() + "/guild", gone.location());
    assertEquals(404, visitor.get("/beds/999999/guild/compare?one=draft&other=draft").status());
    Page toChoose = visitor.get(bed.path() + "/guild/compare");
    assertEquals(200, toChoose.status(), "without a choice there is one to make");
    assertTrue(toChoose.says("There are no two guilds of this bed to set side by side yet.")
        || toChoose.html().contains("id=\"compare-one\""));
    assertFalse(toChoose.html().contains("class=\"compare-verdict\""), "nothing is compared with itself");
  }

  /** Points, differences, species and totals of the page agree with each other and with the guilds' own pages. */
  private static void holdsTogether(Page page, Page one, Page other) {
    List<Integer> ones = parts(page, 1);
    List<Integer> others = parts(page, 2);
    int first = total(one);
    int second = total(other);
    assertEquals(first, ones.stream().mapToInt(i -> i).sum());
    assertEquals(second, others.stream().mapToInt(i -> i).sum());
    int differences = Pattern.compile("<td data-label=\"Difference\">([0-9.]+) (more|fewer)</td>").matcher(page.html()).results()
        .mapToInt(r -> TestBed.milli(r.group(1)) * (r.group(2).equals("more") ? 1 : -1)).sum();
    assertEquals(second - first, differences);
    assertEquals(first == second, page.says("Both score the same."));
    Set<String> apart = new TreeSet<>(species(one));
    apart.addAll(species(other));
    apart.removeIf(id -> species(one).contains(id) && species(other).contains(id));
    String counted = apart.isEmpty() ? "The same species are in both." : apart.size() == 1 ? "They differ in one species."
        : "They differ in " + apart.size() + " species.";
    assertTrue(page.says(counted), counted + " " + page.text());
  }

  /** Points of every part in one column of the table of parts, thousandths. */
  private static List<Integer> parts(Page page, int column) {
    List<Integer> points = new ArrayList<>();
    String table = page.html().substring(page.html().indexOf("<h2>Where the points come from"));
    table = table.substring(0, table.indexOf("<tfoot>"));
    Matcher row = Pattern.compile("(?s)<tr[^>]*>\\s*<th scope=\"row\">.*?</tr>").matcher(table);
    while (row.find()) {
      Matcher cell = Pattern.compile("<span class=\"number\">([^<]*)</span>").matcher(row.group());
      for (int k = 0; k < column; k++) {
        assertTrue(cell.find(), row.group());
      }
      points.add(TestBed.milli(cell.group(1)));
    }
    assertTrue(points.size() >= 2, "no parts in " + table);
    return points;
  }

  private static Set<String> species(Page page) {
    Set<String> ids = new TreeSet<>(TestBed.plants(page).keySet());
    ids.addAll(TestBed.counts(page).keySet());
    return ids;
  }

  private static List<String> options(Page page) {
    String select = page.first("(?s)<select id=\"compare-one\".*?</select>").orElseThrow();
    return Pattern.compile("<option value=\"([^\"]*)\"").matcher(select).results().map(r -> r.group(1)).toList();
  }

  private Page compare(TestBed bed, String one, String other) {
    return visitor.get(bed.path() + "/guild/compare?one=" + one + "&other=" + other);
  }

  private static int total(Page page) {
    List<String> points = TestBed.points(page);
    return TestBed.milli(points.get(points.size() - 1));
  }
}
