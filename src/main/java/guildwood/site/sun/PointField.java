package guildwood.site.sun;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Points sorted into square tiles of a few dozen, so that a shadow looks only at the tiles it may touch. */
final class PointField {
  private static final int POINTS_A_TILE = 24;

  final double[] xM;
  final double[] yM;

  /** Place of each of them in the list as given. */
  final int[] given;

  /** Where each tile's points begin; one more entry for the end of the last. */
  final int[] begins;

  /** Middle of each tile's points and the distance of the farthest of them. */
  final double[] middleX;
  final double[] middleY;
  final double[] radius;

  /** The same for the whole field. */
  final double fieldX;
  final double fieldY;
  final double fieldRadius;

  PointField(List<GroundPoint> points) {
    double west = points.stream().mapToDouble(GroundPoint::xM).min().orElse(0);
    double south = points.stream().mapToDouble(GroundPoint::yM).min().orElse(0);
    double width = points.stream().mapToDouble(GroundPoint::xM).max().orElse(0) - west;
    double depth = points.stream().mapToDouble(GroundPoint::yM).max().orElse(0) - south;
    int across = (int) Math.max(1, Math.sqrt((double) points.size() / POINTS_A_TILE));
    double side = Math.nextUp(Math.max(width, depth) / across);
    int[] tileOf = points.stream()
        .mapToInt(p -> (int) ((p.yM() - south) / side) * (across + 1) + (int) ((p.xM() - west) / side)).toArray();
    given = IntStream.range(0, points.size()).boxed().sorted(Comparator.comparingInt(i -> tileOf[i])).mapToInt(i -> i).toArray();
    xM = IntStream.of(given).mapToDouble(i -> points.get(i).xM()).toArray();
    yM = IntStream.of(given).mapToDouble(i -> points.get(i).yM()).toArray();
    begins = IntStream.rangeClosed(0, given.length)
        .filter(i -> i == 0 || i == given.length || tileOf[given[i]] != tileOf[given[i - 1]]).toArray();
    middleX = new double[tiles()];
    middleY = new double[tiles()];
    radius = new double[tiles()];
    for (int tile = 0; tile < tiles(); tile++) {
      measure(tile);
    }
    fieldX = west + width / 2;
    fieldY = south + depth / 2;
    fieldRadius = Math.hypot(width, depth) / 2;
  }

  int size() {
    return given.length;
  }

  int tiles() {
    return begins.length - 1;
  }

  private void measure(int tile) {
    int from = begins[tile];
    int to = begins[tile + 1];
    middleX[tile] = IntStream.range(from, to).mapToDouble(i -> xM[i]).average().orElseThrow();
    middleY[tile] = IntStream.range(from, to).mapToDouble(i -> yM[i]).average().orElseThrow();
    radius[tile] = IntStream.range(from, to)
        .mapToDouble(i -> Math.hypot(xM[i] - middleX[tile], yM[i] - middleY[tile])).max().orElseThrow();
  }
}
