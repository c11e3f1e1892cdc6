package guildwood.site;

import java.util.Locale;

/** Where a condition comes from, strongest first. */
public enum Basis {
  /** A test, a gauge or a count. */
  MEASURED,
  /** Seen by a person on the spot. */
  OBSERVED,
  /** Computed from the sun's path and what stands in its way. */
  COMPUTED,
  /** Read from the wild plants that grow there. */
  INDICATED,
  /** From a published map or table. */
  PUBLISHED,
  /** Taken over from the site, because the bed says nothing of its own. */
  INHERITED;

  /** Stable name in files and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }
}
