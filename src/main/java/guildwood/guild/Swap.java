package guildwood.guild;

import guildwood.guild.search.Choice;
import guildwood.guild.search.WhatIf;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Tries a species in a guild: it joins, with a partner where it needs one; its enemies leave, and at most two
 * others where that makes room enough.
 */
final class Swap {
  private final GuildProblem problem;
  private final Guild guild;

  Swap(GuildProblem problem, Guild guild) {
    this.problem = problem;
    this.guild = guild;
  }

  /**
   * The best guild with the species in it; empty where it cannot come in. Species that somebody put in
   * against the rules stay as they are.
   */
  Optional<Guild> with(String speciesId) {
    GuildProblem small = problem.withCandidates(involved(speciesId));
    Eligibility eligibility = new Eligibility(small);
    Map<String, Integer> pinned = new TreeMap<>(small.rules().pinned());
    for (String id : guild.species()) {
      boolean cannotBeChosen = problem.find(id).filter(c -> !eligibility.isEligible(c)).isPresent();
      if (cannotBeChosen && guild.count(id) > problem.standing(id)) {
        pinned.put(id, guild.count(id));
      }
    }
    Set<String> banned = new LinkedHashSet<>(small.rules().banned());
    banned.removeAll(pinned.keySet());
    Translation translation =
        new Translation(small.withRules(small.rules().withBanned(banned).withPinned(pinned)));
    for (int i = 0; i < translation.items().size(); i++) {
      if (translation.items().get(i).speciesId().equals(speciesId)) {
        Optional<Choice> choice =
            new WhatIf(translation.selection()).with(i, translation.counts(guild));
        return choice.map(translation::guild);
      }
    }
    return Optional.empty();
  }

  private List<Candidate> involved(String speciesId) {
    Set<String> ids = new LinkedHashSet<>(guild.species());
    ids.addAll(problem.standing().keySet());
    ids.addAll(problem.rules().pinned().keySet());
    ids.add(speciesId);
    problem.find(speciesId).filter(c -> c.manners().partner().isNeeded()).ifPresent(c -> problem.candidates().stream()
        .filter(other -> RuleCheck.arePartners(c, other)).forEach(other -> ids.add(other.speciesId())));
    return ids.stream().map(problem::find).flatMap(Optional::stream).toList();
  }
}
