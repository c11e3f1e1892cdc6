package guildwood.drawing;

import guildwood.site.sun.Obstacle;
import guildwood.site.sun.Tree;

/**
 * The body of one plant in one year. The drawing, the cover and the sun model all take it from here, so they cannot
 * disagree about how big it is.
 *
 * @param baseM height of the lowest leafy branches
 */
public record GrownPlant(double radiusM, double heightM, double baseM) {
  /** A young plant as it is set out is so wide and so tall at least, metres, or grown if that is less. Common practice, no source. */
  private static final double SET_OUT_WIDE_M = 0.3;

  private static final double SET_OUT_TALL_M = 0.4;

  /** The body of a plant after so many years; one that stands there already is taken as grown, its age not being known. */
  static GrownPlant of(PlantKind kind, boolean standing, double years, YearsToMaturity maturity) {
    double share = standing ? 1 : GrowthCurve.share(years, maturity.of(kind.layer(), kind.rate()));
    double wide = Math.max(Math.min(SET_OUT_WIDE_M, kind.crownM()), kind.crownM() * share);
    double tall = Math.max(Math.min(SET_OUT_TALL_M, kind.heightM()), kind.heightM() * share);
    return new GrownPlant(wide / 2, tall, tall * clearShare(kind));
  }

  /** Share of its height that is stem without branches. A rule of thumb of ours, no publication. */
  private static double clearShare(PlantKind kind) {
    return switch (kind.layer()) {
      case TALL_TREE -> 0.25;
      case SMALL_TREE -> 0.2;
      default -> 0;
    };
  }

  /**
   * What stands there for the sun: its crown lets through what the guild's reckoning of light leaves. Its label begins
   * with a line break, so that nothing people name around the bed can be called the same.
   */
  Tree tree(Spot spot, PlantKind kind) {
    double through = 1 - kind.shadePercent() / 100.0;
    return new Tree("\n" + spot.id(), spot.at(), within(heightM, Obstacle.HEIGHT_M.min(), Obstacle.HEIGHT_M.max()), Math.min(baseM, heightM * 0.9),
        within(radiusM, Tree.CROWN_RADIUS_M.min(), Tree.CROWN_RADIUS_M.max()), through, through, false);
  }

  private static double within(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }
}
