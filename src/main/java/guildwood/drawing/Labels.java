package guildwood.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for labels: inside the frame, never over one another, near what they belong to, off the stems where that
 * can be. Each is tried in full beside its plant, then farther off with a line that leads to it, then shorter; one for
 * which the whole frame has no room left is counted as left out.
 */
final class Labels {
  static final double LETTERS_MM = 2.9;

  private static final double LINE_MM = 3.6;
  private static final double GAP_MM = 1.1;
  private static final double[] RINGS_MM = {4, 7, 11, 16, 22, 30};
  private static final int DIRECTIONS = 16;
  private static final double SCAN_MM = 3;

  /** Beyond these costs the same label in fewer letters is looked for first. */
  private static final double DEAR = 9;

  /** A sheet with more labels than this is too full to look over the whole of it for one more. */
  private static final int MOST_SOUGHT = 150;

  private final Box frame;
  private final List<double[]> stems;
  private final List<Label> placed = new ArrayList<>();
  private int leftOut;

  private Labels(Box frame, List<double[]> stems) {
    this.frame = frame;
    this.stems = stems;
  }

  /** @param stems points that labels should not hide */
  static Labels place(Box frame, List<double[]> stems, List<Label.Wanted> wanted) {
    Labels labels = new Labels(frame, stems);
    wanted.forEach(labels::place);
    return labels;
  }

  List<Label> placed() {
    return List.copyOf(placed);
  }

  int leftOut() {
    return leftOut;
  }

  private record Place(Label label, double cost) {}

  private void place(Label.Wanted wanted) {
    Optional<Place> best = Optional.empty();
    for (int choice = 0; choice < wanted.choices().size(); choice++) {
      String words = wanted.choices().get(choice);
      double dearer = choice * DEAR * 0.7;
      Optional<Place> found = near(wanted, words).map(p -> new Place(p.label(), p.cost() + dearer));
      if (found.isPresent() && (best.isEmpty() || found.get().cost() < best.get().cost())) {
        best = found;
      }
      if (best.isPresent() && best.get().cost() < DEAR) {
        break;
      }
    }
    String shortest = wanted.choices().get(wanted.choices().size() - 1);
    best.or(() -> anywhere(wanted, shortest)).ifPresentOrElse(p -> placed.add(p.label()), () -> leftOut++);
  }

  private Optional<Place> near(Label.Wanted wanted, String words) {
    List<Place> places = new ArrayList<>();
    double halfWide = Svg.widthMm(words, LETTERS_MM) / 2 + 0.3;
    double halfHigh = LINE_MM / 2;
    for (int side = 0; side < 8; side++) {
      int across = side < 3 ? 1 : side < 6 ? -1 : 0;
      int down = side == 6 ? -1 : side == 7 ? 1 : side % 3 - 1;
      add(places, wanted, words, Box.around(wanted.atX() + across * (halfWide + GAP_MM), wanted.atY() + down * (halfHigh + GAP_MM * (across == 0 ? 1 : 0.3)),
          halfWide, halfHigh), false);
    }
    for (double ring : RINGS_MM) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double turn = 2 * Math.PI * i / DIRECTIONS;
        double x = wanted.atX() + (ring + halfWide) * Math.cos(turn);
        double y = wanted.atY() + (ring + halfHigh) * Math.sin(turn);
        add(places, wanted, words, Box.around(x, y, halfWide, halfHigh), true);
      }
    }
    return places.stream().min(Comparator.comparingDouble(Place::cost));
  }

  private Optional<Place> anywhere(Label.Wanted wanted, String words) {
    if (placed.size() > MOST_SOUGHT) {
      return Optional.empty();
    }
    List<Place> places = new ArrayList<>();
    double halfWide = Svg.widthMm(words, LETTERS_MM) / 2 + 0.3;
    for (double y = frame.top() + LINE_MM / 2; y < frame.bottom(); y += SCAN_MM) {
      for (double x = frame.left() + halfWide; x < frame.right(); x += SCAN_MM) {
        add(places, wanted, words, Box.around(x, y, halfWide, LINE_MM / 2), true);
      }
    }
    return places.stream().min(Comparator.comparingDouble(Place::cost));
  }

  private void add(List<Place> places, Label.Wanted wanted, String words, Box box, boolean led) {
    if (frame.holds(box) && placed.stream().noneMatch(other -> other.box().meets(box))) {
      Label label = new Label(words, box, wanted.atX(), wanted.atY(), led);
      places.add(new Place(label, cost(label)));
    }
  }

  /** Hidden stems, the way to the plant, and lines across other labels or lines make a place dear. */
  private double cost(Label label) {
    double cost = label.led() ? 2 + Math.hypot(label.box().middleX() - label.atX(), label.box().middleY() - label.atY()) * 0.25 : 0;
    for (double[] stem : stems) {
      boolean own = stem[0] == label.atX() && stem[1] == label.atY();
      cost += !own && label.box().holds(stem[0], stem[1]) ? 3 : 0;
    }
    if (label.led()) {
      double[] line = leader(label);
      for (Label other : placed) {
        cost += crosses(line, other.box()) ? 6 : 0;
        cost += other.led() && cross(line, leader(other)) ? 4 : 0;
      }
    }
    for (Label other : placed) {
      cost += other.led() && crosses(leader(other), label.box()) ? 6 : 0;
    }
    return cost;
  }

  /** From the plant to the near side of the label: x and y of both ends. */
  static double[] leader(Label label) {
    Box box = label.box();
    double x = Math.max(box.left(), Math.min(box.right(), label.atX()));
    double y = Math.max(box.top(), Math.min(box.bottom(), label.atY()));
    return new double[] {label.atX(), label.atY(), x, y};
  }

  private static boolean crosses(double[] line, Box box) {
    double[] down = {box.left(), box.top(), box.right(), box.bottom()};
    double[] up = {box.left(), box.bottom(), box.right(), box.top()};
    return box.holds(line[2], line[3]) || cross(line, down) || cross(line, up);
  }

  private static boolean cross(double[] a, double[] b) {
    return side(a, b[0], b[1]) * side(a, b[2], b[3]) < 0 && side(b, a[0], a[1]) * side(b, a[2], a[3]) < 0;
  }

  private static double side(double[] line, double x, double y) {
    return (line[2] - line[0]) * (y - line[1]) - (line[3] - line[1]) * (x - line[0]);
  }
}
