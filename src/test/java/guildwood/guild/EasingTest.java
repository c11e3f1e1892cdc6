package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.CautionKind;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Rules eased by name are the rules the engine eases. */
class EasingTest {

  @Test
  void theNameOfAnEasingGivesTheRulesTheEngineFound() {
    Set<GuildRule> seen = new HashSet<>();
    for (int seed = 0; seed < 60; seed++) {
      GuildProblem problem = seed % 2 == 0 ? RandomBeds.tiny(2_000 + seed) : RandomBeds.ordinary(2_000 + seed, 60);
      Questions questions = new Questions(problem, seed);
      for (Gap gap : questions.gaps(problem.baseGuild())) {
        for (Closer closer : gap.closers()) {
          if (closer.change() instanceof Change.EaseRule ease) {
            seen.add(ease.rule());
            assertEquals(Optional.of(ease.rules()), Easing.of(problem.rules(), ease.rule(), ease.detail()), ease.toString());
          }
        }
      }
    }
    assertTrue(seen.size() >= 4, seen + " is too little to mean anything");
  }

  @Test
  void aRuleThatKeepsASpeciesOutIsEasedSoThatItNoLongerDoes() {
    int eased = 0;
    for (int seed = 0; seed < 30; seed++) {
      GuildProblem problem = RandomBeds.ordinary(3_000 + seed, 40);
      for (Candidate candidate : problem.candidates()) {
        for (RuleBreach breach : new Evaluator(problem).exclusions(candidate.speciesId())) {
          Optional<Change.EaseRule> ease = Easing.of(problem.rules(), breach);
          if (ease.isPresent()) {
            eased++;
            GuildProblem changed = ease.get().applyTo(problem);
            assertTrue(new Evaluator(changed).exclusions(candidate.speciesId()).stream()
                .noneMatch(b -> b.rule() == breach.rule() && b.args().equals(breach.args())), breach.toString());
          }
        }
      }
    }
    assertTrue(eased > 50, eased + " are too few to mean anything");
  }

  @Test
  void whatIsNotTheOwnersToEaseStays() {
    Rules rules = Rules.forArea(20).withBudgetCents(OptionalInt.of(1_000))
        .withExcludedCautions(EnumSet.of(CautionKind.LISTED, CautionKind.PERMIT, CautionKind.THORNS));
    assertEquals(Optional.empty(), Easing.of(rules, GuildRule.CAUTION, "listed"));
    assertEquals(Optional.empty(), Easing.of(rules, GuildRule.CAUTION, "permit"));
    assertEquals(Optional.of(Set.of(CautionKind.LISTED, CautionKind.PERMIT)),
        Easing.of(rules, GuildRule.CAUTION, "thorns").map(Rules::excludedCautions));
    for (GuildRule rule : Set.of(GuildRule.DOES_NOT_FIT, GuildRule.ENEMIES, GuildRule.LAYER_FULL, GuildRule.NO_LIGHT_LEFT,
        GuildRule.LARGER_THAN_BED, GuildRule.PARTNER_MISSING, GuildRule.STANDING_LEFT_OUT, GuildRule.UNKNOWN_SPECIES)) {
      assertEquals(Optional.empty(), Easing.of(rules, rule, "1"), rule.key());
    }
    for (String nonsense : new String[] {"", "0", "-1", "many", "99999999999", "41"}) {
      assertEquals(Optional.empty(), Easing.of(rules, GuildRule.TOO_MANY_SPECIES, nonsense), nonsense);
    }
  }
}
