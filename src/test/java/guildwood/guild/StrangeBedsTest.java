package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Beds nobody would plan but somebody will enter: overfull with standing plants, pinned against each other,
 * no money, no plants, no wishes, smaller than a plate. The search and the evaluator must agree on each.
 */
class StrangeBedsTest {
  private final Random dice = new Random(99);

  @Test
  void everyBedHasAnAnswerThatBreaksNothingMoreThanItMust() {
    for (int seed = 0; seed < 400; seed++) {
      GuildProblem bed = strange(seed % 3 == 0 ? RandomBeds.ordinary(seed, 30) : RandomBeds.tiny(20_000 + seed));
      Composition composition = new Composer(Effort.QUICK).compose(bed, seed, 3, Progress.UNWATCHED);
      List<RuleBreach> forced = new Evaluator(bed).evaluate(bed.baseGuild()).breaches();
      for (Proposal proposal : composition.proposals()) {
        assertTrue(proposal.evaluation().breaches().stream().allMatch(forced::contains),
            "bed " + seed + " breaks " + proposal.evaluation().breaches() + " beyond " + forced);
      }
      assertEquals(composition.best().score().unmetWishes(), composition.gaps().stream().map(Gap::wish).toList());
    }
  }

  private GuildProblem strange(GuildProblem ordinary) {
    TreeMap<String, Integer> standing = new TreeMap<>();
    TreeMap<String, Integer> pinned = new TreeMap<>();
    for (Candidate candidate : ordinary.candidates()) {
      String id = candidate.speciesId();
      if (dice.nextInt(6) == 0) {
        standing.put(id, 1 + dice.nextInt(9));
      }
      if (dice.nextInt(8) == 0 && !ordinary.rules().banned().contains(id)) {
        pinned.put(id, standing.getOrDefault(id, 1) + dice.nextInt(4));
      }
    }
    Rules rules = ordinary.rules().withPinned(pinned).withPlantsFrom(dice.nextInt(6) == 0 ? PlantsFrom.ON_HAND : PlantsFrom.ANYWHERE);
    rules = dice.nextInt(3) == 0 ? rules.withMaxPlants(dice.nextInt(4)) : rules;
    rules = dice.nextInt(6) == 0 ? rules.withBudgetCents(OptionalInt.of(0)) : rules;
    rules = dice.nextInt(8) == 0 ? rules.withMaxSpecies(dice.nextInt(2)) : rules;
    double area = dice.nextInt(4) == 0 ? 0.1 + dice.nextDouble() : ordinary.areaM2();
    List<Wish> wishes = dice.nextInt(5) == 0 ? List.of() : ordinary.wishes();
    return new GuildProblem(area, ordinary.conditions(), ordinary.candidates(), wishes, rules, standing);
  }
}
