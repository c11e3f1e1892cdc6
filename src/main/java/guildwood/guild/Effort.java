package guildwood.guild;

/**
 * How long the composer looks, in steps rather than in time, so that the same input gives the same answer
 * on every machine.
 *
 * @param boundSteps steps of the bound's prices
 * @param moves moves of the annealing for each proposal
 * @param nodes branches the exact completion may look at before it settles for a bound, fewer where very many
 *     species are left in question; 0 switches it off
 */
public record Effort(int boundSteps, int moves, int nodes) {
  /** For what-if questions and closers. */
  public static final Effort QUICK = new Effort(150, 10_000, 150);
  /** For composing a bed. */
  public static final Effort USUAL = new Effort(400, 40_000, 25_000);
  /** Where proof is worth waiting for. */
  public static final Effort THOROUGH = new Effort(800, 200_000, 100_000);

  public Effort {
    if (boundSteps < 1 || moves < 1 || nodes < 0) {
      throw new IllegalArgumentException("no effort: " + boundSteps + ", " + moves + ", " + nodes);
    }
  }
}
