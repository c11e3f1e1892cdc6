package guildwood.drawing;

/** Plants sorted into squares, to find those near a point without looking at all. Each cell is a linked list. */
final class Neighbourhood {
  private final double side;
  private final int columns;
  private final int rows;
  private final double west;
  private final double south;
  private final int[] first;
  private final int[] next;
  private final int[] cellOf;

  Neighbourhood(int plants, double west, double south, double width, double height, double side) {
    this.west = west;
    this.south = south;
    // A bed of a kilometre with the smallest plants still has a grid of bounded size.
    this.side = Math.max(side, Math.sqrt(Math.max(1e-6, width * height) / 40_000));
    columns = (int) Math.max(1, Math.ceil(width / this.side) + 1);
    rows = (int) Math.max(1, Math.ceil(height / this.side) + 1);
    first = new int[columns * rows];
    java.util.Arrays.fill(first, -1);
    next = new int[plants];
    cellOf = new int[plants];
    java.util.Arrays.fill(cellOf, -1);
  }

  private int column(double x) {
    return (int) Math.max(0, Math.min(columns - 1, Math.floor((x - west) / side)));
  }

  private int row(double y) {
    return (int) Math.max(0, Math.min(rows - 1, Math.floor((y - south) / side)));
  }

  void put(int plant, double x, double y) {
    int cell = row(y) * columns + column(x);
    if (cellOf[plant] == cell) {
      return;
    }
    take(plant);
    next[plant] = first[cell];
    first[cell] = plant;
    cellOf[plant] = cell;
  }

  private void take(int plant) {
    int cell = cellOf[plant];
    if (cell < 0) {
      return;
    }
    if (first[cell] == plant) {
      first[cell] = next[plant];
    } else {
      int before = first[cell];
      while (next[before] != plant) {
        before = next[before];
      }
      next[before] = next[plant];
    }
    cellOf[plant] = -1;
  }

  /** Calls for every plant that may lie within a distance; some of those called lie farther. */
  void around(double x, double y, double distance, java.util.function.IntConsumer each) {
    int fromColumn = column(x - distance);
    int toColumn = column(x + distance);
    int toRow = row(y + distance);
    for (int row = row(y - distance); row <= toRow; row++) {
      for (int column = fromColumn; column <= toColumn; column++) {
        for (int plant = first[row * columns + column]; plant >= 0; plant = next[plant]) {
          each.accept(plant);
        }
      }
    }
  }
}
