package guildwood.guild;

import guildwood.kernel.Range;
import guildwood.species.Axis;
import java.util.Map;
import java.util.TreeMap;

/** One change to a bed or its rules that can be tried. */
public sealed interface Change {

  /** The problem after the change. */
  GuildProblem applyTo(GuildProblem problem);

  /** Another condition on one axis: lime, compost, water, an opened canopy. */
  record MoveCondition(Axis axis, Range from, Range to) implements Change {
    @Override
    public GuildProblem applyTo(GuildProblem problem) {
      return problem.withCondition(axis, to);
    }

    /** How far the middle of the range moves, in the unit of the axis. */
    public double by() {
      return to.middle() - from.middle();
    }
  }

  /**
   * One of the owner's rules lifted or eased.
   *
   * @param rule which
   * @param detail the value it is eased to, or what is let in: a caution kind, a species id, a number
   */
  record EaseRule(GuildRule rule, String detail, Rules rules) implements Change {
    @Override
    public GuildProblem applyTo(GuildProblem problem) {
      return problem.withRules(rules);
    }
  }

  /** A species put in for good; what has to leave for it leaves. */
  record PutIn(String speciesId, int count) implements Change {
    @Override
    public GuildProblem applyTo(GuildProblem problem) {
      Map<String, Integer> pinned = new TreeMap<>(problem.rules().pinned());
      pinned.put(speciesId, count);
      return problem.withRules(problem.rules().withPinned(pinned));
    }
  }

  /** The wish made a must, so that the composer gives up something else for it. */
  record Insist(Wish wish) implements Change {
    @Override
    public GuildProblem applyTo(GuildProblem problem) {
      return problem.withWishes(
          problem.wishes().stream().map(w -> w.asksSameAs(wish) ? w.asMust() : w).toList());
    }
  }

  /** A larger bed. */
  record Enlarge(double fromM2, double toM2) implements Change {
    @Override
    public GuildProblem applyTo(GuildProblem problem) {
      return problem.withArea(toM2);
    }
  }
}
