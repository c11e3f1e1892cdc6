package guildwood.choosing;

/**
 * One facet's demand: a species passes if any of the rows has it; with {@code leavesOut}, if none has.
 */
record Clause(long[][] rows, boolean leavesOut) {

  /** The 64 species of word {@code w} that pass. */
  long word(int w) {
    long any = 0;
    for (long[] row : rows) {
      any |= row[w];
    }
    return leavesOut ? ~any : any;
  }

  /** Takes from a row what does not pass. */
  void narrow(long[] row) {
    for (int w = 0; w < row.length; w++) {
      if (row[w] != 0) {
        row[w] &= word(w);
      }
    }
  }

  boolean passes(int i) {
    return (word(i >>> 6) & 1L << i) != 0;
  }
}
