package guildwood.siteplan;

import guildwood.site.water.Incline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How steep a path is from end to end. A path that goes up and down between its ends is steeper in parts.
 *
 * @param percent rise for 100 of length on the plan
 * @param lengthM on the plan
 * @param riseM from the lower end to the higher
 */
public record PathSlope(double percent, double lengthM, double riseM) {
  /**
   * Steepest running slopes that the USDA Forest Service's trail accessibility guidelines allow, each for so many metres
   * in one go: 1:20 for any distance, 1:12 for 200 ft, 1:10 for 30 ft, 1:8 for 10 ft. Accessibility Guidebook for
   * Outdoor Recreation and Trails, publication 0623-2801, technical provisions, section 7.3.
   */
  private static final double[][] WALKABLE_PERCENT_AND_M = {{5, Double.POSITIVE_INFINITY}, {100 / 12.0, 61}, {10, 9}, {12.5, 3}};

  /** An average trail grade of 10 percent or less is most sustainable: IMBA, Trail Solutions, page 64. */
  public static final double EROSION_PERCENT = 10;

  public static Optional<PathSlope> of(PlanPath path) {
    return path.heights().map(ends -> {
      double riseM = Math.abs(ends.endM() - ends.startM());
      return new PathSlope(100 * riseM / path.lengthM(), path.lengthM(), riseM);
    });
  }

  public double degrees() {
    return Incline.ofPercent(percent).degrees();
  }

  /** What is above the limits. */
  public enum Warning {
    /** Steeper than an accessible path of this length may be. */
    HARD_TO_WALK,
    /** Steeper than a path on which water does not wash the covering away. */
    WASHES_OUT
  }

  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (lengthM > walkableM()) {
      warnings.add(Warning.HARD_TO_WALK);
    }
    if (percent > EROSION_PERCENT) {
      warnings.add(Warning.WASHES_OUT);
    }
    return warnings;
  }

  /** How long an accessible path of this slope may be in one go; 0 where it is too steep for any. */
  public double walkableM() {
    for (double[] limit : WALKABLE_PERCENT_AND_M) {
      if (percent <= limit[0] + 1e-9) {
        return limit[1];
      }
    }
    return 0;
  }
}
