package guildwood.siteplan.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.siteplan.PlanPicture;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is kept of a picture that somebody sent, and which files are refused. */
class PictureFileTest {
  @TempDir
  Path directory;

  private Checked<PlanPicture> read(byte[] bytes) throws IOException {
    return PictureFile.read(Files.write(directory.resolve("sent"), bytes));
  }

  private static BufferedImage image(PlanPicture picture) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(picture.content()));
  }

  /** Far enough from its neighbours to look like red, blue or white, whatever a format loses. */
  private static Color at(BufferedImage image, double right, double down) {
    int rgb = image.getRGB((int) (right * image.getWidth()), (int) (down * image.getHeight()));
    Color color = new Color(rgb);
    return color.getRed() > 200 && color.getBlue() > 200 ? Color.WHITE : color.getRed() > color.getBlue() ? Color.RED : Color.BLUE;
  }

  private static List<Color> corners(PlanPicture picture) throws IOException {
    BufferedImage image = image(picture);
    return List.of(at(image, 0.2, 0.2), at(image, 0.8, 0.2), at(image, 0.2, 0.8), at(image, 0.8, 0.8));
  }

  @Test
  void picturesOfAllThreeFormatsAreTaken() throws IOException {
    List<Color> upright = List.of(Color.RED, Color.WHITE, Color.WHITE, Color.BLUE);
    PlanPicture png = read(Pictures.png(24, 16)).orThrow();
    assertEquals(PlanPicture.Kind.PNG, png.kind());
    assertEquals(upright, corners(png));
    PlanPicture jpeg = read(Pictures.jpeg(48, 32)).orThrow();
    assertEquals(PlanPicture.Kind.JPEG, jpeg.kind());
    assertEquals(upright, corners(jpeg));
    for (byte[] webp : List.of(Pictures.WEBP, Pictures.LOSSY_WEBP)) {
      PlanPicture picture = read(webp).orThrow();
      assertEquals(24, picture.widthPx());
      assertEquals(16, picture.heightPx());
      assertEquals(upright, corners(picture));
    }
  }

  /** Orientations of CIPA DC-008: which corner of the upright picture the stored upper left one (red) and lower right one (blue) are. */
  @ParameterizedTest
  @CsvSource({"1, 48, 32, RWWB", "2, 48, 32, WRBW", "3, 48, 32, BWWR", "4, 48, 32, WBRW",
    "5, 32, 48, RWWB", "6, 32, 48, WRBW", "7, 32, 48, BWWR", "8, 32, 48, WBRW", "9, 48, 32, RWWB"})
  void whatACameraHeldSidewaysTookStandsUpright(int orientation, int width, int height, String corners) throws IOException {
    PlanPicture picture = read(Pictures.jpegWithPlace(48, 32, orientation)).orThrow();
    assertEquals(width, picture.widthPx());
    assertEquals(height, picture.heightPx());
    StringBuilder seen = new StringBuilder();
    corners(picture).forEach(color -> seen.append(color == Color.RED ? 'R' : color == Color.BLUE ? 'B' : 'W'));
    assertEquals(corners, seen.toString());
  }

  @Test
  void nothingButThePixelsIsKept() throws IOException {
    byte[] sent = Pictures.jpegWithPlace(48, 32, 6);
    byte[] owner = Pictures.OWNER.getBytes(StandardCharsets.US_ASCII);
    assertTrue(Pictures.holds(sent, owner) && Pictures.holds(sent, Pictures.position()), "the test's own picture tells both");
    byte[] kept = read(sent).orThrow().content();
    assertFalse(Pictures.holds(kept, owner));
    assertFalse(Pictures.holds(kept, Pictures.position()));
    assertFalse(Pictures.holds(kept, "Exif".getBytes(StandardCharsets.US_ASCII)));
  }

  @Test
  void aLargePictureIsKeptSmallerAndWhole() throws IOException {
    PlanPicture picture = read(Pictures.png(7001, 3500)).orThrow();
    assertEquals(3000, picture.widthPx());
    assertEquals(1500, picture.heightPx(), 1);
    assertEquals(List.of(Color.RED, Color.WHITE, Color.WHITE, Color.BLUE), corners(picture));
  }

  @Test
  void pixelsAreCountedBeforeAnyIsUnpacked() throws IOException {
    assertEquals(List.of(Finding.of("picture.too-many-pixels", "file", 200, 40)), read(Pictures.hugePng(20_000, 10_000)).findings());
    assertEquals(List.of(Finding.of("picture.too-many-pixels", "file", "4611686014132.5", 40)),
        read(Pictures.hugePng(Integer.MAX_VALUE, Integer.MAX_VALUE)).findings());
    assertEquals("40.1", read(Pictures.hugePng(8_000, 5_001)).findings().get(0).args().get(0));
    assertEquals(List.of(Finding.of("picture.too-small", "file", 100, 4, 16)), read(Pictures.png(100, 4)).findings());
  }

  @Test
  void whatIsNoPictureIsRefused() throws IOException {
    for (String text : List.of("", "hello", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", "GIF89a..........", "%PDF-1.7 and more")) {
      assertEquals(List.of(Finding.of("picture.not-one", "file")), read(text.getBytes(StandardCharsets.US_ASCII)).findings(), text);
    }
    byte[] signatureOnly = Arrays.copyOf(Pictures.png(24, 16), 20);
    assertEquals(List.of(Finding.of("picture.broken", "file")), read(signatureOnly).findings());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.15, 0.5, 0.8, 0.97})
  void aPictureThatWasCutOffIsRefused(double share) throws IOException {
    for (byte[] whole : List.of(Pictures.jpeg(200, 100), Pictures.png(200, 100), Pictures.WEBP, Pictures.LOSSY_WEBP)) {
      assertTrue(read(whole).value().isPresent());
      assertTrue(read(Arrays.copyOf(whole, (int) (share * whole.length))).isRefused(), share + " of " + whole.length + " bytes");
    }
  }
}
