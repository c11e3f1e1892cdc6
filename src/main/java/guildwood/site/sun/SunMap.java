package guildwood.site.sun;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Draws a season's sun hours over a bed as SVG text: bands with hatching and numbers, so that colour carries
 * nothing alone; scale, north, legend; title and description for those who listen to it. North is up. No style
 * or script, so it can stand in a page with a strict content policy.
 */
public final class SunMap {
  /** Longer side of the grid in the drawing's units; line widths and letters are in these units. */
  private static final double LONG_SIDE = 600;
  private static final double MARGIN = 60;
  private static final double LETTERS = 22;
  private static final double LINE = 34;

  private final BedGrid grid;
  private final SunHours hours;

  /** For each cell its point, or -1 for one that is not drawn. */
  private final int[] pointOf;

  private final Words words;
  private final String id;
  private final List<SunBand> bands = SunBand.all();
  private final StringBuilder svg = new StringBuilder();
  private final double unitsPerM;
  private final double width;
  private final double mapDepth;

  private SunMap(BedGrid grid, SunHours hours, int[] pointOf, Words words, String id) {
    this.grid = grid;
    this.hours = hours;
    this.pointOf = pointOf;
    this.words = words;
    this.id = id;
    unitsPerM = LONG_SIDE / (grid.cellM() * Math.max(grid.columns(), grid.rows()));
    width = Math.max(grid.columns() * grid.cellM() * unitsPerM, LONG_SIDE / 2) + 2 * MARGIN;
    mapDepth = grid.rows() * grid.cellM() * unitsPerM + 2 * MARGIN;
  }

  /** What the map says, in the reader's language and units. */
  public interface Words {
    String title();

    String description();

    /** The letter at the tip of the north arrow. */
    String north();

    /** A length under the scale. */
    String metres(double lengthM);

    /** The unit in which that length is to be round, metres. */
    default double unitM() {
      return 1;
    }

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
    map.open();
    map.cells();
    outline.ifPresent(bed -> map.polygon(bed, "none", 2.5));
    map.numbers();
    map.obstacles();
    map.northArrow();
    map.scale();
    map.legend();
    return map.svg.append("</svg>\n").toString();
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

  private void open() {
    double depth = mapDepth + LINE * (bands.size() + 2);
    svg.append(say(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.2f %.2f\" role=\"img\" aria-labelledby=\"%s-title %s-text\""
            + " font-family=\"sans-serif\" font-size=\"%.0f\">%n", width, depth, id, id, LETTERS));
    svg.append(say("<title id=\"%s-title\">%s</title>%n", id, escaped(words.title())));
    svg.append(say("<desc id=\"%s-text\">%s</desc>%n<defs>%n", id, escaped(words.description())));
    for (int lines = 1; lines <= 2; lines++) {
      svg.append(say("<pattern id=\"%s-hatch%d\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\">"
          + "<path d=\"M0 8L8 0%s\" stroke=\"#000\" stroke-width=\"0.8\" fill=\"none\"/></pattern>%n",
          id, lines, lines == 2 ? "M0 0L8 8" : ""));
    }
    svg.append(say("<clipPath id=\"%s-frame\"><rect width=\"%.2f\" height=\"%.2f\"/></clipPath>%n</defs>%n", id, width, mapDepth));
  }

  /** Neighbours of one band in a row are drawn as one rectangle. */
  private void cells() {
    for (int row = 0; row < grid.rows(); row++) {
      int from = 0;
      while (from < grid.columns()) {
        int band = bandOf(from, row);
        int to = from + 1;
        while (to < grid.columns() && bandOf(to, row) == band) {
          to++;
        }
        if (band >= 0) {
          double x = MARGIN + from * grid.cellM() * unitsPerM;
          double y = MARGIN + (grid.rows() - row - 1) * grid.cellM() * unitsPerM;
          swatch(bands.get(band), x, y, (to - from) * grid.cellM() * unitsPerM, grid.cellM() * unitsPerM);
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
    String box = say("<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"%%s\" shape-rendering=\"crispEdges\"/>", x, y, wide, high);
    svg.append(say(box, band.fill()));
    if (band.hatch() > 0) {
      svg.append(say(box, "url(#" + id + "-hatch" + band.hatch() + ")"));
    }
    svg.append('\n');
  }

  /** Hours in figures on about eight cells each way. */
  private void numbers() {
    int every = Math.max(1, (int) Math.ceil(Math.max(grid.columns(), grid.rows()) / 8.0));
    for (int row = every / 2; row < grid.rows(); row += every) {
      for (int column = every / 2; column < grid.columns(); column += every) {
        int point = pointOf[row * grid.columns() + column];
        if (point >= 0) {
          GroundPoint middle = hours.points().get(point);
          text(x(middle.xM()), y(middle.yM()) + LETTERS / 3, "middle", say("%.1f", hours.seasonMeanHours(point)));
        }
      }
    }
  }

  private void obstacles() {
    svg.append(say("<g clip-path=\"url(#%s-frame)\">%n", id));
    for (Obstacle obstacle : hours.scene().obstacles()) {
      if (obstacle instanceof Tree tree) {
        double x = x(tree.foot().xM());
        double y = y(tree.foot().yM());
        svg.append(say("<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"none\" stroke=\"#000\" stroke-width=\"1.5\""
            + " stroke-dasharray=\"6 3\"/>%n", x, y, tree.crownRadiusM() * unitsPerM));
        text(x, y - LETTERS, "middle", escaped(tree.label()));
      } else if (obstacle instanceof Building building) {
        polygon(building.footprint(), "#fff", 2);
        nameOf(building);
      }
    }
    svg.append(say("</g>%n"));
  }

  /** In the middle of the footprint, or where it comes into view; nowhere if it stays out of it. */
  private void nameOf(Building building) {
    DoubleSummaryStatistics across = building.footprint().corners().stream().mapToDouble(corner -> x(corner.xM())).summaryStatistics();
    DoubleSummaryStatistics down = building.footprint().corners().stream().mapToDouble(corner -> y(corner.yM())).summaryStatistics();
    if (across.getMax() > 0 && across.getMin() < width && down.getMax() > 0 && down.getMin() < mapDepth) {
      double x = Math.min(Math.max(across.getAverage(), MARGIN), width - MARGIN);
      double y = Math.min(Math.max(down.getAverage(), LINE), mapDepth - 8);
      text(x, y, "middle", escaped(building.label()));
    }
  }

  private void polygon(Footprint footprint, String fill, double line) {
    svg.append("<polygon points=\"");
    footprint.corners().forEach(corner -> svg.append(say("%.2f,%.2f ", x(corner.xM()), y(corner.yM()))));
    svg.append(say("\" fill=\"%s\" stroke=\"#000\" stroke-width=\"%.1f\"/>%n", fill, line));
  }

  private void northArrow() {
    double x = width - MARGIN / 2;
    svg.append(say("<path d=\"M%.2f %.2fl8 26l-8 -6l-8 6z\" fill=\"#000\"/>%n", x, LINE));
    text(x, LINE - 4, "middle", escaped(words.north()));
  }

  private void scale() {
    double length = scaleM() * unitsPerM;
    double y = mapDepth + LINE / 2;
    svg.append(say("<path d=\"M%.2f %.2fv8h%.2fv-8\" fill=\"none\" stroke=\"#000\" stroke-width=\"2\"/>%n", MARGIN, y - 8, length));
    text(MARGIN + length + 8, y + 2, "start", escaped(words.metres(scaleM())));
  }

  /** The roundest length near a quarter of the longer side. */
  private double scaleM() {
    double wanted = LONG_SIDE / unitsPerM / 4 / words.unitM();
    double ten = Math.pow(10, Math.floor(Math.log10(wanted)));
    return words.unitM() * (wanted >= 5 * ten ? 5 * ten : wanted >= 2 * ten ? 2 * ten : ten);
  }

  private void legend() {
    for (int i = 0; i < bands.size(); i++) {
      SunBand band = bands.get(bands.size() - 1 - i);
      double y = mapDepth + LINE * (i + 1.25);
      swatch(band, MARGIN, y, 36, LINE - 5);
      svg.append(say("<rect x=\"%.2f\" y=\"%.2f\" width=\"36\" height=\"%.2f\" fill=\"none\" stroke=\"#000\"/>", MARGIN, y, LINE - 5));
      text(MARGIN + 46, y + LETTERS - 1, "start", escaped(words.band(band)));
    }
  }

  /** Dark letters with a light edge are legible on every band. */
  private void text(double x, double y, String anchor, String words) {
    svg.append(say("<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"%s\" stroke=\"#fff\" stroke-width=\"3.5\" paint-order=\"stroke\""
        + " fill=\"#000\">%s</text>%n", x, y, anchor, words));
  }

  private double x(double eastM) {
    return MARGIN + (eastM - grid.southWest().xM()) * unitsPerM;
  }

  private double y(double northM) {
    return MARGIN + (grid.rows() * grid.cellM() - (northM - grid.southWest().yM())) * unitsPerM;
  }

  private static String say(String format, Object... values) {
    return String.format(Locale.ROOT, format.replace("%n", "\n"), values);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
  }
}
