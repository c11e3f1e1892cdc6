package guildwood.site.survey;

import guildwood.kernel.Range;
import guildwood.site.survey.IndicatorValue.Point;
import guildwood.site.survey.IndicatorValue.Tolerated;
import guildwood.site.survey.Response.Bell;
import guildwood.site.survey.Response.Plateau;
import java.util.List;
import java.util.Optional;

/**
 * How widely species range along a scale, where a source says so and where it does not.
 *
 * <p>Given widths are drawn two thirds of the way towards their common mean square: single ones are uncertain,
 * and one mistaken narrow one would rule a whole plot.
 *
 * <p>Without widths one is assumed from the spread of the values:
 *
 * <ul>
 *   <li>Ranks given by experts (whole and half numbers) and systems known by name: 0.57 of it. ter Braak & Gremmen
 *       1987 (Vegetatio 69:79) found species to occur over 4 to 6 units of Ellenberg's moisture scale (abstract); taken as
 *       four standard deviations that is 1 to 1.5, about 0.57 of the spread of its values (about 2.2).
 *   <li>Other numbers are taken for averages of measurements where the species grew. Averaging draws them
 *       together, so the species range more widely than their averages differ: 1.7 of the spread, as counted by
 *       leaving plots out of seven open community tables (see OpenTablesReferenceCheck among the tests).
 * </ul>
 *
 * @param centreMean mean of the species' values
 * @param centreSpread their standard deviation
 * @param pooled root mean square of all widths, given or assumed
 * @param usualRange median width of the tolerated ranges; 0 where there are none
 * @param areRanks whether the values are ranks or the system is known by name
 */
record Widths(
    double centreMean, double centreSpread, double pooled, double usualRange, boolean areRanks, Kind kind) {
  private static final double TOWARDS_COMMON = 2.0 / 3;

  /** Tolerated ranges are not cut off sharply: this part of their width lies beyond each end, falling to 0. */
  private static final double SHOULDER = 0.1;

  /** Ranges thinner than this part of the usual one are stretched to it at both ends. */
  private static final double THINNEST = 0.25;

  /** Weight of a known scale's own length against the values of a small table, in species. */
  private static final int SCALE_COUNTS_AS = 10;

  /** Widths below this part of the spread are rounding errors of species met once. */
  private static final double NO_WIDTH = 1e-6;

  /** Usual spread of a flora's values on a scale: Ellenberg's moisture values spread by about 2.2 of 11 steps. */
  private static final double OF_SCALE = 0.2;

  /** Width of ranks as a part of the spread of the values. */
  private static final double OF_RANKS = 0.57;

  /** Width of averages as a part of the spread of the values. */
  private static final double OF_AVERAGES = 1.7;

  /** Where the widths come from. */
  enum Kind {
    /** Widths or ranges are given. */
    GIVEN,
    /** Assumed for values on a scale of ranks. */
    USUAL_OF_RANKS,
    /** Assumed for averages of measurements. */
    USUAL_OF_AVERAGES
  }

  static Widths of(List<IndicatorValue> values, Optional<Range> known) {
    double mean = values.stream().mapToDouble(IndicatorValue::centre).average().orElseThrow();
    double squares = values.stream().mapToDouble(v -> (v.centre() - mean) * (v.centre() - mean)).sum();
    int n = values.size();
    boolean ranks = known.isPresent() || values.stream().allMatch(Widths::isRank);
    double spread = spread(squares, n, known, ranks, mean);
    double[] given = values.stream().filter(v -> v instanceof Point p && p.width().isPresent())
        .mapToDouble(v -> ((Point) v).width().getAsDouble()).filter(w -> w > NO_WIDTH * spread).toArray();
    double[] ranges = values.stream().filter(v -> v instanceof Tolerated t && t.range().width() > 0)
        .mapToDouble(v -> ((Tolerated) v).range().width()).sorted().toArray();
    double usual = ranges.length == 0 ? 0 : ranges[ranges.length / 2];
    double square = 0;
    for (double width : given) {
      square += width * width;
    }
    for (double width : ranges) {
      square += width * width / 12;
    }
    if (given.length + ranges.length > 0) {
      return new Widths(mean, spread, Math.sqrt(square / (given.length + ranges.length)), usual, ranks, Kind.GIVEN);
    }
    return ranks
        ? new Widths(mean, spread, OF_RANKS * spread, 0, true, Kind.USUAL_OF_RANKS)
        : new Widths(mean, spread, OF_AVERAGES * spread, 0, false, Kind.USUAL_OF_AVERAGES);
  }

  /** The response a value stands for. */
  Response response(IndicatorValue value) {
    if (value instanceof Point point) {
      double stated = point.width().orElse(0);
      double own = stated > NO_WIDTH * centreSpread ? stated : pooled;
      double tolerance = Math.sqrt((1 - TOWARDS_COMMON) * own * own + TOWARDS_COMMON * pooled * pooled);
      return new Bell(point.value(), tolerance);
    }
    Tolerated tolerated = (Tolerated) value;
    Range range = tolerated.range();
    if (usualRange == 0) {
      return new Bell(value.centre(), pooled);
    }
    double stretch = range.width() < THINNEST * usualRange ? THINNEST * usualRange : 0;
    Range reach = new Range(range.min() - stretch, range.max() + stretch);
    Range preferred = tolerated.preferred().orElse(reach);
    double shoulder = SHOULDER * reach.width();
    return new Plateau(reach.min() - shoulder, preferred.min(), preferred.max(), reach.max() + shoulder, reach);
  }

  private static double spread(double squares, int n, Optional<Range> known, boolean ranks, double mean) {
    if (known.isPresent()) {
      double ofScale = known.get().width() * OF_SCALE;
      return Math.sqrt((squares + SCALE_COUNTS_AS * ofScale * ofScale) / (n + SCALE_COUNTS_AS));
    }
    if (squares > 0) {
      return Math.sqrt(squares / (n - 1));
    }
    // One value only: nothing is known of its scale. Two steps of a scale of ranks, or a quarter of the value.
    return ranks || mean == 0 ? 2 : Math.abs(mean) / 4;
  }

  private static boolean isRank(IndicatorValue value) {
    return value.centre() * 2 == Math.rint(value.centre() * 2);
  }
}
