package guildwood.guild.search;

import java.util.Arrays;

/**
 * A small linear program: most of a sum under caps, every variable between 0 and an upper end. Primal simplex
 * on a dense table with upper ends kept implicit, Bland's rule against going in circles. Starts from nothing, which
 * keeps every cap.
 */
final class LinearProgram {
  private static final double EPS = 1e-9;
  private static final int MOST_PIVOTS = 500;

  private final int columns;
  private final int rows;
  /** One row for each cap, the last one for the sum; columns: variables, slacks, right side. */
  private final double[][] table;

  private final double[] upper;
  private final boolean[] flipped;
  private final int[] basic;

  /** Values of the variables, and prices of the caps, after {@link #solve}. */
  final double[] value;

  final double[] price;

  /**
   * @param gain of one of every variable
   * @param uses by cap and variable; below 0 where a variable makes room
   * @param caps not negative
   * @param most upper end of every variable
   */
  LinearProgram(double[] gain, double[][] uses, double[] caps, double[] most) {
    columns = gain.length;
    rows = caps.length;
    table = new double[rows + 1][columns + rows + 1];
    upper = Arrays.copyOf(most, columns + rows);
    Arrays.fill(upper, columns, columns + rows, Double.POSITIVE_INFINITY);
    flipped = new boolean[columns + rows];
    basic = new int[rows];
    for (int r = 0; r < rows; r++) {
      System.arraycopy(uses[r], 0, table[r], 0, columns);
      table[r][columns + r] = 1;
      table[r][columns + rows] = caps[r];
      basic[r] = columns + r;
    }
    System.arraycopy(gain, 0, table[rows], 0, columns);
    value = new double[columns];
    price = new double[rows];
  }

  /** Runs to the optimum, or as far as the pivots last; the prices give a valid bound either way. */
  void solve() {
    for (int pivots = 0; pivots < MOST_PIVOTS && step(); pivots++) {
      // Every step enters one variable; Bland's rule ends it.
    }
    read();
  }

  private boolean step() {
    int enter = -1;
    for (int j = 0; j < columns + rows && enter < 0; j++) {
      if (table[rows][j] > EPS && upper[j] > EPS && !isBasic(j)) {
        enter = j;
      }
    }
    if (enter < 0) {
      return false;
    }
    double least = upper[enter];
    int leave = -1;
    boolean leavesAtTop = false;
    for (int r = 0; r < rows; r++) {
      double slope = table[r][enter];
      double right = table[r][columns + rows];
      double room = slope > EPS ? right / slope : slope < -EPS ? (upper[basic[r]] - right) / -slope : Double.MAX_VALUE;
      boolean tie = room <= least + EPS && leave >= 0 && room >= least - EPS && basic[r] < basic[leave];
      if (room < least - EPS || tie) {
        least = Math.min(least, room);
        leave = r;
        leavesAtTop = slope < 0;
      }
    }
    if (leave < 0) {
      flip(enter);
    } else {
      if (leavesAtTop) {
        turn(leave);
      }
      pivot(leave, enter);
    }
    return true;
  }

  private boolean isBasic(int j) {
    for (int b : basic) {
      if (b == j) {
        return true;
      }
    }
    return false;
  }

  /** A variable outside the basis goes to its other end. */
  private void flip(int j) {
    for (double[] row : table) {
      row[columns + rows] -= row[j] * upper[j];
      row[j] = -row[j];
    }
    flipped[j] = !flipped[j];
  }

  /** The basic variable of a row is counted from its upper end instead. */
  private void turn(int r) {
    int b = basic[r];
    double[] row = table[r];
    for (int j = 0; j < columns + rows; j++) {
      row[j] = j == b ? row[j] : -row[j];
    }
    row[columns + rows] = upper[b] - row[columns + rows];
    flipped[b] = !flipped[b];
  }

  private void pivot(int r, int j) {
    double[] own = table[r];
    double by = own[j];
    for (int k = 0; k < own.length; k++) {
      own[k] /= by;
    }
    for (int q = 0; q <= rows; q++) {
      double factor = table[q][j];
      if (q != r && factor != 0) {
        double[] row = table[q];
        for (int k = 0; k < row.length; k++) {
          row[k] -= factor * own[k];
        }
      }
    }
    basic[r] = j;
  }

  private void read() {
    for (int j = 0; j < columns; j++) {
      value[j] = flipped[j] ? upper[j] : 0;
    }
    for (int r = 0; r < rows; r++) {
      int b = basic[r];
      if (b < columns) {
        double right = table[r][columns + rows];
        value[b] = flipped[b] ? upper[b] - right : right;
      }
      price[r] = Math.max(0, -table[rows][columns + r]);
    }
  }
}
