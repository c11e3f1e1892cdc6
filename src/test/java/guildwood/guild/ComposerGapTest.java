package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** How much of the way to certainty the composer goes by itself on libraries of different sizes. */
class ComposerGapTest {

  private record Certainty(double meanGapPercent, double worstGapPercent, int proven) {}

  private static Certainty of(int candidates, int beds) {
    double sum = 0;
    double worst = 0;
    int proven = 0;
    for (int seed = 0; seed < beds; seed++) {
      Proposal best = new Composer(Effort.USUAL)
          .draft(RandomBeds.ordinary(9_000 + seed, candidates), 1, 1, Progress.UNWATCHED).proposals().get(0);
      double gap = 100.0 * best.mostBelowBestMilli() / Math.max(1, best.score().totalMilli());
      sum += gap;
      worst = Math.max(worst, gap);
      proven += best.provenBest() ? 1 : 0;
    }
    Certainty certainty = new Certainty(sum / beds, worst, proven);
    System.out.println(candidates + " candidates, " + beds + " beds: " + certainty);
    return certainty;
  }

  @Test
  void provesMostBedsOfTwoHundredCandidates() {
    Certainty certainty = of(200, 30);
    assertTrue(certainty.proven() >= 15, certainty.toString());
    assertTrue(certainty.meanGapPercent() <= 0.5, certainty.toString());
  }

  @Test
  void staysWithinOnePercentOfTheBoundOnLargeLibraries() {
    assertTrue(of(1_000, 6).worstGapPercent() <= 1);
    assertTrue(of(5_000, 3).worstGapPercent() <= 1.5);
  }
}
