package guildwood.drawing;

/**
 * How far apart two plants must stand: within a layer the mean of their two mature crown widths, so that grown crowns
 * meet but do not overlap; for equal plants this is the spacing of {@link guildwood.guild.PlantSpacing}. Plants of
 * different layers may stand over one another.
 */
final class CrownSpacing {
  /** Less than this is lost in digging the hole, metres. */
  static final double SLACK_M = 0.005;

  /** Stems keep so far from woody stems of other layers at least, woody ones themselves at most; metres, our own choice. */
  private static final double LEAST_STEM_GAP_M = 0.3;
  private static final double MOST_STEM_GAP_M = 0.8;

  private CrownSpacing() {}

  /** How far a stem keeps from woody stems of other layers, so that the hole of one is not dug in the roots of another. */
  static double stemGapM(PlantKind kind) {
    return kind.isWoody() ? Math.max(LEAST_STEM_GAP_M, Math.min(MOST_STEM_GAP_M, kind.crownM() / 3)) : LEAST_STEM_GAP_M;
  }

  static double betweenM(PlantKind one, PlantKind other) {
    return one.layer() == other.layer() ? (one.crownM() + other.crownM()) / 2 : 0;
  }
}
