package guildwood.importing.exchange;

/**
 * How much of a file is read before it is refused. Our own choice: room for the largest plant lists people have
 * (200,000 rows, 50 MB), and far from what would fill the heap of a small server.
 */
final class TableLimits {
  static final long FILE_BYTES = 50L << 20;
  static final int COLUMNS = 1_000;

  /** What a cell of a spreadsheet can hold. */
  static final int CELL_CHARS = 32_767;

  static final long ROWS = 1_000_000;

  /** One row, all cells together. */
  static final int ROW_CHARS = 4_000_000;

  /** All parts of a packed file together, once unpacked: 200,000 rows of 89 columns take about 650 MB. */
  static final long UNPACKED_BYTES = 1L << 30;

  /** Tables shrink to a tenth or a thirtieth; a file made to fill a disk shrinks to a thousandth. */
  static final int RATIO = 200;

  /** Below this size the ratio does no harm. */
  static final long RATIO_FROM_BYTES = 10L << 20;

  static final int ZIP_ENTRIES = 5_000;

  /** Between two tags of an XML part: a cell full of escaped characters, and room to spare. */
  static final int XML_STEP_BYTES = 1 << 20;

  private TableLimits() {}
}
