package guildwood.site.exchange;

import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Scene;
import java.util.List;

/**
 * What a scene file says.
 *
 * @param ignored places of keys that mean nothing here, perhaps misspelt
 */
public record SceneFile(Scene scene, double stepMinutes, List<GroundPoint> points, List<String> ignored) {
  public SceneFile {
    points = List.copyOf(points);
    ignored = List.copyOf(ignored);
  }
}
