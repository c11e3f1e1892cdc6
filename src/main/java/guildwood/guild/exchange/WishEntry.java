package guildwood.guild.exchange;

import guildwood.guild.Wish;
import guildwood.guild.WishKind;
import guildwood.kernel.Finding;
import guildwood.kernel.Range;
import guildwood.site.exchange.JsonEntry;
import java.util.Arrays;
import java.util.Optional;

/** Reads one wish of a bed file: {@code {"wish": "function:nitrogen-fixer", "must": true, "weight": 8}}. */
final class WishEntry {
  /** Where a file gives none; the pages start from the same. */
  static final int USUAL_WEIGHT = 5;

  private WishEntry() {}

  static Optional<Wish> read(JsonEntry entry) {
    Optional<String> key = entry.text("wish");
    boolean must = entry.given("must") && entry.flag("must");
    Range weights = new Range(Wish.LEAST_WEIGHT, Wish.MOST_WEIGHT);
    Optional<Integer> weight = entry.given("weight") ? entry.wholeNumber("weight", weights) : Optional.of(USUAL_WEIGHT);
    Optional<Wish> wish = key.flatMap(k -> named(entry, k));
    return weight.isEmpty() ? Optional.empty() : wish.map(w -> new Wish(w.kind(), w.item(), must, weight.get()));
  }

  private static Optional<Wish> named(JsonEntry entry, String key) {
    String[] parts = key.split(":", 2);
    Optional<WishKind> kind = Arrays.stream(WishKind.values()).filter(k -> k.key().equals(parts[0])).findFirst();
    if (kind.isEmpty()) {
      entry.refuse(Finding.of("compose.wish-kind", entry.at("wish"), key,
          String.join(", ", Arrays.stream(WishKind.values()).map(WishKind::key).toList())));
      return Optional.empty();
    }
    String item = parts.length < 2 ? "" : parts[1];
    if (!kind.get().items().contains(item)) {
      entry.refuse(Finding.of("compose.wish-item", entry.at("wish"), key, parts[0],
          kind.get() == WishKind.GROUND ? "1, 2, ... 100" : String.join(", ", kind.get().items())));
      return Optional.empty();
    }
    return Optional.of(new Wish(kind.get(), item, false, USUAL_WEIGHT));
  }
}
