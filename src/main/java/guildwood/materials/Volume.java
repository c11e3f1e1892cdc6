package guildwood.materials;

/** Volumes of loose material. */
public final class Volume {
  /** Cubic metres in a cubic yard: the international yard of 0.9144 m. */
  public static final double CUBIC_YARD_M3 = 0.9144 * 0.9144 * 0.9144;

  /** What is left over by less than this, half a bucket, counts as nothing. Our own choice. */
  public static final double CLOSE_ENOUGH_M3 = 0.005;

  private Volume() {}

  /**
   * Loose material to bring for a layer, cubic metres.
   *
   * @param depthM of the layer once it has settled
   * @param settlingPercent share of the loose depth that is lost in settling; no source gives one, so 0 unless the
   *     owner says otherwise
   */
  public static double looseM3(double areaM2, double depthM, double settlingPercent) {
    if (!(areaM2 >= 0 && depthM >= 0 && settlingPercent >= 0 && settlingPercent < 100)) {
      throw new IllegalArgumentException(areaM2 + " m2, " + depthM + " m deep, settling by " + settlingPercent + " percent");
    }
    return areaM2 * depthM / (1 - settlingPercent / 100);
  }

  public static double cubicYards(double cubicMetres) {
    return cubicMetres / CUBIC_YARD_M3;
  }

  /** How many whole loads or barrows a volume takes; a remainder of less than half a bucket takes none. */
  public static int wholeLoads(double cubicMetres, double loadM3) {
    if (!(loadM3 > 0)) {
      throw new IllegalArgumentException("loads of " + loadM3 + " m3");
    }
    return (int) Math.ceil(Math.max(0, cubicMetres - CLOSE_ENOUGH_M3) / loadM3);
  }
}
