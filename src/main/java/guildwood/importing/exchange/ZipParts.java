package guildwood.importing.exchange;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The parts of a packed file, read within the limits: what a file says of its own size is not believed. Names of parts
 * are only ever looked up, never used as paths.
 */
final class ZipParts implements AutoCloseable {
  private static final int END_RECORD = 22;
  private static final int LONGEST_COMMENT = 1 << 16;
  private static final int BYTES_OF_AN_ENTRY = 1_024;

  private final ZipFile zip;
  private long unpacked;

  ZipParts(Path file) throws IOException {
    checkDirectory(file);
    try {
      zip = new ZipFile(file.toFile());
    } catch (IOException | RuntimeException e) {
      throw new RefusedRead("damaged");
    }
    if (zip.size() > TableLimits.ZIP_ENTRIES) {
      zip.close();
      throw new RefusedRead("entries", TableLimits.ZIP_ENTRIES);
    }
  }

  /** The directory is read whole: its size is looked at before. */
  private static void checkDirectory(Path file) throws IOException {
    try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
      byte[] tail = new byte[(int) Math.min(in.length(), END_RECORD + LONGEST_COMMENT)];
      in.seek(in.length() - tail.length);
      in.readFully(tail);
      int end = new String(tail, StandardCharsets.ISO_8859_1).lastIndexOf("PK\u0005\u0006");
      if (end < 0 || end + END_RECORD > tail.length) {
        throw new RefusedRead("damaged");
      }
      long directoryBytes = (tail[end + 12] & 0xFFL) | (tail[end + 13] & 0xFFL) << 8 | (tail[end + 14] & 0xFFL) << 16
          | (tail[end + 15] & 0xFFL) << 24;
      if (directoryBytes > (long) TableLimits.ZIP_ENTRIES * BYTES_OF_AN_ENTRY && directoryBytes < in.length()) {
        throw new RefusedRead("entries", TableLimits.ZIP_ENTRIES);
      }
    }
  }

  boolean has(String name) {
    return zip.getEntry(name) != null;
  }

  /** Whether a part lies below a folder. */
  boolean hasBelow(String folder) {
    return zip.stream().anyMatch(entry -> entry.getName().startsWith(folder));
  }

  /** One part; the file is damaged where it lacks it. */
  InputStream open(String name) throws IOException {
    try {
      ZipEntry entry = zip.getEntry(name);
      InputStream in = entry == null ? null : zip.getInputStream(entry);
      if (in == null) {
        throw new RefusedRead("damaged");
      }
      return new Bounded(in, entry);
    } catch (IOException | RuntimeException e) {
      throw RefusedRead.in(e);
    }
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }

  /** Counts what comes out, and holds it against the check sum: Java leaves that to its readers. */
  private final class Bounded extends FilterInputStream {
    private final long packed;
    private final long expectedSum;
    private final CRC32 sum = new CRC32();
    private long out;

    Bounded(InputStream in, ZipEntry entry) {
      super(in);
      packed = entry.getCompressedSize();
      expectedSum = entry.getCrc();
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] buffer, int from, int length) throws IOException {
      int read;
      try {
        read = super.read(buffer, from, length);
      } catch (IOException | RuntimeException e) {
        throw new RefusedRead("damaged");
      }
      if (read < 0) {
        if (sum.getValue() != expectedSum) {
          throw new RefusedRead("damaged");
        }
        return read;
      }
      sum.update(buffer, from, read);
      out += read;
      unpacked += read;
      if (unpacked > TableLimits.UNPACKED_BYTES || out > TableLimits.RATIO_FROM_BYTES && out > packed * TableLimits.RATIO) {
        throw new RefusedRead("bomb");
      }
      return read;
    }
  }
}
