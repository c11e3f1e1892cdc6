package guildwood.guild.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The parts of the search against brute force on small random selections. */
class SearchProperties {

  private static Selection random(Random dice, int items) {
    int caps = 3;
    int aims = 3;
    List<Item> made = new ArrayList<>();
    for (int i = 0; i < items; i++) {
      long[] uses = new long[caps];
      int[] units = new int[aims];
      for (int r = 0; r < caps; r++) {
        uses[r] = dice.nextInt(3) == 0 ? 0 : 1 + dice.nextInt(9);
      }
      for (int w = 0; w < aims; w++) {
        units[w] = dice.nextInt(3);
      }
      int fewest = 1 + dice.nextInt(2);
      int each = dice.nextInt(200) - 30;
      made.add(new Item(fewest, fewest, fewest + dice.nextInt(3), dice.nextInt(3), dice.nextInt(20), dice.nextInt(4), each,
          each - dice.nextInt(60), dice.nextInt(40), dice.nextInt(3) * dice.nextInt(8), uses, units, dice.nextInt(3) - 1, dice.nextInt(6) == 0 ? 1 : 0, dice.nextInt(5) == 0 ? 1 : 0,
          false, new int[0]));
    }
    int[][] earned = {{0, 300, 500, 600}, {0, 250, 500, 620, 700}, {0, 80}};
    return new Selection(made, 50, 1 + dice.nextInt(4), new long[] {12 + dice.nextInt(20), 15, 25}, 20 + dice.nextInt(30),
        new int[] {1, 2}, earned, new boolean[] {dice.nextBoolean(), false, dice.nextInt(4) == 0}, tally(dice));
  }

  /** Nothing to add up to for a third of them; for the others a goal within reach or far beyond it. */
  private static Tally tally(Random dice) {
    return dice.nextInt(3) == 0 ? Tally.NONE
        : new Tally(1 + dice.nextInt(60), dice.nextInt(8), dice.nextInt(1_500), dice.nextInt(3) == 0);
  }

  private static Choice bruteForce(Selection s, int item, int[] counts, Choice best) {
    if (item == s.items) {
      boolean better = s.allows(counts) && (best == null || s.value(counts) > best.value());
      return better ? new Choice(counts, s.value(counts)) : best;
    }
    Choice found = best;
    for (int count = 0; count <= s.most[item]; count = count == 0 ? s.fewest[item] : count + 1) {
      counts[item] = count;
      found = bruteForce(s, item + 1, counts, found);
    }
    counts[item] = 0;
    return found;
  }

  private static Selection allowed(Random dice, int items) {
    Selection raw = random(dice, items);
    List<Item> fitting = new ArrayList<>();
    for (int i = 0; i < raw.items; i++) {
      if (raw.most[i] >= raw.fewest[i]) {
        fitting.add(raw.source.get(i));
      }
    }
    return raw.with(fitting, raw.caps);
  }

  @Test
  void theBoundIsNeverBelowTheBestWhateverThePrices() {
    Random dice = new Random(1);
    for (int run = 0; run < 400; run++) {
      Selection s = allowed(dice, 7);
      Choice best = bruteForce(s, 0, new int[s.items], null);
      Bound bound = new Bound(s);
      assertTrue(bound.left.settle(Fixing.nothing(s)));
      for (int k = 0; k < 20; k++) {
        Prices prices = new Prices(s.caps.length, s.earned.length);
        for (int r = 0; r < prices.cap.length; r++) {
          prices.cap[r] = dice.nextInt(3) * 400 * dice.nextDouble();
          prices.aim[r] = 300 * dice.nextDouble();
          prices.must[r] = 5_000 * dice.nextDouble();
        }
        prices.budget = 300 * dice.nextDouble();
        prices.tally = 3_000 * dice.nextDouble();
        assertTrue(bound.at(prices) >= best.value() - Bound.SLACK, bound.value + " below " + best);
      }
    }
  }

  @Test
  void strengtheningForbidsNothingThatIsAllowed() {
    Random dice = new Random(7);
    int longer = 0;
    for (int run = 0; run < 200; run++) {
      Selection s = allowed(dice, 6);
      Selection strong = SharedCaps.addedTo(s);
      longer += strong.caps.length - s.caps.length;
      every(s, 0, new int[s.items], counts -> {
        assertEquals(s.allows(counts), strong.allows(counts));
        assertEquals(s.value(counts), strong.value(counts));
      });
    }
    assertTrue(longer > 100, "only " + longer + " caps added");
  }

  /** Needs a partner, with all sorts of partners there or not: the branching must come to the best all the same. */
  @Test
  void partnersAreFoundOrDoneWithout() {
    Random dice = new Random(8);
    for (int run = 0; run < 300; run++) {
      Selection plain = allowed(dice, 7);
      List<Item> paired = new ArrayList<>();
      for (int i = 0; i < plain.items; i++) {
        Item item = plain.source.get(i);
        int self = i;
        int[] partners = java.util.stream.IntStream.range(0, plain.items).filter(j -> j != self && dice.nextInt(4) == 0).toArray();
        int alone = dice.nextBoolean() ? Item.NEVER : item.fewest() + 1;
        paired.add(dice.nextInt(3) > 0 ? item : new Item(item.fewest(), alone, item.most(), item.free(), item.price(),
            item.enough(), item.eachMilli(), item.beyondMilli(), item.lessPaidMilli(), item.adds(), item.uses(), item.units(), item.group(),
            item.gives(), item.suffers(), true, partners));
      }
      Selection s = plain.with(paired, plain.caps);
      Choice best = bruteForce(s, 0, new int[s.items], null);
      Solver.Solved solved = new Solver(s, run, 80, 400, 5_000).solve((percent, now) -> true);
      assertEquals(best.value(), solved.best().value());
      assertTrue(solved.proven() && s.allows(solved.best().counts()));
    }
  }

  @Test
  void whatTheBoundLosesByForcingAnItemInIsNeverTooMuch() {
    Random dice = new Random(2);
    for (int run = 0; run < 200; run++) {
      Selection s = allowed(dice, 7);
      Bound bound = new Bound(s);
      bound.left.settle(Fixing.nothing(s));
      Descent descent = new Descent(s, bound);
      descent.run(descent.firstPrices(), 60, 0, 1);
      bound.at(descent.best);
      for (int o = 0; o < bound.left.opens; o++) {
        int item = bound.left.open[o];
        boolean picked = false;
        for (int p = 0; p < bound.picking.picks; p++) {
          picked |= bound.picking.picked[p] == item;
        }
        Choice with = bruteForceWith(s, item);
        if (!picked && with != null) {
          assertTrue(bound.value - bound.picking.lossIn(item) >= with.value() - Bound.SLACK);
        }
      }
    }
  }

  private static Choice bruteForceWith(Selection s, int item) {
    Choice[] best = new Choice[1];
    every(s, 0, new int[s.items], counts -> {
      if (counts[item] > 0 && s.allows(counts) && (best[0] == null || s.value(counts) > best[0].value())) {
        best[0] = new Choice(counts, s.value(counts));
      }
    });
    return best[0];
  }

  private static void every(Selection s, int item, int[] counts, java.util.function.Consumer<int[]> what) {
    if (item == s.items) {
      what.accept(counts);
      return;
    }
    for (int count = 0; count <= s.most[item]; count = count == 0 ? s.fewest[item] : count + 1) {
      counts[item] = count;
      every(s, item + 1, counts, what);
    }
    counts[item] = 0;
  }

  @Test
  void solvedIsTheBestOfAll() {
    Random dice = new Random(3);
    for (int run = 0; run < 400; run++) {
      Selection s = allowed(dice, 8);
      Choice best = bruteForce(s, 0, new int[s.items], null);
      Solver.Solved solved = new Solver(s, run, 80, 400, 5_000).solve((percent, now) -> true);
      assertTrue(solved.proven());
      assertEquals(best.value(), solved.best().value());
      assertTrue(s.allows(solved.best().counts()));
      assertEquals(solved.best().value(), s.value(solved.best().counts()));
    }
  }

  @Test
  void countsOfASetAreTheBestThereAre() {
    Random dice = new Random(4);
    int settled = 0;
    for (int run = 0; run < 400; run++) {
      Selection s = allowed(dice, 5);
      int[] set = new Greedy(s, new Filling(s)).choose().set();
      Choice[] best = new Choice[1];
      every(s, 0, new int[s.items], counts -> {
        boolean same = true;
        for (int i = 0; i < s.items; i++) {
          int at = i;
          same &= counts[i] > 0 == java.util.Arrays.stream(set).anyMatch(j -> j == at);
        }
        if (same && s.allows(counts) && (best[0] == null || s.value(counts) > best[0].value())) {
          best[0] = new Choice(counts, s.value(counts));
        }
      });
      CountProof proof = new CountProof(s);
      Choice found = proof.better(set, s.fewestOf(set), best[0].value() - 1);
      assertTrue(proof.certain);
      assertEquals(best[0].value(), found.value());
      assertEquals(null, proof.better(set, s.fewestOf(set), best[0].value()));
      settled += set.length > 1 ? 1 : 0;
    }
    assertTrue(settled > 100, "only " + settled + " sets of more than one item");
  }

  @Test
  void aWhatIfKeepsTheRulesAndHasTheItem() {
    Random dice = new Random(6);
    int possible = 0;
    for (int run = 0; run < 300; run++) {
      Selection s = allowed(dice, 8);
      int[] counts = new Greedy(s, new Filling(s)).choose().counts();
      for (int item = 0; item < s.items; item++) {
        var with = new WhatIf(s).with(item, counts);
        if (with.isPresent()) {
          possible++;
          assertTrue(s.allows(with.get().counts()) && with.get().counts()[item] > 0);
          assertEquals(s.value(with.get().counts()), with.get().value());
        }
      }
    }
    assertTrue(possible > 300, "only " + possible + " possible");
  }
}
