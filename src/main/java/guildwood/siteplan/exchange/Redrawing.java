package guildwood.siteplan.exchange;

import guildwood.siteplan.PlanPicture;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Draws a picture anew: upright, on white, no larger than is of use for tracing, without anything but its pixels. */
final class Redrawing {
  /** Finer than a screen shows at any scale in which one traces beds. */
  static final int LONGEST_SIDE_PX = 3_000;

  /** Sketches and scans are small and sharp as PNG; what is larger is a photograph. */
  private static final int LARGEST_PNG_BYTES = 4_000_000;
  private static final float QUALITY = 0.85f;

  private Redrawing() {}

  /** So many pixels on, each way, is the next one that is unpacked at all; no fewer are left than are kept. */
  static int step(int widthPx, int heightPx) {
    return Math.max(1, Math.max(widthPx, heightPx) / LONGEST_SIDE_PX);
  }

  /**
   * The picture as it is kept.
   *
   * @param turn orientation as Exif has it, 1 to 8
   * @param lossless whether it came in a format that keeps every pixel
   */
  static PlanPicture of(BufferedImage pixels, int turn, boolean lossless) throws IOException {
    BufferedImage drawn = drawn(pixels, turn);
    if (lossless) {
      byte[] png = png(drawn);
      if (png.length <= LARGEST_PNG_BYTES) {
        return new PlanPicture(PlanPicture.Kind.PNG, drawn.getWidth(), drawn.getHeight(), png);
      }
    }
    return new PlanPicture(PlanPicture.Kind.JPEG, drawn.getWidth(), drawn.getHeight(), jpeg(drawn));
  }

  private static BufferedImage drawn(BufferedImage pixels, int turn) {
    double scale = Math.min(1, (double) LONGEST_SIDE_PX / Math.max(pixels.getWidth(), pixels.getHeight()));
    int width = (int) Math.max(1, Math.round(scale * pixels.getWidth()));
    int height = (int) Math.max(1, Math.round(scale * pixels.getHeight()));
    boolean lying = turn >= 5;
    BufferedImage drawn = new BufferedImage(lying ? height : width, lying ? width : height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = drawn.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, drawn.getWidth(), drawn.getHeight());
    graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    graphics.transform(upright(turn, width, height));
    graphics.drawImage(pixels, 0, 0, width, height, null);
    graphics.dispose();
    return drawn;
  }

  /** From the stored picture to the upright one: where the first row and the first column belong, CIPA DC-008. */
  private static AffineTransform upright(int turn, int width, int height) {
    return switch (turn) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
      default -> new AffineTransform();
    };
  }

  private static byte[] png(BufferedImage drawn) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(drawn, "png", out);
    return out.toByteArray();
  }

  private static byte[] jpeg(BufferedImage drawn) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream to = new MemoryCacheImageOutputStream(out)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.setOutput(to);
      writer.write(null, new IIOImage(drawn, null, null), param);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }
}
