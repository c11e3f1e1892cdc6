package guildwood.sharing;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The links that were given out. */
public interface ShareLinks {
  /** The links of a guild, the newest first. */
  List<ShareLink> ofGuild(long guildId);

  ShareLink add(long guildId, String tokenHash, String label, Instant now, Optional<Instant> expiresAt);

  /** The link with a token, whether it still works or not. */
  Optional<ShareLink> find(String tokenHash);

  /** Withdraws a link of a guild for good; false where there is none. */
  boolean revoke(long guildId, long linkId);
}
