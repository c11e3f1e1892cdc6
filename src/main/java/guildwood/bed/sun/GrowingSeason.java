package guildwood.bed.sun;

import guildwood.site.Site;
import guildwood.site.sun.Season;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The days over which a bed's mean of sun hours is taken, and in which trees that shed their leaves have them.
 *
 * @param known how these days were come by
 */
public record GrowingSeason(Season days, Known known) {
  private static final double TROPIC_DEGREES = 23.5;

  /** 2023 stands for an ordinary year. */
  private static final int ORDINARY_YEAR = 2023;

  /** How a season was come by. */
  public enum Known {
    /** From the last spring frost to the first autumn frost of the site. */
    FROST_DATES,
    /** The warmer half of the year, because the frost dates are not told. Our own choice. */
    WARM_HALF,
    /** All of it: between the tropics, where frost dates are not told. */
    WHOLE_YEAR;

    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  public static GrowingSeason of(Site site) {
    if (site.lastSpringFrost().isPresent() && site.firstAutumnFrost().isPresent()) {
      Season frostFree = new Season(site.lastSpringFrost().get(), site.firstAutumnFrost().get());
      if (frostFree.daysIn(ORDINARY_YEAR) > 0) {
        return new GrowingSeason(frostFree, Known.FROST_DATES);
      }
    }
    OptionalDouble latitude = site.latitudeDegrees();
    if (latitude.isPresent() && Math.abs(latitude.getAsDouble()) < TROPIC_DEGREES) {
      return new GrowingSeason(Season.of(1, 1, 12, 31), Known.WHOLE_YEAR);
    }
    boolean south = latitude.isPresent() && latitude.getAsDouble() < 0;
    return new GrowingSeason(south ? Season.of(10, 1, 3, 31) : Season.of(4, 1, 9, 30), Known.WARM_HALF);
  }
}
