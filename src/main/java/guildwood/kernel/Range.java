package guildwood.kernel;

/**
 * A closed interval of finite numbers, {@code min <= max}; a single known value is a range of width 0.
 *
 * <p>The unit is that of whatever carries the range and is named there.
 */
public record Range(double min, double max) {
  public Range {
    if (!Double.isFinite(min) || !Double.isFinite(max) || min > max) {
      throw new IllegalArgumentException("not a range: " + min + " to " + max);
    }
  }

  /** The range that holds one value only. */
  public static Range of(double value) {
    return new Range(value, value);
  }

  public double width() {
    return max - min;
  }

  public double middle() {
    return min + (max - min) / 2;
  }

  public boolean contains(double value) {
    return value >= min && value <= max;
  }

  public boolean contains(Range other) {
    return other.min >= min && other.max <= max;
  }

  public boolean overlaps(Range other) {
    return other.min <= max && other.max >= min;
  }

  /** The range with both ends moved outwards. */
  public Range widened(double by) {
    return by == 0 ? this : new Range(min - by, max + by);
  }

  /** The smallest range that holds both. */
  public Range hull(Range other) {
    return new Range(Math.min(min, other.min), Math.max(max, other.max));
  }
}
