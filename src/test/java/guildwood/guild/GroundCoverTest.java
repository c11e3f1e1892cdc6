package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.Evidence;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A share of the ground as a wish: which plants count, how it earns, and what is said where it is missed. */
class GroundCoverTest {
  /** A crown of 1 m covers 0.785 m2, kept as 79 dm2. */
  private static final Candidate THYME = Plants.candidate(Plants.plant("Thymus exemplum", "ground-cover", "1 m"));

  private static final Candidate SAGE = Plants.candidate(Plants.plant("Salvia exemplum", "herb", "1 m"));

  private static GuildProblem wishing(Wish wish, Candidate... candidates) {
    GuildProblem bed = Plants.bed(10, List.of(wish), candidates);
    return bed.withRules(bed.rules().withMaxPlants(30));
  }

  private static ScoreBreakdown.Part part(GuildProblem problem, Map<String, Integer> guild) {
    return new Evaluator(problem).score(Guild.of(guild)).parts().get(0);
  }

  @Test
  void groundCoversCountAndLowPlantsThatAreSaidToCoverIt() {
    assertEquals(2, GroundCover.units(THYME));
    assertEquals(0, GroundCover.units(SAGE), "a herb of which nobody says so");
    assertEquals(2, GroundCover.units(covering("Geranium exemplum", "herb", Evidence.OBSERVED)));
    assertEquals(2, GroundCover.units(covering("Juniperus exemplum", "shrub", Evidence.MEASURED)));
    assertEquals(1, GroundCover.units(covering("Symphytum exemplum", "herb", Evidence.FOLK)), "handed down: half");
    assertEquals(2, GroundCover.units(covering("Ajuga exemplum", "ground-cover", Evidence.FOLK)), "its layer says so already");
    assertEquals(0, GroundCover.units(covering("Tilia exemplum", "tall-tree", Evidence.OBSERVED)), "shade from above covers nothing");
    assertEquals(0, GroundCover.units(covering("Hedera exemplum", "climber", Evidence.OBSERVED)));
  }

  private static Candidate covering(String name, String layer, Evidence evidence) {
    return Plants.candidate(Plants.doing(Plants.plant(name, layer, "1 m"), "ground-cover", evidence));
  }

  @Test
  void itEarnsInProportionUpToTheShareAndIsMetThereAlone() {
    GuildProblem bed = wishing(Wish.ground(60, 5), THYME, SAGE);
    // 600 dm2 are wished for, 79 dm2 a plant, 80 points possible: seven plants 553 of 600, eight more than enough.
    assertEquals(80_000 * 79 / 600, part(bed, Map.of("thymus-exemplum", 1)).earnedMilli());
    ScoreBreakdown.Part seven = part(bed, Map.of("thymus-exemplum", 7));
    assertEquals(80_000 * 553 / 600, seven.earnedMilli());
    assertTrue(!seven.isMet() && part(bed, Map.of("thymus-exemplum", 8)).isMet());
    assertEquals(80_000, part(bed, Map.of("thymus-exemplum", 8)).earnedMilli());
    assertEquals(80_000, part(bed, Map.of("thymus-exemplum", 12)).earnedMilli());
    assertEquals(0, part(bed, Map.of("salvia-exemplum", 9)).earnedMilli());
    assertEquals(List.of(bed.wishes().get(0)), new Evaluator(bed).score(Guild.of(Map.of("thymus-exemplum", 7))).unmetWishes());
  }

  @Test
  void whatStandsCounts() {
    GuildProblem open = wishing(Wish.ground(60, 5).asMust(), THYME);
    TreeMap<String, Integer> standing = new TreeMap<>(Map.of("thymus-exemplum", 6));
    GuildProblem bed = new GuildProblem(10, Plants.BED, open.candidates(), open.wishes(), open.rules(), standing);
    Proposal best = new Composer(Effort.USUAL).draft(bed, 1, 1, Progress.UNWATCHED).proposals().get(0);
    assertEquals(List.of(), best.unmetMusts());
    assertTrue(best.guild().count("thymus-exemplum") >= 8 && best.provenBest());
  }

  @Test
  void aMustIsKeptThoughPointsSpeakAgainstIt() {
    Candidate poor = Plants.candidate(Plants.plant("Sedum exemplum", "ground-cover", "0.3 m"));
    GuildProblem nice = wishing(Wish.ground(20, 1), poor, SAGE)
        .withWishes(List.of(Wish.ground(20, 1), Wish.layer(guildwood.species.Layer.HERB, 10)));
    GuildProblem must = nice.withWishes(List.of(nice.wishes().get(0).asMust(), nice.wishes().get(1)));
    Proposal best = new Composer(Effort.USUAL).draft(must, 1, 1, Progress.UNWATCHED).proposals().get(0);
    // 0.3 m is 7 dm2: 29 plants for 200 dm2, of 30 that may be put in.
    assertTrue(best.guild().count("sedum-exemplum") >= 29, best.guild().toString());
    assertTrue(best.provenBest());
  }

  @Test
  void wherePlantsAreShortItSaysSoAndHowManyWouldDo() {
    GuildProblem bed = wishing(Wish.ground(90, 5).asMust(), THYME, SAGE);
    GuildProblem few = bed.withRules(bed.rules().withMaxPlants(4));
    Composition composition = new Composer(Effort.USUAL).compose(few, 1, 1, Progress.UNWATCHED);
    assertEquals(1, composition.best().unmetMusts().size());
    assertTrue(composition.best().provenBest());
    Gap gap = composition.gaps().get(0);
    Gap.Reason.GroundShort reason = assertInstanceOf(Gap.Reason.GroundShort.class, gap.reason());
    assertEquals(316, reason.coveredPermille(), "four plants of 79 dm2 on 1,000");
    assertEquals(List.of(GuildRule.TOO_MANY_PLANTS), reason.obstacles().stream().map(RuleBreach::rule).toList());
    Change.EaseRule ease = assertInstanceOf(Change.EaseRule.class, gap.closers().get(0).change());
    assertEquals(GuildRule.TOO_MANY_PLANTS, ease.rule());
    // Twelve plants cover 948 dm2 of the 900 wished; three times four is the first limit tried that lets them in.
    assertEquals("12", ease.detail());
  }

  @Test
  void aGuildByHandIsToldHowManyMoreOfOneWouldDo() {
    GuildProblem bed = wishing(Wish.ground(60, 5), THYME, SAGE);
    Gap gap = new Questions(bed, 1).gaps(Guild.of(Map.of("thymus-exemplum", 3))).get(0);
    assertEquals(List.of(), assertInstanceOf(Gap.Reason.GroundShort.class, gap.reason()).obstacles());
    assertTrue(gap.closers().stream().anyMatch(c -> c.change().equals(new Change.PutIn("thymus-exemplum", 8))), gap.closers().toString());
  }

  @Test
  void everyShareOfTheGroundIsTheSameWish() {
    assertTrue(Wish.ground(40, 3).asksSameAs(Wish.ground(70, 8)));
    assertEquals("ground:40", Wish.ground(40, 3).key());
  }
}
