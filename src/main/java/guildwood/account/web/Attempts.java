package guildwood.account.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** Failed sign-ins by address: ten in a quarter of an hour, then a pause. */
final class Attempts {
  private static final int MOST = 10;
  private static final int ADDRESSES_KEPT = 1000;
  private static final Duration WINDOW = Duration.ofMinutes(15);

  private final Clock clock;
  private final Map<String, Deque<Instant>> failures = new LinkedHashMap<>();

  Attempts(Clock clock) {
    this.clock = clock;
  }

  synchronized boolean tooMany(String address) {
    Deque<Instant> times = failures.get(address);
    if (times == null) {
      return false;
    }
    Instant start = clock.instant().minus(WINDOW);
    while (!times.isEmpty() && times.peekFirst().isBefore(start)) {
      times.removeFirst();
    }
    return times.size() >= MOST;
  }

  synchronized void failed(String address) {
    if (failures.size() >= ADDRESSES_KEPT && !failures.containsKey(address)) {
      failures.remove(failures.keySet().iterator().next());
    }
    failures.computeIfAbsent(address, a -> new ArrayDeque<>()).addLast(clock.instant());
  }

  synchronized void forget(String address) {
    failures.remove(address);
  }

  /** How many addresses are remembered. */
  synchronized int addresses() {
    return failures.size();
  }
}
