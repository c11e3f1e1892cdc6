package guildwood.site.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.sun.Coordinates;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Horizon;
import guildwood.site.sun.HorizonPoint;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Scene;
import guildwood.site.sun.Season;
import guildwood.site.sun.Slope;
import guildwood.site.sun.SunHours;
import guildwood.site.sun.SunPath;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a scene for the sun model from JSON; a scene that cannot be reckoned comes back as findings. */
public final class SceneReader {
  private final List<Finding> findings = new ArrayList<>();
  private final List<String> ignored = new ArrayList<>();

  private SceneReader() {}

  public static Checked<SceneFile> read(byte[] json) {
    Checked<JsonNode> root = JsonFile.parse(json);
    return root.isRefused() ? Checked.refused(root.findings()) : new SceneReader().scene(root.orThrow());
  }

  private Checked<SceneFile> scene(JsonNode root) {
    JsonEntry entry = new JsonEntry(root, "", findings);
    OptionalDouble latitude = entry.number("latitude", Coordinates.LATITUDE_DEGREES);
    OptionalDouble longitude = entry.number("longitude", Coordinates.LONGITUDE_DEGREES);
    Optional<Integer> year = entry.wholeNumber("year", SunPath.YEARS);
    Optional<Season> season = season(entry, "seasonStart", "seasonEnd");
    Optional<Season> inLeaf = entry.has("leavesFrom") || entry.has("leavesUntil")
        ? season(entry, "leavesFrom", "leavesUntil") : season;
    double step = entry.number("stepMinutes", SunPath.STEP_MINUTES, SunPath.USUAL_STEP_MINUTES);
    double readingHeight = entry.number("readingHeightM", Scene.READING_HEIGHT_M, 0);
    List<GroundPoint> points = points(entry, "points");
    if (entry.has("points") && entry.list("points").isEmpty()) {
      entry.refuse(Finding.of("json.empty", "points"));
    }
    ObstacleReader reader = new ObstacleReader(findings, ignored);
    List<Obstacle> obstacles = reader.read(entry.listIfGiven("obstacles"), "obstacles");
    Optional<Horizon> horizon = horizon(entry);
    Optional<Slope> slope = slope(entry);
    ignored.addAll(entry.unread());
    if (season.isPresent() && year.isPresent() && season.get().daysIn(year.get()) == 0) {
      entry.refuse(Finding.of("sun.season-empty", "seasonStart", year.get()));
    }
    if (points.size() > SunHours.mostPoints(obstacles.size())) {
      entry.refuse(Finding.of("sun.too-many-points", "points", points.size(), SunHours.mostPoints(obstacles.size())));
    }
    if (!findings.isEmpty()) {
      return Checked.refused(findings);
    }
    Coordinates place = new Coordinates(latitude.orElseThrow(), longitude.orElseThrow());
    Scene scene = new Scene(
        place, year.orElseThrow(), season.orElseThrow(), inLeaf.orElseThrow(), readingHeight, horizon.orElseThrow(), obstacles);
    return Checked.of(new SceneFile(scene, step, points, slope, ignored));
  }

  private static Optional<Season> season(JsonEntry entry, String firstKey, String lastKey) {
    Optional<MonthDay> first = entry.day(firstKey);
    Optional<MonthDay> last = entry.day(lastKey);
    return first.isPresent() && last.isPresent() ? Optional.of(new Season(first.get(), last.get())) : Optional.empty();
  }

  /** None where the key is left out, or where what stands there went to the findings. */
  private Optional<Slope> slope(JsonEntry entry) {
    if (!entry.given("slope")) {
      return Optional.empty();
    }
    JsonEntry slope = new JsonEntry(entry.node("slope").orElseThrow(), "slope", findings);
    OptionalDouble steepness = slope.number("steepnessDeg", Slope.STEEPNESS_DEGREES);
    OptionalDouble facing = slope.number("facingDeg", Slope.FACING_DEGREES);
    ignored.addAll(slope.unread());
    return steepness.isPresent() && facing.isPresent()
        ? Optional.of(new Slope(steepness.getAsDouble(), facing.getAsDouble())) : Optional.empty();
  }

  private Optional<Horizon> horizon(JsonEntry entry) {
    List<HorizonPoint> points = new ArrayList<>();
    List<JsonNode> nodes = entry.listIfGiven("horizon");
    for (int i = 0; i < nodes.size(); i++) {
      JsonEntry each = new JsonEntry(nodes.get(i), "horizon[" + i + "]", findings);
      OptionalDouble azimuth = each.number("azimuthDeg", HorizonPoint.AZIMUTH_DEGREES);
      OptionalDouble elevation = each.number("elevationDeg", HorizonPoint.ELEVATION_DEGREES);
      ignored.addAll(each.unread());
      if (azimuth.isPresent() && elevation.isPresent()) {
        points.add(new HorizonPoint(azimuth.getAsDouble(), elevation.getAsDouble()));
      }
    }
    Checked<Horizon> horizon = Horizon.through("horizon", points);
    findings.addAll(horizon.findings());
    return horizon.value();
  }

  private List<GroundPoint> points(JsonEntry entry, String key) {
    return points(entry.list(key), key, findings);
  }

  /** Pairs of east and north in metres; those that are none go to the findings and are left out. */
  static List<GroundPoint> points(List<JsonNode> nodes, String place, List<Finding> findings) {
    List<GroundPoint> points = new ArrayList<>();
    Range reach = GroundPoint.REACH_M;
    for (int i = 0; i < nodes.size(); i++) {
      JsonNode node = nodes.get(i);
      String here = place + "[" + i + "]";
      if (!node.isArray() || node.size() != 2) {
        findings.add(Finding.of("sun.not-a-point", here));
        continue;
      }
      OptionalDouble x = JsonEntry.number(node.get(0), here + "[0]", reach, findings);
      OptionalDouble y = JsonEntry.number(node.get(1), here + "[1]", reach, findings);
      if (x.isPresent() && y.isPresent()) {
        points.add(new GroundPoint(x.getAsDouble(), y.getAsDouble()));
      }
    }
    return points;
  }
}
