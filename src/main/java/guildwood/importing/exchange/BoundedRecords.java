package guildwood.importing.exchange;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Ends the reading of a text file whose record has no end, before it fills the memory. */
final class BoundedRecords extends FilterReader {
  private long sinceRecord;
  private long row = 1;

  /** What the parser may have read ahead of the record's end. */
  private static final int READ_AHEAD = 1 << 16;

  BoundedRecords(Reader in) {
    super(in);
  }

  /** A record has ended. */
  void next(long nextRow) {
    sinceRecord = 0;
    row = nextRow;
  }

  @Override
  public int read() throws IOException {
    count(1);
    return super.read();
  }

  @Override
  public int read(char[] buffer, int from, int length) throws IOException {
    int read = super.read(buffer, from, length);
    count(Math.max(0, read));
    return read;
  }

  private void count(int read) throws RefusedRead {
    sinceRecord += read;
    if (sinceRecord > TableLimits.ROW_CHARS + READ_AHEAD) {
      throw new RefusedRead("row-length", row);
    }
  }
}
