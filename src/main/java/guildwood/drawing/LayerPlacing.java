package guildwood.drawing;

import guildwood.site.sun.GroundPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Seeks places for the plants of one layer: a first place for each, the widest first; then many small moves that are
 * taken where they are better, at first also where they are a little worse; then overlaps are pushed apart. Seeded and
 * on a budget of steps, so the same bed gets the same places everywhere.
 */
final class LayerPlacing {
  private static final int MOVES_PER_PLANT = 220;
  private static final int MOST_MOVES = 40_000;
  private static final int MOST_FIRST_PLACES = 500;
  private static final int SWEEPS = 300;
  private static final int REPAIRS = 24;

  /** What a squared metre of lacking spacing weighs against everything else that is wished of a place. */
  private static final double SPACING_WEIGHT = 120;

  private final Plot plot;
  private final Crowd crowd;
  private final Places wished;
  private final Random dice;
  private final List<GroundPoint> lattice;

  LayerPlacing(Plot plot, Crowd crowd, Places wished, long seed) {
    this.plot = plot;
    this.crowd = crowd;
    this.wished = wished;
    dice = new Random(seed * 0x9E3779B97F4A7C15L + 17);
    lattice = plot.lattice(Math.max(60, Math.min(MOST_FIRST_PLACES, 150_000 / Math.max(1, crowd.size))));
  }

  void place() {
    int[] free = IntStream.range(0, crowd.size).filter(i -> !crowd.held[i]).boxed()
        .sorted(Comparator.comparing((Integer i) -> -crowd.radius[i]).thenComparing(i -> i)).mapToInt(i -> i).toArray();
    if (free.length == 0) {
      return;
    }
    for (int plant : free) {
      firstPlace(plant);
    }
    anneal(free);
    crowd.pushApart(SWEEPS);
    repair(free);
  }

  private double score(int plant, double x, double y) {
    return SPACING_WEIGHT * crowd.overlap(plant, x, y) + wished.cost(crowd, plant, x, y);
  }

  /** The best of the places beside its own kind, or of the lattice where those are taken. */
  private void firstPlace(int plant) {
    List<GroundPoint> beside = crowd.kind(plant).isGrouped() ? besideMates(plant) : List.of();
    double best = Double.POSITIVE_INFINITY;
    double[] at = null;
    for (GroundPoint point : beside) {
      double score = crowd.overlap(plant, point.xM(), point.yM()) > 1e-9 ? Double.POSITIVE_INFINITY : score(plant, point.xM(), point.yM());
      if (score < best) {
        best = score;
        at = new double[] {point.xM(), point.yM()};
      }
    }
    if (at == null) {
      at = bestOfLattice(plant);
    }
    crowd.put(plant, at[0], at[1]);
  }

  private double[] bestOfLattice(int plant) {
    double best = Double.POSITIVE_INFINITY;
    double[] at = null;
    for (GroundPoint point : lattice) {
      double score = score(plant, point.xM(), point.yM());
      if (score < best) {
        best = score;
        at = new double[] {point.xM(), point.yM()};
      }
    }
    return at;
  }

  /** The six places around each of the last few of its kind, in rows that continue each other. */
  private List<GroundPoint> besideMates(int plant) {
    List<GroundPoint> places = new ArrayList<>();
    int mates = 0;
    double spacing = 2 * crowd.radius[plant] * 1.0001;
    for (int mate = crowd.size - 1; mate >= 0 && mates < 24; mate--) {
      if (mate != plant && crowd.placed[mate] && crowd.kindOf[mate] == crowd.kindOf[plant]) {
        mates++;
        for (int side = 0; side < 6; side++) {
          double x = crowd.x[mate] + spacing * StrictMath.cos(side * Math.PI / 3);
          double y = crowd.y[mate] + spacing * StrictMath.sin(side * Math.PI / 3);
          if (plot.isFree(x, y)) {
            places.add(new GroundPoint(x, y));
          }
        }
      }
    }
    return places;
  }

  private void anneal(int[] free) {
    int moves = Math.min(MOST_MOVES, MOVES_PER_PLANT * free.length);
    for (int move = 0; move < moves; move++) {
      double heat = 1 - (double) move / moves;
      if (move % free.length == 0) {
        wished.gather(crowd);
      }
      int plant = free[dice.nextInt(free.length)];
      if (free.length > 1 && dice.nextInt(8) == 0) {
        swap(plant, free[dice.nextInt(free.length)], heat);
      } else {
        shift(plant, heat);
      }
    }
  }

  private void shift(int plant, double heat) {
    boolean far = dice.nextInt(10) == 0;
    double[] to;
    if (far) {
      GroundPoint point = lattice.get(dice.nextInt(lattice.size()));
      to = new double[] {point.xM(), point.yM()};
    } else {
      double step = 0.02 + plot.longM() * 0.12 * heat * heat;
      to = plot.nearestFree(crowd.x[plant] + step * dice.nextGaussian(), crowd.y[plant] + step * dice.nextGaussian());
    }
    double change = score(plant, to[0], to[1]) - score(plant, crowd.x[plant], crowd.y[plant]);
    if (isTaken(change, heat)) {
      crowd.put(plant, to[0], to[1]);
    }
  }

  private void swap(int one, int other, double heat) {
    if (crowd.kindOf[one] == crowd.kindOf[other]) {
      return;
    }
    double[] a = {crowd.x[one], crowd.y[one]};
    double[] b = {crowd.x[other], crowd.y[other]};
    double before = score(one, a[0], a[1]) + score(other, b[0], b[1]);
    crowd.put(one, b[0], b[1]);
    crowd.put(other, a[0], a[1]);
    double after = score(one, b[0], b[1]) + score(other, a[0], a[1]);
    if (!isTaken(after - before, heat)) {
      crowd.put(one, a[0], a[1]);
      crowd.put(other, b[0], b[1]);
    }
  }

  private boolean isTaken(double change, double heat) {
    return change <= 0 || dice.nextDouble() < StrictMath.exp(-change / (0.3 * heat * heat + 1e-6));
  }

  /** Takes plants that are still too close to where they disturb least, and pushes apart again; the best of it stays. */
  private void repair(int[] free) {
    double best = crowd.worst();
    double[][] kept = crowd.places();
    for (int round = 0; round < REPAIRS && best > CrownSpacing.SLACK_M / 2; round++) {
      for (int plant : free) {
        if (crowd.worst(plant) > CrownSpacing.SLACK_M / 2) {
          leastOverlap(plant, round);
        }
      }
      crowd.pushApart(SWEEPS);
      double now = crowd.worst();
      if (now < best) {
        best = now;
        kept = crowd.places();
      }
    }
    crowd.restore(kept);
  }

  private void leastOverlap(int plant, int round) {
    double best = Double.POSITIVE_INFINITY;
    double[] at = {crowd.x[plant], crowd.y[plant]};
    for (GroundPoint point : lattice) {
      // A little chance, so that rounds that lead back to the same places do not follow one another.
      double score = crowd.overlap(plant, point.xM(), point.yM()) * (1 + dice.nextDouble() * round * 0.1) + 1e-3 * wished.cost(crowd, plant, point.xM(), point.yM());
      if (score < best) {
        best = score;
        at = new double[] {point.xM(), point.yM()};
      }
    }
    crowd.put(plant, at[0], at[1]);
  }
}
