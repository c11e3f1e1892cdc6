package guildwood.species;

/** How well a claim is supported, strongest first. */
public enum Evidence {
  /** Measured in trials. */
  MEASURED,
  /** Supported by observation or tissue analysis, not by trials. */
  OBSERVED,
  /** Repeated in practice and print, without evidence known to us. */
  FOLK;

  public String key() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
