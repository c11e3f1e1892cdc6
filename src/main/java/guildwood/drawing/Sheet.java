package guildwood.drawing;

import guildwood.site.GroundShapes;
import guildwood.site.sun.GroundPoint;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * A sheet for one arrangement: its scale, the paper it fits on, and where things lie on it. It is laid out for the
 * grown plants, so that every year is drawn on the same sheet.
 *
 * @param scale 50 for 1:50
 * @param frame where the ground is drawn, with room for labels around it
 * @param keyRows lines of the key below
 */
public record Sheet(int scale, Paper paper, double widthMm, double heightMm, Box frame, GroundPoint northWest, int keyColumns, int keyRows) {
  static final double TITLE_MM = 12;
  static final double ROW_MM = 4.6;
  static final double LEGEND_MM = 13.5;
  static final double KEY_COLUMN_MM = 58;

  private static final double ROOM_MM = 9;
  private static final double NARROWEST_MM = 120;

  /** Scales in the order in which they are tried; the finest ones are for small beds on small paper only. */
  private static final int[] SCALES = {20, 25, 50, 100, 200, 500, 1_000, 2_000, 5_000};

  private static final int LARGE_FROM = 50;

  /** A sheet of the small paper, at the largest scale that fits on it. */
  public static Sheet of(Arrangement arrangement) {
    return of(arrangement, false);
  }

  /** @param large whether the paper is twice as large, which often gives room for the next larger scale */
  public static Sheet of(Arrangement arrangement, boolean large) {
    Envelope extent = extent(arrangement);
    int keys = arrangement.kinds().size();
    int layers = (int) arrangement.kinds().stream().map(PlantKind::layer).distinct().count();
    List<Paper> papers = Arrays.stream(Paper.values()).filter(p -> p.isLarge() == large).toList();
    Sheet last = null;
    for (int scale : SCALES) {
      for (Paper paper : papers) {
        last = of(extent, keys, layers, scale, paper);
        if (last.widthMm <= paper.widthMm() && last.heightMm <= paper.heightMm() && (!large || scale >= LARGE_FROM)) {
          return last;
        }
      }
    }
    return last;
  }

  private static Sheet of(Envelope extent, int keys, int layers, int scale, Paper paper) {
    double mm = 1000.0 / scale;
    double wide = extent.getWidth() * mm + 2 * ROOM_MM;
    double high = extent.getHeight() * mm + 2 * ROOM_MM;
    double width = Math.max(NARROWEST_MM, wide);
    int columns = (int) Math.max(1, Math.min(keys, Math.floor(width / KEY_COLUMN_MM)));
    int rows = (keys + columns - 1) / Math.max(1, columns);
    int layerRows = (layers + columns - 1) / Math.max(1, columns);
    Box frame = new Box(0, TITLE_MM, width, TITLE_MM + high);
    GroundPoint corner = new GroundPoint(extent.getMinX() - (width / mm - extent.getWidth()) / 2, extent.getMaxY() + ROOM_MM / mm);
    return new Sheet(scale, paper, width, frame.bottom() + LEGEND_MM + (rows + layerRows) * ROW_MM + ROW_MM, frame, corner, columns, rows);
  }

  /** The bed with all its grown crowns. */
  private static Envelope extent(Arrangement arrangement) {
    Envelope extent = GroundShapes.polygon(arrangement.ground().outline()).getEnvelopeInternal();
    var kinds = arrangement.byId();
    for (Spot spot : arrangement.spots()) {
      double radius = kinds.get(spot.speciesId()).crownM() / 2;
      extent.expandToInclude(spot.at().xM() - radius, spot.at().yM() - radius);
      extent.expandToInclude(spot.at().xM() + radius, spot.at().yM() + radius);
    }
    return extent;
  }

  double x(double eastM) {
    return frame.left() + (eastM - northWest.xM()) * 1000 / scale;
  }

  double y(double northM) {
    return frame.top() + (northWest.yM() - northM) * 1000 / scale;
  }

  double mm(double metres) {
    return metres * 1000 / scale;
  }
}
