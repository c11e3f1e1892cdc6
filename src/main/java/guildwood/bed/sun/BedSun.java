package guildwood.bed.sun;

import guildwood.kernel.Range;
import guildwood.site.sun.BedGrid;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.LightClass;
import guildwood.site.sun.Rectangle;
import guildwood.site.sun.Scene;
import guildwood.site.sun.SunHours;
import guildwood.site.sun.SunPath;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Hours of direct sun over a bed whose middle is the scene's origin. All hours are hours a day; where nothing else
 * is said, the mean of the season's days.
 *
 * @param hours of the grid's cells within the outline, in the grid's order
 */
public record BedSun(Rectangle ground, BedGrid grid, Footprint outline, SunHours hours) {
  /** The middle share of the ground that stands for the bed: a tenth at either end is left out as its rim. Our own choice. */
  public static final double MIDDLE_SHARE = 0.8;

  /** Reckons the sun on a bed that fills its rectangle. The number of its cells is for the caller to bound, see {@link CellSize}. */
  public static BedSun of(Scene scene, SunPath path, Rectangle ground, double cellM) {
    return of(scene, path, ground, ground.around(new GroundPoint(0, 0)), cellM);
  }

  /**
   * The same for a bed of any outline.
   *
   * @param ground the rectangle around the outline; it stands in where the outline is so thin that no cell has its
   *     middle inside
   */
  public static BedSun of(Scene scene, SunPath path, Rectangle ground, Footprint outline, double cellM) {
    BedGrid grid = BedGrid.over(outline, cellM);
    List<GroundPoint> cells = grid.middlesWithin(outline);
    if (cells.isEmpty()) {
      Footprint whole = ground.around(new GroundPoint(0, 0));
      if (outline.equals(whole)) {
        throw new IllegalArgumentException("no cell of " + cellM + " m has its middle in " + ground);
      }
      return of(scene, path, ground, whole, cellM);
    }
    return new BedSun(ground, grid, outline, SunHours.of(scene, path, cells));
  }

  public Scene scene() {
    return hours.scene();
  }

  public int cells() {
    return hours.points().size();
  }

  public double meanHours() {
    return mean(hours::seasonMeanHours);
  }

  /** From the darkest cell to the brightest. */
  public Range extremeHours() {
    return hours.seasonRange(1);
  }

  /** What holds on the middle {@link #MIDDLE_SHARE} of the ground. */
  public Range middleHours() {
    return hours.seasonRange(MIDDLE_SHARE);
  }

  /** Shares of the ground by light class, brightest first; they add up to 1. */
  public Map<LightClass, Double> classShares() {
    Map<LightClass, Double> shares = new EnumMap<>(LightClass.class);
    for (LightClass each : LightClass.values()) {
      shares.put(each, mean(i -> LightClass.of(hours.seasonMeanHours(i)) == each ? 1 : 0));
    }
    return shares;
  }

  /** Mean over the bed, darkest and brightest cell of each month, January first. */
  public List<Month> months() {
    List<List<Double>> byCell = IntStream.range(0, cells()).mapToObj(hours::monthlyMeanHours).toList();
    List<Double> open = hours.openMonthlyMeanHours();
    return IntStream.range(0, 12).mapToObj(month -> {
      var all = byCell.stream().mapToDouble(cell -> cell.get(month)).summaryStatistics();
      return new Month(open.get(month), all.getAverage(), new Range(all.getMin(), all.getMax()));
    }).toList();
  }

  /**
   * A month's hours.
   *
   * @param dayLength with nothing in the way
   */
  public record Month(double dayLength, double mean, Range extremes) {}

  /** Hours each obstacle takes in the mean of the bed, by label, the skyline last if there is one. */
  public Map<String, Double> lostHours() {
    return meanByLabel(hours::lostHours);
  }

  /** Hours that would come back in the mean of the bed if one obstacle alone were gone, by label. */
  public Map<String, Double> wonIfGoneHours() {
    return meanByLabel(hours::wonIfGoneHours);
  }

  private Map<String, Double> meanByLabel(IntFunction<Map<String, Double>> ofCell) {
    Map<String, Double> sums = new LinkedHashMap<>();
    IntStream.range(0, cells()).forEach(i -> ofCell.apply(i).forEach((label, each) -> sums.merge(label, each / cells(), Double::sum)));
    return sums;
  }

  private double mean(IntToDoubleFunction ofCell) {
    return IntStream.range(0, cells()).mapToDouble(ofCell).average().orElseThrow();
  }
}
