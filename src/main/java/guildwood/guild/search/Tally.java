package guildwood.guild.search;

/**
 * An aim that counts add up to, rather than the choice of items: it earns in proportion, up to its goal.
 *
 * @param goal at which all is earned, at least 1
 * @param there what is reached before anything is chosen
 * @param milli what the goal earns, thousandths
 * @param must whether less than the goal takes {@link Selection#MUST_MILLI} off
 */
public record Tally(long goal, long there, int milli, boolean must) {
  /** Where nothing adds up to anything. */
  public static final Tally NONE = new Tally(1, 1, 0, false);

  public Tally {
    if (goal < 1 || there < 0 || milli < 0) {
      throw new IllegalArgumentException("a tally of " + there + " towards " + goal + " for " + milli);
    }
  }

  /** What a goal earns that is reached so far, thousandths, rounded down. */
  public static int earned(int milli, long goal, long reached) {
    return (int) (milli * Math.min(goal, reached) / goal);
  }

  /** How much is missing; 0 where the goal is reached already. */
  long missing() {
    return Math.max(0, goal - there);
  }

  boolean isOpen() {
    return there < goal;
  }

  /** What so much more earns in addition to what is there, with the must. */
  long value(long more) {
    return earned(more) - (must && more < missing() ? Selection.MUST_MILLI : 0);
  }

  /** What so much more earns in addition to what is there. */
  long earned(long more) {
    return earned(milli, goal, there + more) - earned(milli, goal, there);
  }

  /** What one more earns on average. */
  double perOne() {
    return (double) milli / goal;
  }

  /** The most that so much more can earn, fractions of a thousandth included, on a straight line to the goal. */
  double line(long more) {
    return earned(missing()) - perOne() * (missing() - more);
  }
}
