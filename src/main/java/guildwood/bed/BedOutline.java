package guildwood.bed;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.GroundShapes;
import guildwood.site.sun.Compass;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import java.util.Optional;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;

/**
 * The outline of a bed, and what a bed tells of itself that follows from it.
 *
 * @param corners metres east and north of the site's own point
 * @param areaM2 that of the outline, not of the rectangle
 * @param size the smallest rectangle around it, its length along the longer side
 * @param middle that of the rectangle, so that bed, rectangle and outline lie upon one another
 */
public record BedOutline(Footprint corners, double areaM2, Rectangle size, GroundPoint middle) {
  /** A longer and narrower bed cannot be cut into cells that are few and still fit across it. */
  public static final double MOST_SLENDER = 200;

  /** Looks at what follows from an outline; refused where no bed can be like that. */
  public static Checked<BedOutline> of(Footprint corners, String field) {
    double areaM2 = GroundShapes.areaM2(corners);
    if (areaM2 < Bed.SMALLEST_AREA_M2 || areaM2 > Bed.LARGEST_AREA_M2) {
      return Checked.refused(Finding.of("area.out-of-scale", field));
    }
    Coordinate[] box = MinimumAreaRectangle.getMinimumRectangle(GroundShapes.polygon(corners)).getCoordinates();
    double one = box[0].distance(box[1]);
    double other = box[1].distance(box[2]);
    int along = one >= other ? 0 : 1;
    double lengthM = Math.max(one, other);
    double widthM = Math.min(one, other);
    if (!Rectangle.SIDE_M.contains(lengthM) || !Rectangle.SIDE_M.contains(widthM) || lengthM / widthM > MOST_SLENDER) {
      return Checked.refused(Finding.of("bed.outline-sides", field));
    }
    GroundPoint middle = new GroundPoint((box[0].x + box[2].x) / 2, (box[0].y + box[2].y) / 2);
    if (!Bed.PLACE_M.contains(middle.xM()) || !Bed.PLACE_M.contains(middle.yM())) {
      return Checked.refused(Finding.of("bed.outline-far", field));
    }
    double turnDegrees = Compass.towards(new GroundPoint(box[along + 1].x - box[along].x, box[along + 1].y - box[along].y)) % 180;
    return Checked.of(new BedOutline(corners, areaM2, new Rectangle(lengthM, widthM, turnDegrees), middle));
  }

  /** The bed as its outline has it. */
  public Bed applyTo(Bed bed) {
    return new Bed(bed.id(), bed.siteId(), bed.name(), areaM2, Optional.of(size), Optional.of(middle),
        bed.conditions(), bed.standing(), bed.note());
  }
}
