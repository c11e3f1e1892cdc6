package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Where the plants of a guild come from. */
class ProvisionTest {
  private static final Supply SOME = new Supply(OptionalInt.of(500), 2, 3);

  @Test
  void whatStandsStaysThenStockThenPropagationThenMoney() {
    assertEquals(new Provision(1, 0, 0, 0), Provision.of(SOME, 1, 4));
    assertEquals(new Provision(4, 1, 0, 0), Provision.of(SOME, 5, 4));
    assertEquals(new Provision(4, 2, 2, 0), Provision.of(SOME, 8, 4));
    assertEquals(new Provision(4, 2, 3, 6), Provision.of(SOME, 15, 4));
    assertEquals(new Provision(0, 0, 0, 7), Provision.of(Supply.UNKNOWN, 7, 0));
  }

  @Test
  void everyPlantComesFromSomewhereAndNoSourceGivesMoreThanItHas() {
    Random dice = new Random(3);
    for (int run = 0; run < 2_000; run++) {
      Supply supply = new Supply(OptionalInt.empty(), dice.nextInt(6), dice.nextInt(6));
      int count = dice.nextInt(20);
      int standing = dice.nextInt(5);
      Provision provision = Provision.of(supply, count, standing);
      assertEquals(count, provision.standing() + provision.added());
      assertEquals(Math.min(count, standing), provision.standing());
      assertEquals(Math.min(Math.max(0, count - standing), supply.free()), provision.have() + provision.propagate());
      assertEquals(provision.propagate() > 0, count - standing > supply.onHand() && supply.toPropagate() > 0);
    }
  }

  @Test
  void aGuildIsProvidedForAsItsNumbersSay() {
    Random dice = new Random(4);
    for (int seed = 0; seed < 50; seed++) {
      GuildProblem problem = RandomBeds.tiny(seed);
      Map<String, Integer> counts = new TreeMap<>(problem.standing());
      problem.candidates().stream().filter(c -> dice.nextInt(3) == 0)
          .forEach(c -> counts.merge(c.speciesId(), 1 + dice.nextInt(6), Integer::sum));
      Guild guild = Guild.of(counts);
      GuildNumbers numbers = new Evaluator(problem).evaluate(guild).numbers();
      Map<String, Provision> provisions = Provision.of(problem, guild);
      assertEquals(guild.species(), provisions.keySet());
      assertEquals(numbers.plantsToAdd(), provisions.values().stream().mapToInt(Provision::added).sum());
      assertEquals(numbers.plantsOnHand(), provisions.values().stream().mapToInt(Provision::have).sum());
      assertEquals(numbers.plantsToPropagate(), provisions.values().stream().mapToInt(Provision::propagate).sum());
      assertEquals(numbers.plantsToBuy(), provisions.values().stream().mapToInt(Provision::buy).sum());
    }
  }
}
