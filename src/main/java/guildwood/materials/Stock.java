package guildwood.materials;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What lies there to be laid: all that came, less what was taken from it.
 *
 * @param amounts cubic metres, or sheets of card; only what ever came
 */
public record Stock(Map<Material, Double> amounts) {
  public Stock {
    amounts = Collections.unmodifiableMap(amounts.isEmpty() ? new EnumMap<>(Material.class) : new EnumMap<>(amounts));
    amounts.forEach((material, amount) -> {
      if (!(amount >= 0)) {
        throw new IllegalArgumentException("a stock of " + amount + " of " + material);
      }
    });
  }

  public static Stock of(List<Delivery> deliveries, List<Laid> laid) {
    Map<Material, Double> amounts = new EnumMap<>(Material.class);
    deliveries.forEach(delivery -> amounts.merge(delivery.material(), delivery.amount(), Double::sum));
    laid.forEach(work -> amounts.merge(work.material(), -work.fromStock(), Double::sum));
    // Sums and differences of decimals leave a hair below nothing; a real shortfall is a bug.
    amounts.replaceAll((material, amount) -> amount < 0 && amount > -1e-6 ? 0.0 : amount);
    return new Stock(amounts);
  }

  public double of(Material material) {
    return amounts.getOrDefault(material, 0.0);
  }

  /** Spends the stock on needs in their order: the first gets all it can take before the next gets any. */
  public List<Share> spentOn(List<Need> inOrder) {
    Map<Material, Double> left = new EnumMap<>(Material.class);
    left.putAll(amounts);
    return inOrder.stream().map(need -> {
      double there = Math.min(need.left(), left.getOrDefault(need.material(), 0.0));
      left.merge(need.material(), -there, Double::sum);
      return new Share(need, there);
    }).toList();
  }
}
