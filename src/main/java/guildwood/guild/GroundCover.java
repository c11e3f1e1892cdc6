package guildwood.guild;

import guildwood.guild.search.Tally;
import guildwood.species.Evidence;
import guildwood.species.GuildFunction;
import guildwood.species.Layer;
import java.util.List;
import java.util.Optional;

/**
 * Which plants cover the ground, and how much of it. The one place that says so.
 *
 * <p>The whole crown counts of plants of the ground cover layer, and of other low plants (herbs, shrubs, root crops)
 * that the library says cover the ground; half of it where that is only handed down. The crowns of other herbs do not
 * count: most stand in groups with open soil between their stems. Those of trees and climbers shade the ground but do
 * not cover it. Crowns count as if they stood side by side, so that ground under two of different layers counts twice.
 * Our own choice, no publication.
 *
 * <p>Amounts are in half square decimetres, so that half a crown is a whole number.
 */
final class GroundCover {
  private static final int HALVES = 2;

  private GroundCover() {}

  /** How much of its crown counts, in halves: 2, 1 or 0. */
  static int units(Candidate candidate) {
    Optional<Layer> layer = candidate.stature().map(Stature::layer);
    if (layer.isEmpty() || layer.get().compareTo(Layer.SHRUB) < 0 || layer.get() == Layer.CLIMBER) {
      return 0;
    }
    Optional<Evidence> claim = claim(candidate);
    if (layer.get() == Layer.GROUND_COVER) {
      return Services.WHOLE;
    }
    return claim.isEmpty() ? 0 : claim.get() == Evidence.FOLK ? Services.HALF : Services.WHOLE;
  }

  /** How well it is supported that it covers the ground, where the library says so. */
  static Optional<Evidence> claim(Candidate candidate) {
    return Optional.ofNullable(candidate.services().functions().get(GuildFunction.GROUND_COVER));
  }

  /** What one plant covers. */
  static long each(Candidate candidate) {
    int units = units(candidate);
    return units == 0 ? 0 : (long) candidate.stature().orElseThrow().crownDm2() * units;
  }

  static long of(Member member) {
    return each(member.candidate()) * member.count();
  }

  static long of(List<Member> members) {
    return members.stream().mapToLong(GroundCover::of).sum();
  }

  /** What has to be covered for a wish, rounded up. */
  static long goal(GuildProblem problem, Wish wish) {
    return Math.max(1, ((long) problem.areaDm2() * HALVES * wish.percent() + 99) / 100);
  }

  /** What a wish earns for so much covered; all of it only where its share is reached. */
  static int earned(GuildProblem problem, Wish wish, int possibleMilli, long covered) {
    return Tally.earned(possibleMilli, goal(problem, wish), covered);
  }

  /** A cover as a share of the bed, thousandths, rounded down; more than all of it counts as all. */
  static int permille(GuildProblem problem, long covered) {
    return (int) Math.min(1000, covered * 1000 / Math.max(1, (long) problem.areaDm2() * HALVES));
  }
}
