package guildwood.account.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class AttemptsTest {
  private final HandClock clock = new HandClock();
  private final Attempts attempts = new Attempts(clock);

  @Test
  void tenFailuresAreTooMany() {
    fail("here", 9);
    assertFalse(attempts.tooMany("here"));
    fail("here", 1);
    assertTrue(attempts.tooMany("here"));
    assertFalse(attempts.tooMany("elsewhere"));
  }

  @Test
  void aQuarterOfAnHourLaterTheOldestIsForgotten() {
    fail("here", 1);
    clock.pass(Duration.ofMinutes(10));
    fail("here", 9);
    assertTrue(attempts.tooMany("here"));
    clock.pass(Duration.ofMinutes(5));
    assertTrue(attempts.tooMany("here"));
    clock.pass(Duration.ofSeconds(1));
    assertFalse(attempts.tooMany("here"));
    fail("here", 1);
    assertTrue(attempts.tooMany("here"));
  }

  @Test
  void successForgetsTheFailures() {
    fail("here", 10);
    attempts.forget("here");
    assertFalse(attempts.tooMany("here"));
  }

  /** Failures from ever new addresses must not fill the memory, and must not free the one that fails now. */
  @Test
  void remembersAThousandAddressesAtMost() {
    for (int i = 0; i < 1500; i++) {
      attempts.failed("address " + i);
    }
    fail("here", 10);
    assertTrue(attempts.tooMany("here"));
    assertEquals(1000, attempts.addresses());
  }

  private void fail(String address, int times) {
    for (int i = 0; i < times; i++) {
      attempts.failed(address);
    }
  }

  /** A clock that is moved on by hand. */
  private static final class HandClock extends Clock {
    private Instant now = Instant.parse("2026-05-04T10:00:00Z");

    void pass(Duration time) {
      now = now.plus(time);
    }

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }
}
