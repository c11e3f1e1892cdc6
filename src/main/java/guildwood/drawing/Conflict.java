package guildwood.drawing;

import java.util.List;
import java.util.Locale;

/**
 * Something an arrangement could not avoid, or that was drawn so by hand.
 *
 * @param spots the plants it is about, by id: two for {@link Kind#TOO_CLOSE} and {@link Kind#STEMS_TOO_CLOSE}, else one
 * @param byM by how much, metres; for a pollen partner the distance of the nearest one
 */
public record Conflict(Kind kind, List<String> spots, double byM) {
  public Conflict {
    spots = List.copyOf(spots);
  }

  /** What is wrong. */
  public enum Kind {
    /** Its stem stands outside the bed. */
    OUTSIDE,
    /** Its stem stands on a path. */
    ON_PATH,
    /** Its stem stands at the foot of a tree that is there already. */
    AT_TRUNK,
    /** Two plants of a layer stand closer than their crowns allow. */
    TOO_CLOSE,
    /** The stems of a tree and of a shrub or tree of another layer stand so close that one is planted in the roots of the other. */
    STEMS_TOO_CLOSE,
    /** A grown crown reaches farther over the edge than allowed. */
    OVER_EDGE,
    /** What is picked cannot be reached from a path or the edge. */
    OUT_OF_REACH,
    /** The nearest pollen partner in the bed stands too far off. */
    PARTNER_FAR;

    /** Stable name in message keys. */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
