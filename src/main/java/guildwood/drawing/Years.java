package guildwood.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The years that are told of an arrangement: close together at first, when most changes, until its last plant is grown. */
public final class Years {
  private static final int[] TOLD = {0, 1, 2, 3, 5, 7, 10, 14, 18, 22, 28, 34, 40, 50, 60, 70, 80};

  private Years() {}

  /** When the slowest plant of the guild is grown; at least one year. */
  public static int untilGrown(Arrangement arrangement, YearsToMaturity maturity) {
    return arrangement.kinds().stream().filter(k -> k.standing() < k.plants()).mapToInt(k -> maturity.of(k.layer(), k.rate())).max().orElse(1);
  }

  public static List<Integer> told(Arrangement arrangement, YearsToMaturity maturity) {
    int last = untilGrown(arrangement, maturity);
    List<Integer> years = new ArrayList<>(IntStream.of(TOLD).filter(y -> y < last).boxed().toList());
    years.add(last);
    return years;
  }
}
