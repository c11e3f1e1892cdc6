package guildwood.site.sun;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * A simple polygon on the ground, convex or not, its corners in either sense of rotation. No side touches
 * another except where neighbours share a corner, and it has an area.
 */
public final class Footprint {
  public static final int MOST_CORNERS = 500;

  private final List<GroundPoint> corners;

  private Footprint(List<GroundPoint> corners) {
    this.corners = corners;
  }

  /** The polygon through these corners; the first may be repeated at the end. */
  public static Checked<Footprint> through(String field, List<GroundPoint> given) {
    List<GroundPoint> corners = new ArrayList<>(given);
    if (corners.size() > 1 && corners.get(0).equals(corners.get(corners.size() - 1))) {
      corners.remove(corners.size() - 1);
    }
    if (corners.size() < 3 || corners.size() > MOST_CORNERS) {
      return Checked.refused(Finding.of("sun.footprint-corners", field, corners.size(), MOST_CORNERS));
    }
    for (int i = 0; i < corners.size(); i++) {
      if (corners.get(i).equals(corners.get((i + 1) % corners.size()))) {
        return Checked.refused(Finding.of("sun.footprint-repeated", field, i + 1));
      }
    }
    int[] meeting = sidesThatMeet(corners);
    if (meeting.length > 0) {
      return Checked.refused(Finding.of("sun.footprint-crosses", field, meeting[0] + 1, meeting[1] + 1));
    }
    return Checked.of(new Footprint(List.copyOf(corners)));
  }

  /** The same polygon elsewhere. It is not looked at again: rounding must not make a good one bad. */
  public Footprint moved(GroundPoint by) {
    return new Footprint(corners.stream().map(c -> new GroundPoint(c.xM() + by.xM(), c.yM() + by.yM())).toList());
  }

  public List<GroundPoint> corners() {
    return corners;
  }

  public boolean holds(double xM, double yM) {
    boolean inside = false;
    for (int i = 0, before = corners.size() - 1; i < corners.size(); before = i++) {
      GroundPoint a = corners.get(before);
      GroundPoint b = corners.get(i);
      if (a.yM() > yM != b.yM() > yM && xM < a.xM() + (yM - a.yM()) * (b.xM() - a.xM()) / (b.yM() - a.yM())) {
        inside = !inside;
      }
    }
    return inside;
  }

  private static int[] sidesThatMeet(List<GroundPoint> corners) {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      GroundPoint a = corners.get(i);
      GroundPoint b = corners.get((i + 1) % n);
      if (turn(a, b, corners.get((i + 2) % n)) == 0 && turnsBack(a, b, corners.get((i + 2) % n))) {
        return new int[] {i, (i + 1) % n};
      }
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours && meet(a, b, corners.get(j), corners.get((j + 1) % n))) {
          return new int[] {i, j};
        }
      }
    }
    return new int[0];
  }

  private static boolean turnsBack(GroundPoint a, GroundPoint b, GroundPoint c) {
    return (b.xM() - a.xM()) * (c.xM() - b.xM()) + (b.yM() - a.yM()) * (c.yM() - b.yM()) < 0;
  }

  private static boolean meet(GroundPoint a, GroundPoint b, GroundPoint c, GroundPoint d) {
    double abc = turn(a, b, c);
    double abd = turn(a, b, d);
    double cda = turn(c, d, a);
    double cdb = turn(c, d, b);
    if (abc * abd < 0 && cda * cdb < 0) {
      return true;
    }
    return abc == 0 && between(a, b, c) || abd == 0 && between(a, b, d)
        || cda == 0 && between(c, d, a) || cdb == 0 && between(c, d, b);
  }

  /** Positive where a, b, c turn to the left, 0 where they lie on a line. */
  private static double turn(GroundPoint a, GroundPoint b, GroundPoint c) {
    return (b.xM() - a.xM()) * (c.yM() - a.yM()) - (b.yM() - a.yM()) * (c.xM() - a.xM());
  }

  private static boolean between(GroundPoint a, GroundPoint b, GroundPoint onTheLine) {
    return onTheLine.xM() >= Math.min(a.xM(), b.xM()) && onTheLine.xM() <= Math.max(a.xM(), b.xM())
        && onTheLine.yM() >= Math.min(a.yM(), b.yM()) && onTheLine.yM() <= Math.max(a.yM(), b.yM());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Footprint footprint && footprint.corners.equals(corners);
  }

  @Override
  public int hashCode() {
    return corners.hashCode();
  }

  @Override
  public String toString() {
    return "footprint " + corners;
  }
}
