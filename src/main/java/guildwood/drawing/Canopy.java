package guildwood.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The trees, shrubs and climbers of the layers above, already placed, and the trees that are there: the shade they throw towards the pole
 * while places are sought. A rough rule of ours, quick to ask; the light of the years is reckoned by the sun model.
 */
final class Canopy {
  /** A crown shades the ground as far towards the pole as this share of its height. Our own choice. */
  private static final double SHADE_PER_HEIGHT = 0.6;

  private final Plot plot;
  private final List<double[]> crowns = new ArrayList<>();

  Canopy(Plot plot) {
    this.plot = plot;
  }

  /** @param takes share of the light that is taken, 0 to 1 */
  void add(double x, double y, double radiusM, double heightM, double takes, boolean woody) {
    crowns.add(new double[] {x, y, radiusM, heightM * SHADE_PER_HEIGHT, takes, woody ? 1 : 0});
  }

  /** Share of the light that is taken from a place, 0 to 1. */
  double shade(double x, double y) {
    double left = 1;
    for (double[] crown : crowns) {
      double along = Math.max(0, Math.min(crown[3], (y - crown[1]) * plot.poleward()));
      double dx = x - crown[0];
      double dy = y - crown[1] - along * plot.poleward();
      double away = Math.sqrt(dx * dx + dy * dy) / crown[2];
      if (away < 1.3) {
        left *= 1 - crown[4] * Math.min(1, (1.3 - away) / 0.3);
      }
    }
    return 1 - left;
  }

  /** How much a stem would stand too near to woody stems above, squared and summed, m2. */
  double crowding(double x, double y, double gapM) {
    double sum = 0;
    for (double[] crown : crowns) {
      if (crown[5] > 0) {
        double dx = x - crown[0];
        double dy = y - crown[1];
        double lacks = gapM - Math.sqrt(dx * dx + dy * dy);
        sum += lacks > 0 ? lacks * lacks : 0;
      }
    }
    return sum;
  }
}
