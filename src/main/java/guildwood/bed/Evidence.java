package guildwood.bed;

import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.survey.AxisReading;
import guildwood.site.survey.SurveySheet;
import guildwood.species.Axis;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What the plants of a survey say on one axis, beside what else is known there.
 *
 * @param stated what the bed or its site says on the axis by other means than plants; absent where nothing
 */
public record Evidence(SurveySheet survey, AxisReading reading, Optional<Condition> stated) {
  /** What somebody found out on the spot; a published map may well be wrong for one bed, and is not set against it. */
  private static final Set<Basis> ON_THE_SPOT = EnumSet.of(Basis.MEASURED, Basis.OBSERVED, Basis.COMPUTED);

  /** Beside what holds in a bed: its own statement, otherwise its site's. */
  public static Evidence of(SurveySheet survey, AxisReading reading, Bed bed, Site site) {
    Optional<Axis> axis = reading.axis().axis();
    Optional<Condition> own = axis.map(bed.conditions()::get).filter(c -> c.basis() != Basis.INDICATED);
    return new Evidence(survey, reading, own.or(() -> axis.map(site.conditions()::get)));
  }

  /** Beside what is stated for a whole site. */
  public static Evidence of(SurveySheet survey, AxisReading reading, Site site) {
    return new Evidence(survey, reading, reading.axis().axis().map(site.conditions()::get));
  }

  /** Whether a measured value stands, which an indicated one never replaces. */
  public boolean isOutranked() {
    return stated.filter(c -> c.basis() == Basis.MEASURED).isPresent();
  }

  /** Whether what was found on the spot lies wholly outside the interval; a class counts with its whole width. */
  public boolean isContradiction() {
    return stated.filter(c -> ON_THE_SPOT.contains(c.basis())).map(c -> {
      Range whole = c.range().widened(c.axis().halfClass());
      return reading.contradicts(whole);
    }).orElse(false);
  }
}
