package guildwood.site.sun;

import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The distant skyline all around: hills, woods, a row of houses far away. It hides the sun from every point
 * of the bed alike.
 *
 * <p>Between the directions given the elevation is interpolated in a straight line over the azimuth, and
 * from the last of them on over north to the first; one direction alone stands for the whole circle.
 */
public final class Horizon {
  /** A skyline that hides nothing. */
  public static final Horizon LEVEL = new Horizon(List.of());

  private final List<HorizonPoint> points;

  private Horizon(List<HorizonPoint> points) {
    this.points = points;
  }

  /** The skyline through these points; refused where one direction has two different heights. */
  public static Checked<Horizon> through(String field, List<HorizonPoint> given) {
    List<HorizonPoint> sorted = new ArrayList<>(given);
    sorted.sort(Comparator.comparingDouble(HorizonPoint::turnDegrees));
    List<HorizonPoint> kept = new ArrayList<>();
    for (HorizonPoint point : sorted) {
      HorizonPoint before = kept.isEmpty() ? null : kept.get(kept.size() - 1);
      if (before == null || before.turnDegrees() != point.turnDegrees()) {
        kept.add(point);
      } else if (before.elevationDegrees() != point.elevationDegrees()) {
        return Checked.refused(Finding.of("sun.horizon-twice", field, point.turnDegrees()));
      }
    }
    return Checked.of(new Horizon(List.copyOf(kept)));
  }

  /**
   * A skyline measured in the field by eight compass directions.
   *
   * @param elevationsDegrees north, north-east, east and so on, clockwise
   */
  public static Horizon ofCompass(List<Double> elevationsDegrees) {
    if (elevationsDegrees.size() != 8) {
      throw new IllegalArgumentException("eight directions, not " + elevationsDegrees);
    }
    List<HorizonPoint> points = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      points.add(new HorizonPoint(45.0 * i, elevationsDegrees.get(i)));
    }
    return new Horizon(List.copyOf(points));
  }

  /** Nothing stands above eye level anywhere. */
  public boolean isLevel() {
    return points.stream().allMatch(point -> point.elevationDegrees() == 0);
  }

  public double elevationDegrees(double azimuthDegrees) {
    if (points.isEmpty()) {
      return 0;
    }
    double turn = ((azimuthDegrees % 360) + 360) % 360;
    int after = 0;
    while (after < points.size() && points.get(after).turnDegrees() <= turn) {
      after++;
    }
    HorizonPoint left = points.get((after + points.size() - 1) % points.size());
    HorizonPoint right = points.get(after % points.size());
    double gap = right.turnDegrees() - left.turnDegrees();
    double width = gap > 0 ? gap : gap + 360;
    double along = (turn - left.turnDegrees() + 360) % 360;
    return left.elevationDegrees() + (right.elevationDegrees() - left.elevationDegrees()) * (along / width);
  }

  /** Whether the skyline hides the middle of the sun. A level one never does: the day ends at sunset. */
  boolean hides(SunPosition sun) {
    double skyline = elevationDegrees(sun.azimuthDegrees());
    return skyline > 0 && sun.elevationDegrees() < skyline;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Horizon horizon && horizon.points.equals(points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  @Override
  public String toString() {
    return "horizon " + points;
  }
}
