package guildwood.siteplan;

import guildwood.kernel.Range;
import guildwood.site.sun.Compass;
import guildwood.site.sun.GroundPoint;
import java.util.List;

/**
 * Where a picture lies under the plan.
 *
 * @param widthPx size of the picture
 * @param middle where its middle lies, metres east and north of the site's own point
 * @param metresPerPx its scale
 * @param turnDegrees the direction in which its upper edge looks, clockwise from north, below 360
 */
public record PicturePlace(int widthPx, int heightPx, GroundPoint middle, double metresPerPx, double turnDegrees) {
  /** From a tenth of a millimetre to 2 m: a photograph of a bed to an aerial picture of a landscape. */
  public static final Range METRES_PER_PX = new Range(0.0001, 2);

  /** How far from the site's own point its middle may lie, each way. */
  public static final Range MIDDLE_M = new Range(-10_000, 10_000);

  public PicturePlace {
    if (!MIDDLE_M.contains(middle.xM()) || !MIDDLE_M.contains(middle.yM()) || !METRES_PER_PX.contains(metresPerPx)
        || !(turnDegrees >= 0 && turnDegrees < 360)) {
      throw new IllegalArgumentException("no picture of " + metresPerPx + " m a pixel, turned by " + turnDegrees);
    }
  }

  /** A picture nobody has placed yet: as wide as the usual paper, its middle at the site's own point, north up. */
  public static PicturePlace first(PlanPicture picture) {
    return new PicturePlace(picture.widthPx(), picture.heightPx(), new GroundPoint(0, 0), Paper.USUAL.widthM() / picture.widthPx(), 0);
  }

  /**
   * Metres east and north from the picture's middle to a point in it, whatever the middle's place.
   *
   * @param rightPx from the left edge
   * @param downPx from the upper edge
   */
  public GroundPoint fromMiddle(double rightPx, double downPx) {
    double right = (rightPx - widthPx / 2.0) * metresPerPx;
    double up = (heightPx / 2.0 - downPx) * metresPerPx;
    GroundPoint ahead = Compass.step(turnDegrees, up);
    GroundPoint aside = Compass.step(turnDegrees + 90, right);
    return new GroundPoint(ahead.xM() + aside.xM(), ahead.yM() + aside.yM());
  }

  /** Where a point of the picture lies on the site. */
  public GroundPoint ground(double rightPx, double downPx) {
    GroundPoint offset = fromMiddle(rightPx, downPx);
    return new GroundPoint(middle.xM() + offset.xM(), middle.yM() + offset.yM());
  }

  public List<GroundPoint> corners() {
    return List.of(ground(0, 0), ground(widthPx, 0), ground(widthPx, heightPx), ground(0, heightPx));
  }

  public PicturePlace at(GroundPoint newMiddle) {
    return new PicturePlace(widthPx, heightPx, newMiddle, metresPerPx, turnDegrees);
  }
}
