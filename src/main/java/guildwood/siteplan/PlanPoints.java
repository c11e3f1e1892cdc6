package guildwood.siteplan;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import java.util.List;

/** Looks at points that were drawn, before a shape is made of them. */
public final class PlanPoints {
  /** How far from the site's own point things may be drawn, each way, metres: where beds and trees may lie, too. */
  public static final Range REACH_M = new Range(-2_000, 2_000);

  /** A path walked with a receiver has hundreds of points; more than this is a mistake. */
  public static final int MOST_OF_A_LINE = 2_000;

  private PlanPoints() {}

  /** A line from the first point to the last. */
  public static Checked<List<GroundPoint>> line(List<GroundPoint> points, String field) {
    if (points.size() < 2 || points.size() > MOST_OF_A_LINE) {
      return Checked.refused(Finding.of("plan.line-points", field, points.size(), MOST_OF_A_LINE));
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).equals(points.get(i - 1))) {
        return Checked.refused(Finding.of("plan.points-repeated", field, i));
      }
    }
    return Checked.of(points);
  }

  /** A simple polygon around something. */
  public static Checked<Footprint> outline(List<GroundPoint> points, String field) {
    Checked<Footprint> checked = Footprint.through(field, points);
    return checked.isRefused() ? Checked.refused(checked.findings().stream().map(PlanPoints::ofPlan).toList()) : checked;
  }

  private static Finding ofPlan(Finding finding) {
    String code = switch (finding.code()) {
      case "sun.footprint-corners" -> "plan.outline-points";
      case "sun.footprint-repeated" -> "plan.points-repeated";
      case "sun.footprint-crosses" -> "plan.sides-cross";
      default -> throw new IllegalArgumentException("no words for " + finding);
    };
    return new Finding(code, finding.field(), finding.args());
  }

  public static boolean isInReach(double eastM, double northM) {
    return REACH_M.contains(eastM) && REACH_M.contains(northM);
  }
}
