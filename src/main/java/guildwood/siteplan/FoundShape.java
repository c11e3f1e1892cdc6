package guildwood.siteplan;

import guildwood.site.sun.GroundPoint;
import java.util.List;
import java.util.Map;

/**
 * A shape found in a file, not looked at yet.
 *
 * @param feature which one of the file, the first is 1
 * @param name empty where the file gives none
 * @param fields what else is told of it, by the names of the form's fields, in metres
 */
public record FoundShape(int feature, ShapeKind kind, String name, List<GroundPoint> points, Map<String, String> fields) {
  public FoundShape {
    points = List.copyOf(points);
    fields = Map.copyOf(fields);
  }
}
