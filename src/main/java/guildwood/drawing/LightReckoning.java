package guildwood.drawing;

import guildwood.kernel.Range;
import guildwood.site.GroundShapes;
import guildwood.site.sun.BedGrid;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Scene;
import guildwood.site.sun.SunHours;
import guildwood.site.sun.SunPath;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Light in the bed as its plants grow: each plant's crown of the year stands in the sun model beside the trees and
 * buildings around. The light of a plant is read at its own height, where only taller crowns can take it.
 *
 * <p>Where the bed is said to get less sun than the model finds with the guild's plants gone - by something nobody
 * recorded - all hours are brought down in the same proportion.
 */
public final class LightReckoning {
  /** The year is walked in every seventh day only: enough for means of a season, and seven times as quick. */
  private static final int EVERY_DAYS = 7;

  private static final double STEP_MINUTES = 20;
  private static final int CELLS = 70;

  /** No more crowns than this are reckoned, the widest first; cells times crowns bound the time. */
  private static final int MOST_CROWNS = 150;

  /** Of a species with more plants than this, so many spread over the bed stand for all. */
  private static final int MOST_TOPS = 40;

  private final Scene around;
  private final SunPath path;
  private final Optional<Range> statedHours;

  /**
   * @param around the bed's scene without the plants of the guild, the bed's middle as its origin
   * @param statedHours what the bed says of its light; absent where it says nothing
   */
  public LightReckoning(Scene around, Optional<Range> statedHours) {
    this.around = around;
    this.statedHours = statedHours;
    SunPath whole = around.sunPath(STEP_MINUTES);
    SunPath thin = whole.everyDays(EVERY_DAYS);
    path = thin.daysIn(around.season()) >= EVERY_DAYS ? thin : whole;
  }

  public YearLight of(Grown grown) {
    List<GroundPoint> cells = cells(grown.arrangement().ground());
    List<Obstacle> crowns = crowns(grown);
    double open = mean(SunHours.of(around, path, cells));
    double scale = statedHours.map(stated -> Math.min(1, stated.max() / Math.max(0.1, open))).orElse(1.0);
    double ground = crowns.isEmpty() ? open : mean(SunHours.of(scene(crowns, 0), path, cells));
    Map<String, Range> tops = new TreeMap<>();
    for (PlantKind kind : grown.arrangement().kinds()) {
      tops.put(kind.speciesId(), tops(grown, kind, crowns, scale));
    }
    return new YearLight(ground * scale, open * scale, tops);
  }

  private static List<GroundPoint> cells(BedGround ground) {
    double area = GroundShapes.polygon(ground.outline()).getArea();
    for (double cell = Math.sqrt(area / CELLS);; cell /= 2) {
      List<GroundPoint> middles = BedGrid.over(ground.outline(), cell).middlesWithin(ground.outline());
      if (!middles.isEmpty()) {
        return middles;
      }
    }
  }

  private List<Obstacle> crowns(Grown grown) {
    Map<String, PlantKind> kinds = grown.arrangement().byId();
    return grown.bodies().entrySet().stream().filter(e -> kinds.get(e.getKey().speciesId()).shadePercent() > 0)
        .sorted(Comparator.comparing((Map.Entry<Spot, GrownPlant> e) -> -e.getValue().radiusM() * e.getValue().heightM()).thenComparing(e -> e.getKey().id()))
        .limit(MOST_CROWNS).<Obstacle>map(e -> e.getValue().tree(e.getKey(), kinds.get(e.getKey().speciesId()))).toList();
  }

  /** Plants of one species and age are equally tall, so one height serves for all of them that are not older. */
  private Range tops(Grown grown, PlantKind kind, List<Obstacle> crowns, double scale) {
    Map<Double, List<GroundPoint>> byHeight = new TreeMap<>();
    grown.bodies().forEach((spot, body) -> {
      if (spot.speciesId().equals(kind.speciesId())) {
        byHeight.computeIfAbsent(body.heightM(), h -> new ArrayList<>()).add(spot.at());
      }
    });
    Range all = null;
    for (Map.Entry<Double, List<GroundPoint>> group : byHeight.entrySet()) {
      double height = Math.min(group.getKey(), Scene.READING_HEIGHT_M.max());
      List<Obstacle> taller = crowns.stream().filter(c -> ((guildwood.site.sun.Tree) c).heightM() > height + 1e-6).toList();
      SunHours hours = SunHours.of(scene(taller, height), path, some(group.getValue()));
      Range range = new Range(hours.seasonRange(1).min() * scale, hours.seasonRange(1).max() * scale);
      all = all == null ? range : all.hull(range);
    }
    return all;
  }

  private static List<GroundPoint> some(List<GroundPoint> all) {
    int every = (all.size() + MOST_TOPS - 1) / MOST_TOPS;
    return IntStream.range(0, all.size()).filter(i -> i % every == 0).mapToObj(all::get).toList();
  }

  private Scene scene(List<Obstacle> crowns, double readingHeightM) {
    List<Obstacle> all = new ArrayList<>(around.obstacles());
    all.addAll(crowns);
    return new Scene(around.place(), around.year(), around.season(), around.inLeaf(), readingHeightM, around.horizon(), all);
  }

  private static double mean(SunHours hours) {
    return IntStream.range(0, hours.points().size()).mapToDouble(hours::seasonMeanHours).average().orElseThrow();
  }
}
