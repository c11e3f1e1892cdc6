package guildwood.site.water;

import java.util.List;

/**
 * How readily rain runs off, from near 0 (never) to 100 (all of it): the runoff curve number of the Natural Resources
 * Conservation Service. TR-55, Urban Hydrology for Small Watersheds (1986), chapter 2, with S = 1000/CN - 10 inches,
 * Ia = 0.2 S and Q = (P - Ia)2 / (P + 0.8 S), nothing where P does not exceed Ia.
 */
public record CurveNumber(double value) {
  private static final double MM_IN_INCH = 25.4;
  private static final double INITIAL_LOSS = 0.2;

  public CurveNumber {
    if (!(value > 0 && value <= 100)) {
      throw new IllegalArgumentException("no curve number " + value);
    }
  }

  /** A piece of ground and its curve number. */
  public record Part(double areaM2, CurveNumber number) {
    public Part {
      if (!(areaM2 > 0)) {
        throw new IllegalArgumentException("ground of " + areaM2 + " m2");
      }
    }
  }

  /** The mean of several pieces by their areas. */
  public static CurveNumber weighted(List<Part> parts) {
    double area = parts.stream().mapToDouble(Part::areaM2).sum();
    return new CurveNumber(parts.stream().mapToDouble(p -> p.areaM2() * p.number().value()).sum() / area);
  }

  /** The most the ground holds back once runoff has begun (S), millimetres. */
  public double retentionMm() {
    return (1000 / value - 10) * MM_IN_INCH;
  }

  /** Rain lost before any runs off (Ia), millimetres. */
  public double initialLossMm() {
    return INITIAL_LOSS * retentionMm();
  }

  /** Depth of water that runs off (Q), millimetres over the whole area. */
  public double runoffMm(double rainMm) {
    if (!(rainMm >= 0)) {
      throw new IllegalArgumentException(rainMm + " mm of rain");
    }
    double beyondLoss = rainMm - initialLossMm();
    return beyondLoss <= 0 ? 0 : beyondLoss * beyondLoss / (rainMm + (1 - INITIAL_LOSS) * retentionMm());
  }
}
