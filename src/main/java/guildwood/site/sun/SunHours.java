package guildwood.site.sun;

import guildwood.kernel.Range;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Hours of direct sun a day at each of a list of points, and what takes the rest.
 *
 * <p>An hour through a crown that lets a tenth of the light through counts as a tenth of an hour.
 */
public final class SunHours {
  private final Scene scene;
  private final List<GroundPoint> points;
  private final SunTally tally;

  /** For each point as given, its place in the tally. */
  private final int[] at;

  private SunHours(Scene scene, SunPath path, List<GroundPoint> points) {
    this.scene = scene;
    this.points = points;
    PointField field = new PointField(points);
    tally = ShadeReckoning.of(scene, path, field);
    at = new int[points.size()];
    for (int i = 0; i < at.length; i++) {
      at[field.given[i]] = i;
    }
  }

  /** Reckons a scene for points, on a path of its own place and year (see {@link Scene#sunPath}). */
  public static SunHours of(Scene scene, SunPath path, List<GroundPoint> points) {
    if (path.year() != scene.year()) {
      throw new IllegalArgumentException("a path of " + path.year() + " for a scene of " + scene.year());
    }
    if (points.size() > mostPoints(scene.obstacles().size())) {
      throw new IllegalArgumentException(points.size() + " points with " + scene.obstacles().size() + " obstacles");
    }
    return new SunHours(scene, path, List.copyOf(points));
  }

  /** How many points can be reckoned at once with so many obstacles; the product bounds the memory. */
  public static int mostPoints(int obstacles) {
    return Math.min(BedGrid.MOST_CELLS, 5_000_000 / Math.max(1, obstacles));
  }

  public List<GroundPoint> points() {
    return points;
  }

  public Scene scene() {
    return scene;
  }

  /** Mean over the season's days. */
  public double seasonMeanHours(int point) {
    return morningMeanHours(point) + afternoonMeanHours(point);
  }

  /** The part of the season's mean before the sun crosses the meridian. */
  public double morningMeanHours(int point) {
    return left(tally.openMornings - tally.hiddenMornings - tally.takenMornings[at[point]], tally.days);
  }

  /** The part of the season's mean after the sun has crossed the meridian. */
  public double afternoonMeanHours(int point) {
    double open = tally.open - tally.openMornings;
    return left(open - (tally.hidden - tally.hiddenMornings) - tally.takenAfternoons[at[point]], tally.days);
  }

  /** January to December, the mean over all days of the month. */
  public List<Double> monthlyMeanHours(int point) {
    return byMonth(month -> tally.openByMonth[month] - tally.hiddenByMonth[month] - tally.takenByMonth[month][at[point]]);
  }

  /** The day's mean length in the season: the hours with nothing in the way. */
  public double openMeanHours() {
    return left(tally.open, tally.days);
  }

  /** Mean day length, January to December. */
  public List<Double> openMonthlyMeanHours() {
    return byMonth(month -> tally.openByMonth[month]);
  }

  /**
   * Hours a day that each obstacle takes in the mean of the season, in the scene's order, the skyline last if
   * there is one. They add up to what is missing from {@link #openMeanHours}; see {@link ShadeReckoning} for
   * how a loss to several obstacles is shared out.
   */
  public Map<String, Double> lostHours(int point) {
    Map<String, Double> lost = byObstacle(tally.takenBy, point);
    if (!scene.horizon().isLevel()) {
      lost.put(Scene.HORIZON, tally.hidden / tally.days);
    }
    return lost;
  }

  /** Hours a day that would be won in the mean of the season if this one obstacle were gone and all others stayed. */
  public Map<String, Double> wonIfGoneHours(int point) {
    return byObstacle(tally.wonBackBy, point);
  }

  /**
   * The range that holds the middle share of the points by their season mean, for example 0.8 for the range
   * from the tenth to the ninetieth in a hundred. What a bed offers is a range, never a bare number.
   */
  public Range seasonRange(double middleShare) {
    if (!(middleShare > 0 && middleShare <= 1) || points.isEmpty()) {
      throw new IllegalArgumentException("the middle " + middleShare + " of " + points.size() + " points");
    }
    double[] hours = IntStream.range(0, points.size()).mapToDouble(this::seasonMeanHours).sorted().toArray();
    int cut = (int) Math.floor((1 - middleShare) / 2 * (hours.length - 1));
    return new Range(hours[cut], hours[hours.length - 1 - cut]);
  }

  private Map<String, Double> byObstacle(double[][] hours, int point) {
    Map<String, Double> means = new LinkedHashMap<>();
    for (int i = 0; i < scene.obstacles().size(); i++) {
      means.put(scene.obstacles().get(i).label(), hours[i][at[point]] / tally.days);
    }
    return means;
  }

  private List<Double> byMonth(IntToDoubleFunction hours) {
    return IntStream.range(0, 12).mapToObj(month -> left(hours.applyAsDouble(month), tally.daysByMonth[month])).toList();
  }

  /** A mean; sums of thousands of steps may end a hair below 0. */
  private static double left(double hours, int days) {
    return Math.max(0, hours / days);
  }

  @Override
  public String toString() {
    return "sun hours " + Arrays.toString(IntStream.range(0, points.size()).mapToDouble(this::seasonMeanHours).toArray());
  }
}
