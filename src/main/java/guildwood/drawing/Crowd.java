package guildwood.drawing;

import java.util.List;

/**
 * The plants of one layer while places are sought for them, in arrays. Those that are held stay where they are; the
 * others are always on free ground.
 */
final class Crowd {
  /** Found places are this much wider apart than asked, so that rounding does not bring them too close. */
  private static final double AMPLE = 1.0005;

  final int size;
  final double[] x;
  final double[] y;
  final double[] radius;
  final int[] kindOf;
  final int[] number;
  final boolean[] held;
  final boolean[] placed;
  final List<PlantKind> kinds;
  final double widest;

  private final Plot plot;
  private final Neighbourhood near;

  Crowd(Plot plot, List<PlantKind> kinds, List<Spot> fixed) {
    this.plot = plot;
    this.kinds = kinds;
    size = kinds.stream().mapToInt(PlantKind::plants).sum();
    x = new double[size];
    y = new double[size];
    radius = new double[size];
    kindOf = new int[size];
    number = new int[size];
    held = new boolean[size];
    placed = new boolean[size];
    widest = kinds.stream().mapToDouble(PlantKind::crownM).max().orElse(1) / 2;
    near = plot.neighbourhood(size, 2 * widest);
    int next = 0;
    for (int kind = 0; kind < kinds.size(); kind++) {
      for (int n = 1; n <= kinds.get(kind).plants(); n++) {
        kindOf[next] = kind;
        number[next] = n;
        radius[next++] = kinds.get(kind).crownM() / 2 * AMPLE;
      }
    }
    fixed.forEach(this::hold);
  }

  private void hold(Spot spot) {
    for (int i = 0; i < size; i++) {
      if (number[i] == spot.number() && kinds.get(kindOf[i]).speciesId().equals(spot.speciesId())) {
        held[i] = true;
        put(i, spot.at().xM(), spot.at().yM());
      }
    }
  }

  void put(int plant, double toX, double toY) {
    x[plant] = toX;
    y[plant] = toY;
    placed[plant] = true;
    near.put(plant, toX, toY);
  }

  PlantKind kind(int plant) {
    return kinds.get(kindOf[plant]);
  }

  /** How much a plant would overlap with the others at a place: the sum of the squared shortfalls of spacing, m2. */
  double overlap(int plant, double atX, double atY) {
    double[] sum = {0};
    near.around(atX, atY, radius[plant] + widest * AMPLE, other -> {
      double lacks = other == plant ? 0 : lacks(plant, other, atX, atY);
      sum[0] += lacks * lacks;
    });
    return sum[0];
  }

  /** By how much another plant is too near to a place, metres; 0 where it is far enough. */
  private double lacks(int plant, int other, double atX, double atY) {
    double need = radius[plant] + radius[other];
    double dx = x[other] - atX;
    double dy = y[other] - atY;
    double away2 = dx * dx + dy * dy;
    return away2 >= need * need ? 0 : need - Math.sqrt(away2);
  }

  /** The greatest shortfall of spacing of a plant, metres. */
  double worst(int plant) {
    double[] most = {0};
    near.around(x[plant], y[plant], radius[plant] + widest * AMPLE, other -> {
      if (other != plant) {
        most[0] = Math.max(most[0], lacks(plant, other, x[plant], y[plant]));
      }
    });
    return most[0];
  }

  double worst() {
    double most = 0;
    for (int i = 0; i < size; i++) {
      most = Math.max(most, worst(i));
    }
    return most;
  }

  /** Pushes overlapping plants apart until none overlap or the sweeps are used up. */
  void pushApart(int sweeps) {
    for (int sweep = 0; sweep < sweeps; sweep++) {
      boolean[] moved = {false};
      for (int i = 0; i < size; i++) {
        pushFrom(i, sweep, moved);
      }
      if (!moved[0]) {
        return;
      }
    }
  }

  private void pushFrom(int plant, int sweep, boolean[] moved) {
    int[] touching = new int[16];
    int[] count = {0};
    near.around(x[plant], y[plant], radius[plant] + widest * AMPLE, other -> {
      if (other > plant && count[0] < touching.length && lacks(plant, other, x[plant], y[plant]) > 1e-4) {
        touching[count[0]++] = other;
      }
    });
    for (int t = 0; t < count[0]; t++) {
      int other = touching[t];
      double lacks = lacks(plant, other, x[plant], y[plant]);
      if (lacks > 0 && !(held[plant] && held[other])) {
        part(plant, other, lacks, sweep);
        moved[0] = true;
      }
    }
  }

  private void part(int plant, int other, double lacks, int sweep) {
    double dx = x[other] - x[plant];
    double dy = y[other] - y[plant];
    double away = Math.sqrt(dx * dx + dy * dy);
    // Two on one point part in a direction that differs from sweep to sweep, so that three on one point part too.
    double turn = sweep * 2.399963 + plant;
    double ux = away > 1e-9 ? dx / away : StrictMath.cos(turn);
    double uy = away > 1e-9 ? dy / away : StrictMath.sin(turn);
    double share = held[plant] ? 0 : held[other] ? 1 : 0.5;
    step(plant, -ux * lacks * share, -uy * lacks * share);
    step(other, ux * lacks * (1 - share), uy * lacks * (1 - share));
  }

  private void step(int plant, double dx, double dy) {
    if (!held[plant] && (dx != 0 || dy != 0)) {
      double[] free = plot.nearestFree(x[plant] + dx, y[plant] + dy);
      put(plant, free[0], free[1]);
    }
  }

  /** The places as they are now, to come back to. */
  double[][] places() {
    return new double[][] {x.clone(), y.clone()};
  }

  void restore(double[][] places) {
    for (int i = 0; i < size; i++) {
      put(i, places[0][i], places[1][i]);
    }
  }
}
