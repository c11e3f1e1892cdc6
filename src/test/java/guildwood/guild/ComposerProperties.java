package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What holds for every composition, on seeded random beds. */
class ComposerProperties {

  private static List<RuleBreach> forced(GuildProblem problem) {
    return new Evaluator(problem).evaluate(problem.baseGuild()).breaches();
  }

  private static Proposal best(GuildProblem problem, long seed) {
    return new Composer(Effort.USUAL).draft(problem, seed, 1, Progress.UNWATCHED).proposals().get(0);
  }

  @Test
  void everyProposalKeepsTheRulesStaysUnderItsBoundAndApartFromTheOthers() {
    int several = 0;
    for (int seed = 0; seed < 40; seed++) {
      GuildProblem problem = seed % 2 == 0 ? RandomBeds.ordinary(seed, 120) : RandomBeds.tight(seed, 120);
      List<RuleBreach> forced = forced(problem);
      List<Proposal> proposals = new Composer(Effort.USUAL).draft(problem, seed, 5, Progress.UNWATCHED).proposals();
      several += proposals.size() == 5 ? 1 : 0;
      for (Proposal proposal : proposals) {
        assertTrue(proposal.evaluation().breaches().stream().allMatch(forced::contains),
            "bed " + seed + " breaks " + proposal.evaluation().breaches());
        assertTrue(proposal.score().totalMilli() <= proposal.upperBoundMilli());
        assertTrue(proposal.score().rank() <= proposals.get(0).score().rank());
        problem.rules().banned().forEach(id -> assertEquals(problem.standing(id), proposal.guild().count(id)));
        problem.rules().pinned().forEach((id, count) -> assertEquals(count, proposal.guild().count(id)));
        problem.standing().forEach((id, count) -> assertTrue(proposal.guild().count(id) >= count));
      }
      for (int i = 0; i < proposals.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertTrue(proposals.get(i).guild().speciesApart(proposals.get(j).guild()) >= Composition.SPECIES_APART);
        }
      }
    }
    assertTrue(several >= 20, "five proposals on only " + several + " beds");
  }

  @Test
  void theSameInputGivesTheSameAnswer() {
    for (int seed = 0; seed < 8; seed++) {
      Composition one = new Composer(Effort.USUAL).compose(RandomBeds.ordinary(seed, 100), seed, 4, Progress.UNWATCHED);
      Composition two = new Composer(Effort.USUAL).compose(RandomBeds.ordinary(seed, 100), seed, 4, Progress.UNWATCHED);
      assertEquals(one, two);
    }
  }

  @Test
  void theOrderOfTheCandidatesDoesNotMatter() {
    for (int seed = 0; seed < 8; seed++) {
      GuildProblem problem = RandomBeds.ordinary(seed, 100);
      List<Candidate> shuffled = new ArrayList<>(problem.candidates());
      java.util.Collections.shuffle(shuffled, new Random(seed));
      assertEquals(best(problem, 1), best(problem.withCandidates(shuffled), 1));
    }
  }

  @Test
  void oneMoreCandidateNeverLowersTheOptimum() {
    int proven = 0;
    for (int seed = 0; seed < 60; seed++) {
      GuildProblem problem = RandomBeds.tiny(4_000 + seed);
      Set<String> needed = new HashSet<>(problem.baseGuild().species());
      Candidate spare = problem.candidates().stream().filter(c -> !needed.contains(c.speciesId())).findFirst().orElseThrow();
      List<Candidate> fewer = problem.candidates().stream().filter(c -> !c.equals(spare)).toList();
      Proposal with = best(problem, 1);
      Proposal without = best(problem.withCandidates(fewer), 1);
      if (with.provenBest() && without.provenBest()) {
        proven++;
        assertTrue(with.score().rank() >= without.score().rank(), "bed " + seed + " with " + spare.speciesId());
      }
    }
    assertTrue(proven >= 50, "proven on only " + proven + " beds");
  }

  @Test
  void easierRulesNeverLowerTheOptimum() {
    for (int seed = 0; seed < 40; seed++) {
      GuildProblem problem = RandomBeds.tiny(5_000 + seed);
      Rules rules = problem.rules();
      Proposal before = best(problem, 1);
      for (Rules easier : List.of(rules.withBorderline(true), rules.withMaxSpecies(rules.maxSpecies() + 1),
          rules.withBanned(Set.of()), rules.withMaxSpeciesPerGenus(rules.maxSpeciesPerGenus() + 1))) {
        Proposal after = best(problem.withRules(easier), 1);
        if (before.provenBest() && after.provenBest()) {
          assertTrue(after.score().rank() >= before.score().rank(), "bed " + seed + " under " + easier);
        }
      }
    }
  }

  @Test
  void theScoreIsTheSumOfItsPartsForAnyGuildHoweverBad() {
    Random dice = new Random(5);
    for (int seed = 0; seed < 100; seed++) {
      GuildProblem problem = RandomBeds.tiny(6_000 + seed);
      Evaluator evaluator = new Evaluator(problem);
      ScoreBreakdown before = evaluator.score(Guild.EMPTY);
      for (int guilds = 0; guilds < 10; guilds++) {
        TreeMap<String, Integer> counts = new TreeMap<>();
        problem.candidates().stream().filter(c -> dice.nextInt(3) == 0)
            .forEach(c -> counts.put(c.speciesId(), 1 + dice.nextInt(9)));
        ScoreBreakdown score = evaluator.evaluate(new Guild(counts)).score();
        assertEquals(score.totalMilli(), score.parts().stream().mapToInt(ScoreBreakdown.Part::earnedMilli).sum());
        assertTrue(score.totalMilli() >= 0 && score.totalMilli() <= 100_000);
        for (ScoreBreakdown.Part part : score.parts()) {
          assertTrue(part.earnedMilli() <= part.possibleMilli());
          if (part.subject() == ScoreBreakdown.Subject.WISH || part.subject() == ScoreBreakdown.Subject.FIT) {
            assertEquals(part.earnedMilli(), part.shares().stream().mapToInt(ScoreBreakdown.Share::earnedMilli).sum());
          }
        }
        int gains = before.diff(score).stream().mapToInt(ScoreBreakdown.Difference::gainMilli).sum();
        assertEquals(score.totalMilli() - before.totalMilli(), gains);
        before = score;
      }
    }
  }

  @Test
  void progressNeverFallsAndCancellingEndsWithAGuildThatKeepsTheRules() {
    GuildProblem problem = RandomBeds.ordinary(3, 200);
    List<Integer> percents = new ArrayList<>();
    List<Guild> seen = new ArrayList<>();
    Progress stopsAtOnce = new Progress() {
      @Override
      public void at(int percent, Guild best, int totalMilli) {
        percents.add(percent);
        seen.add(best);
      }

      @Override
      public boolean isCancelled() {
        return percents.size() >= 3;
      }
    };
    Composer.Drafts drafts = new Composer(Effort.USUAL).draft(problem, 1, 5, stopsAtOnce);
    assertTrue(drafts.cancelled());
    assertEquals(percents.stream().sorted().toList(), percents);
    List<RuleBreach> forced = forced(problem);
    for (Guild guild : seen) {
      assertTrue(new Evaluator(problem).evaluate(guild).breaches().stream().allMatch(forced::contains));
    }
    assertFalse(drafts.proposals().isEmpty());
  }
}
