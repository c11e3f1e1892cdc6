package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.guild.PlantSpacing.Layout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Plant counts against printed tables.
 *
 * <p>Square: 43,560 / (a b) plants an acre, University of Georgia, Warnell School (K. Coder), Number of
 * Trees per Acre by Spacing Distance, read there for 9 by 9 ft. The other figures are the same plane
 * geometry worked out by hand; printed tables round up or down, so they are held to one plant.
 */
class PlantSpacingReferenceCheck {
  private static final double ACRE_M2 = 43_560 * 0.3048 * 0.3048;
  private static final double HUNDRED_SQUARE_FEET_M2 = 100 * 0.3048 * 0.3048;

  /** University of Georgia table: 9 ft by 9 ft is about 538 trees an acre. */
  @Test
  void nineByNineFeetOfTheGeorgiaTable() {
    assertEquals(538, new PlantSpacing(Layout.SQUARE, 9 * 0.3048).plants(ACRE_M2), 1);
  }

  @ParameterizedTest
  @CsvSource({
    "6, 1210, 1397, 1540", "8, 681, 786, 867", "10, 436, 503, 555", "12, 302.5, 349, 385",
    "15, 194, 224, 246", "20, 109, 126, 139", "25, 69.7, 80.5, 88.7", "30, 48.4, 55.9, 61.6"})
  void plantsToTheAcre(double spacingFt, double square, double triangle, double circle) {
    double spacingM = spacingFt * 0.3048;
    assertEquals(square, new PlantSpacing(Layout.SQUARE, spacingM).plants(ACRE_M2), 1);
    assertEquals(triangle, new PlantSpacing(Layout.TRIANGLE, spacingM).plants(ACRE_M2), 1);
    assertEquals(circle, new PlantSpacing(Layout.CIRCLE, spacingM).plants(ACRE_M2), 1);
  }

  /** 14,400 / s2 plants on 100 square feet, s in inches. */
  @ParameterizedTest
  @CsvSource({"4, 900", "6, 400", "8, 225", "10, 144", "12, 100", "15, 64", "18, 44.44", "24, 25", "36, 11.11"})
  void plantsOnAHundredSquareFeet(double spacingIn, double square) {
    assertEquals(square, new PlantSpacing(Layout.SQUARE, spacingIn * 0.0254).plants(HUNDRED_SQUARE_FEET_M2), 0.005);
  }

  @Test
  void aTriangleHoldsAFewMoreThanASquare() {
    PlantSpacing triangle = new PlantSpacing(Layout.TRIANGLE, 12 * 0.0254);
    assertEquals(115.47, triangle.plants(HUNDRED_SQUARE_FEET_M2), 0.005);
    assertEquals(0.866 * 12 * 0.0254, triangle.rowSpacingM(), 1e-5);
  }

  /** 100 m2 at 2 m: 25 in a square, 28.87 in a triangle; 28 fit, 29 are to be bought. */
  @Test
  void wholePlantsRoundDownToFitAndUpToBuy() {
    PlantSpacing square = new PlantSpacing(Layout.SQUARE, 2);
    PlantSpacing triangle = new PlantSpacing(Layout.TRIANGLE, 2);
    assertEquals(25, square.fits(100));
    assertEquals(25, square.buy(100));
    assertEquals(28.87, triangle.plants(100), 0.005);
    assertEquals(28, triangle.fits(100));
    assertEquals(29, triangle.buy(100));
  }
}
