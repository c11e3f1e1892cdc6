package guildwood.site.exchange;

import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Scene;
import guildwood.site.sun.Slope;
import java.util.List;
import java.util.Optional;

/**
 * What a scene file says.
 *
 * @param slope how the ground falls, where the file says so
 * @param ignored places of keys that mean nothing here, perhaps misspelt
 */
public record SceneFile(Scene scene, double stepMinutes, List<GroundPoint> points, Optional<Slope> slope, List<String> ignored) {
  public SceneFile {
    points = List.copyOf(points);
    ignored = List.copyOf(ignored);
  }
}
