package guildwood.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The fixed parts of a QR code, as two descriptions of ISO/IEC 18004 name them: 17 + 4V modules a side, four light
 * modules around (quickresponsecode.us, structure and anatomy); in three corners a dark square of 7 by 7, in it a
 * light one of 5 by 5, in it a dark one of 3 by 3; alternating modules in the seventh row and column
 * (devwavesblog.pages.dev, visual structure). Whether the message can be read is not tested here.
 */
class QrCodeTest {
  private static final int QUIET = 4;
  private static final QrCode CODE = QrCode.of("http://127.0.0.1:8080/shared/AbCdEfGhIjKlMnOpQrStUv");

  private final int side = CODE.size() - 2 * QUIET;
  private final boolean[][] dark = modules(CODE);

  @Test
  void theSideIsThatOfAVersion() {
    assertEquals(0, (side - 17) % 4, "side of " + side);
    assertTrue(side >= 21 && side <= 177);
  }

  @Test
  void aQuietZoneOfFourModulesSurroundsIt() {
    for (int i = 0; i < CODE.size(); i++) {
      for (int j = 0; j < CODE.size(); j++) {
        boolean outside = Math.min(i, j) < QUIET || Math.max(i, j) >= QUIET + side;
        assertFalse(outside && dark[i][j], "dark at " + i + ", " + j);
      }
    }
  }

  @Test
  void threeCornersHoldTheSquaresAReaderLooksFor() {
    for (int[] corner : new int[][] {{0, 0}, {side - 7, 0}, {0, side - 7}}) {
      for (int x = 0; x < 7; x++) {
        for (int y = 0; y < 7; y++) {
          int ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
          assertEquals(ring != 2, at(corner[0] + x, corner[1] + y), corner[0] + "+" + x + ", " + corner[1] + "+" + y);
        }
      }
    }
  }

  @Test
  void darkAndLightAlternateBetweenThem() {
    for (int i = 8; i < side - 8; i++) {
      assertEquals(i % 2 == 0, at(i, 6), "row, " + i);
      assertEquals(i % 2 == 0, at(6, i), "column, " + i);
    }
  }

  @Test
  void anotherAddressIsAnotherPicture() {
    assertNotEquals(CODE.path(), QrCode.of("http://127.0.0.1:8080/shared/AbCdEfGhIjKlMnOpQrStUw").path());
    assertEquals(CODE, QrCode.of("http://127.0.0.1:8080/shared/AbCdEfGhIjKlMnOpQrStUv"));
  }

  private boolean at(int x, int y) {
    return dark[x + QUIET][y + QUIET];
  }

  /** The dark modules of the path, which must be nothing but unit squares. */
  private static boolean[][] modules(QrCode code) {
    boolean[][] dark = new boolean[code.size()][code.size()];
    Matcher square = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z").matcher(code.path());
    int length = 0;
    while (square.find()) {
      dark[Integer.parseInt(square.group(1))][Integer.parseInt(square.group(2))] = true;
      length += square.group().length();
    }
    assertEquals(code.path().length(), length);
    return dark;
  }
}
