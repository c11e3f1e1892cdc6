package guildwood.site.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.kernel.Checked;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FootprintTest {
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "a bow tie | 0 0 4 4 4 0 0 4 | sun.footprint-crosses",
    "a five-pointed star drawn in one line | 0 3 2 -3 -3 1 3 1 -2 -3 | sun.footprint-crosses",
    "a corner on another side | 0 0 4 0 4 4 2 0 0 4 | sun.footprint-crosses",
    "two squares that share one corner | 0 0 2 0 2 2 4 2 4 4 2 4 2 2 0 2 | sun.footprint-crosses",
    "a line out and back | 0 0 4 0 2 0 | sun.footprint-crosses",
    "a spike on a square | 0 0 4 0 4 4 4 9 4 4 0 4 | sun.footprint-crosses",
    "a corner given twice | 0 0 4 0 4 0 4 4 | sun.footprint-repeated",
    "two corners | 0 0 4 0 | sun.footprint-corners",
    "two corners closed | 0 0 4 0 0 0 | sun.footprint-corners",
    "nothing | '' | sun.footprint-corners"
  })
  void refuses(String what, String corners, String code) {
    Checked<Footprint> footprint = Footprint.through("f", corners(corners));
    assertTrue(footprint.isRefused(), what);
    assertEquals(code, footprint.findings().get(0).code(), what);
    assertEquals("f", footprint.findings().get(0).field());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
    "a triangle | 0 0 4 0 0 3 | 3", "closed by repeating the first | 0 0 4 0 4 4 0 4 0 0 | 4",
    "clockwise | 0 0 0 4 4 4 4 0 | 4", "with a corner in the middle of a side | 0 0 2 0 4 0 4 4 0 4 | 5",
    "a U | 0 0 6 0 6 5 4 5 4 2 2 2 2 5 0 5 | 8"
  })
  void takes(String what, String corners, int count) {
    assertEquals(count, Footprint.through("", corners(corners)).orThrow().corners().size(), what);
  }

  @Test
  void holdsWhatLiesInsideTheU() {
    Footprint u = ShadowTest.footprint(0, 0, 6, 0, 6, 5, 4, 5, 4, 2, 2, 2, 2, 5, 0, 5);
    assertTrue(u.holds(1, 4));
    assertTrue(u.holds(5, 4));
    assertTrue(u.holds(3, 1));
    assertFalse(u.holds(3, 4));
    assertFalse(u.holds(7, 1));
    assertFalse(u.holds(-1, 5));
  }

  @Test
  void refusesMoreCornersThanAnyHouseHas() {
    List<GroundPoint> circle = new ArrayList<>();
    for (int i = 0; i <= Footprint.MOST_CORNERS; i++) {
      circle.add(new GroundPoint(10 * Math.cos(i * 2 * Math.PI / 501), 10 * Math.sin(i * 2 * Math.PI / 501)));
    }
    assertEquals("sun.footprint-corners", Footprint.through("", circle).findings().get(0).code());
    assertEquals(500, Footprint.through("", circle.subList(0, 500)).orThrow().corners().size());
  }

  private static List<GroundPoint> corners(String text) {
    double[] numbers = text.isBlank() ? new double[0] : Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    List<GroundPoint> corners = new ArrayList<>();
    for (int i = 0; i < numbers.length; i += 2) {
      corners.add(new GroundPoint(numbers[i], numbers[i + 1]));
    }
    return corners;
  }
}
