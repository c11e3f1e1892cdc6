package guildwood.site.survey;

import guildwood.kernel.Range;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a source states about a species on one axis, on the source's own scale. */
public sealed interface IndicatorValue {

  /** The number that averages are made of. */
  double centre();

  /**
   * A point on the scale.
   *
   * @param width standard deviation of its occurrences along the scale; absent where the source gives none
   */
  record Point(double value, OptionalDouble width) implements IndicatorValue {
    public Point {
      if (!Double.isFinite(value) || width.isPresent() && !(width.getAsDouble() > 0 && Double.isFinite(width.getAsDouble()))) {
        throw new IllegalArgumentException("not an indicator value: " + value + ", width " + width);
      }
    }

    @Override
    public double centre() {
      return value;
    }
  }

  /** A range that the species bears, and within it the range it does best in where that is stated. */
  record Tolerated(Range range, Optional<Range> preferred) implements IndicatorValue {
    public Tolerated {
      if (preferred.isPresent() && !range.contains(preferred.get())) {
        throw new IllegalArgumentException(preferred.get() + " is not within " + range);
      }
    }

    /** Middle of the preferred range, otherwise of the tolerated one. */
    @Override
    public double centre() {
      return preferred.orElse(range).middle();
    }
  }
}
