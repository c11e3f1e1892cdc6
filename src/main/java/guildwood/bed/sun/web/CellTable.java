package guildwood.bed.sun.web;

import guildwood.bed.sun.BedSun;
import guildwood.site.sun.BedGrid;
import guildwood.site.sun.GroundPoint;
import guildwood.web.Messages;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The figures of a sun map as a table: neighbouring cells are taken together so that it has at most eight columns
 * and rows. Rows run from north to south, columns from west to east.
 *
 * @param columns where each one's middle lies, seen from the bed's middle
 */
record CellTable(List<String> columns, List<Row> rows) {
  private static final int MOST = 8;

  /** @param cells mean hours, empty where no part of the bed lies */
  record Row(String where, List<String> cells) {}

  static CellTable of(BedSun sun, Units units, Messages messages) {
    BedGrid grid = sun.grid();
    int step = (int) Math.ceil(Math.max(grid.columns(), grid.rows()) / (double) MOST);
    int across = (grid.columns() + step - 1) / step;
    int up = (grid.rows() + step - 1) / step;
    double[] sums = new double[across * up];
    int[] counts = new int[across * up];
    for (int i = 0; i < sun.cells(); i++) {
      GroundPoint point = sun.hours().points().get(i);
      int column = (int) ((point.xM() - grid.southWest().xM()) / grid.cellM()) / step;
      int row = (int) ((point.yM() - grid.southWest().yM()) / grid.cellM()) / step;
      sums[row * across + column] += sun.hours().seasonMeanHours(i);
      counts[row * across + column]++;
    }
    List<Row> rows = new ArrayList<>();
    for (int row = up - 1; row >= 0; row--) {
      int first = row * across;
      List<String> cells = IntStream.range(first, first + across)
          .mapToObj(i -> counts[i] == 0 ? "" : Units.number(sums[i] / counts[i], 1)).toList();
      rows.add(new Row(where(middle(row, step, grid.rows(), grid.southWest().yM(), grid.cellM()), "north", "south", units, messages), cells));
    }
    List<String> columns = IntStream.range(0, across)
        .mapToObj(c -> where(middle(c, step, grid.columns(), grid.southWest().xM(), grid.cellM()), "east", "west", units, messages)).toList();
    return new CellTable(columns, rows);
  }

  private static double middle(int block, int step, int cells, double from, double cellM) {
    int first = block * step;
    int end = Math.min(cells, first + step);
    return from + (first + end) / 2.0 * cellM;
  }

  private static String where(double metres, String positive, String negative, Units units, Messages messages) {
    return messages.say("sun.table." + (metres < 0 ? negative : positive), SunWords.metres(Math.abs(metres), units));
  }
}
