package guildwood.drawing;

import java.util.Locale;

/** How fast a plant grows up, as the library's trait has it. */
public enum GrowthRate {
  SLOW,
  MEDIUM,
  FAST;

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static GrowthRate ofKey(String key) {
    return valueOf(key.toUpperCase(Locale.ROOT));
  }
}
