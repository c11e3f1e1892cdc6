package guildwood.species;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The layers of a guild from the top down. */
public enum Layer {
  TALL_TREE,
  SMALL_TREE,
  SHRUB,
  CLIMBER,
  HERB,
  GROUND_COVER,
  ROOT;

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Layer ofKey(String key) {
    return valueOf(key.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  static List<String> keys() {
    return Arrays.stream(values()).map(Layer::key).toList();
  }
}
