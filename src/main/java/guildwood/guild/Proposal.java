package guildwood.guild;

import java.util.List;

/**
 * One composed guild.
 *
 * @param evaluation its score, remarks and numbers; breaches only where standing or pinned plants force them
 * @param upperBoundMilli no guild that keeps the rules and leaves no more musts unmet scores higher,
 *     in thousandths of a point
 * @param provenBest true where it is certain that no guild is better
 * @param character what sets it apart from the proposals beside it
 */
public record Proposal(Evaluation evaluation, int upperBoundMilli, boolean provenBest, Distinction character) {
  public Proposal {
    if (evaluation.score().totalMilli() > upperBoundMilli) {
      throw new IllegalArgumentException("scores " + evaluation.score().totalMilli() + " above its bound " + upperBoundMilli);
    }
  }

  public Guild guild() {
    return evaluation.guild();
  }

  public ScoreBreakdown score() {
    return evaluation.score();
  }

  public List<Wish> unmetMusts() {
    return score().unmetMusts();
  }

  /** How far it can be from the best at most, in thousandths of a point. */
  public int mostBelowBestMilli() {
    return upperBoundMilli - score().totalMilli();
  }
}
