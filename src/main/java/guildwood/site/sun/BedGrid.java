package guildwood.site.sun;

import java.util.ArrayList;
import java.util.List;

/**
 * Square cells laid over a bed, rows from south to north, in each row from west to east.
 *
 * @param southWest corner of the grid
 * @param cellM side of a cell
 */
public record BedGrid(GroundPoint southWest, double cellM, int columns, int rows) {
  public static final int MOST_CELLS = 250_000;

  public BedGrid {
    if (!(cellM >= 0.01 && cellM <= 100) || columns < 1 || rows < 1 || (long) columns * rows > MOST_CELLS) {
      throw new IllegalArgumentException("no grid of " + columns + " x " + rows + " cells of " + cellM + " m");
    }
  }

  /** The smallest grid that covers an outline. */
  public static BedGrid over(Footprint outline, double cellM) {
    double west = outline.corners().stream().mapToDouble(GroundPoint::xM).min().orElseThrow();
    double east = outline.corners().stream().mapToDouble(GroundPoint::xM).max().orElseThrow();
    double south = outline.corners().stream().mapToDouble(GroundPoint::yM).min().orElseThrow();
    double north = outline.corners().stream().mapToDouble(GroundPoint::yM).max().orElseThrow();
    return new BedGrid(new GroundPoint(west, south), cellM, cells(east - west, cellM), cells(north - south, cellM));
  }

  /** A side a hair over a whole number of cells, from adding decimals, needs no further cell. */
  private static int cells(double lengthM, double cellM) {
    return (int) Math.max(1, Math.ceil(lengthM / cellM - 1e-9));
  }

  /** The middle of every cell. */
  public List<GroundPoint> middles() {
    List<GroundPoint> points = new ArrayList<>(columns * rows);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        points.add(new GroundPoint(southWest.xM() + (column + 0.5) * cellM, southWest.yM() + (row + 0.5) * cellM));
      }
    }
    return points;
  }

  /** The middles that lie inside an outline, in the same order. */
  public List<GroundPoint> middlesWithin(Footprint outline) {
    return middles().stream().filter(middle -> outline.holds(middle.xM(), middle.yM())).toList();
  }
}
