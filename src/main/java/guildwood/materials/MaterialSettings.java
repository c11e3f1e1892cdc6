package guildwood.materials;

import guildwood.kernel.Range;

/**
 * What the owner says about materials on a site.
 *
 * @param beds how beds are covered where nothing else is said of one
 * @param paths the same for paths
 * @param settlingPercent share of the loose depth lost in settling; no published factor is known, so 0 to start with
 * @param loadM3 of one delivery
 * @param barrowLitres of one barrow
 * @param m3AnHour loose material one person moves and spreads
 * @param sheetsAnHour of card one person opens, strips of tape and lays
 */
public record MaterialSettings(Covering beds, Covering paths, double settlingPercent, double loadM3, double barrowLitres,
    double m3AnHour, TrunkGap gap, CardSheet sheet, double sheetsAnHour) {
  public static final Range SETTLING_PERCENT = new Range(0, 60);
  public static final Range LOAD_M3 = new Range(0.1, 100);
  public static final Range BARROW_LITRES = new Range(10, 500);
  public static final Range M3_AN_HOUR = new Range(0.1, 20);
  public static final Range SHEETS_AN_HOUR = new Range(1, 600);

  /** Load, barrow and pace of work are common practice without a source; the page says so. */
  public static final MaterialSettings USUAL =
      new MaterialSettings(Covering.USUAL_BED, Covering.USUAL_PATH, 0, 8, 85, 1, TrunkGap.USUAL, CardSheet.USUAL, 30);

  public MaterialSettings {
    if (!SETTLING_PERCENT.contains(settlingPercent) || !LOAD_M3.contains(loadM3) || !BARROW_LITRES.contains(barrowLitres)
        || !M3_AN_HOUR.contains(m3AnHour) || !SHEETS_AN_HOUR.contains(sheetsAnHour)) {
      throw new IllegalArgumentException("settling " + settlingPercent + " percent, load " + loadM3 + " m3, barrow "
          + barrowLitres + " l, " + m3AnHour + " m3 and " + sheetsAnHour + " sheets an hour");
    }
  }

  /** The covering that holds where nothing is said of one place. */
  public Covering usual(Target.Kind kind) {
    return kind == Target.Kind.BED ? beds : paths;
  }

  public int barrowTrips(double cubicMetres) {
    return Volume.wholeLoads(cubicMetres, barrowLitres / 1000);
  }

  public int loads(double cubicMetres) {
    return Volume.wholeLoads(cubicMetres, loadM3);
  }

  /** Minutes of one person's work for an amount, cubic metres or sheets. */
  public double minutes(Material material, double amount) {
    return 60 * amount / (material.inSheets() ? sheetsAnHour : m3AnHour);
  }
}
