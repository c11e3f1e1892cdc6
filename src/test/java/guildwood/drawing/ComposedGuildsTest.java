package guildwood.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.bed.Bed;
import guildwood.fit.Verdict;
import guildwood.guild.BedPlan;
import guildwood.guild.Composer;
import guildwood.guild.Effort;
import guildwood.guild.Guild;
import guildwood.guild.GuildProblem;
import guildwood.guild.Progress;
import guildwood.guild.Rules;
import guildwood.guild.StartingWishes;
import guildwood.guild.Supply;
import guildwood.guild.Wish;
import guildwood.kernel.Range;
import guildwood.site.Basis;
import guildwood.site.Condition;
import guildwood.site.Site;
import guildwood.site.sun.GroundPoint;
import guildwood.site.sun.Rectangle;
import guildwood.species.Axis;
import guildwood.species.SpeciesLibrary;
import guildwood.species.Trait;
import guildwood.species.exchange.ShippedLibrary;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Guilds that the composer makes of the shipped library, arranged in beds of many sizes. */
class ComposedGuildsTest {
  private static final Map<Axis, Condition> GROUND = Map.of(
      Axis.LIGHT, new Condition(Axis.LIGHT, new Range(6, 9), Basis.OBSERVED, "6..9"),
      Axis.MOISTURE, new Condition(Axis.MOISTURE, new Range(2.5, 3.5), Basis.OBSERVED, "moist"),
      Axis.REACTION, new Condition(Axis.REACTION, new Range(6, 6.6), Basis.MEASURED, "6.0..6.6"));

  @Test
  void composedGuildsFitTheirBeds() {
    SpeciesLibrary library = ShippedLibrary.read("/seed-data").orThrow();
    List<Wish> wishes = StartingWishes.FEED_A_FRUIT_TREE.wishes();
    Site site = new Site(1, "Site", "US-WI", OptionalDouble.of(44), Optional.empty(), Optional.empty(), Map.of(), "");
    List<String> crowded = new ArrayList<>();
    int guilds = 0;
    for (double[] size : new double[][] {{3, 2}, {5, 4}, {9, 1.5}, {8, 5}, {12, 6}, {20, 3}, {15, 12}}) {
      Bed bed = new Bed(1, 1, "Bed", size[0] * size[1], Optional.of(new Rectangle(size[0], size[1], 70)), Optional.empty(), GROUND, List.of(), "");
      GuildProblem problem = new BedPlan(bed, site, library, wishes, Rules.forArea(bed.areaM2())).problem(id -> Supply.UNKNOWN);
      for (var proposal : new Composer(Effort.QUICK).compose(problem, 1, 2, Progress.UNWATCHED).proposals()) {
        Guild guild = proposal.guild();
        List<PlantKind> kinds = PlantKinds.of(guild, problem, library);
        assertEquals(guild.counts().values().stream().mapToInt(i -> i).sum(), kinds.stream().mapToInt(PlantKind::plants).sum());
        fillers(guild, problem, library);
        BedGround ground = BedGround.of(bed.ground().around(new GroundPoint(0, 0)));
        Arrangement found = new Arranger(ground, ArrangingRules.USUAL).arrange(kinds, List.of(), 1);
        guilds++;
        assertTrue(found.spots().stream().allMatch(s -> ground.outline().holds(s.at().xM(), s.at().yM())));
        // The composer may fill a layer to its cap; round crowns then cannot all keep apart.
        ArrangementCheck.conflicts(found, ArrangingRules.USUAL).stream().filter(c -> c.kind() == Conflict.Kind.TOO_CLOSE)
            .filter(c -> fill(kinds, found.kind(found.find(c.spots().get(0)).orElseThrow()), bed.areaM2()) <= 0.7)
            .forEach(c -> crowded.add(bed.ground() + ": " + c));
      }
    }
    assertTrue(guilds >= 10, guilds + " guilds");
    assertEquals(List.of(), crowded);
  }

  /** What is offered for the gaps fits, is not in the guild, and lives a year or two or grows fast and low. */
  private static void fillers(Guild guild, GuildProblem problem, SpeciesLibrary library) {
    List<Filler> fillers = Filler.of(guild, problem, library);
    assertTrue(!fillers.isEmpty() && fillers.size() <= 8, fillers.toString());
    for (Filler filler : fillers) {
      var candidate = problem.find(filler.speciesId()).orElseThrow();
      String duration = library.find(filler.speciesId()).orElseThrow().word(Trait.DURATION).orElse("");
      assertEquals(Verdict.FITS, candidate.fit().verdict());
      assertTrue(!guild.has(filler.speciesId()) && !candidate.manners().spreads(), filler.toString());
      assertEquals(switch (filler.why()) {
        case ANNUAL -> "annual";
        case BIENNIAL -> "biennial";
        case QUICK_COVER -> "perennial";
      }, duration, filler.toString());
    }
  }

  /** Share of the bed that the crowns of a kind's layer take. */
  private static double fill(List<PlantKind> kinds, PlantKind kind, double areaM2) {
    return kinds.stream().filter(k -> k.layer() == kind.layer()).mapToDouble(PlantKind::crownAreaM2).sum() / areaM2;
  }
}
