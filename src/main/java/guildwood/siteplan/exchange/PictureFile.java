package guildwood.siteplan.exchange;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.siteplan.PlanPicture;
import java.awt.image.BufferedImage;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Reads a picture that somebody sent. Its size is looked at before a single pixel is unpacked, it is unpacked no larger
 * than it is kept, and written anew from its pixels, so that nothing else in the file - place, time, camera, owner,
 * hidden data - comes along. One picture is read at a time.
 */
public final class PictureFile {
  public static final long MOST_BYTES = 20_000_000;
  public static final int MOST_MEGAPIXELS = 40;

  /** WebP is unpacked whole, whatever is asked of it, and takes its reader some 25 bytes to the pixel. */
  public static final int MOST_MEGAPIXELS_OF_WEBP = 8;

  /** A picture smaller than this shows nothing to trace. */
  public static final int LEAST_SIDE_PX = 16;

  private static final String FIELD = "file";

  private PictureFile() {}

  /** The picture as it is kept; refused with what is wrong with the file. */
  public static synchronized Checked<PlanPicture> read(Path file) {
    try {
      Optional<PictureFormat> format = PictureFormat.of(file);
      return format.isEmpty() ? refused("picture.not-one") : read(file, format.get());
    } catch (IOException | RuntimeException e) {
      // Readers of pictures meet broken files with exceptions of every kind.
      return refused("picture.broken");
    }
  }

  private static Checked<PlanPicture> read(Path file, PictureFormat format) throws IOException {
    Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format.reader());
    if (!readers.hasNext()) {
      throw new IllegalStateException("no reader for " + format);
    }
    ImageReader reader = readers.next();
    try (InputStream bytes = new BufferedInputStream(Files.newInputStream(file));
        ImageInputStream in = new MemoryCacheImageInputStream(bytes)) {
      reader.setInput(in, true, true);
      int width = reader.getWidth(0);
      int height = reader.getHeight(0);
      long mostPx = 1_000_000L * (format == PictureFormat.WEBP ? MOST_MEGAPIXELS_OF_WEBP : MOST_MEGAPIXELS);
      if ((long) width * height > mostPx) {
        return Checked.refused(Finding.of("picture.too-many-pixels", FIELD, megapixels((long) width * height), mostPx / 1_000_000));
      }
      if (Math.min(width, height) < LEAST_SIDE_PX) {
        return Checked.refused(Finding.of("picture.too-small", FIELD, width, height, LEAST_SIDE_PX));
      }
      if (!format.isWhole(file)) {
        return refused("picture.cut-off");
      }
      ImageReadParam thinned = reader.getDefaultReadParam();
      int step = Redrawing.step(width, height);
      thinned.setSourceSubsampling(step, step, 0, 0);
      BufferedImage pixels = reader.read(0, thinned);
      return Checked.of(Redrawing.of(pixels, ExifTurn.of(file, format), format == PictureFormat.PNG));
    } finally {
      reader.dispose();
    }
  }

  /** To the next tenth, so that what is just too much does not read as just right. */
  private static String megapixels(long pixels) {
    return BigDecimal.valueOf(pixels, 6).setScale(1, RoundingMode.CEILING).stripTrailingZeros().toPlainString();
  }

  private static Checked<PlanPicture> refused(String code) {
    return Checked.refused(Finding.of(code, FIELD));
  }
}
