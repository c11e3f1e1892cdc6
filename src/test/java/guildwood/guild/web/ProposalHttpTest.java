package guildwood.guild.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.HttpVisitor;
import guildwood.HttpVisitor.Page;
import guildwood.web.SharedDemo;
import guildwood.web.Tokens;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Composing over HTTP: progress, proposals, a closer look, saving one, and whatever can be wrong on the way. */
class ProposalHttpTest {
  private static final Pattern CARD = Pattern.compile("(?s)<li class=\"card proposal\">.*?</li>");
  private static final long LONGEST_WAIT_MS = 60_000;

  private final HttpVisitor visitor = new HttpVisitor(SharedDemo.app());

  @ParameterizedTest
  @ValueSource(strings = {"Sunny bank", "Orchard row", "Behind the gym", "Ditch corner"})
  void proposalsExplainThemselves(String bedName) {
    TestBed bed = TestBed.ofDemo(visitor, bedName);
    String run = compose(bed);
    Page all = done(run);
    List<String> cards = cards(all);
    assertTrue(cards.size() >= 2 && cards.size() <= 5, cards.size() + " proposals");
    assertTrue(all.says("The same bed, library and wishes always give the same proposals."));
    List<Set<String>> species = new ArrayList<>();
    int before = Integer.MAX_VALUE;
    for (int number = 1; number <= cards.size(); number++) {
      Page proposal = TestBed.settled(visitor, run + "/" + number);
      assertEquals(200, proposal.status());
      int total = addsUp(proposal);
      assertTrue(total <= before, "the best comes first");
      before = total;
      explainsEveryUnmetWish(proposal, cards.get(number - 1));
      assertTrue(proposal.says("It keeps all your rules."));
      Set<String> now = TestBed.plants(proposal).keySet();
      assertFalse(now.isEmpty());
      for (Set<String> other : species) {
        assertTrue(apart(now, other) >= 3, now + " and " + other + " differ in fewer than three species");
      }
      species.add(now);
    }
    assertEquals(all.text(), done(compose(bed)).text(), "composing again gives the same");
  }

  @Test
  void progressIsAPartOfThePageThatAsksForItselfAgain() {
    TestBed bed = TestBed.ofDemo(visitor, "Orchard row");
    String run = compose(bed);
    Page part = visitor.getFragment(run);
    assertEquals(200, part.status());
    if (part.html().contains("id=\"progress\"")) {
      assertTrue(part.html().strip().startsWith("<section id=\"progress\""), "only the part: " + part.html());
      assertTrue(part.html().contains("hx-get=\"" + run + "\""));
    }
    Page whole = done(run);
    assertTrue(whole.html().contains("<main"));
    // The part cannot hold the finished page: the browser is told to load it.
    assertEquals("true", visitor.getFragment(run).headers().get("hx-refresh"));
    assertEquals(null, visitor.get(run).headers().get("hx-refresh"));
  }

  @Test
  void aProposalIsSavedAsTheGuildOfItsBed() {
    TestBed bed = TestBed.laidOut(visitor, "Saving");
    bed.ask("wish.function:ground-cover", "must", "wish.function:nitrogen-fixer", "nice", "maxSpecies", "6",
        "without.listed", "on");
    assertFalse(visitor.get(bed.path() + "/guild").html().contains("/share\""), "nothing to share yet");
    String run = compose(bed);
    done(run);
    Page proposal = visitor.get(run + "/2");
    assertFalse(visitor.get(bed.path() + "/guild").html().contains("class=\"score\""), "looking saves nothing");
    Page guild = visitor.submit(run + "/2");
    assertTrue(guild.says("Saved: Guild of Saving."));
    assertEquals(TestBed.plants(proposal), TestBed.plants(guild));
    assertEquals(TestBed.points(proposal), TestBed.points(guild));
    visitor.submit(bed.path() + "/guild/edit", withName(bed, "Our plan"));
    String replace = visitor.post(run + "/1").location();
    Page asked = visitor.get(replace);
    assertTrue(asked.says("Replace “Our plan”?"));
    assertTrue(asked.says("What would change"));
    Page replaced = visitor.submit(run + "/1", "replace", asked.valueOf("replace"));
    assertTrue(replaced.says("Saved: Our plan."), "the name stays when another proposal is taken");
    assertEquals(TestBed.plants(visitor.get(run + "/1")), TestBed.plants(replaced));
  }

  /** What was agreed to is the guild that was shown, and no other. */
  @Test
  void nothingIsReplacedThatWasNotShown() {
    TestBed bed = TestBed.laidOut(visitor, "Replacing");
    bed.ask("wish.function:ground-cover", "must", "without.listed", "on");
    String run = compose(bed);
    done(run);
    bed.plant("By hand", "asparagus-officinalis", "5");
    Map<String, Integer> before = TestBed.plants(visitor.get(bed.path() + "/guild"));
    assertEquals(run + "/1/replace", visitor.post(run + "/1").location());
    String shown = visitor.get(run + "/1/replace").valueOf("replace");
    assertEquals(before, TestBed.plants(visitor.get(bed.path() + "/guild")), "asking replaces nothing");
    bed.plant("By hand", "asparagus-officinalis", "6");
    assertEquals(run + "/1/replace", visitor.post(run + "/1", "replace", shown).location(), "another guild is saved by now");
    assertEquals(Map.of("asparagus-officinalis", 6), TestBed.plants(visitor.get(bed.path() + "/guild")));
    assertEquals(404, visitor.get(run + "/9/replace").status());
    String saved = visitor.get(run + "/1/replace").valueOf("replace");
    visitor.submit(run + "/1", "replace", saved);
    assertEquals(bed.path() + "/guild", visitor.post(run + "/1").location(), "the same guild once more replaces nothing");
  }

  /** Proposals stopped on the way bring no gaps with them: those are worked out for who looks, not passed over. */
  @Test
  void whatStoppedProposalsLeaveOpenIsExplainedAllTheSame() {
    TestBed bed = TestBed.laidOut(visitor, "Stopped");
    bed.ask("wish.function:nitrogen-fixer", "must", "wish.layer:tall-tree", "must", "wish.bloom-month:1", "nice", "without.listed", "on");
    String run = compose(bed);
    visitor.post(run + "/stop");
    done(run);
    Page all = TestBed.settled(visitor, run);
    explainsEveryUnmetWish(all, cards(all).get(0));
    assertTrue(all.html().contains("class=\"card gap\""));
  }

  @Test
  void stoppingShowsWhatThereIs() {
    TestBed bed = TestBed.ofDemo(visitor, "Sunny bank");
    String run = compose(bed);
    assertEquals(run, visitor.post(run + "/stop").location());
    done(run);
    Page stopped = TestBed.settled(visitor, run);
    assertFalse(cards(stopped).isEmpty());
    addsUp(visitor.get(run + "/1"));
    assertEquals(303, visitor.post(run + "/stop").status(), "stopping what is done does no harm");
    assertEquals(stopped.text(), visitor.get(run).text());
  }

  @Test
  void proposalsThatAreNoLongerKeptLeadBackToTheGuild() {
    TestBed bed = TestBed.ofDemo(visitor, "Behind the gym");
    String run = bed.path() + "/guild/proposals/" + Tokens.fresh();
    for (Supplier<Page> request : List.<Supplier<Page>>of(() -> visitor.get(run), () -> visitor.get(run + "/1"),
        () -> visitor.post(run + "/1"), () -> visitor.post(run + "/stop"))) {
      Page reply = request.get();
      assertEquals(303, reply.status());
      assertEquals(bed.path() + "/guild", reply.location());
      assertTrue(visitor.get(bed.path() + "/guild").says("Those proposals are no longer kept. Compose anew"));
    }
  }

  @Test
  void unknownNumbersAndBedsAreNotFound() {
    TestBed bed = TestBed.ofDemo(visitor, "Behind the gym");
    String run = compose(bed);
    done(run);
    for (String number : new String[] {"0", "6", "-1", "x", "1.5", "99999999999999999999"}) {
      assertEquals(404, visitor.get(run + "/" + number).status(), number);
      assertEquals(404, visitor.post(run + "/" + number).status(), number);
    }
    String elsewhere = run.replace(bed.path(), TestBed.ofDemo(visitor, "Sunny bank").path());
    String otherBed = elsewhere.replaceFirst("/guild/.*", "/guild");
    String before = visitor.get(otherBed).text();
    assertEquals(otherBed, visitor.get(elsewhere).location(), "not a composition for that bed");
    assertEquals(otherBed, visitor.get(elsewhere + "/1").location());
    assertEquals(otherBed, visitor.post(elsewhere + "/1").location());
    visitor.get(otherBed);
    assertEquals(before, visitor.get(otherBed).text(), "nothing of it was saved there");
    assertEquals(404, visitor.post("/beds/999999/guild/compose").status());
    assertEquals(404, visitor.post("/beds/x/guild/compose").status());
    assertEquals(404, visitor.get(run.replace(bed.path(), "/beds/999999")).status());
  }

  @Test
  void aBedWithoutWishesOrConditionsStillGetsAnAnswer() {
    String site = visitor.post("/sites/new", "name", "Bare").location();
    TestBed bed = new TestBed(visitor, visitor.post(site + "/beds/new", "name", "Bare", "area", "0.1").location());
    assertEquals(200, visitor.get(bed.path() + "/guild").status());
    String run = compose(bed);
    Page all = done(run);
    assertEquals(1, cards(all).size());
    assertTrue(all.says("for no wishes"));
    assertTrue(visitor.get(run + "/1").says("No plants yet."));
    assertTrue(visitor.submit(run + "/1").says("No plants yet."));
  }

  @Test
  void aWishNobodyCanMeetHasItsReason() {
    TestBed bed = TestBed.laidOut(visitor, "Impossible");
    bed.ask("wish.layer:tall-tree", "must", "wish.harvest-part:nut", "nice", "maxSpecies", "3",
        "wish.bloom-month:1", "nice", "nativeTo", "asia", "plantsFrom", "on-hand", "without.listed", "on");
    String run = compose(bed);
    Page all = done(run);
    assertTrue(all.html().contains("class=\"card gap\""));
    explainsEveryUnmetWish(TestBed.settled(visitor, run + "/1"), cards(all).get(0));
  }

  /** The parts of the score as written add up to the total as written; returns it in thousandths. */
  private static int addsUp(Page page) {
    List<String> points = TestBed.points(page);
    int total = TestBed.milli(points.get(points.size() - 1));
    assertEquals(total, points.subList(0, points.size() - 1).stream().mapToInt(TestBed::milli).sum(), points.toString());
    assertTrue(points.size() > 3);
    return total;
  }

  private static void explainsEveryUnmetWish(Page proposal, String card) {
    String unmet = card.contains("Leaves open:") ? words(card.replaceFirst("(?s).*Leaves open:</strong>", "").replaceFirst("(?s)</p>.*", "")) : "";
    Set<String> open = new HashSet<>(unmet.isEmpty() ? List.of() : List.of(unmet.split("; ")));
    Set<String> explained = new HashSet<>();
    Pattern.compile("(?s)<article class=\"card gap\">.*?</article>").matcher(proposal.html()).results().forEach(gap -> {
      explained.add(words(gap.group().replaceFirst("(?s).*?<h3><span>", "").replaceFirst("(?s)</span>.*", "")));
      String reason = words(gap.group().replaceFirst("(?s).*?</h3>\\s*<p>", "").replaceFirst("(?s)</p>.*", ""));
      assertTrue(reason.length() > 20 && reason.endsWith("."), reason);
      assertFalse(reason.contains("{") || reason.contains("??"), reason);
    });
    assertEquals(open, explained);
    assertEquals(open.isEmpty(), proposal.says("Every wish is met."));
  }

  private static int apart(Set<String> one, Set<String> other) {
    Set<String> all = new HashSet<>(one);
    all.addAll(other);
    all.removeIf(id -> one.contains(id) && other.contains(id));
    return all.size();
  }

  private static String words(String html) {
    return new Page(200, Map.of(), html).text();
  }

  private static List<String> cards(Page page) {
    return CARD.matcher(page.html()).results().map(r -> r.group()).toList();
  }

  private String[] withName(TestBed bed, String name) {
    Map<String, String> fields = TestBed.fields(visitor.get(bed.path() + "/guild/edit"));
    fields.put("name", name);
    fields.put("do", "save");
    return fields.entrySet().stream().flatMap(e -> java.util.stream.Stream.of(e.getKey(), e.getValue())).toArray(String[]::new);
  }

  private String compose(TestBed bed) {
    Page reply = visitor.post(bed.path() + "/guild/compose");
    assertEquals(303, reply.status());
    return reply.location();
  }

  /** Looks again until the proposals are there, as somebody without scripts would. */
  private Page done(String run) {
    long end = System.currentTimeMillis() + LONGEST_WAIT_MS;
    Page page = visitor.get(run);
    while (page.html().contains("id=\"progress\"") && System.currentTimeMillis() < end) {
      try {
        Thread.sleep(100);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException(e);
      }
      page = visitor.get(run);
    }
    assertEquals(200, page.status());
    assertTrue(page.html().contains("card proposal"), "no proposals after a minute: " + page.text());
    return page;
  }
}
