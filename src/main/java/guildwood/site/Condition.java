package guildwood.site;

import guildwood.kernel.Range;
import guildwood.species.Axis;

/**
 * What a place offers on one axis: a range, never a bare number, with its basis.
 *
 * @param range in the unit of the axis
 * @param entered as people wrote it, for example {@code part shade} or {@code zone 5b}
 */
public record Condition(Axis axis, Range range, Basis basis, String entered) {
  public Condition {
    if (range.min() < axis.lowest() || range.max() > axis.highest()) {
      throw new IllegalArgumentException(axis + " cannot be " + range);
    }
  }

  /** The same condition as seen from a bed of the site that has it. */
  public Condition inherited() {
    return new Condition(axis, range, Basis.INHERITED, entered);
  }
}
