package guildwood.guild;

/**
 * How far apart plants of one kind stand, and so how many of them an area holds.
 *
 * <p>The three layouts give counts that differ by up to 27 percent for the same spacing, so a count is
 * always shown with the name of its layout. Counts are by area alone: what the edges and corners of a bed
 * waste or gain is not reckoned. Plane geometry.
 *
 * @param layout how the plants stand to one another
 * @param spacingM from stem to stem, metres; for {@link Layout#CIRCLE} the diameter of a plant's circle
 */
public record PlantSpacing(Layout layout, double spacingM) {
  /** Closest spacing that makes sense, metres. */
  public static final double CLOSEST_M = 0.01;

  /** Widest spacing that makes sense, metres. */
  public static final double WIDEST_M = 100;

  // Sizes that come from feet or inches may miss a whole number by a rounding error.
  private static final double SLACK = 1e-9;

  /** How plants stand to one another. */
  public enum Layout {
    /** Rows a spacing apart, plants opposite one another. */
    SQUARE,
    /** Rows half a square root of three of a spacing apart, plants staggered: 15.5 percent more than the square. */
    TRIANGLE,
    /** The area divided by the plants' own circles, gaps between them not counted: more than can be planted. */
    CIRCLE
  }

  public PlantSpacing {
    if (!(spacingM >= CLOSEST_M && spacingM <= WIDEST_M)) {
      throw new IllegalArgumentException("plants " + spacingM + " m apart");
    }
  }

  /** Ground that one plant takes, square metres. */
  public double groundPerPlantM2() {
    return switch (layout) {
      case SQUARE -> spacingM * spacingM;
      case TRIANGLE -> spacingM * rowSpacingM();
      case CIRCLE -> Math.PI * spacingM * spacingM / 4;
    };
  }

  /** From row to row, metres; circles stand in no rows and get their diameter. */
  public double rowSpacingM() {
    return layout == Layout.TRIANGLE ? spacingM * Math.sqrt(3) / 2 : spacingM;
  }

  /** Plants on an area, not rounded. */
  public double plants(double areaM2) {
    if (!(areaM2 >= 0) || Double.isInfinite(areaM2)) {
      throw new IllegalArgumentException("an area of " + areaM2 + " m2");
    }
    return areaM2 / groundPerPlantM2();
  }

  /** Whole plants that fit: rounded down. */
  public int fits(double areaM2) {
    double plants = plants(areaM2);
    return Math.toIntExact((long) Math.floor(plants + plants * SLACK));
  }

  /** Whole plants to buy to fill the area: rounded up. */
  public int buy(double areaM2) {
    double plants = plants(areaM2);
    return Math.toIntExact((long) Math.ceil(plants - plants * SLACK));
  }
}
