package guildwood.guild;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

/**
 * How long composing takes, warm, beside the greedy pass and the exact solver in the same run. Not a test:
 * run its main method. Times are processor time of the one thread that works.
 */
final class ComposerBenchmark {
  private static final int BEDS = 12;

  /** Hardly more than the greedy pass: one price step, one move, no branch. */
  private static final Effort GREEDY = new Effort(1, 1, 0);

  private ComposerBenchmark() {}

  public static void main(String[] args) {
    measure(200, 40, false);
    System.out.println("candidates  greedy ms  first within 1 % ms  one ms  five ms  five/greedy  gap %  proven  oracle/one");
    for (int candidates : new int[] {200, 1_000, 5_000}) {
      measure(candidates, BEDS, true);
    }
  }

  private static void measure(int candidates, int beds, boolean print) {
    double[][] times = new double[4][beds];
    double gap = 0;
    double oracle = 0;
    double one = 0;
    int proven = 0;
    for (int bed = 0; bed < beds; bed++) {
      GuildProblem problem = RandomBeds.ordinary(bed, candidates);
      times[0][bed] = time(() -> new Composer(GREEDY).draft(problem, 1, 1, Progress.UNWATCHED));
      Proposal best = new Composer(Effort.USUAL).draft(problem, 1, 1, Progress.UNWATCHED).proposals().get(0);
      times[1][bed] = untilGood(problem, best.upperBoundMilli());
      times[2][bed] = time(() -> new Composer(Effort.USUAL).draft(problem, 1, 1, Progress.UNWATCHED));
      times[3][bed] = time(() -> new Composer(Effort.USUAL).draft(problem, 1, 5, Progress.UNWATCHED));
      gap += 100.0 * best.mostBelowBestMilli() / Math.max(1, best.score().totalMilli()) / beds;
      proven += best.provenBest() ? 1 : 0;
      if (print && candidates == 200) {
        one += times[2][bed];
        oracle += time(() -> new Oracle(problem).solve(20));
      }
    }
    if (print) {
      System.out.printf(Locale.ROOT, "%10d  %9.1f  %19.1f  %6.1f  %7.1f  %11.1f  %5.3f  %3d/%2d  %s%n", candidates,
          median(times[0]), median(times[1]), median(times[2]), median(times[3]), median(times[3]) / median(times[0]),
          gap, proven, beds, one > 0 ? String.format(Locale.ROOT, "%.1f", oracle / one) : "");
    }
  }

  /** Until the composer first holds a guild within a hundredth of the bound, milliseconds. */
  private static double untilGood(GuildProblem problem, int boundMilli) {
    long start = cpu();
    long[] reached = {-1};
    new Composer(Effort.USUAL).draft(problem, 1, 1, new Progress() {
      @Override
      public void at(int percent, Guild best, int totalMilli) {
        if (reached[0] < 0 && totalMilli >= 0.99 * boundMilli) {
          reached[0] = cpu();
        }
      }

      @Override
      public boolean isCancelled() {
        return reached[0] >= 0;
      }
    });
    return ((reached[0] < 0 ? cpu() : reached[0]) - start) / 1e6;
  }

  private static double time(Runnable work) {
    long start = cpu();
    work.run();
    return (cpu() - start) / 1e6;
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
