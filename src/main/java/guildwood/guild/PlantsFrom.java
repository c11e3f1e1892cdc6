package guildwood.guild;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Where the owner lets plants come from. */
public enum PlantsFrom {
  /** Bought ones too. */
  ANYWHERE,
  /** Plants on hand, and those the owner can propagate in time. */
  HAVE_OR_PROPAGATE,
  /** Plants on hand alone. */
  ON_HAND;

  /** Stable name in files, addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<PlantsFrom> ofKey(String key) {
    return Arrays.stream(values()).filter(from -> from.key().equals(key)).findFirst();
  }

  /** How many of a species are let in at most. */
  int most(Supply supply) {
    return switch (this) {
      case ANYWHERE -> Integer.MAX_VALUE;
      case HAVE_OR_PROPAGATE -> supply.free();
      case ON_HAND -> supply.onHand();
    };
  }
}
