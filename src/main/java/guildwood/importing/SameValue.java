package guildwood.importing;

import guildwood.kernel.Range;
import guildwood.species.TraitValue;

/** Whether a value says nothing that another does not say. */
final class SameValue {
  /** Room for the last digits of a converted number. */
  private static final double HAIR = 1e-9;

  private SameValue() {}

  static boolean says(TraitValue stated, TraitValue again) {
    if (stated instanceof TraitValue.Span one && again instanceof TraitValue.Span other) {
      return near(one.range(), other.range());
    }
    if (stated instanceof TraitValue.InMonths && again instanceof TraitValue.InMonths months && months.months().isEmpty()) {
      return true;
    }
    if (stated instanceof TraitValue.InSeasons && again instanceof TraitValue.InSeasons seasons && seasons.seasons().isEmpty()) {
      return true;
    }
    return stated.equals(again);
  }

  private static boolean near(Range one, Range other) {
    return near(one.min(), other.min()) && near(one.max(), other.max());
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) <= HAIR * Math.max(1, Math.abs(one));
  }
}
