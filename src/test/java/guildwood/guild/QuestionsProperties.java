package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What holds for every gap and every answer, on seeded random beds. */
class QuestionsProperties {

  private static List<RuleBreach> forced(GuildProblem problem) {
    return new Evaluator(problem).evaluate(problem.baseGuild()).breaches();
  }

  @Test
  void everyCloserDeliversWhatItPromises() {
    int closers = 0;
    for (int seed = 0; seed < 40; seed++) {
      GuildProblem problem = seed % 2 == 0 ? RandomBeds.tiny(500 + seed) : RandomBeds.ordinary(500 + seed, 60);
      Composition composition = new Composer(Effort.USUAL).compose(problem, seed, 1, Progress.UNWATCHED);
      ScoreBreakdown now = composition.best().score();
      assertEquals(now.unmetWishes(), composition.gaps().stream().map(Gap::wish).toList());
      for (Gap gap : composition.gaps()) {
        for (Closer closer : gap.closers()) {
          closers++;
          GuildProblem changed = closer.change().applyTo(problem);
          Evaluation evaluation = new Evaluator(changed).evaluate(closer.guild());
          String what = "bed " + seed + ", " + gap.wish().key() + ": " + closer;
          assertEquals(closer.totalMilli(), evaluation.score().totalMilli(), what);
          assertEquals(closer.gainMilli(), closer.totalMilli() - now.totalMilli(), what);
          assertTrue(evaluation.score().unmetWishes().stream().noneMatch(w -> w.asksSameAs(gap.wish())), what);
          List<RuleBreach> forced = forced(changed);
          assertTrue(evaluation.breaches().stream().allMatch(forced::contains), what + " " + evaluation.breaches());
        }
      }
    }
    assertTrue(closers > 60, closers + " closers are too few to mean anything");
  }

  @Test
  void theReasonOfAGapIsTrue() {
    for (int seed = 0; seed < 120; seed++) {
      GuildProblem problem = RandomBeds.tiny(700 + seed);
      Questions questions = new Questions(problem, seed);
      Evaluator evaluator = new Evaluator(problem);
      Guild guild = new Composer(Effort.QUICK).draft(problem, seed, 1, Progress.UNWATCHED).proposals().get(0).guild();
      for (Wish wish : evaluator.score(guild).unmetWishes()) {
        List<Candidate> providers = problem.candidates().stream().filter(c -> c.provides(wish)).toList();
        Gap.Reason reason = questions.reason(wish, guild);
        if (reason instanceof Gap.Reason.NobodyInLibrary) {
          assertTrue(providers.isEmpty());
        } else if (reason instanceof Gap.Reason.FailsOnSite fails) {
          assertEquals(providers.size(), fails.species());
          providers.forEach(c -> assertFalse(c.fit().failing().isEmpty()));
        } else if (reason instanceof Gap.Reason.ExcludedByRules) {
          providers.forEach(c -> assertFalse(evaluator.exclusions(c.speciesId()).isEmpty()));
        } else if (reason instanceof Gap.Reason.GroundShort ground) {
          assertEquals(WishKind.GROUND, wish.kind());
          assertEquals(evaluator.evaluate(guild).numbers().groundPermille(), ground.coveredPermille());
          assertTrue(problem.find(ground.speciesId()).orElseThrow().provides(wish));
        } else if (reason instanceof Gap.Reason.CouldComeIn open) {
          assertTrue(problem.find(open.speciesId()).orElseThrow().provides(wish));
          WhyNot why = questions.whyNot(guild, open.speciesId());
          assertEquals(open.changeMilli(), why.changeMilli());
        }
      }
    }
  }

  @Test
  void askingWhyNotGivesAGuildThatKeepsTheRulesAndScoresAsSaid() {
    int asked = 0;
    for (int seed = 0; seed < 30; seed++) {
      GuildProblem problem = RandomBeds.ordinary(900 + seed, 40);
      Guild guild = new Composer(Effort.QUICK).draft(problem, seed, 1, Progress.UNWATCHED).proposals().get(0).guild();
      Evaluator evaluator = new Evaluator(problem);
      List<RuleBreach> forced = forced(problem);
      for (Candidate candidate : problem.candidates()) {
        WhyNot why = new Questions(problem, seed).whyNot(guild, candidate.speciesId());
        assertEquals(guild.has(candidate.speciesId()), why.outcome() == WhyNot.Outcome.ALREADY_IN);
        if (why.guild().isPresent() && why.outcome() != WhyNot.Outcome.ALREADY_IN) {
          asked++;
          Evaluation with = evaluator.evaluate(why.guild().get());
          assertTrue(with.guild().has(candidate.speciesId()));
          assertTrue(with.breaches().stream().allMatch(forced::contains), why + " breaks " + with.breaches());
          assertEquals(why.changeMilli(), with.score().totalMilli() - evaluator.score(guild).totalMilli());
        } else if (why.outcome() == WhyNot.Outcome.EXCLUDED) {
          assertFalse(why.exclusions().isEmpty());
        }
      }
    }
    assertTrue(asked > 200, asked + " answers are too few to mean anything");
  }
}
