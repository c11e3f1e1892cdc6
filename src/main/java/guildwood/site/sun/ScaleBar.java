package guildwood.site.sun;

/** How long the bar is that shows a drawing's scale. */
public final class ScaleBar {
  private ScaleBar() {}

  /**
   * The longest round length (1, 2 or 5 times a power of ten) that is no longer than wanted, metres.
   *
   * @param unitM the unit in which it is to be round, metres
   */
  public static double lengthM(double wantedM, double unitM) {
    double wanted = wantedM / unitM;
    double ten = Math.pow(10, Math.floor(Math.log10(wanted)));
    return unitM * (wanted >= 5 * ten ? 5 * ten : wanted >= 2 * ten ? 2 * ten : ten);
  }
}
