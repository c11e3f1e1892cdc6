package guildwood.siteplan.exchange;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures for tests: 24 x 16 pixels, red in the upper left quarter, blue in the lower right, else white; and broken ones. */
public final class Pictures {
  /** Words that stand in the Exif part of {@link #jpegWithPlace}, beside a position. */
  public static final String OWNER = "Owner of the camera";

  /** The same picture as lossless WebP. */
  public static final byte[] WEBP = Base64.getDecoder().decode("UklGRiwAAABXRUJQVlA4TB8AAAAvF8ADABcw//O///MfLAWCbJtJXrKoJ4jof2zDE9UTAA==");

  /** The same picture as WebP with losses. */
  public static final byte[] LOSSY_WEBP = Base64.getDecoder().decode("UklGRmoAAABXRUJQVlA4IF4AAABwAwCdASoYABAALiUYjEYREREBABIlqALD9//uIAJuwg0YGQAA/v2bi//93jk//9NV///7Sld/93m/7//9F9gmf+ht/9d2HLX/+tHP/+j//9bUGlRb9Ud/yC9owAAA");

  private static final byte[] GPS = {51, 0, 0, 0, 1, 0, 0, 0, 30, 0, 0, 0, 1, 0, 0, 0, 77, 0, 0, 0, 7, 0, 0, 0};

  private Pictures() {}

  public static BufferedImage quarters(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.setColor(Color.RED);
    graphics.fillRect(0, 0, width / 2, height / 2);
    graphics.setColor(Color.BLUE);
    graphics.fillRect(width / 2, height / 2, width / 2, height / 2);
    graphics.dispose();
    return image;
  }

  public static byte[] png(int width, int height) {
    return written(quarters(width, height), "png");
  }

  public static byte[] jpeg(int width, int height) {
    return written(quarters(width, height), "jpeg");
  }

  private static byte[] written(BufferedImage image, String format) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(image, format, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A JPEG whose Exif part tells an orientation, an owner and a position (CIPA DC-008). */
  public static byte[] jpegWithPlace(int width, int height, int orientation) {
    byte[] plain = jpeg(width, height);
    byte[] exif = exif(orientation);
    ByteBuffer all = ByteBuffer.allocate(plain.length + exif.length + 10);
    all.put(plain, 0, 2).put((byte) 0xff).put((byte) 0xe1).putShort((short) (exif.length + 8));
    all.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(exif).put(plain, 2, plain.length - 2);
    return Arrays.copyOf(all.array(), all.position());
  }

  /** A TIFF block with one directory: orientation, artist, and one of positions. */
  private static byte[] exif(int orientation) {
    byte[] owner = (OWNER + "\0").getBytes(StandardCharsets.US_ASCII);
    ByteBuffer tiff = ByteBuffer.allocate(200).order(ByteOrder.LITTLE_ENDIAN);
    tiff.putShort((short) 0x4949).putShort((short) 42).putInt(8).putShort((short) 3);
    tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1).putInt(orientation);
    tiff.putShort((short) 0x013b).putShort((short) 2).putInt(owner.length).putInt(80);
    tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(110);
    tiff.putInt(0).position(80).put(owner).position(110);
    tiff.putShort((short) 1).putShort((short) 2).putShort((short) 5).putInt(3).putInt(130).putInt(0).position(130);
    tiff.put(GPS);
    return tiff.array();
  }

  /** The bytes of the position in {@link #jpegWithPlace}. */
  public static byte[] position() {
    return GPS.clone();
  }

  /** A PNG that says it is so large, and has nothing behind its head. */
  public static byte[] hugePng(int width, int height) {
    ByteBuffer head = ByteBuffer.allocate(17);
    head.put("IHDR".getBytes(StandardCharsets.US_ASCII)).putInt(width).putInt(height).put(new byte[] {8, 2, 0, 0, 0});
    CRC32 sum = new CRC32();
    sum.update(head.array());
    ByteBuffer all = ByteBuffer.allocate(8 + 4 + 17 + 4 + 12);
    all.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'}).putInt(13).put(head.array()).putInt((int) sum.getValue());
    all.putInt(0).put("IDAT".getBytes(StandardCharsets.US_ASCII)).putInt(0x35af061e);
    return all.array();
  }

  public static boolean holds(byte[] bytes, byte[] part) {
    for (int i = 0; i + part.length <= bytes.length; i++) {
      if (Arrays.equals(bytes, i, i + part.length, part, 0, part.length)) {
        return true;
      }
    }
    return false;
  }
}
