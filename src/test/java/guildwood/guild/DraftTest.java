package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A draft, what it decides about single species, and the steps it can take back. */
class DraftTest {
  private static final Draft PLAIN = Draft.of("Ours", Guild.of(Map.of("apple", 1, "clover", 30)));
  private static final Rules KEPT = Rules.forArea(20).withBanned(Set.of("mint")).withPinned(Map.of("apple", 1, "plum", 2));

  @Test
  void withoutDecisionsTheKeptRulesHoldAtTheCountsOfTheDraft() {
    assertEquals(KEPT, PLAIN.rulesOver(KEPT));
    Rules two = PLAIN.with(PLAIN.guild().with("apple", 2)).rulesOver(KEPT);
    assertEquals(Map.of("apple", 2, "plum", 2), two.pinned());
  }

  @Test
  void decisionsOverruleTheKeptRules() {
    assertEquals(Map.of("apple", 1, "clover", 30, "plum", 2), PLAIN.keeping("clover").rulesOver(KEPT).pinned());
    Rules banned = PLAIN.banning("apple").rulesOver(KEPT);
    assertEquals(Set.of("apple", "mint"), banned.banned());
    assertEquals(Map.of("plum", 2), banned.pinned());
    assertFalse(PLAIN.banning("apple").guild().has("apple"));
    assertEquals(Set.of(), PLAIN.freeing("mint").rulesOver(KEPT).banned());
    assertEquals(Map.of("apple", 1), PLAIN.freeing("plum").rulesOver(KEPT).pinned());
    assertEquals(Set.of(), PLAIN.banning("clover").freeing("clover").rulesOver(KEPT.withBanned(Set.of())).banned());
  }

  @Test
  void anotherGuildLiftsWhatItContradicts() {
    Draft kept = PLAIN.keeping("clover").banning("nettle");
    Draft other = kept.with(Guild.of(Map.of("nettle", 2)));
    assertEquals(Map.of(), other.marks());
    assertEquals(kept.marks(), kept.with(Guild.of(Map.of("clover", 5))).marks());
    assertEquals(Map.of("apple", 1, "clover", 5, "plum", 2), kept.with(PLAIN.guild().with("clover", 5)).rulesOver(KEPT).pinned());
  }

  @Test
  void moreThanMayBePlannedIsNotFixed() {
    Draft meadow = Draft.of("Meadow", Guild.of(Map.of("clover", 5000))).keeping("clover");
    assertEquals(Map.of("apple", 1, "plum", 2), meadow.rulesOver(KEPT).pinned());
  }

  @Test
  void whatIsKeptMustBeInTheDraft() {
    assertThrows(IllegalArgumentException.class, () -> PLAIN.keeping("nettle"));
  }

  @Test
  void fitsWhatTheBedHasNow() {
    Candidate clover = Plants.candidate(Plants.plant("Trifolium novum", "ground-cover", "0.3 m"));
    Candidate apple = Plants.candidate(Plants.plant("Malus nova", "small-tree", "4 m"));
    GuildProblem problem = new GuildProblem(20, Plants.BED, List.of(clover, apple), List.of(), Rules.forArea(20),
        new TreeMap<>(Map.of("malus-nova", 2)));
    Draft draft = Draft.of("x", Guild.of(Map.of("gone", 3, "malus-nova", 1, "trifolium-novum", 9))).keeping("gone");
    assertEquals(Map.of("malus-nova", 2, "trifolium-novum", 9), draft.fitting(problem).guild().counts());
    assertEquals(Map.of(), draft.fitting(problem).marks());
  }

  @Test
  void everyStepCanBeTakenBackAndDoneAgain() {
    Random dice = new Random(7);
    DraftHistory history = DraftHistory.startingWith(PLAIN);
    List<Draft> steps = new java.util.ArrayList<>(List.of(PLAIN));
    for (int k = 0; k < 30; k++) {
      Draft next = steps.get(k).with(PLAIN.guild().with("clover", 31 + 2 * k + dice.nextInt(2)));
      history = history.then(next);
      steps.add(next);
    }
    for (int k = 29; k >= 0; k--) {
      history = history.back();
      assertEquals(steps.get(k), history.now());
    }
    assertEquals(history, history.back());
    for (int k = 1; k <= 30; k++) {
      history = history.forward();
      assertEquals(steps.get(k), history.now());
    }
    assertEquals(history, history.forward());
  }

  @Test
  void aNewStepForgetsWhatWasTakenBackAndANameIsNoStep() {
    DraftHistory history = DraftHistory.startingWith(PLAIN).then(PLAIN.keeping("clover")).back();
    assertTrue(history.canGoForward());
    DraftHistory renamed = history.then(PLAIN.named("Theirs"));
    assertTrue(renamed.canGoForward());
    assertFalse(renamed.canGoBack());
    assertEquals("Theirs", renamed.forward().now().name(), "the name stays through steps");
    assertFalse(history.then(PLAIN.banning("clover")).canGoForward());
  }

  @Test
  void oldStepsAreForgottenAtLast() {
    DraftHistory history = DraftHistory.startingWith(PLAIN);
    for (int k = 0; k < 3 * DraftHistory.MOST_STEPS; k++) {
      history = history.then(PLAIN.with(PLAIN.guild().with("clover", 100 + k)));
    }
    assertEquals(DraftHistory.MOST_STEPS, history.past().size());
    assertEquals(100 + 3 * DraftHistory.MOST_STEPS - 2, history.back().now().guild().count("clover"));
  }
}
