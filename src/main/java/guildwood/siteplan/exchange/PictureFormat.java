package guildwood.siteplan.exchange;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** The formats of pictures that are taken, told by how a file begins and never by its name. */
enum PictureFormat {
  PNG("png"),
  JPEG("jpeg"),
  WEBP("webp");

  private static final byte[] PNG_SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int START_OF_SCAN = 0xda;
  private static final int END_OF_IMAGE = 0xd9;

  private final String reader;

  PictureFormat(String reader) {
    this.reader = reader;
  }

  /** Name of its reader in the image library. */
  String reader() {
    return reader;
  }

  static Optional<PictureFormat> of(Path file) throws IOException {
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(12);
    }
    if (head.length == 12 && Arrays.equals(head, 0, 8, PNG_SIGNATURE, 0, 8)) {
      return Optional.of(PNG);
    }
    if (head.length == 12 && (head[0] & 0xff) == 0xff && (head[1] & 0xff) == 0xd8 && (head[2] & 0xff) == 0xff) {
      return Optional.of(JPEG);
    }
    boolean riff = head.length == 12 && ascii(head, 0).equals("RIFF") && ascii(head, 8).equals("WEBP");
    return riff ? Optional.of(WEBP) : Optional.empty();
  }

  private static String ascii(byte[] bytes, int from) {
    return new String(bytes, from, Math.min(4, bytes.length - from), StandardCharsets.US_ASCII);
  }

  /**
   * Whether the file goes on to its end. The reader of JPEG fills what is missing with grey without a word, and that of
   * PNG does not look for the end; the one of WebP needs all bytes.
   */
  boolean isWhole(Path file) throws IOException {
    try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file), 1 << 16))) {
      return switch (this) {
        case PNG -> endsAsPng(in);
        case JPEG -> {
          in.skipNBytes(2);
          yield skipToScan(in) && hasEnd(in);
        }
        case WEBP -> true;
      };
    } catch (EOFException e) {
      return false;
    }
  }

  private static boolean endsAsPng(DataInputStream in) throws IOException {
    in.skipNBytes(PNG_SIGNATURE.length);
    while (true) {
      long length = Integer.toUnsignedLong(in.readInt());
      String name = ascii(in.readNBytes(4), 0);
      if (name.equals("IEND")) {
        return true;
      }
      in.skipNBytes(length + 4);
    }
  }

  private static boolean skipToScan(InputStream in) throws IOException {
    while (true) {
      if (in.read() != 0xff) {
        return false;
      }
      int marker = in.read();
      while (marker == 0xff) {
        marker = in.read();
      }
      if (marker < 0 || marker == END_OF_IMAGE) {
        return false;
      }
      int length = in.read() << 8 | in.read();
      if (length < 2) {
        return false;
      }
      in.skipNBytes(length - 2L);
      if (marker == START_OF_SCAN) {
        return true;
      }
    }
  }

  /** Within packed pixels the byte 255 is followed by 0 or a restart marker, never by the end. */
  private static boolean hasEnd(InputStream in) throws IOException {
    int before = 0;
    for (int next = in.read(); next >= 0; next = in.read()) {
      if (before == 0xff && next == END_OF_IMAGE) {
        return true;
      }
      before = next;
    }
    return false;
  }
}
