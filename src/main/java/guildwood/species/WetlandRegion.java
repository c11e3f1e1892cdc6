package guildwood.species;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Regions for which wetland ratings are kept: the reporting groups of the US EPA National Wetland
 * Condition Assessment 2016. A rating never stands without its region.
 */
public enum WetlandRegion {
  NE,
  MIDWEST,
  E_MTNS,
  CSTL_PLAIN,
  GT_PLAINS,
  W_MTNS,
  ARID_W;

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static List<String> keys() {
    return Arrays.stream(values()).map(WetlandRegion::key).toList();
  }
}
