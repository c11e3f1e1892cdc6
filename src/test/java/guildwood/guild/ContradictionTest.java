package guildwood.guild;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.fit.Stated;
import guildwood.species.Axis;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.Trait;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Wishes that cannot be met, one for every reason, and what would close them. */
class ContradictionTest {
  private static final Wish FIXER = Wish.function(GuildFunction.NITROGEN_FIXER, 8).asMust();
  private static final Candidate CLOVER =
      Plants.candidate(Plants.doing(Plants.plant("Trifolium exemplum", "herb", "0.5 m"), "nitrogen-fixer", Evidence.MEASURED));
  private static final Candidate HAZEL = Plants.candidate(Plants.plant("Corylus exemplum", "shrub", "2 m"));

  private static Composition compose(GuildProblem problem) {
    return new Composer(Effort.USUAL).compose(problem, 1, 5, Progress.UNWATCHED);
  }

  private static Gap onlyGap(GuildProblem problem) {
    Composition composition = compose(problem);
    assertEquals(1, composition.gaps().size(), composition.gaps().toString());
    assertTrue(composition.best().provenBest());
    return composition.gaps().get(0);
  }

  @Test
  void nobodyInTheLibraryDoesIt() {
    Gap gap = onlyGap(Plants.bed(20, List.of(FIXER), HAZEL));
    assertInstanceOf(Gap.Reason.NobodyInLibrary.class, gap.reason());
    assertEquals(List.of(), gap.closers());
  }

  @Test
  void thoseWhoDoItFailOnTheSiteNearestFirst() {
    Candidate near = fixer("Alnus propinqua", "5.0..5.9");
    Candidate far = fixer("Alnus remota", "4.0..4.5");
    Gap gap = onlyGap(Plants.bed(20, List.of(FIXER), HAZEL, far, near));
    Gap.Reason.FailsOnSite reason = assertInstanceOf(Gap.Reason.FailsOnSite.class, gap.reason());
    assertEquals(2, reason.species());
    assertEquals(List.of("alnus-propinqua", "alnus-remota"), reason.misses().stream().map(Gap.SiteMiss::speciesId).toList());
    assertEquals(Axis.REACTION, reason.misses().get(0).axis());
    assertEquals(-0.3, reason.misses().get(0).shortfall(), 1e-9);
    // From pH 6.2, three steps of 0.1 bring the near one in.
    Change.MoveCondition move = gap.closers().stream().map(Closer::change)
        .filter(Change.MoveCondition.class::isInstance).map(Change.MoveCondition.class::cast).findFirst().orElseThrow();
    assertEquals(5.9, move.to().max(), 1e-9);
    assertTrue(gap.closers().get(0).gainMilli() > 0);
  }

  private static Candidate fixer(String name, String ph) {
    return Plants.candidate(Plants.doing(Stated.species(name).with(Trait.LIGHT, "4..16").with(Trait.MOISTURE, "dry..wet").with(Trait.PH, ph)
        .with(Trait.LAYER, "shrub").with(Trait.CROWN, "1 m"), "nitrogen-fixer", Evidence.MEASURED));
  }

  @Test
  void theWinterIsAReasonButNothingAnybodyCouldChange() {
    Candidate tender = Plants.candidate(Plants.doing(Plants.plant("Acacia exemplum", "shrub", "1 m"), "nitrogen-fixer", Evidence.MEASURED)
        .with(Trait.COLDEST_WINTER, "zone 9"));
    GuildProblem bed = Plants.bed(20, List.of(FIXER), HAZEL, tender)
        .withCondition(Axis.WINTER_COLD, guildwood.species.HardinessZone.read("4b").orElseThrow().celsius());
    Gap gap = onlyGap(bed);
    assertEquals(Axis.WINTER_COLD, assertInstanceOf(Gap.Reason.FailsOnSite.class, gap.reason()).misses().get(0).axis());
    assertEquals(List.of(), gap.closers());
  }

  @Test
  void theOwnersRulesExcludeThem() {
    GuildProblem bed = Plants.bed(20, List.of(FIXER), HAZEL, CLOVER);
    Gap gap = onlyGap(bed.withRules(bed.rules().withBanned(Set.of("trifolium-exemplum"))));
    Gap.Reason.ExcludedByRules reason = assertInstanceOf(Gap.Reason.ExcludedByRules.class, gap.reason());
    assertEquals(GuildRule.BANNED, reason.rules().get(0).rule());
    assertEquals(1, gap.closers().size());
    assertInstanceOf(Change.EaseRule.class, gap.closers().get(0).change());
  }

  @Test
  void aLegalListIsNeverOfferedForLifting() {
    var olive = Plants.doing(Plants.plant("Elaeagnus umbellata", "shrub", "2 m"), "nitrogen-fixer", Evidence.MEASURED)
        .with(Trait.CAUTION, "listed:US-IL", "Illinois Exotic Weed Act").make();
    Gap gap = onlyGap(Plants.bed(20, List.of(FIXER), HAZEL, new Candidacy(Plants.BED, "US-IL").of(olive, Supply.UNKNOWN)));
    assertInstanceOf(Gap.Reason.ExcludedByRules.class, gap.reason());
    assertEquals(List.of(), gap.closers());
  }

  @Test
  void noMoneyAndNothingInStock() {
    GuildProblem bed = Plants.bed(20, List.of(FIXER), HAZEL, CLOVER);
    Gap gap = onlyGap(bed.withRules(bed.rules().withBudgetCents(OptionalInt.of(0))));
    Gap.Reason.NoRoom reason = assertInstanceOf(Gap.Reason.NoRoom.class, gap.reason());
    assertEquals(List.of(GuildRule.OVER_BUDGET), reason.obstacles().stream().map(RuleBreach::rule).toList());
    assertTrue(gap.closers().stream().anyMatch(c -> c.change() instanceof Change.EaseRule ease && ease.rule() == GuildRule.OVER_BUDGET),
        gap.closers().toString());
  }

  @Test
  void theBedIsSmallerThanAnyCrown() {
    Candidate tree = Plants.candidate(Plants.doing(Plants.plant("Robinia exemplum", "tall-tree", "8 m"), "nitrogen-fixer", Evidence.MEASURED));
    Gap gap = onlyGap(Plants.bed(2, List.of(FIXER), tree));
    Gap.Reason.ExcludedByRules reason = assertInstanceOf(Gap.Reason.ExcludedByRules.class, gap.reason());
    assertEquals(GuildRule.LARGER_THAN_BED, reason.rules().get(0).rule());
  }

  @Test
  void twoMustsThatCannotStandTogetherCostOneOfThem() {
    Candidate walnut = Plants.candidate(Plants.plant("Juglans exemplum", "small-tree", "3 m")
        .with(Trait.HARVEST, "nut", "10").with(Trait.CONFLICT, "juglone", "gives"));
    Candidate azalea = Plants.candidate(Plants.doing(Plants.plant("Alnus exemplum", "shrub", "1 m"), "nitrogen-fixer", Evidence.MEASURED)
        .with(Trait.CONFLICT, "juglone", "suffers"));
    Composition composition = compose(Plants.bed(20, List.of(FIXER, Wish.harvest("nut", 5).asMust()), walnut, azalea));
    assertEquals(1, composition.best().unmetMusts().size());
    assertTrue(composition.best().provenBest());
    assertInstanceOf(Gap.Reason.CouldComeIn.class, composition.gaps().get(0).reason());
  }

  @Test
  void anEmptyLibraryGivesAnEmptyGuildAndSaysWhy() {
    Composition composition = compose(Plants.bed(20, List.of(FIXER)));
    assertEquals(Guild.EMPTY, composition.best().guild());
    assertInstanceOf(Gap.Reason.NobodyInLibrary.class, composition.gaps().get(0).reason());
  }

  @Test
  void whatNeedsAPartnerComesWithOne() {
    Candidate liberty = Plants.candidate(Plants.plant("Malus domestica 'Liberty'", "small-tree", "2 m").with(Trait.POLLINATION, "partner-needed"));
    Candidate other = Plants.candidate(Plants.plant("Malus domestica 'Enterprise'", "small-tree", "2 m").with(Trait.POLLINATION, "partner-needed"));
    GuildProblem bed = Plants.bed(20, List.of(), liberty, other, HAZEL);
    WhyNot why = new Questions(bed, 1).whyNot(Guild.EMPTY.with("corylus-exemplum", 2), "malus-domestica-liberty");
    assertTrue(why.guild().orElseThrow().has("malus-domestica-enterprise"));
    assertTrue(new Evaluator(bed).evaluate(why.guild().get()).keepsRules());
  }

  @Test
  void aTreeThatNeedsTheWholeBedTurnsEverybodyOut() {
    List<Candidate> shrubs = new java.util.ArrayList<>();
    Guild guild = Guild.EMPTY;
    for (String name : List.of("Ribes", "Rosa", "Rubus", "Salix")) {
      shrubs.add(Plants.candidate(Plants.plant(name + " exemplum", "small-tree", "1.6 m")));
      guild = guild.with(name.toLowerCase() + "-exemplum", 2);
    }
    shrubs.add(Plants.candidate(Plants.plant("Quercus exemplum", "small-tree", "4.9 m")));
    WhyNot why = new Questions(Plants.bed(20, List.of(), shrubs.toArray(new Candidate[0])), 1).whyNot(guild, "quercus-exemplum");
    assertEquals(Guild.EMPTY.with("quercus-exemplum", 1), why.guild().orElseThrow());
  }
}
