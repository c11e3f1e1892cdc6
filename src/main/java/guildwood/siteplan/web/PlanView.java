package guildwood.siteplan.web;

import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.ScaleBar;
import guildwood.siteplan.Labels;
import guildwood.siteplan.Labels.Box;
import guildwood.siteplan.Labels.Label;
import guildwood.siteplan.PicturePlace;
import guildwood.siteplan.PlanFrame;
import guildwood.siteplan.PlanShape;
import guildwood.siteplan.ShapeKind;
import guildwood.siteplan.SitePlan;
import guildwood.web.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A plan as it is drawn: everything as text for the attributes of an SVG element.
 *
 * @param frame numbers the script needs to turn places on the screen into places on the ground
 * @param grid the lines of the paper as one path
 * @param gridStep how far apart they are, in words
 * @param picture how the picture is laid; empty where there is none
 */
record PlanView(PlanFrame frame, String viewBox, List<Drawn> shapes, List<Label> labels, String grid, String gridStep, Bar bar, String picture,
    String pictureWidth, String pictureHeight) {
  static final double LETTERS = 20;

  /** Below the ground: the scale. */
  private static final double FOOT = 36;
  private static final int LONGEST_LABEL = 26;

  /**
   * A shape.
   *
   * @param points of a polygon or polyline
   * @param x middle of a tree
   * @param breadth width of a path or diameter of a crown
   */
  record Drawn(String kind, boolean traced, boolean current, String points, String x, String y, String breadth, String radius, String edge) {}

  /** The bar of the scale. */
  record Bar(String x, String y, String path, String words) {}

  /**
   * Draws a plan.
   *
   * @param current the shape being worked on, which is drawn apart; absent where it is the whole plan
   */
  static PlanView of(SitePlan plan, PlanFrame frame, Optional<PlanShape> current, Units units) {
    List<PlanShape> shapes = plan.shapes();
    List<Drawn> drawn = new ArrayList<>();
    shapes.stream().filter(shape -> !isSame(shape, current)).forEach(shape -> drawn.add(drawn(shape, frame, false)));
    current.ifPresent(shape -> drawn.add(drawn(shape, frame, true)));
    double barM = ScaleBar.lengthM(Math.max(frame.width(), frame.depth()) / frame.unitsPerM() / 4, PlanWords.unitM(units));
    double gridM = ScaleBar.lengthM(Math.max(frame.width(), frame.depth()) / frame.unitsPerM() / 12, PlanWords.unitM(units));
    double footY = frame.depth() + FOOT - 14;
    Bar bar = new Bar(number(12 + barM * frame.unitsPerM() + 10), number(footY),
        "M12 " + number(footY - 8) + "v8h" + number(barM * frame.unitsPerM()) + "v-8", PlanWords.round(barM, units));
    return new PlanView(frame, "0 0 " + number(frame.width()) + " " + number(frame.depth() + FOOT), drawn, labels(shapes, frame, current),
        grid(frame, gridM), PlanWords.round(gridM, units), bar, plan.picture().map(place -> matrix(place, frame)).orElse(""),
        plan.picture().map(place -> Integer.toString(place.widthPx())).orElse(""),
        plan.picture().map(place -> Integer.toString(place.heightPx())).orElse(""));
  }

  private static boolean isSame(PlanShape shape, Optional<PlanShape> current) {
    return current.filter(c -> c.kind() == shape.kind() && c.id() == shape.id()).isPresent();
  }

  private static Drawn drawn(PlanShape shape, PlanFrame frame, boolean current) {
    String points = shape.points().stream().map(p -> number(frame.x(p)) + "," + number(frame.y(p))).collect(Collectors.joining(" "));
    GroundPoint first = shape.points().get(0);
    double breadth = shape.breadthM() * frame.unitsPerM();
    return new Drawn(shape.kind().key(), shape.traced(), current, points, number(frame.x(first)), number(frame.y(first)),
        number(breadth), number(breadth / 2), number(breadth + 3));
  }

  /** Names where they find room, else the number the shape has in the list, else nothing: the list has them all. */
  private static List<Label> labels(List<PlanShape> shapes, PlanFrame frame, Optional<PlanShape> current) {
    Labels labels = new Labels(frame.width(), frame.depth(), LETTERS);
    labels.keepFree(new Box(frame.width() - 40, 0, frame.width(), 64));
    List<Label> placed = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      PlanShape shape = shapes.get(i);
      Box box = box(shape, frame);
      GroundPoint heart = shape.heart();
      boolean inView = frame.x(heart) >= 0 && frame.x(heart) <= frame.width() && frame.y(heart) >= 0 && frame.y(heart) <= frame.depth();
      if (inView && !isSame(shape, current)) {
        double y = frame.y(heart) + (shape.kind() == ShapeKind.TREE ? 0.7 * LETTERS : 0);
        labels.placeBy(box, frame.x(heart), y, List.of(shortened(shape.name()), Integer.toString(i + 1))).ifPresent(placed::add);
      }
    }
    return placed;
  }

  private static Box box(PlanShape shape, PlanFrame frame) {
    var across = shape.points().stream().mapToDouble(frame::x).summaryStatistics();
    var down = shape.points().stream().mapToDouble(frame::y).summaryStatistics();
    double half = shape.breadthM() / 2 * frame.unitsPerM();
    return new Box(across.getMin() - half, down.getMin() - half, across.getMax() + half, down.getMax() + half);
  }

  static String shortened(String name) {
    return name.codePointCount(0, name.length()) <= LONGEST_LABEL ? name
        : name.substring(0, name.offsetByCodePoints(0, LONGEST_LABEL - 1)).strip() + "…";
  }

  private static String grid(PlanFrame frame, double stepM) {
    StringBuilder path = new StringBuilder();
    double eastM = frame.westM() + frame.width() / frame.unitsPerM();
    double southM = frame.northM() - frame.depth() / frame.unitsPerM();
    for (double x = Math.ceil(frame.westM() / stepM) * stepM; x <= eastM; x += stepM) {
      path.append('M').append(number(frame.x(x))).append(" 0V").append(number(frame.depth()));
    }
    for (double y = Math.ceil(southM / stepM) * stepM; y <= frame.northM(); y += stepM) {
      path.append("M0 ").append(number(frame.y(y))).append('H').append(number(frame.width()));
    }
    return path.toString();
  }

  /** From the picture's pixels to the drawing's units. */
  private static String matrix(PicturePlace place, PlanFrame frame) {
    GroundPoint origin = place.ground(0, 0);
    GroundPoint right = place.ground(1, 0);
    GroundPoint down = place.ground(0, 1);
    return String.format(Locale.ROOT, "matrix(%.8f %.8f %.8f %.8f %.4f %.4f)", frame.x(right) - frame.x(origin), frame.y(right) - frame.y(origin),
        frame.x(down) - frame.x(origin), frame.y(down) - frame.y(origin), frame.x(origin), frame.y(origin));
  }

  private static String number(double units) {
    return String.format(Locale.ROOT, "%.2f", units);
  }

  /** Middle of the arrow to the north. */
  public String arrowX() {
    return number(frame.width() - 20);
  }

  public String arrow() {
    return "M" + number(frame.width() - 20) + " 24l9 30l-9 -7l-9 7z";
  }

  public boolean hasPicture() {
    return !picture.isEmpty();
  }

  public String depth() {
    return number(frame.depth());
  }

  public String width() {
    return number(frame.width());
  }
}
