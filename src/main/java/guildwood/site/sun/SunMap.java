package guildwood.site.sun;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Draws a season's sun hours over a bed as SVG text: bands with hatching and numbers, so that colour carries
 * nothing alone; scale, north, legend; title and description for those who listen to it. North is up.
 */
public final class SunMap {
  private static final double MARGIN = GroundDrawing.MARGIN;
  private static final double LETTERS = GroundDrawing.LETTERS;
  private static final double LINE = GroundDrawing.LINE;

  private final BedGrid grid;
  private final SunHours hours;

  /** For each cell its point, or -1 for one that is not drawn. */
  private final int[] pointOf;

  private final Words words;
  private final String id;
  private final List<SunBand> bands = SunBand.all();
  private final GroundDrawing drawing;

  private SunMap(BedGrid grid, SunHours hours, int[] pointOf, Words words, String id) {
    this.grid = grid;
    this.hours = hours;
    this.pointOf = pointOf;
    this.words = words;
    this.id = id;
    drawing = new GroundDrawing(
        grid.southWest(), grid.columns() * grid.cellM(), grid.rows() * grid.cellM(), bands.size() + 2, words, id);
  }

  /** What the map says, in the reader's language and units. */
  public interface Words extends DrawingWords {
    /** A band's hours and class in the legend. */
    String band(SunBand band);
  }

  /**
   * The map as one {@code svg} element.
   *
   * @param hours of exactly the grid's middles, or of those within the outline
   * @param outline of the bed: cells with their middle outside are left blank; empty to draw the whole grid
   * @param id begins with a letter and is used by nothing else on the page
   */
  public static String draw(BedGrid grid, SunHours hours, Optional<Footprint> outline, Words words, String id) {
    SunMap map = new SunMap(grid, hours, pointOfEachCell(grid, hours, outline), words, id);
    map.hatching();
    map.cells();
    outline.ifPresent(bed -> map.drawing.polygon(bed, "none", 2.5));
    map.numbers();
    map.drawing.obstacles(hours.scene().obstacles());
    map.drawing.northArrow();
    map.drawing.scale();
    map.legend();
    return map.drawing.finished();
  }

  private static int[] pointOfEachCell(BedGrid grid, SunHours hours, Optional<Footprint> outline) {
    List<GroundPoint> middles = grid.middles();
    boolean all = hours.points().size() == middles.size();
    int[] points = new int[middles.size()];
    int drawn = 0;
    for (int i = 0; i < points.length; i++) {
      boolean inside = outline.isEmpty() || outline.get().holds(middles.get(i).xM(), middles.get(i).yM());
      points[i] = !inside ? -1 : all ? i : drawn;
      drawn += inside ? 1 : 0;
    }
    if (!all && drawn != hours.points().size()) {
      throw new IllegalArgumentException(hours.points().size() + " points for " + grid);
    }
    return points;
  }

  private void hatching() {
    drawing.append("<defs>%n");
    for (int lines = 1; lines <= 2; lines++) {
      drawing.append("<pattern id=\"%s-hatch%d\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\">"
          + "<path d=\"M0 8L8 0%s\" stroke=\"#000\" stroke-width=\"0.8\" fill=\"none\"/></pattern>%n",
          id, lines, lines == 2 ? "M0 0L8 8" : "");
    }
    drawing.append("</defs>%n");
  }

  /** Neighbours of one band in a row are drawn as one rectangle. */
  private void cells() {
    double side = grid.cellM() * drawing.unitsPerM();
    for (int row = 0; row < grid.rows(); row++) {
      int from = 0;
      while (from < grid.columns()) {
        int band = bandOf(from, row);
        int to = from + 1;
        while (to < grid.columns() && bandOf(to, row) == band) {
          to++;
        }
        if (band >= 0) {
          swatch(bands.get(band), MARGIN + from * side, MARGIN + (grid.rows() - row - 1) * side, (to - from) * side, side);
        }
        from = to;
      }
    }
  }

  private int bandOf(int column, int row) {
    int point = pointOf[row * grid.columns() + column];
    return point < 0 ? -1 : SunBand.indexOf(bands, hours.seasonMeanHours(point));
  }

  private void swatch(SunBand band, double x, double y, double wide, double high) {
    rectangle(band.fill(), x, y, wide, high);
    if (band.hatch() > 0) {
      rectangle("url(#" + id + "-hatch" + band.hatch() + ")", x, y, wide, high);
    }
    drawing.append("%n");
  }

  private void rectangle(String fill, double x, double y, double wide, double high) {
    drawing.append("<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"%s\" shape-rendering=\"crispEdges\"/>", x, y, wide, high, fill);
  }

  /** Hours in figures on about eight cells each way. */
  private void numbers() {
    int every = Math.max(1, (int) Math.ceil(Math.max(grid.columns(), grid.rows()) / 8.0));
    for (int row = every / 2; row < grid.rows(); row += every) {
      for (int column = every / 2; column < grid.columns(); column += every) {
        int point = pointOf[row * grid.columns() + column];
        if (point >= 0) {
          GroundPoint middle = hours.points().get(point);
          drawing.text(drawing.x(middle.xM()), drawing.y(middle.yM()) + LETTERS / 3, "middle",
              String.format(Locale.ROOT, "%.1f", hours.seasonMeanHours(point)));
        }
      }
    }
  }

  private void legend() {
    for (int i = 0; i < bands.size(); i++) {
      SunBand band = bands.get(bands.size() - 1 - i);
      double y = drawing.depth() + LINE * (i + 1.25);
      swatch(band, MARGIN, y, 36, LINE - 5);
      drawing.append("<rect x=\"%.2f\" y=\"%.2f\" width=\"36\" height=\"%.2f\" fill=\"none\" stroke=\"#000\"/>", MARGIN, y, LINE - 5);
      drawing.text(MARGIN + 46, y + LETTERS - 1, "start", words.band(band));
    }
  }
}
