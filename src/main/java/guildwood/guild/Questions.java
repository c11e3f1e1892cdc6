package guildwood.guild;

import java.util.List;

/** Answers about one problem: the gaps of any guild, and why a species is not in it. */
public final class Questions {
  private final GuildProblem problem;
  private final long seed;

  public Questions(GuildProblem problem, long seed) {
    this.problem = problem;
    this.seed = seed;
  }

  /** Every wish the guild leaves unmet, with the reason and what would close it, in the order of the wishes. */
  public List<Gap> gaps(Guild guild) {
    throw new UnsupportedOperationException("not built yet: gaps of " + guild + " with seed " + seed);
  }

  /** Why a species is not in the guild: which rules keep it out, or what it would cost or bring. */
  public WhyNot whyNot(Guild guild, String speciesId) {
    throw new UnsupportedOperationException("not built yet: " + speciesId + " of " + problem.candidates().size());
  }
}
