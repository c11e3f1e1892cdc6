package guildwood.importing.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Which encoding a text file is in: the one its mark names, else UTF-8 where every byte of it fits, else
 * Windows-1252, which spreadsheets still write. A file that mixes the two is refused: half its letters would be bent.
 */
final class EncodingGuess {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
  private static final int PEEK = 4_096;
  private static final double MOST_CONTROLS = 0.01;

  private long bytes;
  private long controls;
  private long evenZeros;
  private long oddZeros;
  private long line = 1;
  private long letters;
  private long strays;
  private long firstStrayLine;
  private int expected;
  private int seen;
  private int lowest;
  private int highest;

  private EncodingGuess() {}

  /** The encoding with the length of its mark. */
  static Encoding of(Path file) throws IOException {
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(PEEK);
    }
    Encoding marked = marked(head);
    if (marked != null) {
      return marked;
    }
    EncodingGuess peek = new EncodingGuess();
    peek.take(head, head.length);
    if (peek.isWide()) {
      return new Encoding(peek.oddZeros > peek.evenZeros ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE, 0);
    }
    EncodingGuess whole = new EncodingGuess();
    try (InputStream in = Files.newInputStream(file)) {
      byte[] buffer = new byte[1 << 16];
      for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
        whole.take(buffer, read);
      }
    }
    return new Encoding(whole.decide(), 0);
  }

  private static Encoding marked(byte[] head) {
    if (startsWith(head, 0xEF, 0xBB, 0xBF)) {
      return new Encoding(StandardCharsets.UTF_8, 3);
    }
    if (startsWith(head, 0xFF, 0xFE, 0, 0)) {
      return new Encoding(Charset.forName("UTF-32LE"), 4);
    }
    if (startsWith(head, 0xFF, 0xFE)) {
      return new Encoding(StandardCharsets.UTF_16LE, 2);
    }
    return startsWith(head, 0xFE, 0xFF) ? new Encoding(StandardCharsets.UTF_16BE, 2) : null;
  }

  private static boolean startsWith(byte[] head, int... signs) {
    for (int i = 0; i < signs.length; i++) {
      if (i >= head.length || (head[i] & 0xFF) != signs[i]) {
        return false;
      }
    }
    return true;
  }

  /** Two bytes a letter: nearly every other byte is zero, on one side only. */
  private boolean isWide() {
    long more = Math.max(evenZeros, oddZeros);
    long fewer = Math.min(evenZeros, oddZeros);
    return more > bytes / 4 && fewer <= more / 20;
  }

  private Charset decide() throws RefusedRead {
    if (evenZeros + oddZeros > 0 || controls > bytes * MOST_CONTROLS) {
      throw new RefusedRead("binary");
    }
    if (expected > 0) {
      stray();
    }
    if (strays == 0) {
      return StandardCharsets.UTF_8;
    }
    if (letters > strays) {
      throw new RefusedRead("mixed-encoding", firstStrayLine);
    }
    return WINDOWS_1252;
  }

  private void take(byte[] some, int length) {
    for (int i = 0; i < length; i++) {
      take(some[i] & 0xFF);
    }
  }

  private void take(int b) {
    if (b == 0) {
      evenZeros += bytes % 2 == 0 ? 1 : 0;
      oddZeros += bytes % 2;
    } else if (b < ' ' && "\t\n\r\f\u000B\u001A".indexOf(b) < 0 || b == 0x7F) {
      controls++;
    }
    bytes++;
    line += b == '\n' ? 1 : 0;
    follow(b);
  }

  /** Well-formed UTF-8 byte sequences, table 3-7 of the Unicode standard. */
  private void follow(int b) {
    if (expected > 0) {
      if (b >= lowest && b <= highest) {
        lowest = 0x80;
        highest = 0xBF;
        seen++;
        if (seen == expected) {
          letters++;
          expected = 0;
        }
        return;
      }
      stray();
    }
    if (b >= 0x80) {
      begin(b);
    }
  }

  private void begin(int b) {
    seen = 0;
    lowest = b == 0xE0 ? 0xA0 : b == 0xF0 ? 0x90 : 0x80;
    highest = b == 0xED ? 0x9F : b == 0xF4 ? 0x8F : 0xBF;
    expected = b >= 0xC2 && b <= 0xDF ? 1 : b >= 0xE0 && b <= 0xEF ? 2 : b >= 0xF0 && b <= 0xF4 ? 3 : 0;
    if (expected == 0) {
      stray();
    }
  }

  private void stray() {
    strays++;
    expected = 0;
    firstStrayLine = firstStrayLine == 0 ? line : firstStrayLine;
  }

  /** An encoding and how many bytes mark it. */
  record Encoding(Charset charset, int markBytes) {}
}
