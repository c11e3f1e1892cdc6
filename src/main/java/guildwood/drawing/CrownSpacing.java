package guildwood.drawing;

/**
 * How far apart two plants must stand: within a layer the mean of their two mature crown widths, so that grown crowns
 * meet but do not overlap; for equal plants this is the spacing of {@link guildwood.guild.PlantSpacing}. Plants of
 * different layers may stand over one another.
 */
final class CrownSpacing {
  /** Less than this is lost in digging the hole, metres. */
  static final double SLACK_M = 0.005;

  private CrownSpacing() {}

  static double betweenM(PlantKind one, PlantKind other) {
    return one.layer() == other.layer() ? (one.crownM() + other.crownM()) / 2 : 0;
  }
}
