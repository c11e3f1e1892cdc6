package guildwood.drawing;

/**
 * What the owner sets for the drawing of a bed.
 *
 * @param seed chance begins with it: another one gives another arrangement of the plants that are not locked
 */
public record DrawingSettings(ArrangingRules rules, YearsToMaturity maturity, long seed) {
  public static final DrawingSettings USUAL = new DrawingSettings(ArrangingRules.USUAL, YearsToMaturity.USUAL, 1);

  public DrawingSettings withSeed(long other) {
    return new DrawingSettings(rules, maturity, other);
  }
}
