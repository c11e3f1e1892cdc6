package guildwood.guild;

import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * How a plant gets on with others.
 *
 * @param gives conflict items it spreads, such as juglone
 * @param suffers conflict items that harm it
 * @param doubtful conflict items on which sources disagree; worth a remark, no reason to keep plants apart
 * @param partner what it needs to set fruit
 * @param partnerNear true where a compatible partner grows in reach outside the bed
 * @param partnerFar the nearest compatible partner outside the bed, where even that one grows too far off
 * @param needsSun true where it must not stand under the crowns of others
 * @param spreads true where it suckers or runs
 */
public record Manners(
    Set<String> gives,
    Set<String> suffers,
    Set<String> doubtful,
    Partner partner,
    boolean partnerNear,
    Optional<FarPartner> partnerFar,
    boolean needsSun,
    boolean spreads) {
  public static final Manners EASY = new Manners(Set.of(), Set.of(), Set.of(), Partner.NOT_NEEDED, false, false, false);

  /** Whether it needs another plant to set fruit. */
  public enum Partner {
    NOT_NEEDED,
    /** Sets more with one. */
    HELPS,
    /** Another plant that is not the same clone. */
    NEEDED,
    /** Male and female flowers on different plants. */
    SEPARATE_SEXES;

    public boolean isNeeded() {
      return this == NEEDED || this == SEPARATE_SEXES;
    }
  }

  public Manners {
    gives = sorted(gives);
    suffers = sorted(suffers);
    doubtful = sorted(doubtful);
  }

  /** Manners of a plant of which no partner too far off is known. */
  public Manners(Set<String> gives, Set<String> suffers, Set<String> doubtful, Partner partner, boolean partnerNear,
      boolean needsSun, boolean spreads) {
    this(gives, suffers, doubtful, partner, partnerNear, Optional.empty(), needsSun, spreads);
  }

  Manners withPartner(boolean near, Optional<FarPartner> far) {
    return new Manners(gives, suffers, doubtful, partner, near, far, needsSun, spreads);
  }

  /** The items under which one of the two harms the other; empty where they can stand together. */
  public Set<String> conflictsWith(Manners other) {
    Set<String> items = new TreeSet<>();
    gives.stream().filter(other.suffers::contains).forEach(items::add);
    suffers.stream().filter(other.gives::contains).forEach(items::add);
    return items;
  }

  /** The items under which one spreads what is only said to harm the other. */
  public Set<String> doubtsWith(Manners other) {
    Set<String> items = new TreeSet<>();
    gives.stream().filter(other.doubtful::contains).forEach(items::add);
    doubtful.stream().filter(other.gives::contains).forEach(items::add);
    return items;
  }

  private static Set<String> sorted(Set<String> items) {
    return items.isEmpty() ? Set.of() : Collections.unmodifiableSet(new TreeSet<>(items));
  }
}
