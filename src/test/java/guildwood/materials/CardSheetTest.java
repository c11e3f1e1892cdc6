package guildwood.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class CardSheetTest {
  @Test
  void aSheetAddsItsSizeLessOneOverlapEachWay() {
    CardSheet sheet = new CardSheet(1.2, 0.7, 0.2);
    assertEquals(0.5, sheet.addsM2(), 1e-12);
    assertEquals(20, sheet.sheets(10));
    assertEquals(21, sheet.sheets(10.01));
    assertEquals(0, sheet.sheets(0));
    assertEquals(12, new CardSheet(1.2, 0.7, 0).sheets(12 * 1.2 * 0.7), "without an overlap nothing is lost");
  }

  @Test
  void anOverlapAsWideAsTheSheetIsNoSheet() {
    assertThrows(IllegalArgumentException.class, () -> new CardSheet(1.2, 0.2, 0.2));
    assertThrows(IllegalArgumentException.class, () -> new CardSheet(0, 1, 0));
  }
}
