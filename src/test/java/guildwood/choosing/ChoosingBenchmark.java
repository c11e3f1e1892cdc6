package guildwood.choosing;

import guildwood.fit.Fit;
import guildwood.fit.Tolerances;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import guildwood.species.SpeciesLibrary;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Not a test: prints how the index compares with asking every species, for a small and a huge invented
 * library. Run {@code main}; figures are medians, and the ratios matter more than the milliseconds.
 */
public final class ChoosingBenchmark {
  private static final Map<Axis, Range> PLACE = Map.of(
      Axis.LIGHT, new Range(4, 7), Axis.MOISTURE, new Range(2, 3), Axis.WINTER_COLD, Range.of(-26));

  private static final Map<String, Query> QUERIES = new java.util.TreeMap<>(Map.of(
      "nothing chosen", Query.NOTHING,
      "one layer", Query.NOTHING.with(Facet.LAYER, "shrub"),
      "three facets", Query.NOTHING.with(Facet.LAYER, "shrub").with(Facet.FUNCTION, "nitrogen-fixer")
          .with(Facet.BLOOM, "may").keeping(java.util.Set.of(Facet.BLOOM)),
      "fruit in August", Query.NOTHING.with(Facet.HARVEST, "fruit").with(Facet.HARVEST_MONTH, "august"),
      "two letters typed", Query.NOTHING.withText("be"),
      "narrow: a name and four facets", Query.NOTHING.withText("berc").with(Facet.LAYER, "shrub")
          .with(Facet.DURATION, "perennial").with(Facet.LIGHT, "part-shade").with(Facet.USE, "food")));

  private ChoosingBenchmark() {}

  public static void main(String[] args) {
    int most = args.length > 0 ? Integer.parseInt(args[0]) : 350_000;
    for (int size : new int[] {Math.min(20_000, most), most}) {
      measure(size);
    }
  }

  private static void measure(int size) {
    SpeciesLibrary library = RandomLibrary.sparse(7, size);
    System.out.printf("%n%,d species, %,d statements, %d options%n", size,
        library.species().stream().mapToLong(s -> s.statements().size()).sum(),
        Arrays.stream(Facet.values()).mapToInt(f -> f.options().size()).sum());
    long before = used();
    long cpuBefore = cpuNanos();
    long started = System.nanoTime();
    FacetIndex index = FacetIndex.of(library);
    System.out.printf("index built in %.0f ms (%.0f ms of processor time), about %d MiB%n",
        (System.nanoTime() - started) / 1e6, (cpuNanos() - cpuBefore) / 1e6, (used() - before) >> 20);
    started = System.nanoTime();
    BedFits bed = index.judge(species -> Fit.ofRanges(Tolerances.of(species), PLACE));
    System.out.printf("a bed judged in %.0f ms (kept until the library changes)%n", (System.nanoTime() - started) / 1e6);
    System.out.printf("%-32s %9s %14s %14s %16s %8s%n", "query", "remain", "filter, ms", "+ counts, ms", "one by one, ms", "ratio");
    QUERIES.forEach((name, query) -> {
      Query withBed = query.with(Facet.VERDICT, "fits").keeping(java.util.Set.of(Facet.VERDICT));
      line(name, library, index, query, Optional.empty());
      line(name + ", for a bed", library, index, withBed, Optional.of(bed));
    });
  }

  private static void line(String name, SpeciesLibrary library, FacetIndex index, Query query, Optional<BedFits> bed) {
    double filter = medianMs(21, () -> index.choose(query, bed).list(Order.NAME, 0, 50));
    double counts = medianMs(21, () -> {
      Outcome outcome = index.choose(query, bed);
      return List.of(outcome.list(Order.NAME, 0, 50), outcome.counts());
    });
    String naive = "-";
    String ratio = "-";
    if (bed.isEmpty()) {
      PlainFilter plain = new PlainFilter(query, Map.of(), false);
      double oneByOne = medianMs(3, () -> library.species().stream().filter(plain::passes).count());
      naive = String.format("%.1f", oneByOne);
      ratio = String.format("%.0f", oneByOne / filter);
    }
    System.out.printf("%-32s %,9d %14.3f %14.3f %16s %8s%n",
        name, index.choose(query, bed).count(), filter, counts, naive, ratio);
  }

  private static double medianMs(int runs, Supplier<Object> work) {
    double[] times = new double[runs];
    int sink = 0;
    for (int warm = 0; warm < runs; warm++) {
      sink += work.get().hashCode();
    }
    for (int run = 0; run < runs; run++) {
      long started = System.nanoTime();
      sink += work.get().hashCode();
      times[run] = (System.nanoTime() - started) / 1e6;
    }
    Arrays.sort(times);
    return sink == Integer.MIN_VALUE ? -1 : times[runs / 2];
  }

  /** Time on a shared machine says little; processor time says more. */
  private static long cpuNanos() {
    return ProcessHandle.current().info().totalCpuDuration().map(java.time.Duration::toNanos).orElse(0L);
  }

  private static long used() {
    System.gc();
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
