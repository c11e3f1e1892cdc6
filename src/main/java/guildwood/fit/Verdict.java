package guildwood.fit;

import java.util.Locale;

/** What the fit comes down to. */
public enum Verdict {
  FITS,
  BORDERLINE,
  DOES_NOT_FIT,
  /** No axis that decides is known on both sides. */
  NOT_KNOWN;

  /**
   * From this fit on a species fits. On a straight slope it means that the place lies, on average, at
   * least three fifths of the way from the edge of what is tolerated to what is preferred. The choice is
   * ours; no publication gives one.
   */
  public static final double FITS_FROM = 0.6;

  /** From this fit on a species is borderline, below it does not fit. Ours likewise. */
  public static final double BORDERLINE_FROM = 0.2;

  /** The verdict a fit alone would earn. */
  static Verdict ofFit(double fit) {
    return fit >= FITS_FROM ? FITS : fit >= BORDERLINE_FROM ? BORDERLINE : DOES_NOT_FIT;
  }

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
