package guildwood.species;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The jobs a plant can do for the rest of its guild. */
public enum GuildFunction {
  NITROGEN_FIXER,
  POLLINATOR_FORAGE,
  BENEFICIAL_INSECTS,
  GROUND_COVER,
  MULCH_MAKER,
  DYNAMIC_ACCUMULATOR,
  WIND_SHELTER,
  SOIL_HOLDING,
  BIRD_FOOD,
  PEST_DETERRENT,
  DEEP_ROOTED,
  FODDER;

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static GuildFunction ofKey(String key) {
    return valueOf(key.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  static List<String> keys() {
    return Arrays.stream(values()).map(GuildFunction::key).toList();
  }
}
