package guildwood.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What every arrangement keeps, on seeded guilds in beds of all shapes. */
class ArrangerProperties {
  private static final int GUILDS = 100;

  /** Never a plant outside; where a layer fills no more than 70 % of its cap, spacing is kept in 95 of 100 guilds at least. */
  @Test
  void spacingIsKeptWhereLayersAreNotFull() {
    List<String> tooClose = new ArrayList<>();
    for (int seed = 0; seed < GUILDS; seed++) {
      RandomGuilds.Case guild = RandomGuilds.filled(seed, 0.7);
      Arrangement found = new Arranger(guild.ground(), ArrangingRules.USUAL).arrange(guild.kinds(), List.of(), 1);
      assertEquals(guild.plants(), found.spots().size());
      assertTrue(found.spots().stream().allMatch(s -> guild.ground().outline().holds(s.at().xM(), s.at().yM())), "outside, seed " + seed);
      List<Conflict> close = conflicts(found, Conflict.Kind.TOO_CLOSE);
      if (!close.isEmpty()) {
        tooClose.add(seed + ": " + close.size() + " of " + guild.plants() + " plants, " + close.get(0));
      }
    }
    assertTrue(tooClose.size() <= GUILDS / 20, tooClose.toString());
  }

  private static List<Conflict> conflicts(Arrangement found, Conflict.Kind kind) {
    return ArrangementCheck.conflicts(found, ArrangingRules.USUAL).stream().filter(c -> c.kind() == kind).toList();
  }
}
