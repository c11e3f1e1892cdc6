package guildwood.site.sun;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A piece of ground seen from above as SVG text, north up, with a margin in which its surroundings show. No style
 * or script, so it can stand in a page with a strict content policy.
 */
final class GroundDrawing {
  /** Longer side of the ground in the drawing's units; line widths and letters are in these units. */
  static final double LONG_SIDE = 600;
  static final double MARGIN = 60;
  static final double LETTERS = 22;
  static final double LINE = 34;

  private static final int LATTICE = 40;

  private final StringBuilder svg = new StringBuilder();
  private final GroundPoint southWest;
  private final double northM;
  private final DrawingWords words;
  private final String id;
  private final double unitsPerM;
  private final double width;
  private final double depth;

  /**
   * Begins a drawing.
   *
   * @param eastM how far the ground reaches eastwards from its south-west corner
   * @param northM how far it reaches northwards
   * @param linesBelow lines of text that follow below the ground
   * @param id begins with a letter and is used by nothing else on the page
   */
  GroundDrawing(GroundPoint southWest, double eastM, double northM, int linesBelow, DrawingWords words, String id) {
    this.southWest = southWest;
    this.northM = northM;
    this.words = words;
    this.id = id;
    unitsPerM = LONG_SIDE / Math.max(eastM, northM);
    width = Math.max(eastM * unitsPerM, LONG_SIDE / 2) + 2 * MARGIN;
    depth = northM * unitsPerM + 2 * MARGIN;
    append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.2f %.2f\" role=\"img\" aria-labelledby=\"%s-title %s-text\""
        + " font-family=\"sans-serif\" font-size=\"%.0f\">%n", width, depth + LINE * linesBelow, id, id, LETTERS);
    append("<title id=\"%s-title\">%s</title>%n", id, escaped(words.title()));
    append("<desc id=\"%s-text\">%s</desc>%n<defs>%n", id, escaped(words.description()));
    append("<clipPath id=\"%s-frame\"><rect width=\"%.2f\" height=\"%.2f\"/></clipPath>%n</defs>%n", id, width, depth);
  }

  double unitsPerM() {
    return unitsPerM;
  }

  /** Where the ground with its margin ends, from above. */
  double depth() {
    return depth;
  }

  void append(String format, Object... values) {
    svg.append(String.format(Locale.ROOT, format.replace("%n", "\n"), values));
  }

  /** Trees as dashed circles, buildings as white outlines, with their names, cut off at the frame. */
  void obstacles(Iterable<Obstacle> obstacles) {
    append("<g clip-path=\"url(#%s-frame)\">%n", id);
    for (Obstacle obstacle : obstacles) {
      if (obstacle instanceof Tree tree) {
        double x = x(tree.foot().xM());
        double y = y(tree.foot().yM());
        append("<circle cx=\"%.2f\" cy=\"%.2f\" r=\"%.2f\" fill=\"none\" stroke=\"#000\" stroke-width=\"1.5\""
            + " stroke-dasharray=\"6 3\"/>%n", x, y, tree.crownRadiusM() * unitsPerM);
        text(x, y - LETTERS, "middle", tree.label());
      } else if (obstacle instanceof Building building) {
        polygon(building.footprint(), "#fff", 2);
        nameOf(building);
      }
    }
    append("</g>%n");
  }

  /**
   * Inside the footprint, near the middle of what is in view of it; nowhere if it stays out of view. An L-shaped
   * building has its middle where somebody else's ground is, so the place is looked for on a lattice of points.
   */
  private void nameOf(Building building) {
    List<double[]> inside = new ArrayList<>();
    double meanX = 0;
    double meanY = 0;
    for (int i = 0; i < LATTICE * LATTICE; i++) {
      double x = width * (i % LATTICE + 0.5) / LATTICE;
      double y = depth * (i / LATTICE + 0.5) / LATTICE;
      if (building.footprint().holds(southWest.xM() + (x - MARGIN) / unitsPerM, southWest.yM() + northM - (y - MARGIN) / unitsPerM)) {
        inside.add(new double[] {x, y});
        meanX += x;
        meanY += y;
      }
    }
    double middleX = meanX / Math.max(1, inside.size());
    double middleY = meanY / Math.max(1, inside.size());
    inside.stream().min(Comparator.comparingDouble(point -> Math.hypot(point[0] - middleX, point[1] - middleY))).ifPresent(point ->
        text(Math.min(Math.max(point[0], MARGIN), width - MARGIN), Math.min(Math.max(point[1] + LETTERS / 3, LETTERS), depth - 4), "middle",
            building.label()));
  }

  void polygon(Footprint footprint, String fill, double line) {
    append("<polygon points=\"");
    footprint.corners().forEach(corner -> append("%.2f,%.2f ", x(corner.xM()), y(corner.yM())));
    append("\" fill=\"%s\" stroke=\"#000\" stroke-width=\"%.1f\"/>%n", fill, line);
  }

  void northArrow() {
    double x = width - MARGIN / 2;
    append("<path d=\"M%.2f %.2fl8 26l-8 -6l-8 6z\" fill=\"#000\"/>%n", x, LINE);
    text(x, LINE - 4, "middle", words.north());
  }

  void scale() {
    double length = scaleM() * unitsPerM;
    double y = depth + LINE / 2;
    append("<path d=\"M%.2f %.2fv8h%.2fv-8\" fill=\"none\" stroke=\"#000\" stroke-width=\"2\"/>%n", MARGIN, y - 8, length);
    text(MARGIN + length + 8, y + 2, "start", words.metres(scaleM()));
  }

  /** The roundest length near a quarter of the longer side. */
  private double scaleM() {
    return ScaleBar.lengthM(LONG_SIDE / unitsPerM / 4, words.unitM());
  }

  /** Dark letters with a light edge are legible on every ground. */
  void text(double x, double y, String anchor, String words) {
    append("<text x=\"%.2f\" y=\"%.2f\" text-anchor=\"%s\" stroke=\"#fff\" stroke-width=\"3.5\" paint-order=\"stroke\""
        + " fill=\"#000\">%s</text>%n", x, y, anchor, escaped(words));
  }

  double x(double eastM) {
    return MARGIN + (eastM - southWest.xM()) * unitsPerM;
  }

  double y(double upM) {
    return MARGIN + (northM - (upM - southWest.yM())) * unitsPerM;
  }

  String finished() {
    return svg.append("</svg>\n").toString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
  }
}
