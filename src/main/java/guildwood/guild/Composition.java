package guildwood.guild;

import java.util.List;

/**
 * What the composer found.
 *
 * @param proposals the best first, any two at least three species apart; at least one, which may be the
 *     standing plants alone
 * @param gaps of the first proposal: each wish it leaves unmet, with the reason and what would close it;
 *     none where it was cancelled
 * @param cancelled true where somebody stopped it; proposals and bound hold, but more work could improve them
 */
public record Composition(List<Proposal> proposals, List<Gap> gaps, boolean cancelled) {
  /** How many species two proposals differ in at least. */
  public static final int SPECIES_APART = 3;

  public Composition {
    proposals = List.copyOf(proposals);
    gaps = List.copyOf(gaps);
    if (proposals.isEmpty()) {
      throw new IllegalArgumentException("no proposal at all");
    }
  }

  public Proposal best() {
    return proposals.get(0);
  }
}
