package guildwood.site.store;

import guildwood.site.sun.Footprint;
import guildwood.site.sun.GroundPoint;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Points as they are kept: {@code east north;east north;...} in metres, each number written so that it reads back the same. */
public final class PointText {
  private PointText() {}

  public static String of(List<GroundPoint> points) {
    return points.stream().map(point -> point.xM() + " " + point.yM()).collect(Collectors.joining(";"));
  }

  public static List<GroundPoint> points(String text) {
    return Arrays.stream(text.split(";")).map(point -> point.split(" "))
        .map(pair -> new GroundPoint(Double.parseDouble(pair[0]), Double.parseDouble(pair[1]))).toList();
  }

  public static String of(Footprint outline) {
    return of(outline.corners());
  }

  public static Footprint outline(String text) {
    return Footprint.through("", points(text)).orThrow();
  }
}
