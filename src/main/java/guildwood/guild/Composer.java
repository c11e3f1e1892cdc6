package guildwood.guild;

/**
 * Composes guilds. Same problem, seed and effort: same answer, on every machine.
 *
 * <p>Greedy start, a Lagrangian bound, annealing guided by the bound's prices, and an exact completion
 * while it pays, which proves small and many middling beds best.
 */
public final class Composer {
  private final Effort effort;

  public Composer(Effort effort) {
    this.effort = effort;
  }

  /**
   * Composes up to {@code howMany} guilds, any two of them at least three species apart.
   *
   * @param howMany at least 1; fewer come back where the bed allows no more
   */
  public Composition compose(GuildProblem problem, long seed, int howMany, Progress progress) {
    throw new UnsupportedOperationException("not built yet, with effort " + effort);
  }
}
