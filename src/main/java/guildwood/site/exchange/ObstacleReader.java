package guildwood.site.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import guildwood.kernel.Checked;
import guildwood.kernel.Finding;
import guildwood.site.sun.Building;
import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Tree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads trees and buildings; each is called by its kind and its number among its kind, in the file's order. */
final class ObstacleReader {
  private final List<Finding> findings;
  private final List<String> ignored;
  private int trees;
  private int buildings;

  ObstacleReader(List<Finding> findings, List<String> ignored) {
    this.findings = findings;
    this.ignored = ignored;
  }

  List<Obstacle> read(List<JsonNode> nodes, String place) {
    List<Obstacle> obstacles = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      JsonEntry entry = new JsonEntry(nodes.get(i), place + "[" + i + "]", findings);
      Optional<String> type = entry.text("type");
      if (type.isPresent()) {
        read(entry, type.get()).ifPresent(obstacles::add);
      }
    }
    return obstacles;
  }

  private Optional<Obstacle> read(JsonEntry entry, String type) {
    int before = findings.size();
    Optional<Obstacle> obstacle = switch (type) {
      case "tree" -> tree(entry, "tree " + ++trees);
      case "building" -> building(entry, "building " + ++buildings);
      default -> {
        entry.refuse(Finding.of("sun.obstacle-type", entry.at("type"), type));
        yield Optional.empty();
      }
    };
    if (findings.size() == before) {
      ignored.addAll(entry.unread());
    }
    return obstacle;
  }

  private Optional<Obstacle> tree(JsonEntry entry, String label) {
    int before = findings.size();
    OptionalDouble x = entry.number("x", GroundPoint.REACH_M);
    OptionalDouble y = entry.number("y", GroundPoint.REACH_M);
    OptionalDouble height = entry.number("heightM", Obstacle.HEIGHT_M);
    OptionalDouble base = entry.number("crownBaseM", Tree.CROWN_BASE_M);
    OptionalDouble radius = entry.number("crownRadiusM", Tree.CROWN_RADIUS_M);
    OptionalDouble inLeaf = entry.number("lightInLeaf", Tree.SHARE);
    boolean evergreen = entry.flag("evergreen");
    // An evergreen is never bare, so its file need not say what it would let through then.
    OptionalDouble bare = evergreen && !entry.has("lightBare") ? inLeaf : entry.number("lightBare", Tree.SHARE);
    if (height.isPresent() && base.isPresent() && base.getAsDouble() >= height.getAsDouble()) {
      entry.refuse(Finding.of("sun.crown-base", entry.at("crownBaseM")));
    }
    if (findings.size() > before) {
      return Optional.empty();
    }
    GroundPoint foot = new GroundPoint(x.orElseThrow(), y.orElseThrow());
    return Optional.of(new Tree(label, foot, height.orElseThrow(), base.orElseThrow(), radius.orElseThrow(),
        inLeaf.orElseThrow(), bare.orElseThrow(), evergreen));
  }

  private Optional<Obstacle> building(JsonEntry entry, String label) {
    int before = findings.size();
    OptionalDouble height = entry.number("heightM", Obstacle.HEIGHT_M);
    List<GroundPoint> corners = SceneReader.points(entry.list("footprint"), entry.at("footprint"), findings);
    if (findings.size() > before) {
      return Optional.empty();
    }
    Checked<Footprint> footprint = Footprint.through(entry.at("footprint"), corners);
    findings.addAll(footprint.findings());
    return footprint.value().map(outline -> new Building(label, outline, height.orElseThrow()));
  }
}
