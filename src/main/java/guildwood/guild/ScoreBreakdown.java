package guildwood.guild;

import guildwood.species.Evidence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A score of 0 to 100 points, to the thousandth, as the sum of its parts.
 *
 * @param totalMilli thousandths of a point; exactly the sum of what the parts earn
 * @param parts the wishes in their order, then the suiting plants, the thrift, and a deduction for each unmet must
 */
public record ScoreBreakdown(int totalMilli, List<Part> parts) {

  /** What a part is about. */
  public enum Subject {
    WISH,
    /** Ground covered by plants, by how well they suit the bed. */
    FIT,
    /** Few new plants to find. */
    THRIFT,
    /** Half of what is left, taken off for a must that the guild does not meet. */
    UNMET_MUST;

    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * @param wish present where the part is about a wish
   * @param shares who earned it, the largest share first; for wishes and fit they add up to {@code earnedMilli}
   */
  public record Part(Subject subject, Optional<Wish> wish, int earnedMilli, int possibleMilli, List<Share> shares) {
    public Part {
      shares = List.copyOf(shares);
    }

    /** Whether its wish is met: ground by all that was wished, anything else by somebody who does it. */
    public boolean isMet() {
      boolean ground = wish.filter(w -> w.kind() == WishKind.GROUND).isPresent();
      return ground ? earnedMilli == possibleMilli : !shares.isEmpty();
    }
  }

  /**
   * What one species adds to a part.
   *
   * @param evidence how well its claim is supported, where the part is about a job
   */
  public record Share(String speciesId, int earnedMilli, Optional<Evidence> evidence) {}

  public ScoreBreakdown {
    parts = List.copyOf(parts);
    int sum = parts.stream().mapToInt(Part::earnedMilli).sum();
    if (sum != totalMilli) {
      throw new IllegalArgumentException("parts add up to " + sum + ", not to " + totalMilli);
    }
  }

  /** Points, 0 to 100. */
  public double total() {
    return totalMilli / 1000.0;
  }

  /** The musts the guild does not meet, in the order of the wishes. */
  public List<Wish> unmetMusts() {
    return parts.stream().filter(p -> p.subject() == Subject.UNMET_MUST).map(p -> p.wish().orElseThrow()).toList();
  }

  /** The wishes the guild does not meet, musts included, in their order. */
  public List<Wish> unmetWishes() {
    return parts.stream().filter(p -> p.subject() == Subject.WISH && !p.isMet())
        .map(p -> p.wish().orElseThrow()).toList();
  }

  /** What the parts earn before unmet musts are taken off. */
  public int earnedMilli() {
    return parts.stream().filter(p -> p.subject() != Subject.UNMET_MUST).mapToInt(Part::earnedMilli).sum();
  }

  /**
   * The order in which guilds are better: fewer unmet musts first, then what they earn. The score alone
   * follows it except where one more must costs more than half of the points.
   */
  public long rank() {
    return earnedMilli() - unmetMusts().size() * MUST_RANK;
  }

  /** More than any guild can earn, so that no points make up for a must. */
  static final long MUST_RANK = 1_000_000;

  /** Every part in which another breakdown of the same wishes differs from this one, with both values. */
  public List<Difference> diff(ScoreBreakdown other) {
    List<Difference> differences = new ArrayList<>();
    for (Part part : parts) {
      int then = other.earned(part.subject(), part.wish());
      if (then != part.earnedMilli()) {
        differences.add(new Difference(part.subject(), part.wish(), part.earnedMilli(), then));
      }
    }
    for (Part part : other.parts) {
      boolean here = parts.stream().anyMatch(p -> p.subject() == part.subject() && p.wish().equals(part.wish()));
      if (!here && part.earnedMilli() != 0) {
        differences.add(new Difference(part.subject(), part.wish(), 0, part.earnedMilli()));
      }
    }
    return List.copyOf(differences);
  }

  private int earned(Subject subject, Optional<Wish> wish) {
    return parts.stream().filter(p -> p.subject() == subject && p.wish().equals(wish))
        .mapToInt(Part::earnedMilli).findFirst().orElse(0);
  }

  /** One part of two breakdowns; the differences of all parts add up to the difference of the totals. */
  public record Difference(Subject subject, Optional<Wish> wish, int fromMilli, int toMilli) {
    public int gainMilli() {
      return toMilli - fromMilli;
    }
  }
}
