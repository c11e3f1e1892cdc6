package guildwood.species.exchange;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * Text in which no line is endless and no cell goes beyond its line. No cell of a package has a line break, so a
 * quote that is still open at the end of a line was never closed; without the limit it would swallow the rest of
 * the file, and a file of one line the memory.
 */
final class ShortLines extends FilterReader {
  private static final int LONGEST = 100_000;

  private int length;
  private boolean quoted;
  private boolean endless;

  ShortLines(Reader in) {
    super(in);
  }

  @Override
  public int read() throws IOException {
    char[] one = new char[1];
    return read(one, 0, 1) < 0 ? -1 : one[0];
  }

  /** What comes before an endless line is handed over first, so that the reader knows which row it is. */
  @Override
  public int read(char[] into, int from, int count) throws IOException {
    int read = endless ? 0 : super.read(into, from, count);
    for (int i = 0; i < read; i++) {
      if (goesOn(into[from + i])) {
        endless = true;
        read = i;
      }
    }
    if (endless && read == 0) {
      throw new IOException("a line without an end");
    }
    return read;
  }

  private boolean goesOn(char sign) {
    boolean end = sign == '\n' || sign == '\r';
    quoted ^= sign == '"';
    length = end ? 0 : length + 1;
    return length > LONGEST || (end && quoted);
  }
}
