package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.guild.PlantSpacing.Layout;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every spacing, and what is refused. */
class PlantSpacingProperties {
  @ParameterizedTest
  @EnumSource(Layout.class)
  void fitsAndBuyEncloseTheCount(Layout layout) {
    Random random = new Random(7);
    for (int i = 0; i < 500; i++) {
      PlantSpacing spacing = new PlantSpacing(layout, 0.05 + 12 * random.nextDouble());
      double areaM2 = 400 * random.nextDouble();
      double plants = spacing.plants(areaM2);
      assertTrue(spacing.fits(areaM2) <= plants && plants <= spacing.buy(areaM2), spacing + " on " + areaM2);
      assertTrue(spacing.buy(areaM2) - spacing.fits(areaM2) <= 1, spacing + " on " + areaM2);
      assertEquals(4 * plants, new PlantSpacing(layout, spacing.spacingM() / 2).plants(areaM2), 1e-6 * plants);
    }
  }

  /** A length from feet or inches must not lose a plant to a rounding error. */
  @Test
  void exactCountsSurviveFeetAndInches() {
    for (int perSide = 1; perSide <= 60; perSide++) {
      for (int inches = 1; inches <= 120; inches++) {
        double spacingM = inches * 0.0254;
        double sideM = perSide * inches / 12.0 * 0.3048;
        PlantSpacing square = new PlantSpacing(Layout.SQUARE, spacingM);
        assertEquals(perSide * perSide, square.fits(sideM * sideM), perSide + " plants at " + inches + " in");
        assertEquals(perSide * perSide, square.buy(sideM * sideM), perSide + " plants at " + inches + " in");
      }
    }
  }

  @Test
  void theLayoutsKeepTheirOrder() {
    double square = new PlantSpacing(Layout.SQUARE, 3).plants(1000);
    assertEquals(1.1547, new PlantSpacing(Layout.TRIANGLE, 3).plants(1000) / square, 1e-4);
    assertEquals(1.2732, new PlantSpacing(Layout.CIRCLE, 3).plants(1000) / square, 1e-4);
  }

  @Test
  void noGroundHoldsNoPlants() {
    assertEquals(0, new PlantSpacing(Layout.SQUARE, 1).fits(0));
    assertEquals(0, new PlantSpacing(Layout.SQUARE, 1).buy(0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 0.009, 100.1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesASpacingThatCannotBe(double spacingM) {
    assertThrows(IllegalArgumentException.class, () -> new PlantSpacing(Layout.SQUARE, spacingM));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesAnAreaThatCannotBe(double areaM2) {
    assertThrows(IllegalArgumentException.class, () -> new PlantSpacing(Layout.SQUARE, 1).plants(areaM2));
  }
}
