package guildwood.siteplan;

import guildwood.site.sun.GroundPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The piece of ground that a drawing shows, north up.
 *
 * @param westM its western edge, metres east of the site's own point
 * @param northM its northern edge
 * @param unitsPerM the drawing's units in a metre
 * @param width of the drawing in its units
 */
public record PlanFrame(double westM, double northM, double unitsPerM, double width, double depth) {
  /** Longer side of the drawing in its units; letters and lines are in these. */
  public static final double LONG_SIDE = 720;

  /** Air around what is shown, as a share of the longer side. */
  private static final double AIR = 0.06;

  /** A plan is never drawn larger than this many metres across would be: a single tree would fill it. */
  private static final double LEAST_M = 6;

  /** The shorter side is at least such a share of the longer, so that there is room to draw. */
  private static final double LEAST_SHARE = 0.5;

  /** Everything on a plan with its paper and picture. */
  public static PlanFrame of(SitePlan plan) {
    List<GroundPoint> points = new ArrayList<>();
    plan.shapes().forEach(shape -> points.addAll(edges(shape)));
    plan.picture().ifPresent(picture -> points.addAll(picture.corners()));
    plan.paper().or(() -> points.isEmpty() ? Optional.of(Paper.USUAL) : Optional.empty())
        .ifPresent(paper -> points.addAll(corners(paper.middle(), paper.widthM() / 2, paper.depthM() / 2)));
    return around(points, AIR);
  }

  /** One shape with its neighbourhood. */
  public static PlanFrame near(PlanShape shape) {
    return around(edges(shape), 0.4);
  }

  private static List<GroundPoint> edges(PlanShape shape) {
    double half = shape.breadthM() / 2;
    return shape.points().stream().flatMap(point -> corners(point, half, half).stream()).toList();
  }

  private static List<GroundPoint> corners(GroundPoint middle, double east, double north) {
    return List.of(new GroundPoint(middle.xM() - east, middle.yM() - north), new GroundPoint(middle.xM() + east, middle.yM() + north));
  }

  private static PlanFrame around(List<GroundPoint> points, double air) {
    var across = points.stream().mapToDouble(GroundPoint::xM).summaryStatistics();
    var up = points.stream().mapToDouble(GroundPoint::yM).summaryStatistics();
    double longM = Math.max(LEAST_M, Math.max(across.getMax() - across.getMin(), up.getMax() - up.getMin()));
    double wideM = Math.max(across.getMax() - across.getMin(), LEAST_SHARE * longM) + 2 * air * longM;
    double deepM = Math.max(up.getMax() - up.getMin(), LEAST_SHARE * longM) + 2 * air * longM;
    double unitsPerM = LONG_SIDE / Math.max(wideM, deepM);
    return new PlanFrame((across.getMin() + across.getMax() - wideM) / 2, (up.getMin() + up.getMax() + deepM) / 2, unitsPerM,
        wideM * unitsPerM, deepM * unitsPerM);
  }

  public double x(double eastM) {
    return (eastM - westM) * unitsPerM;
  }

  public double y(double upM) {
    return (northM - upM) * unitsPerM;
  }

  public double x(GroundPoint point) {
    return x(point.xM());
  }

  public double y(GroundPoint point) {
    return y(point.yM());
  }
}
