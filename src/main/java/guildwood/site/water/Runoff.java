package guildwood.site.water;

import guildwood.kernel.Range;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One rain on a piece of ground.
 *
 * @param parts of the ground above the basin, one for each cover
 */
public record Runoff(double rainMm, List<CurveNumber.Part> parts) {
  public static final Range RAIN_MM = new Range(0.1, 2000);
  public static final Range AREA_M2 = new Range(1, 1_000_000);

  public Runoff {
    parts = List.copyOf(parts);
    if (!RAIN_MM.contains(rainMm) || parts.isEmpty()) {
      throw new IllegalArgumentException(rainMm + " mm of rain on " + parts);
    }
  }

  public CurveNumber number() {
    return CurveNumber.weighted(parts);
  }

  public double areaM2() {
    return parts.stream().mapToDouble(CurveNumber.Part::areaM2).sum();
  }

  /** Water that runs off, cubic metres. */
  public double volumeM3() {
    return number().runoffMm(rainMm) / 1000 * areaM2();
  }

  /** All the rain that falls, cubic metres. */
  public double rainM3() {
    return rainMm / 1000 * areaM2();
  }

  /** What a basin holds back of it, cubic metres. */
  public double heldM3(Basin basin) {
    return Math.min(volumeM3(), basin.holdsM3());
  }

  /** Share of the runoff that a basin holds back, 0 to 1; empty where nothing runs off. */
  public OptionalDouble heldShare(Basin basin) {
    return volumeM3() > 0 ? OptionalDouble.of(heldM3(basin) / volumeM3()) : OptionalDouble.empty();
  }
}
