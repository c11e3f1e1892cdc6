package guildwood.siteplan.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.FoundShape;
import guildwood.siteplan.LocalPlane;
import guildwood.siteplan.PlanFile;
import guildwood.siteplan.PlanFile.LeftOut;
import guildwood.siteplan.PlanPoints;
import guildwood.siteplan.ShapeKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a plan from GeoJSON (RFC 7946). What cannot be drawn is left out with its reason; the rest is found. */
public final class GeoJsonReader {
  public static final long MOST_BYTES = 5_000_000;
  public static final int MOST_FEATURES = 500;

  private static final String FIELD = "file";
  private static final int LONGEST_WORD = 60;

  private final LocalPlane plane;
  private final Optional<ShapeKind> polygons;
  private final List<FoundShape> found = new ArrayList<>();
  private final List<LeftOut> leftOut = new ArrayList<>();

  private GeoJsonReader(LocalPlane plane, Optional<ShapeKind> polygons) {
    this.plane = plane;
    this.polygons = polygons;
  }

  /**
   * Reads a file.
   *
   * @param plane where the site is
   * @param polygons what an outline is that does not say so; absent where such are left out
   */
  public static Checked<PlanFile> read(Path file, LocalPlane plane, Optional<ShapeKind> polygons) {
    JsonNode root;
    try {
      root = new ObjectMapper().readTree(file.toFile());
    } catch (JsonProcessingException e) {
      if (e.getLocation() == null) {
        // The reader gives no place where it refuses what is nested too deep or has numbers or texts without end.
        return Checked.refused(Finding.of("geo.beyond-limits", FIELD));
      }
      return Checked.refused(Finding.of("geo.not-json", FIELD,
          "line " + e.getLocation().getLineNr() + ", column " + e.getLocation().getColumnNr()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    List<JsonNode> features = new ArrayList<>();
    if (root.path("type").asText().equals("Feature")) {
      features.add(root);
    } else if (root.path("type").asText().equals("FeatureCollection") && root.path("features").isArray()) {
      root.path("features").forEach(features::add);
    } else {
      return Checked.refused(Finding.of("geo.no-features", FIELD));
    }
    if (features.isEmpty() || features.size() > MOST_FEATURES) {
      return Checked.refused(features.isEmpty() ? Finding.of("geo.no-features", FIELD)
          : Finding.of("geo.too-many", FIELD, features.size(), MOST_FEATURES));
    }
    GeoJsonReader reader = new GeoJsonReader(plane, polygons);
    for (int i = 0; i < features.size(); i++) {
      reader.read(i + 1, features.get(i));
    }
    return Checked.of(new PlanFile(reader.found, reader.leftOut));
  }

  private void read(int number, JsonNode feature) {
    JsonNode properties = feature.path("properties");
    String name = properties.path(GeoJson.NAME).isTextual() ? properties.path(GeoJson.NAME).asText().strip() : "";
    String geometry = feature.path("geometry").path("type").asText();
    Checked<ShapeKind> kind = kind(properties.path(GeoJson.KIND), geometry);
    Checked<FoundShape> shape = kind.isRefused() ? Checked.refused(kind.findings())
        : shape(number, name, kind.orThrow(), feature.path("geometry"), properties);
    shape.value().ifPresent(found::add);
    shape.findings().forEach(why -> leftOut.add(new LeftOut(number, name, why)));
  }

  private Checked<ShapeKind> kind(JsonNode told, String geometry) {
    if (told.isMissingNode() || told.isNull()) {
      Optional<ShapeKind> usual = geometry.equals("LineString") ? Optional.of(ShapeKind.PATH) : geometry.equals("Polygon") ? polygons : Optional.empty();
      return usual.map(Checked::of).orElseGet(() -> Checked.refused(Finding.of("geo.no-kind", "")));
    }
    return ShapeKind.ofKey(told.asText()).map(Checked::of).orElseGet(() -> Checked.refused(Finding.of("geo.kind", "", shortened(told.asText()))));
  }

  private Checked<FoundShape> shape(int number, String name, ShapeKind kind, JsonNode geometry, JsonNode properties) {
    String wanted = kind == ShapeKind.TREE ? "Point" : kind == ShapeKind.PATH ? "LineString" : "Polygon";
    if (!geometry.path("type").asText().equals(wanted)) {
      return Checked.refused(Finding.of("geo.geometry", "", shortened(geometry.path("type").asText("nothing")), kind.key()));
    }
    JsonNode coordinates = geometry.path("coordinates");
    if (kind.isArea() && coordinates.size() > 1) {
      return Checked.refused(Finding.of("geo.hole", ""));
    }
    Checked<List<GroundPoint>> points = points(kind.isArea() ? coordinates.path(0) : coordinates, kind);
    Checked<Map<String, String>> fields = fields(properties);
    if (points.isRefused() || fields.isRefused()) {
      return Checked.refused(points.isRefused() ? points.findings() : fields.findings());
    }
    return Checked.of(new FoundShape(number, kind, name, points.orThrow(), fields.orThrow()));
  }

  private Checked<List<GroundPoint>> points(JsonNode coordinates, ShapeKind kind) {
    List<JsonNode> positions = new ArrayList<>();
    if (kind == ShapeKind.TREE) {
      positions.add(coordinates);
    } else {
      coordinates.forEach(positions::add);
    }
    List<GroundPoint> points = new ArrayList<>();
    for (JsonNode position : positions) {
      if (!position.path(0).isNumber() || !position.path(1).isNumber()
          || Math.abs(position.path(0).asDouble()) > 180 || Math.abs(position.path(1).asDouble()) > 90) {
        return Checked.refused(Finding.of("geo.coordinates", ""));
      }
      double eastM = plane.eastM(position.path(0).asDouble());
      double northM = plane.northM(position.path(1).asDouble());
      if (!PlanPoints.isInReach(eastM, northM)) {
        return Checked.refused(Finding.of("geo.far", ""));
      }
      points.add(new GroundPoint(eastM, northM));
    }
    // The last position of a ring repeats the first, RFC 7946 section 3.1.6.
    boolean closed = kind.isArea() && positions.size() > 1 && positions.get(0).equals(positions.get(positions.size() - 1));
    return Checked.of(closed ? points.subList(0, points.size() - 1) : points);
  }

  private static Checked<Map<String, String>> fields(JsonNode properties) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (Map.Entry<String, String> each : GeoJson.FIELDS.entrySet()) {
      JsonNode told = properties.path(each.getKey());
      if (told.isMissingNode() || told.isNull()) {
        continue;
      }
      if (!told.isNumber() || !(Math.abs(told.asDouble()) < 1e6)) {
        return Checked.refused(Finding.of("geo.number", "", shortened(told.asText())));
      }
      fields.put(each.getValue(), BigDecimal.valueOf(told.asDouble()).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString());
    }
    if (properties.path(GeoJson.EVERGREEN).asBoolean()) {
      fields.put("evergreen", "yes");
    }
    return Checked.of(fields);
  }

  private static String shortened(String text) {
    return text.length() <= LONGEST_WORD ? text : text.substring(0, LONGEST_WORD) + "…";
  }
}
