package guildwood.choosing;

/** Sets of species as plain {@code long[]} rows: bit {@code i} of the row is species {@code i} of the library. */
final class BitRow {
  private BitRow() {}

  static long[] none(int size) {
    return new long[(size + 63) >>> 6];
  }

  static long[] all(int size) {
    long[] row = none(size);
    java.util.Arrays.fill(row, -1L);
    if ((size & 63) != 0) {
      row[row.length - 1] = -1L >>> (64 - (size & 63));
    }
    return row;
  }

  static void set(long[] row, int i) {
    row[i >>> 6] |= 1L << i;
  }

  static boolean has(long[] row, int i) {
    return (row[i >>> 6] & 1L << i) != 0;
  }

  static int count(long[] row) {
    int count = 0;
    for (long word : row) {
      count += Long.bitCount(word);
    }
    return count;
  }

  static void and(long[] row, long[] other) {
    for (int w = 0; w < row.length; w++) {
      row[w] &= other[w];
    }
  }

  /** The words of a row that hold anything, so that small sets are counted in few steps. */
  static int[] liveWords(long[] row) {
    int[] live = new int[row.length];
    int n = 0;
    for (int w = 0; w < row.length; w++) {
      if (row[w] != 0) {
        live[n++] = w;
      }
    }
    return java.util.Arrays.copyOf(live, n);
  }
}
