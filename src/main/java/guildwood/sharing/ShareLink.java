package guildwood.sharing;

import java.time.Instant;
import java.util.Optional;

/**
 * A link that shows one guild to whoever holds it. The link itself is shown once and never kept; only the
 * hash of its token is.
 *
 * @param label whom it was given to, as the owner notes it
 * @param expiresAt absent where it works until it is withdrawn
 */
public record ShareLink(
    long id, long guildId, String label, Instant createdAt, Optional<Instant> expiresAt, boolean revoked) {
  public static final int LONGEST_LABEL = 120;
  public static final int MOST_DAYS = 3660;

  /** Whether the link shows anything at this moment. */
  public boolean works(Instant now) {
    return !revoked && expiresAt.map(now::isBefore).orElse(true);
  }
}
