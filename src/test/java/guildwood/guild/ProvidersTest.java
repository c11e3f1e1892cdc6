package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.fit.Verdict;
import guildwood.species.GuildFunction;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class ProvidersTest {

  private static long counted(GuildProblem problem, Predicate<Candidate> what) {
    return problem.candidates().stream().filter(what).count();
  }

  private static void agrees(GuildProblem problem) {
    Providers providers = Providers.of(problem);
    Evaluator evaluator = new Evaluator(problem);
    for (Wish wish : problem.wishes()) {
      Headcount count = providers.count(wish);
      assertEquals(counted(problem, c -> c.provides(wish)), count.providers());
      assertEquals(counted(problem, c -> c.provides(wish) && c.fit().verdict() != Verdict.DOES_NOT_FIT), count.suited());
      assertEquals(counted(problem, c -> c.provides(wish) && c.fit().verdict() == Verdict.DOES_NOT_FIT
          && c.fit().failing().size() == 1), count.oneConditionAway());
      assertEquals(counted(problem, c -> c.provides(wish) && evaluator.exclusions(c.speciesId()).isEmpty()), count.allowed());
      assertEquals(count.allowed(), providers.allowed(wish).size());
    }
  }

  @Test
  void countsWhatGoingThroughEveryCandidateCounts() {
    for (int seed = 0; seed < 30; seed++) {
      agrees(RandomBeds.ordinary(seed, 63 + seed));
    }
  }

  @Test
  void asksOnlyAboutWhatIsWished() {
    Providers providers = Providers.of(Plants.bed(20, List.of(Wish.bloom(Month.MAY, 1))));
    assertThrows(IllegalArgumentException.class, () -> providers.count(Wish.bloom(Month.JUNE, 1)));
  }

  /** 350,000 species and twelve functions; prints how long the answers take, asserts only that they are right. */
  @Test
  void answersFromALibraryOfTheSizeOfAFlora() {
    List<Wish> wishes = new ArrayList<>();
    for (GuildFunction function : GuildFunction.values()) {
      wishes.add(Wish.function(function, 5));
    }
    GuildProblem small = RandomBeds.ordinary(7, 2_000);
    List<Candidate> flora = new ArrayList<>();
    for (int i = 0; i < 350_000; i++) {
      flora.add(renamed(small.candidates().get(i % 2_000), String.format("flora-%06d", i)));
    }
    GuildProblem problem = new GuildProblem(60, small.conditions(), flora, wishes, Rules.forArea(60), new TreeMap<>());
    Questions questions = new Questions(problem, 1, Providers.of(problem));
    Guild guild = new Composer(Effort.QUICK)
        .draft(problem.withCandidates(flora.subList(0, 300)), 1, 1, Progress.UNWATCHED).proposals().get(0).guild();
    long counts = 0;
    long whyNot = 0;
    for (int round = 0; round < 40; round++) {
      long start = System.nanoTime();
      for (Wish wish : wishes) {
        assertEquals(0, questions.headcount(wish).providers() % 175);
      }
      counts = System.nanoTime() - start;
      start = System.nanoTime();
      WhyNot why = questions.whyNot(guild, String.format("flora-%06d", 300_000 + round));
      assertTrue(why.outcome() != WhyNot.Outcome.ALREADY_IN);
      whyNot = System.nanoTime() - start;
    }
    System.out.printf("350,000 species: twelve head counts %.2f ms, one 'why not' %.2f ms%n", counts / 1e6, whyNot / 1e6);
  }

  private static Candidate renamed(Candidate c, String id) {
    return new Candidate(id, id, c.kinship(), c.stature(), c.services(), c.manners(), c.cautions(), c.nativeTo(),
        c.supply(), c.tolerances(), c.fit(), c.assumptions());
  }
}
