package guildwood.drawing;

import guildwood.species.Layer;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How long arranging takes, warm. Not a test: run its main method. Times are processor time of the one thread that works. */
final class ArrangingBenchmark {
  private ArrangingBenchmark() {}

  public static void main(String[] args) {
    for (int plants : new int[] {60, 60, 60, 250, 1_000, 2_000, 4_000}) {
      double side = Math.sqrt(plants * 0.9);
      BedGround ground = RandomGuilds.rectangle(side, side);
      List<PlantKind> kinds = new ArrayList<>();
      kinds.add(RandomGuilds.kind("tree", Layer.SMALL_TREE, Math.max(1, plants / 30), 4));
      kinds.add(RandomGuilds.kind("shrub", Layer.SHRUB, plants / 6, 1.6));
      kinds.add(RandomGuilds.kind("herb", Layer.HERB, plants / 4, 0.9));
      kinds.add(RandomGuilds.kind("other-herb", Layer.HERB, plants / 4, 0.7));
      int rest = plants - kinds.stream().mapToInt(PlantKind::plants).sum();
      kinds.add(RandomGuilds.kind("cover", Layer.GROUND_COVER, rest, 0.6));
      double[] times = new double[5];
      int conflicts = 0;
      for (int run = 0; run < times.length; run++) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Arrangement found = new Arranger(ground, ArrangingRules.USUAL).arrange(kinds, List.of(), run);
        times[run] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
        conflicts += ArrangementCheck.conflicts(found, ArrangingRules.USUAL).size();
      }
      java.util.Arrays.sort(times);
      System.out.printf(Locale.ROOT, "%5d plants  %8.1f ms  (%d conflicts in %d runs)%n", plants, times[2], conflicts, times.length);
    }
  }
}
