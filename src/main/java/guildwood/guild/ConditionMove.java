package guildwood.guild;

import guildwood.fit.AxisFit;
import guildwood.fit.Tolerance;
import guildwood.kernel.Range;
import guildwood.species.Axis;
import java.util.Optional;

/** The smallest move of a bed's condition that lets a species in. */
final class ConditionMove {
  private ConditionMove() {}

  /**
   * The step in which moves are tried and shown, in the unit of the axis; 0 for what nobody can change
   * (a grower changes light by the canopy, water, lime or sulphur, compost). Classes
   * move by whole classes: only those can be said of a bed.
   */
  private static double step(Axis axis) {
    return switch (axis) {
      case LIGHT -> 0.5;
      case MOISTURE, FERTILITY -> 1;
      case REACTION -> 0.1;
      case TEXTURE, WINTER_COLD, SEASON -> 0;
    };
  }

  /** The bed's range after the fewest steps towards what the species prefers that bring its fit to the threshold. */
  static Optional<Range> to(Axis axis, Range bed, Tolerance tolerance, double threshold) {
    double step = step(axis);
    if (step == 0) {
      return Optional.empty();
    }
    double way = tolerance.preferred().middle() - bed.middle();
    int steps = (int) Math.ceil(Math.abs(way) / step);
    for (int k = 1; k <= steps; k++) {
      Range moved = moved(bed, Math.signum(way) * k * step);
      if (moved.min() < axis.lowest() || moved.max() > axis.highest()) {
        return Optional.empty();
      }
      if (AxisFit.of(axis, moved, tolerance).value() >= threshold) {
        return Optional.of(moved);
      }
    }
    return Optional.empty();
  }

  private static Range moved(Range bed, double by) {
    return new Range(rounded(bed.min() + by), rounded(bed.max() + by));
  }

  /** To the hundred-thousandth, so that 6.1 does not read 6.1000000000000005. */
  private static double rounded(double value) {
    return Math.round(value * 100_000) / 100_000.0;
  }
}
