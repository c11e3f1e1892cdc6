package guildwood.species;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How well a claim is supported, strongest first. */
public enum Evidence {
  /** Measured in trials. */
  MEASURED,
  /** Supported by observation or tissue analysis, not by trials. */
  OBSERVED,
  /** Repeated in practice and print, without evidence known to us. */
  FOLK;

  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<Evidence> ofKey(String key) {
    return Arrays.stream(values()).filter(evidence -> evidence.key().equals(key)).findFirst();
  }
}
