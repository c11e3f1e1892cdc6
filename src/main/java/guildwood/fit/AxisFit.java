package guildwood.fit;

import guildwood.kernel.Range;
import guildwood.species.Axis;

/**
 * The fit on one axis that is known on both sides.
 *
 * @param bed what the place offers, in the unit of the axis
 * @param value 0 to 1
 * @param shortfall how far the place's range would have to move to be tolerated throughout, in the unit
 *     of the axis, positive where it would have to rise; 0 where it lies inside
 */
public record AxisFit(Axis axis, Range bed, Tolerance tolerance, double value, double shortfall) {
  public AxisFit {
    if (!(value >= 0 && value <= 1) || !Double.isFinite(shortfall)) {
      throw new IllegalArgumentException(axis + " fits " + value + ", short by " + shortfall);
    }
  }

  /**
   * Classes count as the stretch of ground they stand for, so that a bed between medium and rich suits a
   * plant of rich ground by half, not by nothing.
   */
  public static AxisFit of(Axis axis, Range bed, Tolerance tolerance) {
    Range covered = bed.widened(axis.halfClass());
    Tolerance borne = tolerance.overClasses(axis.halfClass());
    return new AxisFit(axis, bed, tolerance, borne.mean(covered), borne.shortfall(covered));
  }

  /** The verdict this axis alone would give. */
  public Verdict verdict() {
    return Verdict.ofFit(value);
  }
}
