package guildwood.siteplan.exchange;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * How a camera was held: the orientation that a picture's Exif part tells (CIPA DC-008, tag 274), 1 to 8. It is the only
 * thing read of that part.
 */
final class ExifTurn {
  static final int UPRIGHT = 1;

  private static final int ORIENTATION = 0x0112;
  private static final int MOST_ENTRIES = 200;
  private static final int LARGEST_PART = 1 << 20;

  private ExifTurn() {}

  /** The orientation; upright where none is told or the part is not as it should be. */
  static int of(Path file, PictureFormat format) throws IOException {
    try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
      return switch (format) {
        case JPEG -> ofJpeg(in);
        case PNG -> ofPng(in);
        case WEBP -> ofWebp(in);
      };
    } catch (EOFException | IndexOutOfBoundsException | java.nio.BufferUnderflowException e) {
      return UPRIGHT;
    }
  }

  private static int ofJpeg(DataInputStream in) throws IOException {
    in.skipNBytes(2);
    while (in.readUnsignedByte() == 0xff) {
      int marker = in.readUnsignedByte();
      if (marker == 0xda) {
        return UPRIGHT;
      }
      byte[] part = in.readNBytes(in.readUnsignedShort() - 2);
      if (marker == 0xe1 && part.length > 6 && new String(part, 0, 4, StandardCharsets.US_ASCII).equals("Exif")) {
        return orientation(ByteBuffer.wrap(part, 6, part.length - 6).slice());
      }
    }
    return UPRIGHT;
  }

  private static int ofPng(DataInputStream in) throws IOException {
    in.skipNBytes(8);
    while (true) {
      int length = in.readInt();
      String name = new String(in.readNBytes(4), StandardCharsets.US_ASCII);
      if (length < 0 || name.equals("IEND")) {
        return UPRIGHT;
      }
      if (name.equals("eXIf") && length <= LARGEST_PART) {
        return orientation(ByteBuffer.wrap(in.readNBytes(length)));
      }
      in.skipNBytes(length + 4L);
    }
  }

  private static int ofWebp(DataInputStream in) throws IOException {
    in.skipNBytes(12);
    while (true) {
      String name = new String(in.readNBytes(4), StandardCharsets.US_ASCII);
      long length = Integer.toUnsignedLong(Integer.reverseBytes(in.readInt()));
      if (name.equals("EXIF") && length <= LARGEST_PART) {
        byte[] part = in.readNBytes((int) length);
        boolean prefixed = part.length > 6 && new String(part, 0, 4, StandardCharsets.US_ASCII).equals("Exif");
        return orientation((prefixed ? ByteBuffer.wrap(part, 6, part.length - 6) : ByteBuffer.wrap(part)).slice());
      }
      in.skipNBytes(length + length % 2);
    }
  }

  /** Looks through the first directory of a TIFF block. */
  private static int orientation(ByteBuffer tiff) {
    tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = tiff.getInt(4);
    int entries = Math.min(MOST_ENTRIES, Short.toUnsignedInt(tiff.getShort(directory)));
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + 12 * i;
      if (Short.toUnsignedInt(tiff.getShort(entry)) == ORIENTATION) {
        int told = tiff.getShort(entry + 8);
        return told >= 1 && told <= 8 ? told : UPRIGHT;
      }
    }
    return UPRIGHT;
  }
}
