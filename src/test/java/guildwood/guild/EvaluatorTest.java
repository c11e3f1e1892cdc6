package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.CautionKind;
import guildwood.species.Evidence;
import guildwood.species.Trait;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Every rule broken once, by the least that breaks it, and kept by one plant less. */
class EvaluatorTest {
  private static final Candidate APPLE = Plants.candidate(Plants.plant("Malus exemplum", "small-tree", "4 m"));
  private static final Candidate HAZEL = Plants.candidate(Plants.plant("Corylus exemplum", "shrub", "2 m"));
  private static final Candidate CHIVES = Plants.candidate(Plants.plant("Allium exemplum", "herb", "0.3 m"));

  private static List<GuildRule> broken(GuildProblem problem, Map<String, Integer> guild) {
    return new Evaluator(problem).evaluate(Guild.of(guild)).breaches().stream().map(RuleBreach::rule).toList();
  }

  private static GuildProblem ruled(GuildProblem problem, Rules rules) {
    return problem.withRules(rules);
  }

  @Test
  void aGuildWithinAllLimitsBreaksNothing() {
    GuildProblem bed = Plants.bed(40, List.of(), APPLE, HAZEL, CHIVES);
    assertEquals(List.of(), broken(bed, Map.of("malus-exemplum", 1, "corylus-exemplum", 3, "allium-exemplum", 5)));
  }

  @Test
  void aLayerHoldsNoMoreCrownThanTheBedHasGround() {
    // A crown of 4 m covers pi * 4 = 12.57 m2: three take 37.7 of 40, four would take 50.3.
    GuildProblem bed = Plants.bed(40, List.of(), APPLE);
    assertEquals(List.of(), broken(bed, Map.of("malus-exemplum", 3)));
    Evaluation four = new Evaluator(bed).evaluate(Guild.of(Map.of("malus-exemplum", 4)));
    assertEquals(List.of(GuildRule.LAYER_FULL), four.breaches().stream().map(RuleBreach::rule).toList());
    assertEquals(List.of("small-tree", "50.28", "40"), four.breaches().get(0).args());
  }

  @Test
  void whatNeedsSunMustFitInTheLightTheCrownsAboveLeave() {
    Candidate sunny = Plants.candidate(Plants.plant("Lavandula exemplum", "shrub", "2 m").with(Trait.LIGHT_PREFERRED, "6..16"));
    assertTrue(sunny.manners().needsSun());
    // Three apples take half of 37.7 = 18.9 m2; of 40 m2 that leaves 21.1 for shrubs of 3.14 m2: six.
    GuildProblem bed = Plants.bed(40, List.of(), APPLE, sunny, HAZEL);
    assertEquals(List.of(), broken(bed, Map.of("malus-exemplum", 3, "lavandula-exemplum", 6)));
    assertEquals(List.of(GuildRule.NO_LIGHT_LEFT), broken(bed, Map.of("malus-exemplum", 3, "lavandula-exemplum", 7)));
    assertEquals(List.of(), broken(bed, Map.of("malus-exemplum", 3, "corylus-exemplum", 7)));
  }

  @Test
  void speciesPlantsAndMoneyAreLimited() {
    GuildProblem bed = Plants.bed(40, List.of(), APPLE, HAZEL.withSupply(new Supply(OptionalInt.of(1000), 1)));
    Map<String, Integer> guild = Map.of("malus-exemplum", 1, "corylus-exemplum", 3);
    Rules rules = bed.rules().withMaxSpecies(2).withMaxPlants(4);
    // One apple at the assumed 5.00 and two of three hazels at 10.00, one being in stock.
    assertEquals(List.of(), broken(ruled(bed, rules.withBudgetCents(OptionalInt.of(2500))), guild));
    assertEquals(List.of(GuildRule.OVER_BUDGET), broken(ruled(bed, rules.withBudgetCents(OptionalInt.of(2499))), guild));
    assertEquals(List.of(GuildRule.TOO_MANY_SPECIES), broken(ruled(bed, rules.withMaxSpecies(1)), guild));
    assertEquals(List.of(GuildRule.TOO_MANY_PLANTS), broken(ruled(bed, rules.withMaxPlants(3)), guild));
    assertEquals(List.of(GuildRule.NOT_IN_STOCK, GuildRule.NOT_IN_STOCK), broken(ruled(bed, rules.withPlantsFrom(PlantsFrom.ON_HAND)), guild));
  }

  @Test
  void onlyStockLetsInWhatIsOnHandAndNoMore() {
    GuildProblem bed = Plants.bed(40, List.of(), HAZEL.withSupply(new Supply(OptionalInt.empty(), 2)));
    GuildProblem strict = ruled(bed, bed.rules().withPlantsFrom(PlantsFrom.ON_HAND));
    assertEquals(List.of(), broken(strict, Map.of("corylus-exemplum", 2)));
    assertEquals(List.of(GuildRule.NOT_IN_STOCK), broken(strict, Map.of("corylus-exemplum", 3)));
  }

  @Test
  void whatCanBePropagatedComesInWhereTheOwnerLetsItAndCostsNothing() {
    GuildProblem bed = Plants.bed(40, List.of(), HAZEL.withSupply(new Supply(OptionalInt.of(1000), 2, 3)));
    GuildProblem free = ruled(bed, bed.rules().withPlantsFrom(PlantsFrom.HAVE_OR_PROPAGATE));
    assertEquals(List.of(), broken(free, Map.of("corylus-exemplum", 5)));
    assertEquals(List.of(GuildRule.NOT_TO_BE_HAD), broken(free, Map.of("corylus-exemplum", 6)));
    GuildProblem onHand = ruled(bed, bed.rules().withPlantsFrom(PlantsFrom.ON_HAND));
    assertEquals(List.of(GuildRule.NOT_IN_STOCK), broken(onHand, Map.of("corylus-exemplum", 3)));
    GuildNumbers numbers = new Evaluator(bed).evaluate(Guild.of(Map.of("corylus-exemplum", 7))).numbers();
    assertEquals(List.of(7, 2, 3, 2, 2_000L), List.of(numbers.plantsToAdd(), numbers.plantsOnHand(),
        numbers.plantsToPropagate(), numbers.plantsToBuy(), numbers.costCents()));
  }

  @Test
  void enemiesStayApartAndDisputedOnesAreRemarkedOnly() {
    Candidate walnut = Plants.candidate(Plants.plant("Juglans exemplum", "small-tree", "3 m").with(Trait.CONFLICT, "juglone", "gives"));
    Candidate azalea = Plants.candidate(Plants.plant("Rhododendron exemplum", "shrub", "1 m").with(Trait.CONFLICT, "juglone", "suffers"));
    Candidate crab = Plants.candidate(Plants.plant("Malus dubia", "shrub", "1 m").with(Trait.CONFLICT, "juglone", "disputed"));
    Candidate pawpaw = Plants.candidate(Plants.plant("Asimina exemplum", "shrub", "1 m").with(Trait.CONFLICT, "juglone", "tolerates"));
    GuildProblem bed = Plants.bed(40, List.of(), walnut, azalea, crab, pawpaw);
    assertEquals(List.of(GuildRule.ENEMIES), broken(bed, Map.of("juglans-exemplum", 1, "rhododendron-exemplum", 1)));
    Evaluation disputed = new Evaluator(bed).evaluate(Guild.of(Map.of("juglans-exemplum", 1, "malus-dubia", 1)));
    assertTrue(disputed.keepsRules());
    assertEquals(List.of("guild.doubtful-conflict"), disputed.remarks().stream().map(r -> r.code()).toList());
    Evaluation tolerant = new Evaluator(bed).evaluate(Guild.of(Map.of("juglans-exemplum", 1, "asimina-exemplum", 1)));
    assertTrue(tolerant.keepsRules() && tolerant.remarks().isEmpty());
  }

  @Test
  void genusLimitCountsStandingOnesButTheyDoNotBreakIt() {
    Candidate two = Plants.candidate(Plants.plant("Malus altera", "shrub", "1 m"));
    Candidate three = Plants.candidate(Plants.plant("Malus tertia", "shrub", "1 m"));
    GuildProblem bed = Plants.bed(60, List.of(), APPLE, two, three);
    assertEquals(List.of(), broken(bed, Map.of("malus-exemplum", 1, "malus-altera", 1)));
    Map<String, Integer> all = Map.of("malus-exemplum", 1, "malus-altera", 1, "malus-tertia", 1);
    assertEquals(List.of(GuildRule.GENUS_LIMIT), broken(bed, all));
    GuildProblem standing = new GuildProblem(60, Plants.BED, bed.candidates(), List.of(), bed.rules(), new TreeMap<>(all));
    assertEquals(List.of(), broken(standing, all));
  }

  /**
   * Washington State University Tree Fruit: apple needs another cultivar to set fruit. Two of one clone do
   * not serve each other, a second cultivar does, two seedlings do.
   */
  @Test
  void aPartnerIsAnotherCultivarOrASecondSeedling() {
    Candidate liberty = apple("Malus domestica 'Liberty'", "5");
    Candidate second = apple("Malus domestica 'Enterprise'", "5");
    Candidate late = apple("Malus domestica 'Sera'", "7");
    Candidate wild = Plants.candidate(Plants.plant("Asimina exemplum", "shrub", "1 m").with(Trait.POLLINATION, "partner-needed"));
    GuildProblem bed = Plants.bed(60, List.of(), liberty, second, late, wild);
    String id = "malus-domestica-liberty";
    assertEquals(List.of(GuildRule.PARTNER_MISSING), broken(bed, Map.of(id, 1)));
    assertEquals(List.of(GuildRule.PARTNER_MISSING), broken(bed, Map.of(id, 2)));
    assertEquals(List.of(), broken(bed, Map.of(id, 1, "malus-domestica-enterprise", 1)));
    assertEquals(List.of(GuildRule.PARTNER_MISSING, GuildRule.PARTNER_MISSING), broken(bed, Map.of(id, 1, "malus-domestica-sera", 1)));
    assertEquals(List.of(GuildRule.PARTNER_MISSING), broken(bed, Map.of("asimina-exemplum", 1)));
    assertEquals(List.of(), broken(bed, Map.of("asimina-exemplum", 2)));
    GuildProblem neighbour = Plants.bed(60, List.of(), liberty.withPartnerNear(true));
    assertEquals(List.of(), broken(neighbour, Map.of(id, 1)));
  }

  private static Candidate apple(String name, String bloom) {
    return Plants.candidate(Plants.plant(name, "small-tree", "3 m").with(Trait.POLLINATION, "partner-needed").with(Trait.BLOOM, bloom));
  }

  @Test
  void standingPlantsStayAndPinsHold() {
    GuildProblem bed = Plants.bed(40, List.of(), APPLE, HAZEL);
    GuildProblem standing = new GuildProblem(40, Plants.BED, bed.candidates(), List.of(),
        bed.rules().withPinned(Map.of("corylus-exemplum", 2)), new TreeMap<>(Map.of("malus-exemplum", 2)));
    assertEquals(List.of(), broken(standing, Map.of("malus-exemplum", 2, "corylus-exemplum", 2)));
    assertEquals(List.of(GuildRule.STANDING_LEFT_OUT), broken(standing, Map.of("malus-exemplum", 1, "corylus-exemplum", 2)));
    assertEquals(List.of(GuildRule.PIN_IGNORED), broken(standing, Map.of("malus-exemplum", 2, "corylus-exemplum", 3)));
  }

  @Test
  void bannedCautionedForeignAndUnsuitedSpeciesStayOut() {
    Candidate thorny = Plants.candidate(Plants.plant("Rosa exemplum", "shrub", "1 m").with(Trait.CAUTION, "thorns", "sharp"));
    Candidate acid = Plants.candidate(Plants.plant("Vaccinium exemplum", "shrub", "1 m").with(Trait.PH_PREFERRED, "4.0..5.0"));
    Candidate bog = Plants.candidate(guildwood.fit.Stated.species("Salix exemplum").with(Trait.MOISTURE, "waterlogged")
        .with(Trait.LAYER, "shrub").with(Trait.CROWN, "1 m"));
    Candidate riddle = Plants.candidate(guildwood.fit.Stated.species("Aenigma exemplum").with(Trait.LAYER, "shrub"));
    GuildProblem bed = Plants.bed(40, List.of(), HAZEL, thorny, acid, bog, riddle);
    Rules rules = bed.rules();
    assertEquals(List.of(GuildRule.BANNED), broken(ruled(bed, rules.withBanned(Set.of("corylus-exemplum"))), Map.of("corylus-exemplum", 1)));
    assertEquals(List.of(GuildRule.CAUTION),
        broken(ruled(bed, rules.withExcludedCautions(Set.of(CautionKind.THORNS))), Map.of("rosa-exemplum", 1)));
    assertEquals(List.of(GuildRule.NOT_NATIVE), broken(ruled(bed, rules.withNativeTo(Optional.of("maine"))), Map.of("rosa-exemplum", 1)));
    assertEquals(List.of(GuildRule.DOES_NOT_FIT), broken(bed, Map.of("salix-exemplum", 1)));
    assertEquals(List.of(GuildRule.BORDERLINE), broken(bed, Map.of("vaccinium-exemplum", 1)));
    assertEquals(List.of(), broken(ruled(bed, rules.withBorderline(true)), Map.of("vaccinium-exemplum", 1)));
    assertEquals(List.of(GuildRule.FIT_NOT_KNOWN), broken(bed, Map.of("aenigma-exemplum", 1)));
    assertEquals(List.of(GuildRule.UNKNOWN_SPECIES), broken(bed, Map.of("nemo", 1)));
  }

  /** Illinois Exotic Weed Act, 525 ILCS 10, lists Elaeagnus umbellata: never in a guild there, allowed rule or not by default. */
  @Test
  void whatTheLawListsAtThePlaceStaysOutThere() {
    var olive = Plants.plant("Elaeagnus umbellata", "shrub", "3 m").with(Trait.CAUTION, "listed:US-IL", "Illinois Exotic Weed Act").make();
    Rules rules = Rules.forArea(40);
    Candidate there = new Candidacy(Plants.BED, "US-IL").of(olive, Supply.UNKNOWN);
    Candidate elsewhere = new Candidacy(Plants.BED, "US-WI").of(olive, Supply.UNKNOWN);
    Candidate nowhere = new Candidacy(Plants.BED, "").of(olive, Supply.UNKNOWN);
    assertEquals(List.of(GuildRule.CAUTION), broken(Plants.bed(40, List.of(), there).withRules(rules), Map.of("elaeagnus-umbellata", 1)));
    assertEquals(List.of(), broken(Plants.bed(40, List.of(), elsewhere).withRules(rules), Map.of("elaeagnus-umbellata", 1)));
    assertEquals(List.of(GuildRule.CAUTION), broken(Plants.bed(40, List.of(), nowhere).withRules(rules), Map.of("elaeagnus-umbellata", 1)));
  }

  @Test
  void evidenceIsShownAndAFolkClaimCountsAsHalfAProvider() {
    Candidate clover = Plants.candidate(Plants.doing(Plants.plant("Trifolium exemplum", "herb", "0.5 m"), "nitrogen-fixer", Evidence.MEASURED));
    Candidate said = Plants.candidate(Plants.doing(Plants.plant("Fabula exemplum", "herb", "0.5 m"), "nitrogen-fixer", Evidence.FOLK));
    Wish wish = new Wish(WishKind.FUNCTION, "nitrogen-fixer", false, 5);
    GuildProblem bed = Plants.bed(40, List.of(wish), clover, said);
    Evaluator evaluator = new Evaluator(bed);
    // 80 points in the proportion 4 : 2 : 1, the first provider taking what rounding leaves.
    assertEquals(45_716, part(evaluator, Map.of("trifolium-exemplum", 3)).earnedMilli());
    assertEquals(22_858, part(evaluator, Map.of("fabula-exemplum", 3)).earnedMilli());
    ScoreBreakdown.Part both = part(evaluator, Map.of("trifolium-exemplum", 3, "fabula-exemplum", 3));
    assertEquals(45_716 + 11_428, both.earnedMilli());
    assertEquals(List.of("trifolium-exemplum", "fabula-exemplum"), both.shares().stream().map(ScoreBreakdown.Share::speciesId).toList());
    assertEquals(Optional.of(Evidence.FOLK), both.shares().get(1).evidence());
  }

  private static ScoreBreakdown.Part part(Evaluator evaluator, Map<String, Integer> guild) {
    return evaluator.score(Guild.of(guild)).parts().get(0);
  }

  @Test
  void eachUnmetMustTakesHalfOfWhatIsLeft() {
    Wish must = new Wish(WishKind.HARVEST_PART, "nut", true, 5);
    Wish other = new Wish(WishKind.HARVEST_PART, "fruit", true, 5);
    GuildProblem bed = Plants.bed(40, List.of(must, other), HAZEL);
    ScoreBreakdown score = new Evaluator(bed).score(Guild.of(Map.of("corylus-exemplum", 2)));
    assertEquals(List.of(must, other), score.unmetMusts());
    assertEquals(score.earnedMilli() / 4, score.totalMilli());
    assertEquals(score.earnedMilli() - 2 * ScoreBreakdown.MUST_RANK, score.rank());
  }
}
