package guildwood.siteplan.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import guildwood.bed.sun.Crown;
import guildwood.bed.sun.Nearby;
import guildwood.site.GroundShapes;
import guildwood.site.sun.GroundPoint;
import guildwood.siteplan.LocalPlane;
import guildwood.siteplan.PlanPath;
import guildwood.siteplan.PlanShape;
import guildwood.siteplan.ShapeKind;
import guildwood.siteplan.SitePlan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;

/** Writes a plan as GeoJSON: one feature for each bed, path, water, tree and building whose place is known. */
public final class GeoJsonWriter {
  /** A millimetre on the ground. */
  private static final int DECIMALS_OF_DEGREES = 8;
  private static final int DECIMALS_OF_METRES = 3;

  private final ObjectMapper mapper = new ObjectMapper();
  private final LocalPlane plane;

  private GeoJsonWriter(LocalPlane plane) {
    this.plane = plane;
  }

  public static String write(SitePlan plan, LocalPlane plane) {
    return new GeoJsonWriter(plane).collection(plan);
  }

  private String collection(SitePlan plan) {
    ObjectNode all = mapper.createObjectNode().put("type", "FeatureCollection");
    ArrayNode features = all.putArray("features");
    plan.shapes().forEach(shape -> features.add(feature(shape, plan)));
    try {
      return mapper.writerWithDefaultPrettyPrinter().writeValueAsString(all);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private ObjectNode feature(PlanShape shape, SitePlan plan) {
    ObjectNode feature = mapper.createObjectNode().put("type", "Feature");
    feature.set("geometry", geometry(shape));
    ObjectNode properties = feature.putObject("properties").put(GeoJson.KIND, shape.kind().key()).put(GeoJson.NAME, shape.name());
    if (shape.kind() == ShapeKind.PATH) {
      plan.paths().stream().filter(path -> path.id() == shape.id()).findFirst().ifPresent(path -> tell(properties, path));
    } else if (shape.kind() == ShapeKind.TREE || shape.kind() == ShapeKind.BUILDING) {
      plan.nearby().stream().filter(nearby -> nearby.id() == shape.id()).findFirst().ifPresent(nearby -> tell(properties, nearby));
    }
    return feature;
  }

  private static void tell(ObjectNode properties, PlanPath path) {
    properties.put(GeoJson.WIDTH, metres(path.widthM())).put(GeoJson.DEPTH, metres(path.depthM()));
    path.heights().ifPresent(ends ->
        properties.put(GeoJson.START_HEIGHT, metres(ends.startM())).put(GeoJson.END_HEIGHT, metres(ends.endM())));
  }

  private static void tell(ObjectNode properties, Nearby nearby) {
    properties.put(GeoJson.HEIGHT, metres(nearby.height().metres()));
    if (nearby.body() instanceof Crown crown) {
      properties.put(GeoJson.CROWN_RADIUS, metres(crown.radiusM())).put(GeoJson.CROWN_BASE, metres(crown.baseM()))
          .put(GeoJson.EVERGREEN, crown.evergreen());
    }
  }

  private ObjectNode geometry(PlanShape shape) {
    ObjectNode geometry = mapper.createObjectNode();
    if (shape.kind() == ShapeKind.TREE) {
      geometry.put("type", "Point").set("coordinates", position(shape.points().get(0)));
    } else if (shape.kind() == ShapeKind.PATH) {
      ArrayNode line = geometry.put("type", "LineString").putArray("coordinates");
      shape.points().forEach(point -> line.add(position(point)));
    } else {
      ArrayNode ring = geometry.put("type", "Polygon").putArray("coordinates").addArray();
      ring(shape.points()).forEach(point -> ring.add(position(point)));
    }
    return geometry;
  }

  /** Against the clock and closed, RFC 7946 section 3.1.6. */
  private static List<GroundPoint> ring(List<GroundPoint> corners) {
    List<GroundPoint> ring = new ArrayList<>(corners);
    if (!Orientation.isCCW(GroundShapes.polygon(corners).getCoordinates())) {
      Collections.reverse(ring);
    }
    ring.add(ring.get(0));
    return ring;
  }

  /** Longitude first, RFC 7946 section 3.1.1. */
  private ArrayNode position(GroundPoint point) {
    return mapper.createArrayNode().add(rounded(plane.longitude(point), DECIMALS_OF_DEGREES)).add(rounded(plane.latitude(point), DECIMALS_OF_DEGREES));
  }

  private static BigDecimal metres(double metres) {
    return rounded(metres, DECIMALS_OF_METRES);
  }

  private static BigDecimal rounded(double number, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
  }
}
