package guildwood.site.sun;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Prints how long sun maps take in processor time, as ratios to the bed the speed is measured by: 20 x 20 m at 0.5 m
 * with 20 trees and 2 buildings. Also what coarser steps cost: the worst cell's season mean against one-minute steps,
 * in hours. Run it by hand (its main method); no test asserts a time.
 */
public final class SunBenchmark {
  private static final Coordinates PLACE = new Coordinates(44.9, -89.6);
  private static final int RUNS = 7;

  private SunBenchmark() {}

  public static void main(String[] args) {
    SunPath path = SunPath.of(PLACE, 2026, 10);
    for (int i = 0; i < 5; i++) {
      SunHours.of(scene(20, 2), path, cells(40, 40));
    }
    double bed = seconds(() -> SunHours.of(scene(20, 2), path, cells(40, 40)));
    double sky = seconds(() -> SunPath.of(PLACE, 2026, 10));
    System.out.printf("the measured bed, whole year, every day, 10 minutes: %.3f s%n", bed);
    System.out.printf("the sun's path itself, once per place and year: %.3f s%n%n", sky);
    row("cells", "obstacles", "time", "per cell and obstacle");
    for (int[] size : new int[][] {{20, 20}, {28, 28}, {40, 40}, {57, 57}, {80, 80}, {113, 113}}) {
      double time = seconds(() -> SunHours.of(scene(20, 2), path, cells(size[0], size[1])));
      row(size[0] * size[1], 22, time / bed, time / bed * 1600 * 22 / (size[0] * size[1] * 22));
    }
    for (int groups : new int[] {0, 1, 2, 4, 8}) {
      double time = seconds(() -> SunHours.of(scene(10 * groups, groups), path, cells(40, 40)));
      row(1600, 11 * groups, time / bed, groups == 0 ? 0 : time / bed * 22 / (11 * groups));
    }
    System.out.println();
    row("step min", "days", "time", "season mean off by");
    SunHours fine = SunHours.of(scene(20, 2), SunPath.of(PLACE, 2026, 1), cells(40, 40));
    for (double step : new double[] {2, 5, 10, 20, 30, 60}) {
      SunPath stepped = SunPath.of(PLACE, 2026, step);
      SunHours hours = SunHours.of(scene(20, 2), stepped, cells(40, 40));
      double off = IntStream.range(0, 1600)
          .mapToDouble(i -> Math.abs(hours.seasonMeanHours(i) - fine.seasonMeanHours(i))).max().orElseThrow();
      row(step, "all", seconds(() -> SunHours.of(scene(20, 2), stepped, cells(40, 40))) / bed, off);
    }
  }

  /** Trees and buildings strewn around and over a bed of 20 x 20 m, the same for the same numbers. */
  static Scene scene(int trees, int buildings) {
    Random random = new Random(7);
    List<Obstacle> obstacles = new ArrayList<>();
    for (int i = 1; i <= trees; i++) {
      double height = 3 + 9 * random.nextDouble();
      obstacles.add(new Tree("tree " + i, somewhere(random), height, 0.2 * height, 0.25 * height, 0.15, 0.6, i % 4 == 0));
    }
    for (int i = 1; i <= buildings; i++) {
      GroundPoint corner = new GroundPoint(-12 + 40 * random.nextDouble(), i % 2 == 0 ? -12 : 24);
      obstacles.add(new Building("building " + i, rectangle(corner, 10, 6), 6));
    }
    return new Scene(PLACE, 2026, Season.of(4, 1, 9, 30), Season.of(4, 1, 9, 30), 0, Horizon.LEVEL, obstacles);
  }

  private static GroundPoint somewhere(Random random) {
    return new GroundPoint(-10 + 40 * random.nextDouble(), -10 + 40 * random.nextDouble());
  }

  private static Footprint rectangle(GroundPoint corner, double width, double depth) {
    double x = corner.xM();
    double y = corner.yM();
    return Footprint.through("", List.of(corner, new GroundPoint(x + width, y), new GroundPoint(x + width, y + depth),
        new GroundPoint(x, y + depth))).orThrow();
  }

  private static List<GroundPoint> cells(int columns, int rows) {
    return new BedGrid(new GroundPoint(0, 0), 20.0 / Math.sqrt((double) columns * rows), columns, rows).middles();
  }

  /** Best of several runs in processor time of this thread, which other work on the machine disturbs least. */
  private static double seconds(Supplier<?> work) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < RUNS; i++) {
      long from = threads.getCurrentThreadCpuTime();
      work.get();
      best = Math.min(best, (threads.getCurrentThreadCpuTime() - from) / 1e9);
    }
    return best;
  }

  private static void row(Object first, Object second, Object time, Object each) {
    System.out.printf("%10s %10s %22s %22s%n", first, second, text(time), text(each));
  }

  private static String text(Object value) {
    return value instanceof Double number ? "%.3f".formatted(number) : value.toString();
  }
}
