package guildwood.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.materials.Share.State;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is needed and whatever is there: nothing is spent twice, nothing is lost, and the order holds. */
class SpendingProperties {
  private static final Material[] ALL = Material.values();

  private static List<Need> needs(Random random) {
    List<Need> needs = new ArrayList<>();
    int many = random.nextInt(12);
    for (int i = 1; i <= many; i++) {
      double amount = random.nextInt(4) == 0 ? 0 : random.nextDouble() * 20;
      needs.add(new Need(Target.bed(i), "Bed " + i, i, ALL[random.nextInt(ALL.length)], 10, 0.1, amount,
          random.nextBoolean() ? 0 : random.nextDouble() * 20, random.nextInt(6) == 0));
    }
    return needs;
  }

  private static Stock stock(Random random) {
    Map<Material, Double> amounts = new EnumMap<>(Material.class);
    for (Material material : ALL) {
      if (random.nextBoolean()) {
        amounts.put(material, random.nextInt(3) == 0 ? 0 : random.nextDouble() * 60);
      }
    }
    return new Stock(amounts);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void spendingConservesWhatIsThereAndKeepsTheOrder(long seed) {
    Random random = new Random(seed);
    for (int round = 0; round < 400; round++) {
      List<Need> needs = needs(random);
      Stock stock = stock(random);
      List<Share> shares = stock.spentOn(needs);
      assertEquals(needs, shares.stream().map(Share::need).toList());
      for (Material material : ALL) {
        List<Share> same = shares.stream().filter(s -> s.need().material() == material).toList();
        double spent = same.stream().mapToDouble(Share::there).sum();
        double asked = same.stream().mapToDouble(s -> s.need().left()).sum();
        assertEquals(Math.min(asked, stock.of(material)), spent, 1e-9, "all that is there and asked for is spent, no more");
        boolean runsShort = false;
        for (Share share : same) {
          assertTrue(!runsShort || share.there() < 1e-9, "nothing for a later need while an earlier one is short");
          runsShort |= share.there() < share.need().left() - 1e-9;
          assertEquals(share.need().left(), share.there() + share.missing(), Volume.CLOSE_ENOUGH_M3);
          assertEquals(share.need().done(), share.state() == State.DONE);
        }
      }
    }
  }

  /** Deliveries and work in any order, work taking no more than is there: the stock is the difference, never below nothing. */
  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13})
  void theStockIsNeverLessThanNothing(long seed) {
    Random random = new Random(seed);
    List<Delivery> deliveries = new ArrayList<>();
    List<Laid> laid = new ArrayList<>();
    double came = 0;
    double taken = 0;
    for (int i = 0; i < 500; i++) {
      if (random.nextInt(3) == 0) {
        Delivery load = new Delivery(i, 1, Material.WOOD_CHIPS, 0.1 + random.nextDouble() * 8, java.time.LocalDate.EPOCH, "");
        deliveries.add(load);
        came += load.amount();
      } else {
        double amount = random.nextDouble() * 5;
        double fromStock = Math.min(amount, Stock.of(deliveries, laid).of(Material.WOOD_CHIPS));
        laid.add(new Laid(i, 1, Target.bed(1), "Bed", Material.WOOD_CHIPS, amount, fromStock, java.time.LocalDate.EPOCH, false));
        taken += fromStock;
      }
      double there = Stock.of(deliveries, laid).of(Material.WOOD_CHIPS);
      assertTrue(there >= 0);
      assertEquals(came - taken, there, 1e-6);
    }
  }
}
