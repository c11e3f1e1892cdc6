package guildwood.guild;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Scores any guild and checks every rule. The composer, hand edits, what-if, gaps and tests all ask this
 * class, so that no page can disagree with the engine.
 */
public final class Evaluator {
  private final GuildProblem problem;
  private final Scoring scoring;
  private final RuleCheck rules;

  public Evaluator(GuildProblem problem) {
    this.problem = problem;
    this.scoring = new Scoring(problem);
    this.rules = new RuleCheck(problem);
  }

  /** Judges a guild; species the problem does not know break a rule and earn nothing. */
  public Evaluation evaluate(Guild guild) {
    List<Member> members = members(guild);
    return new Evaluation(guild, scoring.score(members), rules.breaches(guild, members),
        Remarks.about(members), scoring.numbers(members));
  }

  /** The score alone. */
  public ScoreBreakdown score(Guild guild) {
    return scoring.score(members(guild));
  }

  /** Every rule that keeps a species out whatever else is in the guild; empty where none does. */
  public List<RuleBreach> exclusions(String speciesId) {
    Optional<Candidate> candidate = problem.find(speciesId);
    return candidate.isEmpty()
        ? List.of(RuleBreach.of(GuildRule.UNKNOWN_SPECIES, List.of(speciesId)))
        : new Eligibility(problem).exclusions(candidate.get());
  }

  private List<Member> members(Guild guild) {
    List<Member> members = new ArrayList<>();
    guild.counts().forEach((id, count) ->
        problem.find(id).ifPresent(c -> members.add(new Member(c, count, problem.standing(id)))));
    return members;
  }
}
