package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The composer against every possible guild of small beds. */
class ComposerEnumerationTest {
  static IntStream tens() {
    return IntStream.range(0, 24);
  }

  @ParameterizedTest
  @MethodSource("tens")
  void findsAndProvesTheBestOfTinyBeds(int ten) {
    for (int seed = 10 * ten; seed < 10 * ten + 10; seed++) {
      GuildProblem problem = RandomBeds.tiny(seed);
      Enumeration all = new Enumeration(problem).run();
      Proposal best = new Composer(Effort.USUAL).draft(problem, seed, 1, Progress.UNWATCHED).proposals().get(0);
      String bed = "bed " + seed + ", " + all.guilds + " guilds, best " + all.best + ", found " + best.guild();
      assertEquals(all.bestRank, best.score().rank(), bed);
      assertTrue(best.provenBest(), bed);
      assertEquals(best.score().totalMilli(), best.upperBoundMilli(), bed);
    }
  }
}
