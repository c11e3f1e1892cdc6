package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RectangleTest {
  @Test
  void itsLengthRunsTowardsItsTurn() {
    Footprint eastWest = new Rectangle(9, 2, 90).around(new GroundPoint(10, 20));
    assertTrue(eastWest.holds(14.4, 20.9));
    assertTrue(eastWest.holds(5.6, 19.1));
    assertFalse(eastWest.holds(10, 24));
    Footprint northEast = new Rectangle(10, 1, 45).around(new GroundPoint(0, 0));
    assertTrue(northEast.holds(3.4, 3.4));
    assertFalse(northEast.holds(3.4, -3.4));
  }

  @Test
  void turnedHalfRoundItIsTheSameGround() {
    Footprint one = new Rectangle(7, 3, 20).around(new GroundPoint(0, 0));
    Footprint other = new Rectangle(7, 3, 200).around(new GroundPoint(0, 0));
    for (double x = -5; x <= 5; x += 0.37) {
      for (double y = -5; y <= 5; y += 0.37) {
        assertEquals(one.holds(x, y), other.holds(x, y), x + ", " + y);
      }
    }
  }

  @Test
  void aSquareHasItsArea() {
    assertEquals(18, Rectangle.square(18).areaM2(), 1e-12);
    assertEquals(1, Rectangle.square(18).slenderness());
    assertEquals(4.5, new Rectangle(2, 9, 0).slenderness());
  }

  @Test
  void whatIsNoRectangleIsABug() {
    assertThrows(IllegalArgumentException.class, () -> new Rectangle(0, 2, 0));
    assertThrows(IllegalArgumentException.class, () -> new Rectangle(2, Double.NaN, 0));
    assertThrows(IllegalArgumentException.class, () -> new Rectangle(2, 2, 360));
  }

  /** Plain trigonometry: at 45 degrees the top is as far over the eye as the foot is away; tan 30 = 1 / sqrt 3. */
  @Test
  void pacedHeights() {
    assertEquals(13.6, new PacedHeight(12, 45, 1.6).metres(), 1e-12);
    assertEquals(20 / Math.sqrt(3) + 1.5, new PacedHeight(20, 30, 1.5).metres(), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> new PacedHeight(12, 90, 1.6));
  }
}
