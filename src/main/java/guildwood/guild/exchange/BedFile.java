package guildwood.guild.exchange;

import guildwood.guild.BedPlan;
import guildwood.guild.Candidate;
import guildwood.guild.GuildProblem;
import guildwood.guild.Supply;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a bed file says.
 *
 * @param supplies what is on hand and what a plant costs, by species id
 * @param partnersNear species of which a compatible partner grows in reach outside the bed
 */
record BedFile(BedPlan plan, Map<String, Supply> supplies, Set<String> partnersNear) {
  BedFile {
    supplies = Map.copyOf(supplies);
    partnersNear = Set.copyOf(partnersNear);
  }

  GuildProblem problem() {
    GuildProblem problem = plan.problem(id -> supplies.getOrDefault(id, Supply.UNKNOWN));
    List<Candidate> candidates = problem.candidates().stream()
        .map(c -> partnersNear.contains(c.speciesId()) ? c.withPartnerNear(true) : c).toList();
    return problem.withCandidates(candidates);
  }
}
