package guildwood.account.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.account.Account;
import guildwood.store.Database;
import guildwood.web.Tokens;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SqlAccountsStoreTest {
  private static final Instant NOW = Instant.now().truncatedTo(ChronoUnit.SECONDS);

  private final Database database = Database.inMemory();
  private final SqlAccounts accounts = new SqlAccounts(database);

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void onlyTheFirstAccountIsTaken() {
    assertFalse(accounts.anyExists());
    assertTrue(accounts.addFirst("Wren", "hash"));
    assertTrue(accounts.anyExists());
    assertFalse(accounts.addFirst("Rook", "hash"));
    assertEquals("Wren", accounts.find("Wren").orElseThrow().name());
    assertEquals(Optional.empty(), accounts.find("Rook"));
    assertEquals(Optional.empty(), accounts.find("wren' or '1'='1"));
  }

  /** Whoever else holds the set-up link at the same moment comes too late. Several rounds: chance decides who meets. */
  @Test
  void ofManyWhoComeAtOnceOneIsTaken() throws InterruptedException {
    for (int round = 0; round < 30; round++) {
      assertEquals(1, takenOfEight(), "round " + round);
      assertEquals(List.of(1), database.read(h -> h.createQuery("select count(*) from account").mapTo(Integer.class).list()));
      database.change(h -> h.execute("delete from account"));
    }
  }

  private int takenOfEight() throws InterruptedException {
    CountDownLatch start = new CountDownLatch(1);
    AtomicInteger taken = new AtomicInteger();
    List<Thread> threads = IntStream.range(0, 8).mapToObj(n -> new Thread(() -> {
      try {
        start.await();
        taken.addAndGet(accounts.addFirst("Wren " + n, "hash") ? 1 : 0);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    })).toList();
    threads.forEach(Thread::start);
    start.countDown();
    for (Thread thread : threads) {
      thread.join();
    }
    return taken.get();
  }

  @Test
  void aSignInHoldsUntilItExpires() {
    Account wren = wren();
    accounts.signIn(wren, Tokens.hash("token"), NOW.plusSeconds(60));
    assertEquals(Optional.of(wren), accounts.signedIn(Tokens.hash("token"), NOW));
    assertEquals(Optional.of(wren), accounts.signedIn(Tokens.hash("token"), NOW.plusSeconds(59)));
    assertEquals(Optional.empty(), accounts.signedIn(Tokens.hash("token"), NOW.plusSeconds(60)));
    assertEquals(Optional.empty(), accounts.signedIn("token", NOW));
    assertEquals(Optional.empty(), accounts.signedIn(Tokens.hash("other"), NOW));
  }

  @Test
  void signingOutEndsOneSessionAndLeavesTheOther() {
    Account wren = wren();
    accounts.signIn(wren, "phone", NOW.plusSeconds(60));
    accounts.signIn(wren, "laptop", NOW.plusSeconds(60));
    accounts.signOut("phone");
    accounts.signOut("never there");
    assertEquals(Optional.empty(), accounts.signedIn("phone", NOW));
    assertEquals(Optional.of(wren), accounts.signedIn("laptop", NOW));
  }

  @Test
  void expiredSessionsAreClearedAway() {
    Account wren = wren();
    accounts.signIn(wren, "old", NOW.minus(Duration.ofDays(1)));
    accounts.signIn(wren, "new", NOW.plusSeconds(60));
    assertEquals(List.of("new"), database.read(h -> h.createQuery("select token_hash from session").mapTo(String.class).list()));
  }

  private Account wren() {
    accounts.addFirst("Wren", "hash");
    return accounts.find("Wren").orElseThrow();
  }
}
