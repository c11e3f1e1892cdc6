package guildwood.guild;

import guildwood.fit.AxisFit;
import guildwood.fit.Fit;
import guildwood.fit.Verdict;
import guildwood.species.CautionKind;
import java.util.ArrayList;
import java.util.List;

/** Which candidates may come into the guild at all, and how many of each. */
final class Eligibility {
  /** The least ground a ground cover is planted on, square decimetres; a tenth of the bed where that is less. */
  static final int PATCH_DM2 = 200;

  /** Herbs and root crops go in at least so many together, where there is room. Common practice, no source. */
  static final int GROUP = 3;

  private final GuildProblem problem;
  private final Rules rules;

  Eligibility(GuildProblem problem) {
    this.problem = problem;
    this.rules = problem.rules();
  }

  /** Every rule that keeps a candidate out by itself, in the order of {@link GuildRule}. */
  List<RuleBreach> exclusions(Candidate candidate) {
    List<RuleBreach> reasons = new ArrayList<>();
    List<String> id = List.of(candidate.speciesId());
    fit(candidate, reasons);
    if (candidate.stature().isEmpty()) {
      reasons.add(RuleBreach.of(GuildRule.LAYER_NOT_KNOWN, id));
    }
    if (rules.banned().contains(candidate.speciesId())) {
      reasons.add(RuleBreach.of(GuildRule.BANNED, id));
    }
    for (CautionKind kind : candidate.cautions()) {
      if (rules.excludedCautions().contains(kind)) {
        reasons.add(RuleBreach.of(GuildRule.CAUTION, id, kind.key()));
      }
    }
    rules.nativeTo().filter(region -> !candidate.nativeTo().contains(region))
        .ifPresent(region -> reasons.add(RuleBreach.of(GuildRule.NOT_NATIVE, id, region)));
    if (rules.plantsFrom().most(candidate.supply()) == 0) {
      reasons.add(beyondSupply(candidate, 1));
    }
    if (candidate.stature().isPresent() && candidate.stature().get().crownDm2() > problem.areaDm2()) {
      reasons.add(RuleBreach.of(GuildRule.LARGER_THAN_BED, id,
          candidate.stature().get().crownDm2() / 100.0, problem.areaM2()));
    }
    return reasons;
  }

  boolean isEligible(Candidate candidate) {
    return exclusions(candidate).isEmpty();
  }

  /**
   * Fewest plants, standing ones included, once any is put in: one of a tree, shrub or climber, a group of
   * a herb, enough of a ground cover to cover something. A partner may ask for more.
   */
  int fewest(Candidate candidate) {
    if (candidate.stature().isEmpty()) {
      return 1;
    }
    int crown = candidate.stature().get().crownDm2();
    int tenth = Math.max(1, problem.areaDm2() / 10);
    int group = Math.max(1, Math.min(GROUP, tenth / crown));
    int plants = switch (candidate.stature().get().layer()) {
      case TALL_TREE, SMALL_TREE, SHRUB, CLIMBER -> 1;
      case HERB, ROOT -> group;
      case GROUND_COVER -> Math.max(group, (Math.min(PATCH_DM2, tenth) + crown - 1) / crown);
    };
    int least = Math.min(plants, Rules.MOST_PLANTS);
    int toBeHad = Math.min(least, rules.plantsFrom().most(candidate.supply())) + problem.standing(candidate.speciesId());
    return Math.min(plants, Math.max(1, toBeHad));
  }

  /** More planned than the owner lets come from where plants may come from. */
  RuleBreach beyondSupply(Candidate candidate, int planned) {
    Supply supply = candidate.supply();
    List<String> id = List.of(candidate.speciesId());
    return rules.plantsFrom() == PlantsFrom.ON_HAND
        ? RuleBreach.of(GuildRule.NOT_IN_STOCK, id, supply.onHand(), planned, supply.toPropagate())
        : RuleBreach.of(GuildRule.NOT_TO_BE_HAD, id, supply.free(), planned);
  }

  private void fit(Candidate candidate, List<RuleBreach> reasons) {
    Fit fit = candidate.fit();
    List<String> id = List.of(candidate.speciesId());
    if (fit.verdict() == Verdict.DOES_NOT_FIT) {
      fit.failing().forEach(axis -> reasons.add(miss(GuildRule.DOES_NOT_FIT, id, axis)));
    } else if (fit.verdict() == Verdict.BORDERLINE && !rules.allowBorderline()) {
      fit.axes().stream().filter(a -> a.verdict() == Verdict.BORDERLINE)
          .forEach(axis -> reasons.add(miss(GuildRule.BORDERLINE, id, axis)));
    } else if (fit.verdict() == Verdict.NOT_KNOWN && !rules.allowNotKnown()) {
      reasons.add(RuleBreach.of(GuildRule.FIT_NOT_KNOWN, id));
    }
  }

  private static RuleBreach miss(GuildRule rule, List<String> id, AxisFit axis) {
    return RuleBreach.of(rule, id, axis.axis().key(), Math.round(axis.value() * 1000), axis.shortfall());
  }
}
