package guildwood.fit;

import guildwood.kernel.Range;

/** What a species bears on one axis, as a response between 0 and 1 to what a place offers. */
public sealed interface Tolerance permits Trapezoid, TextureSet {

  /** Mean response over a place's range, 0 to 1; the response at the value where the range has no width. */
  double mean(Range bed);

  /**
   * How far the place's range would have to move, in the unit of the axis, to lie inside what is
   * tolerated; positive where it would have to rise, 0 where it lies inside already.
   */
  double shortfall(Range bed);

  /** The same on a scale where every number stands for what lies {@code half} to either side of it. */
  Tolerance overClasses(double half);

  /** The smallest range that holds everything tolerated. */
  Range tolerated();

  /** The smallest range that holds everything preferred. */
  Range preferred();
}
