package guildwood.site.sun;

import java.util.List;

/**
 * Shadow of a building: its footprint drawn out away from the sun by height / tan(elevation). In coordinates
 * turned so that one axis points to the sun, a point lies in it where a wall stands ahead within that length,
 * or where the footprint is overhead.
 */
final class WallShadow extends Shadow {
  private final double[] x;
  private final double[] y;
  private final double height;
  private final double[] along;
  private final double[] across;
  private double length;

  WallShadow(Building building, double readingHeightM) {
    List<GroundPoint> corners = building.footprint().corners();
    x = corners.stream().mapToDouble(GroundPoint::xM).toArray();
    y = corners.stream().mapToDouble(GroundPoint::yM).toArray();
    height = building.heightM() - readingHeightM;
    along = new double[x.length];
    across = new double[x.length];
  }

  @Override
  boolean falls() {
    return height > 0;
  }

  @Override
  protected void cast(double rise) {
    length = height / rise;
    leastAcross = Double.POSITIVE_INFINITY;
    mostAcross = Double.NEGATIVE_INFINITY;
    leastAlong = Double.POSITIVE_INFINITY;
    mostAlong = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      along[i] = x[i] * east + y[i] * north;
      across[i] = x[i] * north - y[i] * east;
      leastAlong = Math.min(leastAlong, along[i]);
      mostAlong = Math.max(mostAlong, along[i]);
      leastAcross = Math.min(leastAcross, across[i]);
      mostAcross = Math.max(mostAcross, across[i]);
    }
    leastAlong -= length;
  }

  @Override
  protected int collect(PointField field, int from, int to, int[] into, int count) {
    int found = count;
    for (int i = from; i < to; i++) {
      double pointAcross = field.xM[i] * north - field.yM[i] * east;
      double pointAlong = field.xM[i] * east + field.yM[i] * north;
      if (pointAcross >= leastAcross && pointAcross <= mostAcross
          && pointAlong <= mostAlong && pointAlong >= leastAlong
          && isShaded(pointAlong, pointAcross)) {
        into[found++] = i;
      }
    }
    return found;
  }

  private boolean isShaded(double pointAlong, double pointAcross) {
    boolean overhead = false;
    for (int i = 0, before = along.length - 1; i < along.length; before = i++) {
      if (across[before] > pointAcross != across[i] > pointAcross) {
        double share = (pointAcross - across[before]) / (across[i] - across[before]);
        double ahead = along[before] + share * (along[i] - along[before]) - pointAlong;
        if (ahead > 0) {
          if (ahead < length) {
            return true;
          }
          overhead = !overhead;
        }
      }
    }
    return overhead;
  }
}
