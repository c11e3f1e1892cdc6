package guildwood.sharing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShareLinkTest {
  private static final Instant MAY = Instant.parse("2026-05-04T10:00:00Z");

  @Test
  void worksUntilTheMomentItExpires() {
    ShareLink link = link(Optional.of(MAY), false);
    assertTrue(link.works(MAY.minusNanos(1)));
    assertFalse(link.works(MAY));
    assertFalse(link.works(MAY.plusSeconds(1)));
  }

  @Test
  void worksForEverWhereNothingEndsIt() {
    assertTrue(link(Optional.empty(), false).works(Instant.MAX));
  }

  @Test
  void aWithdrawnLinkNeverWorks() {
    assertFalse(link(Optional.empty(), true).works(MAY));
    assertFalse(link(Optional.of(MAY), true).works(MAY.minusSeconds(60)));
  }

  private static ShareLink link(Optional<Instant> expiresAt, boolean revoked) {
    return new ShareLink(1, 2, "Helpers", MAY.minusSeconds(3600), expiresAt, revoked);
  }
}
