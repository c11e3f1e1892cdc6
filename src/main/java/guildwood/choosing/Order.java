package guildwood.choosing;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The order in which species are listed. */
public enum Order {
  NAME,
  SCIENTIFIC_NAME,
  FAMILY,
  SHORTEST_FIRST,
  TALLEST_FIRST,
  /** Best first: those that fit, borderline, not known, those that do not. Needs a bed. */
  FIT;

  /** Stable name in addresses and message keys. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<Order> ofKey(String key) {
    return Arrays.stream(values()).filter(order -> order.key().equals(key)).findFirst();
  }
}
