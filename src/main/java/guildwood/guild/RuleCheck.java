package guildwood.guild;

import guildwood.species.Layer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Checks a guild against every rule. Limits bind what is put in; what stands already breaks none by itself. */
final class RuleCheck {
  private final GuildProblem problem;
  private final Rules rules;
  private final Eligibility eligibility;

  RuleCheck(GuildProblem problem) {
    this.problem = problem;
    this.rules = problem.rules();
    this.eligibility = new Eligibility(problem);
  }

  List<RuleBreach> breaches(Guild guild, List<Member> members) {
    List<RuleBreach> breaches = new ArrayList<>();
    for (String id : guild.species()) {
      if (problem.find(id).isEmpty()) {
        breaches.add(RuleBreach.of(GuildRule.UNKNOWN_SPECIES, List.of(id)));
      }
    }
    for (Member member : members) {
      if (member.added() > 0) {
        breaches.addAll(eligibility.exclusions(member.candidate()));
        counts(member, breaches);
        if (lacksPartner(member, members)) {
          breaches.add(RuleBreach.of(GuildRule.PARTNER_MISSING, List.of(member.id())));
        }
      }
    }
    totals(members, breaches);
    layers(members, breaches);
    enemies(members, breaches);
    genera(members, breaches);
    kept(guild, breaches);
    breaches.sort(Comparator.comparing(RuleBreach::rule).thenComparing(b -> b.species().toString()));
    return breaches;
  }

  private void counts(Member member, List<RuleBreach> breaches) {
    int fewest = eligibility.fewest(member.candidate());
    if (member.count() < fewest) {
      breaches.add(RuleBreach.of(GuildRule.PATCH_TOO_SMALL, List.of(member.id()), member.count(), fewest));
    }
    int most = rules.plantsFrom().most(member.candidate().supply());
    if (most > 0 && member.added() > most) {
      breaches.add(eligibility.beyondSupply(member.candidate(), member.added()));
    }
  }

  static boolean lacksPartner(Member member, List<Member> members) {
    Manners manners = member.candidate().manners();
    if (!manners.partner().isNeeded() || manners.partnerNear()) {
      return false;
    }
    // Two plants of one clone are one plant for this purpose; two seedlings are not.
    boolean twoOfItDo = !member.candidate().kinship().cultivar() && member.count() >= 2;
    return !twoOfItDo && members.stream().noneMatch(other -> arePartners(member.candidate(), other.candidate()));
  }

  /** Two different entries of one species that bloom together, as far as their bloom is known. */
  static boolean arePartners(Candidate one, Candidate other) {
    boolean related = one.kinship().species().equals(other.kinship().species())
        && !one.speciesId().equals(other.speciesId());
    int bloom = one.services().bloom().bits();
    int otherBloom = other.services().bloom().bits();
    return related && (bloom == 0 || otherBloom == 0 || (bloom & otherBloom) != 0);
  }

  private void totals(List<Member> members, List<RuleBreach> breaches) {
    int species = (int) members.stream().filter(m -> m.added() > 0).count();
    int plants = members.stream().mapToInt(Member::added).sum();
    long cost = members.stream().mapToLong(m -> m.costCents(rules)).sum();
    if (species > rules.maxSpecies()) {
      breaches.add(RuleBreach.of(GuildRule.TOO_MANY_SPECIES, List.of(), species, rules.maxSpecies()));
    }
    if (plants > rules.maxPlants()) {
      breaches.add(RuleBreach.of(GuildRule.TOO_MANY_PLANTS, List.of(), plants, rules.maxPlants()));
    }
    if (rules.budgetCents().isPresent() && cost > 0 && cost > rules.budgetCents().getAsInt()) {
      breaches.add(RuleBreach.of(GuildRule.OVER_BUDGET, List.of(), cost, rules.budgetCents().getAsInt()));
    }
  }

  private void layers(List<Member> members, List<RuleBreach> breaches) {
    for (Layer layer : Layer.values()) {
      LayerUse use = LayerUse.of(layer, members);
      if (use.addedCrownDm2() > 0 && use.crownDm2() > problem.roomDm2(layer)) {
        breaches.add(RuleBreach.of(GuildRule.LAYER_FULL, use.species(), layer.key(),
            use.crownDm2() / 100.0, problem.roomDm2(layer) / 100.0));
      }
      if (use.addedLightCm2() > 0 && use.lightCm2() > 100L * problem.areaDm2()) {
        breaches.add(RuleBreach.of(GuildRule.NO_LIGHT_LEFT, use.lightTakers(), layer.key(),
            use.lightCm2() / 10_000.0, problem.areaM2()));
      }
    }
  }

  private void enemies(List<Member> members, List<RuleBreach> breaches) {
    for (int i = 0; i < members.size(); i++) {
      for (int j = i + 1; j < members.size(); j++) {
        if (members.get(i).added() > 0 || members.get(j).added() > 0) {
          List<String> pair = List.of(members.get(i).id(), members.get(j).id());
          members.get(i).candidate().manners().conflictsWith(members.get(j).candidate().manners())
              .forEach(item -> breaches.add(RuleBreach.of(GuildRule.ENEMIES, pair, item)));
        }
      }
    }
  }

  private void genera(List<Member> members, List<RuleBreach> breaches) {
    Map<String, List<Member>> byGenus = new LinkedHashMap<>();
    members.forEach(m -> byGenus.computeIfAbsent(m.candidate().kinship().genus(), g -> new ArrayList<>()).add(m));
    byGenus.forEach((genus, kin) -> {
      boolean someNew = kin.stream().anyMatch(m -> m.standing() == 0);
      if (someNew && kin.size() > rules.maxSpeciesPerGenus()) {
        breaches.add(RuleBreach.of(GuildRule.GENUS_LIMIT, kin.stream().map(Member::id).toList(), genus, kin.size(),
            rules.maxSpeciesPerGenus()));
      }
    });
  }

  private void kept(Guild guild, List<RuleBreach> breaches) {
    problem.standing().forEach((id, count) -> {
      if (guild.count(id) < count) {
        breaches.add(RuleBreach.of(GuildRule.STANDING_LEFT_OUT, List.of(id), guild.count(id), count));
      }
    });
    rules.pinned().forEach((id, count) -> {
      if (guild.count(id) != count) {
        breaches.add(RuleBreach.of(GuildRule.PIN_IGNORED, List.of(id), guild.count(id), count));
      }
    });
  }
}
